import type { Body } from "../../mechanics/body/body.ts";
import { patchOn } from "../../mechanics/body/patches.ts";
import { type Frames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import type { Block } from "./solid.ts";

/** Room between the edge of a step and the foot that stands lower [m]. */
const CLEAR = 0.01;

/** Reach of the foot that stands on the floor beside a step, along the way faced [m]; null where none stands there. */
function lowerFoot(
  body: Body,
  frames: Frames,
  pose: PoseSpecification,
  step: Block,
): { from: number; to: number } | null {
  for (const side of ["weak", "strong"] as const) {
    const stands = pose.contacts.some(
      ({ patch, on }) => on === "floor" && [`foot.${side}`, `forefoot.${side}`, `heel.${side}`].includes(patch),
    );
    if (!stands) continue;
    const balls = patchOn(body, `foot.${side}`).balls.map((ball) => ({
      at: pointInRoom(body, frames, `foot.${side}`, ball.centre),
      radius: ball.radius,
    }));
    if (!balls.some(({ at, radius }) => at[1] + radius > step.fromY && at[1] - radius < step.toY)) continue;
    return {
      from: Math.min(...balls.map(({ at, radius }) => at[0] - radius)),
      to: Math.max(...balls.map(({ at, radius }) => at[0] + radius)),
    };
  }
  return null;
}

/**
 * A step's edge goes between the foot on it and the foot below: the step lies ahead of the lower foot on the way up and
 * behind it on the way down. Without a lower foot it stays where it was.
 */
export function edgeOfStep(
  body: Body,
  frames: Frames,
  pose: PoseSpecification,
  step: Block,
): { block: Block; climbs: 1 | -1 } {
  const foot = lowerFoot(body, frames, pose, step);
  if (foot === null) return { block: step, climbs: 1 };
  const depth = step.toX - step.fromX;
  const climbs = (step.fromX + step.toX) / 2 >= (foot.from + foot.to) / 2 ? 1 : -1;
  const fromX = climbs > 0 ? Math.max(step.fromX, foot.to + CLEAR) : Math.min(step.fromX, foot.from - CLEAR - depth);
  return { block: { ...step, fromX, toX: fromX + depth }, climbs };
}
