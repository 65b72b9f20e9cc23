import type { Body } from "../body/body.ts";
import { WEAK_SHARE_DEFAULT } from "../equilibrium/sharing.data.ts";
import { type ClosedPose, movePose } from "../pose/close.ts";
import type { Limits } from "../pose/targets.ts";

/**
 * A pose whose load sharing is the person's own, with the weight taken where that sharing puts it: standing with two
 * fifths on the weak leg means standing over toward the strong one. Poses without such a sharing come back as they are,
 * and so does one that cannot be shifted that far.
 * @param weakShare share of the load on the weak side; default published
 */
export function takeSharing(body: Body, pose: ClosedPose, weakShare?: number, limits?: Limits): ClosedPose {
  const kind = pose.specification.sharing;
  if (kind === undefined) return pose;
  const share = weakShare ?? WEAK_SHARE_DEFAULT[kind];
  const at = { weak: middleOf(pose, "weak"), strong: middleOf(pose, "strong") };
  if (at.weak === null || at.strong === null) return pose;
  const wanted = at.weak * share + at.strong * (1 - share);
  for (const part of [1, 0.66, 0.33]) {
    const moved = movePose(body, pose, [0, (wanted - pose.centre[1]) * part], limits);
    if (moved.closed) return moved;
  }
  return pose;
}

/** Mean sideways place of what a side's lower body bears on [m]; null where it bears on nothing. */
function middleOf(pose: ClosedPose, side: "weak" | "strong"): number | null {
  let sum = 0;
  let count = 0;
  for (const contact of pose.contacts) {
    const [name, of] = contact.patch.split(".");
    if (!contact.touches || of !== side || contact.other !== null || name === undefined || !BEARING.has(name)) continue;
    for (const point of contact.points) {
      sum += point.at[1];
      count++;
    }
  }
  return count === 0 ? null : sum / count;
}

const BEARING = new Set(["foot", "forefoot", "heel", "shin", "knee", "instep", "buttock", "thighBack"]);
