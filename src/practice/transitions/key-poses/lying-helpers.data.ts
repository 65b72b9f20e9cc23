import type { RungHelper } from "../../activities/activity.ts";

/** Where the helper is on the ways between lying, prone and coming up. Common practice, no source. */

export const AT_WEAK_KNEE: RungHelper = {
  pose: "kneeling",
  at: { beside: "weak", nearTo: "knee", awayCm: 45 },
  place: "Kneeling beside the weak knee.",
  hands: [
    { site: "kneeBack.weak", does: "lifts", words: "One hand behind the weak knee." },
    { site: "underHeel.weak", does: "steadies", words: "The other carries the weak heel." },
  ],
  knee: null,
  mayHelpAt: ["kneeBack.weak", "underHeel.weak", "underThigh.weak"],
};
export const AT_WEAK_KNEE_PRESSING: RungHelper = {
  ...AT_WEAK_KNEE,
  hands: [
    { site: "kneeEnd.weak", does: "steadies", words: "One hand presses the end of the weak thigh toward the foot." },
    { site: "footTop.weak", does: "steadies", words: "The other keeps the weak foot flat." },
  ],
  mayHelpAt: ["kneeEnd.weak", "kneeOuter.weak", "footTop.weak"],
};

export const AT_STRONG_EDGE_KNEES: RungHelper = {
  pose: "kneeling",
  at: { beside: "strong", nearTo: "hip", awayCm: 45 },
  place: "Kneeling at the strong side, both thighs against the edge.",
  hands: [
    { site: "kneeOuter.weak", does: "steadies", words: "One hand outside the weak knee draws it over." },
    { site: "pelvisBack.weak", does: "lifts", words: "The other behind the weak side of the pelvis." },
  ],
  knee: "Both thighs are the wall at the edge.",
  mayHelpAt: ["kneeOuter.weak", "kneeBack.weak", "pelvisBack.weak", "shoulderBack.weak"],
};
export const AT_STRONG_EDGE: RungHelper = {
  ...AT_STRONG_EDGE_KNEES,
  at: { beside: "strong", nearTo: "chest", awayCm: 45 },
  hands: [
    { site: "shoulderBack.weak", does: "lifts", words: "One hand flat behind the weak shoulder blade." },
    { site: "pelvisBack.weak", does: "lifts", words: "The other behind the weak side of the pelvis." },
  ],
  mayHelpAt: ["pelvisBack.weak", "shoulderBack.weak", "kneeOuter.weak", "kneeBack.weak"],
};
export const AT_STRONG_EDGE_PILLOWS: RungHelper = {
  ...AT_STRONG_EDGE,
  at: { beside: "strong", nearTo: "hip", awayCm: 50 },
  hands: [
    { site: "pelvisSide.weak", does: "steadies", words: "One hand stays on the weak side of the pelvis." },
    { site: "upperArmUnder.weak", does: "lifts", words: "The other lays the weak arm onto its pillow." },
  ],
  mayHelpAt: ["pelvisSide.weak", "pelvisBack.weak"],
};
/** In front of someone lying on the strong side, braking the way back. */
export const BRAKES_ROLL_BACK: RungHelper = {
  ...AT_STRONG_EDGE,
  place: "Kneeling in front, thighs at the edge.",
  hands: [
    { site: "ribSide.weak", does: "steadies", words: "One flat hand on the weak side of the ribs brakes." },
    { site: "pelvisSide.weak", does: "steadies", words: "The other on the weak side of the pelvis." },
  ],
  mayHelpAt: ["ribSide.weak", "pelvisSide.weak", "shoulderBack.weak", "pelvisBack.weak", "kneeBack.weak", "kneeOuter.weak"],
};
export const LAYS_WEAK_LIMBS: RungHelper = {
  ...AT_WEAK_KNEE,
  at: { beside: "weak", nearTo: "hip", awayCm: 45 },
  place: "Kneeling at the weak side, come round by the foot end.",
  hands: [
    { site: "upperArmUnder.weak", does: "lifts", words: "One hand under the weak upper arm lays it on its pillow." },
    { site: "kneeOuter.weak", does: "steadies", words: "The other keeps the weak leg from rolling out." },
  ],
  mayHelpAt: ["kneeOuter.weak", "pelvisBack.weak"],
};

