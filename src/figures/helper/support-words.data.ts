/** The helper's part that a sentence is about: the first that fits. */
export const SUPPORT_PARTS = [
  { part: "thigh", when: /knees? (is )?up[,;].*\bthigh/ },
  { part: "foot", when: /^((your|the|one|near|front|helper's|own|or) )*foot\b/ },
  { part: "shin", when: /^((your|the|one|near|front|own) )*shins?\b/ },
  { part: "thigh", when: /^((your|the|same|raised|one|near|front|both|own) )*thighs?\b/ },
  { part: "knee", when: /\bknees?\b/ },
] as const;

/** Where on the person it is: the first that fits. */
export const SUPPORT_PLACES = [
  { place: "upperChest", when: /upper chest|under the chest/ },
  { place: "shoulderFront", when: /front of the weak shoulder/ },
  { place: "ribSide", when: /weak ribs/ },
  { place: "upperArmOuter", when: /weak upper arm|weak elbow/ },
  { place: "kneeBack", when: /behind the weak knee|weak knee from behind/ },
  { place: "kneeFront", when: /(front of|before|guards?) (the )?(weak knee|person's knees)|weak knee from the front|person's knees/ },
  { place: "kneeInner", when: /inside of the weak knee/ },
  { place: "kneeOuter", when: /weak knee/ },
  { place: "thighBack", when: /weak thigh from behind|behind the weak thigh/ },
  { place: "thighOuter", when: /weak thigh|along the weak side as a wall/ },
  { place: "shinFront", when: /weak shin from the front|on the weak shin|against the shins/ },
  { place: "shinOuter", when: /weak shin/ },
  { place: "toes", when: /weak toes|toes of the weak foot|front of the weak foot|front foot blocks the weak foot|against the weak foot/ },
  { place: "footOuter", when: /weak foot/ },
  { place: "pelvisBack", when: /pelvis|low back|behind the weak buttock/ },
  { place: "underButtock", when: /under the seat/ },
  { place: "back", when: /\bback\b|backrest|stays as the stop behind|stays behind it/ },
] as const;

export type SupportPart = (typeof SUPPORT_PARTS)[number]["part"];
export type SupportPlace = (typeof SUPPORT_PLACES)[number]["place"];

/** Words of a part that stands by and does not touch. */
export const SUPPORT_STANDS_OFF = /ready|not touching|not pushing|waits|close|finger's breadth|guard|beside|up as a stop|as a mark|a step before/;
/** Words of a part that touches, whatever else is said. */
export const SUPPORT_TOUCHES = /\bagainst\b(?! snapping)|touches|\btouching|\bset against|\blies\b/;
/** Sentences that only say how the helper stands. */
export const NO_SUPPORT = /edge|wide|ready to stand|steps with|elbow's place|elbow stood|strong foot|step\b.*against|against the step|holds the block|when it lands|may come to rest|if they tire/;

/** On which bone a place is, how far down it as a share of its length or up it in mm, and which way out. */
export const SUPPORT_SITES = {
  upperChest: { segment: "thorax", share: 0, up: 110, toward: [1, 0.4, 0] },
  shoulderFront: { segment: "upperArm", share: 0.1, up: 0, toward: [1, 0, 0] },
  ribSide: { segment: "thorax", share: 0, up: 30, toward: [0, 1, 0] },
  upperArmOuter: { segment: "upperArm", share: 0.6, up: 0, toward: [0, 1, 0] },
  kneeFront: { segment: "shank", share: 0, up: 0, toward: [1, 0, 0] },
  kneeOuter: { segment: "shank", share: 0, up: 0, toward: [0, 1, 0] },
  kneeInner: { segment: "shank", share: 0, up: 0, toward: [0, -1, 0] },
  kneeBack: { segment: "shank", share: 0.05, up: 0, toward: [-1, 0, 0] },
  thighBack: { segment: "thigh", share: 0.6, up: 0, toward: [-1, 0, 0] },
  thighOuter: { segment: "thigh", share: 0.6, up: 0, toward: [0, 1, 0] },
  shinFront: { segment: "shank", share: 0.5, up: 0, toward: [1, 0, 0] },
  shinOuter: { segment: "shank", share: 0.5, up: 0, toward: [0, 1, 0] },
  toes: { segment: "foot", share: 0, up: -40, toward: [1, 0, 0] },
  footOuter: { segment: "foot", share: 0, up: -40, toward: [0, 1, 0] },
  pelvisBack: { segment: "pelvis", share: 0, up: 40, toward: [-1, 0.3, 0] },
  underButtock: { segment: "pelvis", share: 0, up: -40, toward: [-0.5, 0.4, -1] },
  back: { segment: "thorax", share: 0, up: 20, toward: [-1, 0.3, 0] },
} as const;

/** The helper's part: from where to where along the bone it may touch, and how thick it is there [shares; mm]. */
export const SUPPORT_LIMBS = {
  thigh: { segment: "thigh", from: 0.35, to: 0.95, radiusFrom: 82, radiusTo: 62 },
  knee: { segment: "shank", from: 0, to: 0.06, radiusFrom: 56, radiusTo: 54 },
  shin: { segment: "shank", from: 0.15, to: 0.7, radiusFrom: 52, radiusTo: 40 },
  foot: { segment: "foot", from: 0, to: 0, radiusFrom: 42, radiusTo: 42 },
} as const;
