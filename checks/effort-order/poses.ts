import type { PoseSpecification } from "../../src/mechanics/pose/specification.ts";
import { HANDS_AND_KNEES, PUSH_UP_ON_TOES } from "../poses.ts";

/** Hands or feet on a box of so many centimetres, as in the published push-ups. */
function pushUpOn(boxed: "hand" | "toes", cm: number, pitchDeg: number): PoseSpecification {
  return {
    ...PUSH_UP_ON_TOES,
    pelvis: { pitchDeg },
    bothDeg: { ...PUSH_UP_ON_TOES.bothDeg, shoulderFlexion: boxed === "hand" ? 78 : 66 },
    surfaces: [{ id: "bench", kind: "bench", height: { cm } }],
    contacts: PUSH_UP_ON_TOES.contacts.map((contact) =>
      contact.patch.startsWith(boxed) ? { ...contact, on: "bench" } : contact,
    ),
  };
}
export const HANDS_ON_60 = pushUpOn("hand", 60.96, 52);
export const HANDS_ON_30 = pushUpOn("hand", 30.48, 63);
export const FEET_ON_30 = pushUpOn("toes", 30.48, 84);
export const FEET_ON_60 = pushUpOn("toes", 60.96, 95);

/** Weak arm forward and strong leg back, both level; the weight taken over what is left. */
export const ARM_AND_LEG_LIFTED: PoseSpecification = {
  ...HANDS_AND_KNEES,
  weakDeg: { shoulderFlexion: 165, shoulderExternalRotation: 0, elbowFlexion: 3, pronation: 90, wristExtension: 0 },
  strongDeg: { hipFlexion: 0, kneeFlexion: 2, ankleDorsiflexion: 0 },
  contacts: HANDS_AND_KNEES.contacts.filter(
    ({ patch }) => patch !== "hand.weak" && patch !== "shin.strong" && patch !== "instep.strong",
  ),
  notCounted: ["hand.weak", "foot.strong"],
};