export const AT_WEAK_BLADE: RungHelper = {
  pose: "kneeling",
  at: { beside: "weak", nearTo: "hip", awayCm: 44 },
  place: "Kneeling on the weak side, thighs at the edge.",
  hands: [
    { site: "shoulderBack.weak", does: "steadies", words: "One hand behind the weak blade keeps it forward." },
    { site: "pelvisBack.strong", does: "lifts", words: "The other behind the strong side of the pelvis." },
  ],
  knee: "The thigh is the stop at the edge.",
  mayHelpAt: ["pelvisBack.strong", "shoulderBack.strong", "shoulderBack.weak", "kneeBack.strong", "kneeOuter.strong"],
};
export const AT_WEAK_BLADE_OVER: RungHelper = {
  ...AT_WEAK_BLADE,
  at: { beside: "weak", nearTo: "chest", awayCm: 60 },
  mayHelpAt: ["pelvisBack.strong", "shoulderBack.strong", "hipBoneFront.strong", "kneeBack.strong", "kneeOuter.strong"],
};
export const FEELS_WEAK_BLADE: RungHelper = {
  ...AT_WEAK_BLADE_OVER,
  hands: [
    { site: "shoulderBack.weak", does: "cues", words: "One hand feels that the inner edge of the blade lies flat." },
    { site: "pelvisSide.strong", does: "steadies", words: "The other rests on the strong side of the pelvis." },
  ],
  mayHelpAt: ["pelvisSide.strong"],
};

/** In front of someone on the strong side, rolling the pelvis and the chest on to face down. */
export const ROLLS_ONTO_FRONT: RungHelper = {
  pose: "kneeling",
  at: { beside: "front", nearTo: "hip", awayCm: 50 },
  place: "Kneeling in front, with space for the body to roll into.",
  hands: [
    { site: "pelvisBack.weak", does: "lifts", words: "One hand behind the weak side of the pelvis rolls it on." },
    { site: "shoulderFront.weak", does: "steadies", words: "The other keeps the weak shoulder from dropping." },
  ],
  knee: "The thighs are the stop in front.",
  mayHelpAt: ["pelvisBack.weak", "shoulderFront.weak", "shoulderBack.weak", "hipBoneFront.weak"],
};
export const FREES_WEAK_ARM: RungHelper = {
  pose: "kneeling",
  at: { beside: "weak", nearTo: "shoulder", awayCm: 36 },
  place: "Kneeling at the weak shoulder.",
  hands: [
    { site: "shoulderFront.weak", does: "lifts", words: "A flat hand lifts the front of the weak shoulder." },
    { site: "forearmUnder.weak", does: "lifts", words: "The other brings the weak arm out along the body." },
  ],
  knee: null,
  mayHelpAt: ["shoulderFront.weak"],
};
/** At the weak side of someone face down, drawing the weak side up to roll back. */
export const ROLLS_BACK_FROM_FRONT: RungHelper = {
  pose: "kneeling",
  at: { beside: "behind", nearTo: "hip", awayCm: 47 },
  place: "Kneeling on the weak side, which becomes the back: the person rolls toward the own thighs.",
  hands: [
    { site: "hipBoneFront.weak", does: "lifts", words: "One hand in front of the weak hip bone draws it back." },
    { site: "shoulderFront.weak", does: "lifts", words: "The other flat under the front of the weak shoulder." },
  ],
  knee: "The own thighs are where the back comes to rest.",
  mayHelpAt: ["hipBoneFront.weak", "shoulderFront.weak", "pelvisBack.weak"],
};

