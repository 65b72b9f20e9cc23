import type { RungHelper } from "../../activities/activity.ts";

/** Where the helper is on the ways on hands and knees, kneeling and up from the floor. Common practice, no source. */

/** Half kneeling at the weak shoulder, thigh ready, one hand blocking above the elbow. */
export const BLOCKS_WEAK_ELBOW: RungHelper = {
  pose: "halfKneeling",
  at: { beside: "weak", nearTo: "shoulder", awayCm: 34 },
  place: "Half kneeling at the weak shoulder, thigh up.",
  hands: [
    { site: "aboveElbowBack.weak", does: "blocks", words: "One hand on the back of the weak upper arm, just above the elbow." },
    { site: "pelvisSide.weak", does: "steadies", words: "The other at the weak side of the pelvis." },
  ],
  knee: "The raised thigh is under the front of the weak shoulder and upper chest, never in the armpit.",
  mayHelpAt: ["upperChest.weak", "aboveElbowBack.weak", "pelvisSide.weak", "shoulderFront.weak", "chestUnder"],
};
/** The same place, one hand bringing the seat. */
export const THIGH_UNDER_CHEST_SEAT: RungHelper = {
  ...BLOCKS_WEAK_ELBOW,
  hands: [
    { site: "pelvisBack.weak", does: "lifts", words: "One hand at the weak side of the pelvis brings the seat over." },
    { site: "aboveElbowBack.weak", does: "blocks", words: "The other stays above the weak elbow." },
  ],
  mayHelpAt: ["upperChest.weak", "pelvisBack.weak", "underButtock.weak", "aboveElbowBack.weak"],
};
/** The weak arm is off the mat: the thigh has the chest, a hand has the arm. */
export const THIGH_UNDER_CHEST_ARM: RungHelper = {
  ...BLOCKS_WEAK_ELBOW,
  hands: [
    { site: "pelvisSide.weak", does: "steadies", words: "One hand at the weak side of the pelvis." },
    { site: "forearmUnder.weak", does: "lifts", words: "The other carries the weak forearm." },
  ],
  mayHelpAt: ["upperChest.weak", "pelvisSide.weak", "pelvisBack.weak"],
};
/** Both hands of the person down: one hand blocks above the elbow, one on the blade. */
export const HOLDS_OVER_HANDS: RungHelper = {
  ...BLOCKS_WEAK_ELBOW,
  hands: [
    { site: "aboveElbowBack.weak", does: "blocks", words: "One hand on the back of the weak upper arm, just above the elbow." },
    { site: "shoulderBack.weak", does: "steadies", words: "The other flat on the weak blade." },
  ],
  knee: "The thigh is a finger's breadth under the weak upper chest, ready to take it.",
};
export const SETS_WEAK_HAND: RungHelper = {
  ...BLOCKS_WEAK_ELBOW,
  hands: [
    { site: "aboveElbowBack.weak", does: "blocks", words: "One hand above the back of the weak elbow brings it straight." },
    { site: "shoulderFront.weak", does: "steadies", words: "The other flat in front of the weak shoulder." },
  ],
  knee: "The thigh gives way slowly.",
};
/** At the weak hip, guiding the seat down or up. */
export const GUIDES_SEAT: RungHelper = {
  pose: "halfKneeling",
  at: { beside: "weak", nearTo: "hip", awayCm: 42 },
  place: "Half kneeling at the weak side of the pelvis.",
  hands: [
    { site: "pelvisBack.weak", does: "steadies", words: "One hand behind the weak side of the pelvis." },
    { site: "shoulderFront.weak", does: "steadies", words: "The other flat in front of the weak shoulder." },
  ],
  knee: null,
  mayHelpAt: ["pelvisBack.weak", "underButtock.weak", "upperChest.weak", "pelvisSide.weak", "shoulderFront.weak", "shoulderFront.strong"],
};
/** Behind the weak hip, under both seat bones. */
export const UNDER_SEAT: RungHelper = {
  pose: "halfKneeling",
  at: { beside: "weak", nearTo: "hip", awayCm: 36 },
  place: "Half kneeling behind the weak hip.",
  hands: [
    { site: "underButtock.weak", does: "lifts", words: "One hand under the weak buttock, forward and up." },
    { site: "hipBoneFront.weak", does: "steadies", words: "The other in front of the weak hip bone." },
  ],
  knee: "The near thigh is under the seat for a rest half way.",
  mayHelpAt: ["underButtock.weak", "pelvisBack.weak", "underButtock.strong", "beltBack", "shoulderFront.weak"],
};
export const BOTH_HIP_BONES: RungHelper = {
  ...UNDER_SEAT,
  hands: [
    { site: "pelvisSide.weak", does: "steadies", words: "One hand at the weak side of the pelvis." },
    { site: "shoulderFront.weak", does: "ready", words: "The other waits in front of the weak shoulder." },
  ],
  knee: "Thigh along the weak thigh.",
  mayHelpAt: ["pelvisBack.weak", "pelvisSide.weak", "beltBack", "shoulderFront.weak", "shoulderFront.strong", "ribSide.weak"],
};
/** Bringing the weak foot through or back. */
export const BRINGS_WEAK_FOOT: RungHelper = {
  ...UNDER_SEAT,
  at: { beside: "weak", nearTo: "knee", awayCm: 46 },
  place: "Half kneeling at the weak side, near the knee.",
  hands: [
    { site: "underThigh.weak", does: "lifts", words: "One hand under the weak thigh brings the leg." },
    { site: "pelvisBack.weak", does: "steadies", words: "The other behind the weak side of the pelvis." },
  ],
  knee: null,
  mayHelpAt: ["underThigh.weak", "underHeel.weak", "kneeBack.weak", "pelvisBack.weak", "pelvisSide.weak", "middleBack", "shoulderBack.weak"],
};
export const BLOCKS_WEAK_HIP: RungHelper = {
  ...UNDER_SEAT,
  at: { beside: "weak", nearTo: "hip", awayCm: 34 },
  hands: [
    { site: "pelvisBack.weak", does: "lifts", words: "One hand at the weak seat bone, forward." },
    { site: "pelvisSide.weak", does: "blocks", words: "The other at the side of the weak hip." },
  ],
  knee: "Near thigh along the weak thigh from behind.",
  mayHelpAt: ["pelvisBack.weak", "pelvisSide.weak", "beltBack", "shoulderFront.weak", "ribSide.weak", "ribSide.strong", "middleBack"],
};
export const OUTSIDE_WEAK_KNEE: RungHelper = {
  ...BLOCKS_WEAK_HIP,
  at: { beside: "weak", nearTo: "hip", awayCm: 48 },
  place: "Half kneeling at the weak side, the near knee along the weak thigh.",
  hands: [
    { site: "pelvisSide.weak", does: "steadies", words: "One hand at the weak side of the pelvis." },
    { site: "kneeOuter.weak", does: "blocks", words: "The other outside the weak knee." },
  ],
  knee: "Near knee up along the weak side as a wall.",
  mayHelpAt: ["pelvisSide.weak", "kneeOuter.weak", "pelvisBack.weak"],
};
/** Rising with the person from half kneeling. */
export const RISES_ALONG: RungHelper = {
  pose: "strideStanding",
  at: { beside: "weak", nearTo: "hip", awayCm: 36 },
  place: "Behind and at the weak side, coming up with the person.",
  hands: [
    { site: "beltBack", does: "lifts", words: "One hand in the belt, palm up." },
    { site: "shoulderFront.weak", does: "steadies", words: "The other flat in front of the weak shoulder." },
  ],
  knee: "The near knee is behind the weak knee.",
  mayHelpAt: ["beltBack", "pelvisBack.weak", "underButtock.weak", "shoulderFront.weak"],
};
