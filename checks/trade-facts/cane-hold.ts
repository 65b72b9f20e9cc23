import type { Body } from "../../src/mechanics/body/body.ts";
import type { AngleId } from "../../src/mechanics/body/names.ts";
import { patchOn } from "../../src/mechanics/body/patches.ts";
import { closePose } from "../../src/mechanics/pose/close.ts";
import { placeFrames, pointInRoom } from "../../src/mechanics/pose/kinematics.ts";
import { ARM_ON_CANE, UPRIGHT } from "../../src/practice/positions/upright-poses.data.ts";
import type { Vector } from "../../src/quantity/vectors.ts";

/** The cane's foot stands this far out from the little toe [m] (Kumar 1995: about six inches). */
const OUT = 0.15;
/** The middle of the hold lies half a handle's thickness under its top [m]. */
const HALF_HANDLE = 0.015;
const RADIAN = Math.PI / 180;

/**
 * How far the elbow is bent when the hand lies on a handle of this height, the upper arm hanging straight down as seen
 * from the side and going out only so far that the hand is above the cane's foot. Nothing is solved but those two angles.
 * @returns degrees
 */
export function elbowAtHandle(body: Body, top: number): number {
  const standing = closePose(body, UPRIGHT);
  if (!standing.closed) throw new Error("the body does not stand");
  const { configuration } = standing;
  const strong = -Math.sign(body.weakAt);
  const handAt = (elbow: number, abduction: number): Vector => {
    const own: Partial<Record<AngleId, number>> = {
      "shoulderFlexion.strong": 0,
      "shoulderAbduction.strong": abduction,
      "elbowFlexion.strong": elbow,
      "pronation.strong": ARM_ON_CANE.pronation,
      "wristExtension.strong": ARM_ON_CANE.wristExtension,
    };
    const angles = configuration.angles.map((angle, i) => {
      const id = body.angles[i];
      const degrees = id === undefined ? undefined : own[id];
      return degrees === undefined ? angle : degrees * RADIAN;
    });
    const frames = placeFrames(body, { ...configuration, angles });
    const { segment, balls } = patchOn(body, "grip.strong");
    return pointInRoom(body, frames, segment, balls[0]?.centre ?? [0, 0, 0]);
  };
  const frames = placeFrames(body, configuration);
  const littleToe = Math.max(
    ...patchOn(body, "foot.strong").balls.map(
      ({ centre }) => strong * pointInRoom(body, frames, "foot.strong", centre)[1],
    ),
  );
  for (let elbow = 0; elbow <= 90; elbow += 0.5) {
    let [low, high] = [-5, 45];
    for (let i = 0; i < 30; i++) {
      const middle = (low + high) / 2;
      if (strong * handAt(elbow, middle)[1] < littleToe + OUT) low = middle;
      else high = middle;
    }
    if (handAt(elbow, low)[2] >= top - HALF_HANDLE) return elbow;
  }
  return 90;
}
