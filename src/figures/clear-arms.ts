import { type Side, SIDES } from "../quantity/sides.ts";
import type { Body } from "../mechanics/body/body.ts";
import { type Configuration, placeFrames, ROOT_FREEDOMS } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { limitsOf } from "../mechanics/pose/targets.ts";
import { keepOwnArmsApartRows } from "./helper/keep-apart.ts";
import { dampedStep } from "./helper/least-squares.ts";

const STEPS = 14;
const ARM_ANGLES = /^(shoulder|elbow|pronation|wrist)/;
/** Angles that leave the elbow where it is. */
const FOREARM_ANGLES = /^(shoulderExternalRotation|elbow|pronation|wrist)/;
const ARM_PATCHES = /^(hand|fist|forearm|elbow|upperArm|fingers|wrist)/;
const ELBOW_PATCHES = /^(elbow|upperArm)/;

/**
 * Brings an arm that rests on nothing out of the flesh of the same body: the pose is computed for bones, and a heavy
 * body is thicker. Arms that lean on something, trunk and legs stay as computed; over an elbow that rests, the forearm
 * alone gives way.
 */
export function clearArms(body: Body, configuration: Configuration, pose: PoseSpecification | null): Configuration {
  const giving = SIDES.map((side) => ({ side, angles: givingAngles(pose, side) }));
  const moves = body.angles.map((id) => giving.some(({ side, angles }) => id.endsWith(`.${side}`) && angles?.test(id)));
  if (!moves.includes(true)) return configuration;
  const limits = limitsOf(body);
  const pull = new Float64Array(ROOT_FREEDOMS + body.angles.length).fill(1e4);
  moves.forEach((is, i) => {
    if (is) pull[ROOT_FREEDOMS + i] = 0.002;
  });
  let angles = configuration.angles;
  for (let step = 0; step < STEPS; step++) {
    const frames = placeFrames(body, { ...configuration, angles });
    const rows = keepOwnArmsApartRows(body, frames, body.girth).filter((row) => row.error < -0.004);
    if (rows.length === 0) break;
    const move = dampedStep(rows, pull, new Float64Array(pull.length), 1e-4);
    if (move === null) break;
    angles = angles.map((angle, i) => {
      if (moves[i] !== true) return angle;
      const to = angle + Math.max(-0.2, Math.min(0.2, move[ROOT_FREEDOMS + i] ?? 0));
      return Math.min(Math.max(to, limits.least[i] ?? to), limits.most[i] ?? to);
    });
  }
  return { ...configuration, angles };
}

/** Which angles of an arm may give way. */
function givingAngles(pose: PoseSpecification | null, side: Side): RegExp | null {
  let angles: RegExp | null = ARM_ANGLES;
  for (const { patch, on } of pose?.contacts ?? []) {
    const partner = typeof on === "string" ? null : on.body;
    // One hand holding the other may not shift; an arm laid on the body's own trunk or thigh may.
    if (partner !== null && ARM_PATCHES.test(partner) && partner.endsWith(`.${side}`)) return null;
    if (!ARM_PATCHES.test(patch) || !patch.endsWith(`.${side}`)) continue;
    if (partner !== null && ARM_PATCHES.test(partner)) return null;
    if (partner !== null) continue;
    if (!ELBOW_PATCHES.test(patch)) return null;
    angles = FOREARM_ANGLES;
  }
  return angles;
}
