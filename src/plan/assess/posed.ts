import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import type { Rung } from "../../practice/activities/activity.ts";
import { spareWeakArm, weakArmPresses } from "./prepared.ts";

/**
 * The pose of a rung as it is computed and drawn: a weak arm that the rung spares, or lends without its pushing, must not
 * set the verdict. A grip that only rests counts as lying.
 */
export function poseOf(rung: Rung): PoseSpecification {
  const arm = rung.limbs.arm;
  if (arm === "train") return rung.pose;
  if (arm === "lend" && weakArmPresses(rung.pose)) return rung.pose;
  return spareWeakArm(rung.pose);
}
