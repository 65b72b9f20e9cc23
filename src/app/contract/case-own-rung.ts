import type { LimbAngle, MidAngle } from "../../mechanics/body/names.ts";
import { codes, counted, group, listOf, maybe, measured, words } from "./fields.ts";

/** Joint angles that a therapist may set by hand in a rung of their own. */
export const OWN_LIMB_ANGLES = [
  "shoulderFlexion",
  "shoulderAbduction",
  "shoulderExternalRotation",
  "elbowFlexion",
  "wristExtension",
  "hipFlexion",
  "hipAbduction",
  "hipExternalRotation",
  "kneeFlexion",
  "ankleDorsiflexion",
] as const satisfies readonly LimbAngle[];
export const OWN_TRUNK_ANGLES = [
  "lumbarFlexion",
  "lumbarSideBend",
  "thoraxFlexion",
  "thoraxTurn",
  "neckFlexion",
] as const satisfies readonly MidAngle[];
export const FREE_LIMBS = ["arm.weak", "arm.strong", "leg.weak", "leg.strong"] as const;
export const SUPPORT_FORMS = ["press", "rest", "light", "away"] as const;

const SIDE = codes("side", ["weak", "strong"]);

/** A therapist's own rung for this person: what changes against the one it comes from, and its words. Weak and strong only. */
export const OWN_RUNG = group("own rung", {
  /** Names it for good; a session is logged by it. */
  id: words("identifier of the own rung", 60),
  from: group("rung it comes from", { activity: words("activity", 80), rung: words("rung", 80) }),
  name: words("name", 80),
  changes: maybe(words("what changes", 200)),
  words: words("words to say", 60),
  cue: words("cue word", 20),
  angles: maybe(
    listOf(
      "joint angles",
      group("joint angle", {
        joint: codes("joint angle", [...OWN_LIMB_ANGLES, ...OWN_TRUNK_ANGLES]),
        side: maybe(SIDE),
        degrees: measured({ what: "angle", min: -180, max: 180, unit: "degrees" }),
      }),
      12,
    ),
  ),
  limbFree: maybe(codes("limb that is free", FREE_LIMBS)),
  support: maybe(
    listOf(
      "supports",
      group("support", { part: words("part of the body", 40), how: codes("how it bears", SUPPORT_FORMS) }),
      12,
    ),
  ),
  weightToWeakCm: maybe(measured({ what: "weight toward the weak side", min: -15, max: 15, unit: "centimetres" })),
  sets: maybe(counted({ what: "sets", min: 1, max: 10 })),
  repetitions: maybe(counted({ what: "repetitions", min: 1, max: 50 })),
  holdSeconds: maybe(measured({ what: "hold", min: 0, max: 120, unit: "seconds" })),
  by: words("who wrote it", 80),
  at: words("when it was written", 40),
});
