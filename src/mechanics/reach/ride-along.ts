import { add, IDENTITY, norm, rotate, rotateBack, scale, subtract, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { patchOn } from "../body/patches.ts";
import type { ClosedContact, ClosedPose } from "../pose/close.ts";
import { centreOfMass, type Configuration, type Frames, pointInRoom } from "../pose/kinematics.ts";

/** Skin on skin that has come apart by more than this [m] bears no longer. */
const PARTED = 0.03;

/** The closed pose at a station: contact points ride on their segments. */
export function poseAt(body: Body, from: ClosedPose, configuration: Configuration, frames: Frames): ClosedPose {
  const ride = (segment: number, at: Vector): Vector => {
    const own = rotateBack(
      from.frames.rotations[segment] ?? IDENTITY,
      subtract(at, from.frames.positions[segment] ?? [0, 0, 0]),
    );
    return add(frames.positions[segment] ?? [0, 0, 0], rotate(frames.rotations[segment] ?? IDENTITY, own));
  };
  const contacts = from.contacts.map((contact): ClosedContact => {
    const { balls } = patchOn(body, contact.patch);
    const points = contact.points.map((point, k) => {
      // A round part rolls: it touches below its centre, wherever that has gone.
      const ball = balls[k];
      const at =
        contact.other !== null || ball === undefined
          ? ride(contact.segment, point.at)
          : subtract(pointInRoom(body, frames, contact.segment, ball.centre), scale(contact.normal, ball.radius));
      return { at, gap: contact.other === null ? point.gap + (at[2] - point.at[2]) : point.gap };
    });
    const other =
      contact.other === null
        ? null
        : { segment: contact.other.segment, at: ride(contact.other.segment, contact.other.at) };
    const parted =
      other !== null &&
      points.every(
        (point) =>
          norm(subtract(point.at, other.at)) >
          PARTED + norm(subtract(contact.points[0]?.at ?? point.at, contact.other?.at ?? other.at)),
      );
    return {
      ...contact,
      points,
      other,
      touches: contact.touches && !parted && points.some((point) => point.gap < 0.012),
    };
  });
  return { ...from, configuration, frames, contacts, centre: centreOfMass(body, frames) };
}
