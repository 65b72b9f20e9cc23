import type { PersonToday } from "../../src/app/engine/person-today.ts";
import type { OutsideForce } from "../../src/mechanics/equilibrium/statics.ts";
import type { PreparedPose } from "../../src/plan/assess/prepared.ts";
import { pointInRoom } from "../../src/mechanics/pose/kinematics.ts";

/** A weight laid on the front of the pelvis [N]. */
export function gravityForce({ body }: PersonToday, { pose }: PreparedPose, newtons: number): OutsideForce {
  const segment = body.segmentIndex.pelvis;
  return { segment, at: pointInRoom(body, pose.frames, "pelvis", [0, 0, 0]), force: [0, 0, -newtons] };
}
