import type { Body } from "../body/body.ts";
import type { Column } from "../contact/columns.ts";
import type { ClosedPose } from "../pose/close.ts";
import type { PoseSpecification } from "../pose/specification.ts";
import { WEAK_SHARE_DEFAULT } from "./sharing.data.ts";

export type SharingKind = NonNullable<PoseSpecification["sharing"]>;

const LEGS = new Set(["thigh", "shank", "foot", "toes"]);

/**
 * The load sharing between the sides as an equation: what the weak side's leg (in sitting, its buttock and leg) carries is
 * the given share of both.
 */
export function sharingRow(
  pose: ClosedPose,
  columns: readonly Column[],
  body: Body,
  unknowns: number,
  seen: number | undefined,
): { row: Float64Array; weak: number; kind: SharingKind } | null {
  const kind = pose.specification.sharing;
  if (kind === undefined) return null;
  const weak = seen ?? WEAK_SHARE_DEFAULT[kind];
  const row = new Float64Array(unknowns);
  const has = { weak: false, strong: false };
  columns.forEach((column, j) => {
    const contact = pose.contacts[column.contact];
    const [name, side] = (contact?.patch ?? "").split(".");
    const part = body.segments[column.segment]?.id.split(".")[0] ?? "";
    const counts = LEGS.has(part) || (kind === "sitting" && (name === "buttock" || name === "hipSide"));
    if (!counts || column.other !== null || (side !== "weak" && side !== "strong")) return;
    has[side] = true;
    row[j] = column.load * (side === "weak" ? 1 - weak : -weak);
  });
  return has.weak && has.strong ? { row, weak, kind } : null;
}
