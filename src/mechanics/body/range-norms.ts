import type { SourceId } from "../../sources/bibliography.ts";
import type { BodySize } from "./body.ts";
import type { LimbAngle, MidAngle } from "./names.ts";
import { RANGE_NORMS, RANGE_SPREAD_DEG, type RangeRow } from "./range-norms.data.ts";

/** How far a joint usually goes one way [degrees], with the range of nine in ten and where it was found. */
export interface UsualRange {
  readonly degrees: number;
  readonly low: number;
  readonly high: number;
  /** The published group is of another age: the nearest one stands in. */
  readonly otherAge: boolean;
  readonly source: SourceId;
}

/**
 * Published range of a joint for sex and age.
 * @returns null where no figure was found: missing, not invented (shoulder girdle, thorax, toes, turning the foot)
 */
export function usualRange(
  angle: LimbAngle | MidAngle,
  end: "most" | "least",
  sex: BodySize["sex"],
  age: number,
): UsualRange | null {
  const rows = RANGE_NORMS.filter((row) => row.angle === angle && row.end === end);
  const away = ({ ages }: RangeRow): number => Math.max(0, ages[0] - age, age - ages[1]);
  const row = rows.reduce<RangeRow | null>(
    (best, each) => (best === null || away(each) < away(best) ? each : best),
    null,
  );
  if (row === null) return null;
  const degrees = sex === "female" ? row.women : row.men;
  const width = 1.645 * RANGE_SPREAD_DEG;
  return { degrees, low: degrees - width, high: degrees + width, otherAge: away(row) > 0, source: row.source };
}
