import type { Body } from "../body/body.ts";
import { type Ball, type MidPatch, type PairedPatch, hasPatch, type PatchId, patchOn } from "../body/patches.ts";
import { type Frames, pointGradient, pointInRoom, reachOf } from "./kinematics.ts";
import { type Row, UP } from "./rows.ts";

/** Skin that must not sink: soft or rolled-up parts (belly, fist) are left to what the pose says of them. */
const FIRM_MIDDLE: readonly MidPatch[] = ["headBack", "headSide", "forehead", "chestFront"];
const FIRM_PAIRS: readonly PairedPatch[] = [
  "shoulderBlade",
  "ribSide",
  "buttock",
  "hipSide",
  "shoulderSide",
  "elbow",
  "hand",
  "knee",
  "heel",
  "forefoot",
  "toes",
];
const FIRM_PATCHES: readonly PatchId[] = [
  ...FIRM_MIDDLE,
  ...FIRM_PAIRS.flatMap((name): PatchId[] => [`${name}.weak`, `${name}.strong`]),
];

/** A ball of skin that must not sink, on one body. */
export interface FirmBall {
  readonly segment: number;
  readonly ball: Ball;
}
const kept = new WeakMap<Body, readonly FirmBall[]>();

/** Every ball of skin that must stay at or above height zero. */
export function firmBalls(body: Body): readonly FirmBall[] {
  let known = kept.get(body);
  if (known === undefined) {
    known = FIRM_PATCHES.filter((id) => hasPatch(body, id)).flatMap((id) => {
      const { segment, balls } = patchOn(body, id);
      return balls.map((ball) => ({ segment: body.segmentIndex[segment], ball }));
    });
    kept.set(body, known);
  }
  return known;
}

/** Lowest point of a ball above height zero [m]. */
export function heightOf(body: Body, frames: Frames, { segment, ball }: FirmBall): number {
  return pointInRoom(body, frames, segment, ball.centre)[2] - ball.radius;
}

/** Skin that has sunk below height zero joins what is held; @returns all that is held, in the body's order. */
export function sunkBalls(body: Body, frames: Frames, held: Set<FirmBall>): FirmBall[] {
  return firmBalls(body).filter((each) => {
    if (heightOf(body, frames, each) < -1e-5) held.add(each);
    return held.has(each);
  });
}

/** The row that lifts a ball out and holds it on the surface. */
export function firmRow(body: Body, frames: Frames, { segment, ball }: FirmBall): Row {
  const at = pointInRoom(body, frames, segment, ball.centre);
  const gradient = pointGradient(body, frames, segment, at, UP);
  return { error: at[2] - ball.radius, gradient, reach: reachOf(body, segment) };
}