export const CARRIES_WEAK_ARM_AHEAD: RungHelper = {
  ...FREES_WEAK_ARM,
  hands: [
    { site: "upperArmUnder.weak", does: "lifts", words: "One hand under the weak upper arm." },
    { site: "forearmUnder.weak", does: "lifts", words: "The other under the forearm, moving together, low." },
  ],
  mayHelpAt: ["upperArmUnder.weak", "forearmUnder.weak"],
};
export const SHOULDER_FRONT_AND_BACK: RungHelper = {
  ...FREES_WEAK_ARM,
  at: { beside: "weak", nearTo: "shoulder", awayCm: 30 },
  place: "Kneeling at the weak shoulder, close.",
  hands: [
    { site: "shoulderFront.weak", does: "lifts", words: "One palm flat in front of the weak shoulder." },
    { site: "shoulderBack.weak", does: "steadies", words: "The other flat on the weak shoulder blade." },
  ],
  knee: "The near thigh stands beside the weak upper arm so that the elbow cannot slide away.",
  mayHelpAt: ["shoulderFront.weak", "upperChest.weak", "chestUnder"],
};

/** Coming up over the strong side at the edge. */
export const RAISES_AT_EDGE: RungHelper = {
  pose: "strideStanding",
  at: { beside: "front", nearTo: "chest", awayCm: 45 },
  place: "Standing in front in a stride, knees bent, close to the chest.",
  hands: [
    { site: "ribSide.strong", does: "lifts", words: "One hand under the lower ribs on the strong side raises the trunk." },
    { site: "pelvisSide.weak", does: "steadies", words: "The other presses the upper hip down." },
  ],
  knee: "The front knee keeps the person's knees from sliding off.",
  mayHelpAt: ["ribSide.strong", "middleBack", "shoulderBack.weak", "pelvisSide.weak", "kneeBack.weak"],
};
/** The legs going over or coming up, the trunk like the other pan of the scales. */
export const LEGS_AND_HIP: RungHelper = {
  ...RAISES_AT_EDGE,
  hands: [
    { site: "kneeBack.weak", does: "lifts", words: "One arm behind both knees brings the legs." },
    { site: "pelvisSide.weak", does: "steadies", words: "The other hand on the upper hip presses it down." },
  ],
  mayHelpAt: ["kneeBack.weak", "underThigh.weak", "ribSide.strong", "pelvisSide.weak", "shoulderBack.weak"],
};
export const STEADIES_ON_ELBOW: RungHelper = {
  ...RAISES_AT_EDGE,
  at: { beside: "front", nearTo: "hip", awayCm: 48 },
  place: "Standing in front, toward the weak side, watching face and lips.",
  hands: [
    { site: "pelvisSide.weak", does: "steadies", words: "One hand holds the weak hip down." },
    { site: "shoulderFront.weak", does: "ready", words: "The other waits in front of the weak shoulder." },
  ],
  knee: "One knee stands before the weak knee.",
  mayHelpAt: ["pelvisSide.weak", "ribSide.strong", "middleBack", "kneeBack.weak"],
};
export const FOLLOWS_HAND: RungHelper = {
  ...STEADIES_ON_ELBOW,
  at: { beside: "weak", nearTo: "hip", awayCm: 40 },
  place: "Standing in a stride in front, toward the weak side.",
  hands: [
    { site: "shoulderFront.weak", does: "steadies", words: "A flat hand in front of the weak shoulder." },
    { site: "shoulderBack.weak", does: "steadies", words: "The other flat behind the weak blade." },
  ],
  knee: "The front knee guards the weak knee.",
  mayHelpAt: ["shoulderBack.weak", "middleBack", "ribSide.strong", "ribSide.weak"],
};
/** Behind someone coming up on the mat, the thigh following as a backrest. */
export const BACKREST_COMING_UP: RungHelper = {
  pose: "halfKneeling",
  at: { beside: "behind", nearTo: "chest", awayCm: 32 },
  place: "Half kneeling behind, toward the weak side.",
  hands: [
    { site: "shoulderBack.weak", does: "lifts", words: "A flat hand behind the weak blade." },
    { site: "pelvisSide.weak", does: "steadies", words: "The other on the upper hip." },
  ],
  knee: "The near thigh follows until it is against the back.",
  mayHelpAt: ["shoulderBack.weak", "middleBack", "ribSide.strong", "pelvisSide.weak"],
};
