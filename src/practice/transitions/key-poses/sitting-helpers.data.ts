import type { RungHelper } from "../../activities/activity.ts";

/** Where the helper is on the ways in sitting, from seat to seat and up to standing. Common practice, no source. */

/** Half kneeling behind and to the weak side, the raised thigh as a backrest. */
export const BACKREST: RungHelper = {
  pose: "halfKneeling",
  at: { beside: "weak", nearTo: "chest", awayCm: 15 },
  place: "Half kneeling behind and to the weak side, the raised thigh along the back.",
  hands: [
    { site: "pelvisBack.weak", does: "lifts", words: "One hand behind the pelvis brings it upright." },
    { site: "shoulderFront.weak", does: "steadies", words: "The other flat in front of the weak shoulder." },
  ],
  knee: "The raised thigh is a backrest.",
  mayHelpAt: ["middleBack", "pelvisBack.weak", "ribSide.weak", "shoulderFront.weak"],
};
export const BACKREST_BLADE: RungHelper = {
  ...BACKREST,
  hands: [
    { site: "shoulderBack.weak", does: "lifts", words: "One palm behind the weak blade." },
    { site: "ribSide.weak", does: "steadies", words: "The other on the weak ribs." },
  ],
  mayHelpAt: ["middleBack", "shoulderBack.weak", "ribSide.weak", "ribSide.strong", "pelvisBack.weak"],
};
/** At the weak side on the mat, one hand for the knee, one for the trunk. */
export const STEERS_WEAK_KNEE: RungHelper = {
  pose: "halfKneeling",
  at: { beside: "weak", nearTo: "knee", awayCm: 46 },
  place: "Half kneeling at the weak knee.",
  hands: [
    { site: "kneeBack.weak", does: "lifts", words: "One hand behind the weak knee." },
    { site: "pelvisSide.weak", does: "steadies", words: "The other at the weak side of the pelvis." },
  ],
  knee: null,
  mayHelpAt: ["kneeBack.weak", "pelvisSide.weak", "ribSide.weak", "ribSide.strong", "middleBack"],
};
export const AT_WEAK_RIBS: RungHelper = {
  ...STEERS_WEAK_KNEE,
  at: { beside: "weak", nearTo: "hip", awayCm: 38 },
  place: "Half kneeling at the weak side, close to the hip.",
  hands: [
    { site: "ribSide.weak", does: "steadies", words: "One hand at the weak ribs." },
    { site: "pelvisSide.weak", does: "steadies", words: "The other at the weak side of the pelvis." },
  ],
  mayHelpAt: ["ribSide.weak", "ribSide.strong", "pelvisSide.weak", "shoulderFront.weak", "middleBack"],
};
/** Standing at the edge, carrying the weak leg over it. */
export const CARRIES_WEAK_LEG: RungHelper = {
  pose: "strideStanding",
  at: { beside: "weak", nearTo: "knee", awayCm: 45 },
  place: "Standing in a stride at the weak leg, back straight; at a floor mat kneeling there.",
  hands: [
    { site: "underThigh.weak", does: "lifts", words: "One hand under the weak thigh." },
    { site: "underHeel.weak", does: "lifts", words: "The other under the heel." },
  ],
  knee: null,
  mayHelpAt: ["underThigh.weak", "underHeel.weak", "kneeBack.weak"],
};
/** On a stool at the weak knee. */
export const SITS_BEFORE_WEAK_KNEE: RungHelper = {
  pose: "sitting",
  at: { beside: "weak", nearTo: "knee", awayCm: 36 },
  place: "Sitting in front of the weak knee, knees on either side of it.",
  hands: [
    { site: "kneeFront.weak", does: "steadies", words: "One hand at the weak knee keeps the foot flat." },
    { site: "ribSide.weak", does: "steadies", words: "The other at the weak ribs." },
  ],
  knee: "The knees hold the weak knee between them.",
  mayHelpAt: ["ribSide.weak", "pelvisBack.weak", "shoulderFront.weak", "beltBack"],
};
export const SITS_SEAT_LIGHT: RungHelper = {
  ...SITS_BEFORE_WEAK_KNEE,
  hands: [
    { site: "kneeFront.weak", does: "blocks", words: "One hand blocks the weak knee." },
    { site: "pelvisBack.weak", does: "lifts", words: "The other behind the weak side of the pelvis brings it ahead." },
  ],
  mayHelpAt: ["pelvisBack.weak", "beltBack", "kneeFront.weak", "underButtock.weak", "shoulderFront.weak"],
};
/** The same seat while one hip goes ahead or back. */
export const SITS_HIP_BY_HIP: RungHelper = {
  ...SITS_SEAT_LIGHT,
  at: { beside: "weak", nearTo: "knee", awayCm: 38 },
  hands: [
    { site: "kneeFront.weak", does: "blocks", words: "One hand on the weak knee says how far." },
    { site: "shoulderBack.weak", does: "steadies", words: "The other behind the weak blade stops the lean back." },
  ],
  mayHelpAt: ["pelvisBack.weak", "underButtock.weak", "shoulderBack.weak", "ribSide.weak", "shoulderFront.weak"],
};
/** In stride at the weak side: belt, knee block. */
export const BELT_AND_KNEE: RungHelper = {
  pose: "strideStanding",
  at: { beside: "weak", nearTo: "hip", awayCm: 35 },
  place: "Standing in a stride at the weak side, the knee at the weak knee.",
  hands: [
    { site: "beltBack", does: "lifts", words: "One hand in the belt, palm up." },
    { site: "shoulderBack.weak", does: "steadies", words: "The other flat behind the weak blade." },
  ],
  knee: "Knee and foot are set against the weak knee and foot.",
  mayHelpAt: ["beltBack", "pelvisBack.weak", "kneeFront.weak", "underButtock.weak", "shoulderFront.weak"],
};
export const BELT_AND_SHOULDER: RungHelper = {
  ...BELT_AND_KNEE,
  at: { beside: "weak", nearTo: "hip", awayCm: 38 },
  hands: [
    { site: "beltBack", does: "steadies", words: "One hand in the belt, palm up." },
    { site: "shoulderFront.weak", does: "steadies", words: "The other flat in front of the weak shoulder." },
  ],
  knee: "The near knee is beside the weak knee.",
  mayHelpAt: ["beltBack", "pelvisSide.weak", "kneeFront.weak", "pelvisBack.weak", "shoulderFront.weak"],
};
/** In front, both knees round the weak knee, taking the lean of the trunk. */
export const TURNS_TO_WEAK: RungHelper = {
  ...BELT_AND_KNEE,
  at: { beside: "weak", nearTo: "knee", awayCm: 36 },
  place: "Half sitting in front of the weak knee, both knees on either side of it.",
  hands: [
    { site: "beltBack", does: "lifts", words: "One hand in the belt, palm up." },
    { site: "shoulderBack.weak", does: "steadies", words: "The other flat behind the weak blade." },
  ],
  knee: "Both knees guard the weak knee from folding and from snapping back.",
};
