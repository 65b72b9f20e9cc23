import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import { isArtificial } from "./amputation.ts";
import type { Body } from "./body.ts";
import { normalCapacities } from "./strength-capacities.ts";
import { type EvidenceKey, type EvidenceRow, STRENGTH_EVIDENCE } from "./strength-evidence.data.ts";
import type { StrengthId } from "./strength-keys.ts";

/** The normal moment of one joint direction with what it rests on. */
export interface NormEvidence {
  readonly angle: string;
  readonly words: string;
  readonly strength: StrengthId | null;
  /** Middle of healthy people of this sex, age and size, in this pose [N.m]; and where nine in ten of them lie. */
  readonly moment: number;
  readonly low: number;
  readonly high: number;
  /** No measured figure was found: what stands there is borrowed, and the range is wide. */
  readonly missing: boolean;
  readonly because: string;
  readonly sources: readonly SourceId[];
  readonly seen: Seen;
}

/** Nine in ten of a normal distribution lie within so many spreads. */
const NINE_IN_TEN = 1.645;

/**
 * Every joint direction's normal moment with its range, sources and whether a norm exists at all. Ranges are of a lognormal
 * with the published spread, so that they never go below nothing.
 * @param age [years] @param angles [rad] in the body's order
 * @returns two rows an angle, in the order of the capacities
 */
export function normEvidence(body: Body, age: number, angles: readonly number[]): readonly NormEvidence[] {
  const { directions, moments } = normalCapacities(body, age, angles);
  return directions.map(({ angle, words, strength }, k): NormEvidence => {
    const id = body.angles[angle];
    if (id === undefined) throw new ProgrammingError("a direction without an angle");
    const known = moments[k] ?? 0;
    if (isArtificial(body, id))
      return {
        angle: id,
        words,
        strength,
        moment: known,
        low: known,
        high: known,
        missing: false,
        because: "no muscle moves a joint below an amputation",
        sources: [],
        seen: "judgement",
      };
    const row: EvidenceRow = STRENGTH_EVIDENCE[evidenceKey(id.split(".")[0] ?? id, words, strength)];
    const width = Math.exp(NINE_IN_TEN * Math.sqrt(Math.log(1 + row.spread * row.spread)));
    return {
      angle: id,
      words,
      strength,
      moment: known,
      low: known / width,
      high: known * width,
      missing: row.missing === true,
      because: row.words,
      sources: row.sources,
      seen: row.seen,
    };
  });
}

function evidenceKey(angle: string, words: string, strength: StrengthId | null): EvidenceKey {
  if (angle.startsWith("girdle")) return "girdle";
  if (angle.startsWith("neck")) return "neck";
  if (angle === "kneeExternalRotation") return "kneeTurn";
  if (angle === "pronation" || angle === "radialDeviation") return angle;
  if (angle === "toeExtension") return words === "flexion" ? "toeFlexion" : "toeExtension";
  if (angle === "inversion") return words === "eversion" ? "eversion" : "inversion";
  const key = strength?.startsWith("trunk") === true ? strength : (strength?.split(".")[0] ?? "");
  return isKey(key) ? key : "neck";
}
const isKey = (key: string): key is EvidenceKey => key in STRENGTH_EVIDENCE;
