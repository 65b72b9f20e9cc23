import type { ContactSpecification, LimbAngles, PoseSpecification, SurfaceSpecification } from "../../mechanics/pose/specification.ts";
import { ARM_HANGING, HALF_KNEELING_STRONG_FORWARD, LEG_KNEELING, LEG_STRONG, LEG_WEAK } from "./kneeling-poses.data.ts";
import { HEAD_AND_SHOULDERS, HEAD_PILLOW, SUPINE } from "./lying-poses.data.ts";
import { PRONE } from "./prone-poses.data.ts";
import { LONG_SITTING } from "./sitting-poses.data.ts";
import { ARM_ON_BAR, BARS, FOOT_STRONG, GRIP_STRONG, LEG_STANDING } from "./standing-poses.data.ts";

/** From the floor back to a seat, lifts on both arms, one leg, a short thigh. Angles: "judgement", adjusted until they closed. */

/** A firm seat as high as a chair, in front of the knees; at the strong side its top carries the forearm. */
const FLOOR_SEAT: SurfaceSpecification = { id: "seat", kind: "bench", height: { cm: 42 }, under: ["forearm.strong"], depthCm: 45, widthCm: 50 };
const SIDE_SEAT: SurfaceSpecification = { ...FLOOR_SEAT, kind: "stool", depthCm: 40, widthCm: 34 };
const LIMP = ["hand.weak", "hand.strong", "foot.weak", "foot.strong", "toes.weak", "toes.strong"] as const;

/** Sitting on the floor with the strong side at a seat, the strong forearm on it; knees bent, feet flat. */
export const ON_FLOOR_AT_SEAT: PoseSpecification = {
  pelvis: { pitchDeg: -8 },
  trunkDeg: { lumbarFlexion: 14, thoraxFlexion: 8, neckFlexion: -8 },
  bothDeg: { hipFlexion: 96, hipAbduction: 6, kneeFlexion: 84, ankleDorsiflexion: -42 },
  weakDeg: { shoulderFlexion: 22, shoulderAbduction: 8, elbowFlexion: 34, pronation: 90 },
  strongDeg: { shoulderFlexion: 30, shoulderAbduction: 44, elbowFlexion: 70, pronation: 150 },
  surfaces: [SIDE_SEAT],
  contacts: [
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "forearm.strong", on: "seat", role: "both" },
  ],
  notCounted: ["hand.weak", "hand.strong", "toes.weak", "toes.strong"],
};
/** On both knees at the seat, hips half up, the strong forearm on it. */
export const KNEES_AT_SEAT: PoseSpecification = {
  pelvis: { pitchDeg: 34 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: -18 },
  bothDeg: { hipFlexion: 62, kneeFlexion: 114, ankleDorsiflexion: -62 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 36 },
  strongDeg: { shoulderFlexion: 64, shoulderAbduction: 6, elbowFlexion: 56, pronation: 150 },
  surfaces: [FLOOR_SEAT],
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "forearm.strong", on: "seat", role: "both" }],
  notCounted: LIMP,
};
const HAND_ON_SEAT = { shoulderFlexion: 48, shoulderAbduction: 6, elbowFlexion: 18, pronation: 165, wristExtension: 62 } as const satisfies LimbAngles;
/** Kneeling upright at the seat, only the strong hand on it. */
export const HAND_ON_SEAT_KNEELING: PoseSpecification = {
  ...KNEES_AT_SEAT,
  pelvis: { pitchDeg: 16 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 4, neckFlexion: -10 },
  bothDeg: { ...LEG_KNEELING, hipFlexion: 24, kneeFlexion: 100 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 18 },
  strongDeg: HAND_ON_SEAT,
  surfaces: [{ ...FLOOR_SEAT, under: ["hand.strong"] }],
  contacts: [...LEG_WEAK, ...LEG_STRONG, { patch: "hand.strong", on: "seat", role: "both" }],
};
/** The strong foot stands beside the seat, the strong hand on the seat, the weak knee down. */
export const STRONG_FOOT_AT_SEAT: PoseSpecification = {
  ...HALF_KNEELING_STRONG_FORWARD,
  pelvis: { pitchDeg: 14 },
  trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 5, neckFlexion: -10 },
  strongDeg: { ...HALF_KNEELING_STRONG_FORWARD.strongDeg, ...HAND_ON_SEAT, shoulderAbduction: 26, hipFlexion: 104 },
  surfaces: [{ ...SIDE_SEAT, under: ["hand.strong"] }],
  contacts: [{ patch: "foot.strong", on: "mat", role: "both" }, ...LEG_WEAK, { patch: "hand.strong", on: "seat", role: "both" }],
};
/** The body is up over the strong foot, the strong hand still on the seat, about to turn and sit. */
export const RISING_AT_SEAT: PoseSpecification = {
  ...HALF_KNEELING_STRONG_FORWARD,
  pelvis: { pitchDeg: 30 },
  trunkDeg: { lumbarFlexion: 16, thoraxFlexion: 12, neckFlexion: -24 },
  weakDeg: { ...ARM_HANGING, shoulderFlexion: 40, hipFlexion: 44, kneeFlexion: 60, ankleDorsiflexion: 10, toeExtension: 45 },
  strongDeg: { ...HAND_ON_SEAT, shoulderFlexion: 74, shoulderAbduction: 20, hipFlexion: 88, hipAbduction: -2, kneeFlexion: 68, ankleDorsiflexion: 14 },
  surfaces: [{ ...SIDE_SEAT, under: ["hand.strong"] }],
  contacts: [
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "forefoot.weak", on: "mat", role: "both" },
    { patch: "hand.strong", on: "seat", role: "both" },
  ],
  shift: { toWeakCm: -5 },
  notCounted: ["toes.weak", "toes.strong", "hand.weak"],
};

/** Lifting the seat on both arms in long sitting, from high blocks to the flat mat. */
const BLOCKS: readonly SurfaceSpecification[] = [
  { id: "block", kind: "block", height: { cm: 14 }, under: ["hand.strong"], depthCm: 20, widthCm: 18 },
  { id: "step", kind: "block", height: { cm: 14 }, under: ["hand.weak"], depthCm: 20, widthCm: 18 },
];
const PRESSING_ARM = { shoulderFlexion: -4, shoulderAbduction: 12, shoulderExternalRotation: 0, elbowFlexion: 6, pronation: 100, wristExtension: 80 } as const satisfies LimbAngles;
const BOTH_ON_BLOCKS: readonly ContactSpecification[] = [
  { patch: "hand.weak", on: "step", role: "both" },
  { patch: "hand.strong", on: "block", role: "both" },
];
const BOTH_ON_MAT: readonly ContactSpecification[] = [
  { patch: "hand.weak", on: "mat", role: "both" },
  { patch: "hand.strong", on: "mat", role: "both" },
];
const LIFT: PoseSpecification = {
  ...LONG_SITTING,
  pelvis: { pitchDeg: 6 },
  trunkDeg: { lumbarFlexion: 14, thoraxFlexion: 10, neckFlexion: -10 },
  bothDeg: { ...LONG_SITTING.bothDeg, ...PRESSING_ARM, hipFlexion: 92, kneeFlexion: 6 },
  contacts: [{ patch: "heel.weak", on: "mat", role: "both" }, { patch: "heel.strong", on: "mat", role: "both" }],
  notCounted: ["foot.weak", "foot.strong", "toes.weak", "toes.strong"],
};
/** The feet stand with the knees bent and help to lift. */
export const LIFT_FEET_HELP: PoseSpecification = {
  ...LIFT,
  pelvis: { pitchDeg: 2 },
  bothDeg: { ...LIFT.bothDeg, hipFlexion: 100, kneeFlexion: 92, ankleDorsiflexion: -28 },
  surfaces: BLOCKS,
  contacts: [{ patch: "foot.weak", on: "mat", role: "both" }, { patch: "foot.strong", on: "mat", role: "both" }, ...BOTH_ON_BLOCKS],
};
export const LIFT_ON_BLOCKS: PoseSpecification = { ...LIFT, surfaces: BLOCKS, contacts: [...LIFT.contacts, ...BOTH_ON_BLOCKS] };
export const LIFT_ON_MAT: PoseSpecification = {
  ...LIFT,
  pelvis: { pitchDeg: 22 },
  trunkDeg: { lumbarFlexion: 20, thoraxFlexion: 14, neckFlexion: -14 },
  bothDeg: { ...LIFT.bothDeg, hipFlexion: 108, kneeFlexion: 8, shoulderFlexion: 10, girdleElevation: -10 },
  contacts: [...LIFT.contacts, ...BOTH_ON_MAT],
};
/** Lifted and moved to the strong side: the strong hand on a low step, the weak hand on the mat. */
const LOW_STEP: SurfaceSpecification = { id: "step", kind: "step", height: { cm: 10 }, under: ["hand.strong"], depthCm: 45, widthCm: 45 };
export const LIFT_TO_LOW_STEP: PoseSpecification = {
  ...LIFT,
  pelvis: { pitchDeg: 10, rollToStrongDeg: -6 },
  surfaces: [LOW_STEP],
  strongDeg: { ...PRESSING_ARM, shoulderAbduction: 22 },
  contacts: [...LIFT.contacts, { patch: "hand.strong", on: "step", role: "both" }, { patch: "hand.weak", on: "mat", role: "both" }],
};
export const LIFT_SIDEWAYS_ON_BLOCKS: PoseSpecification = {
  ...LIFT_ON_BLOCKS,
  strongDeg: { ...PRESSING_ARM, shoulderAbduction: 26 },
  weakDeg: { ...PRESSING_ARM, shoulderAbduction: 4 },
  shift: { toWeakCm: -3 },
};

/** Lifted backward onto a low step that stands behind: both hands on it. */
export const LIFT_BACK_TO_STEP: PoseSpecification = {
  ...LIFT,
  pelvis: { pitchDeg: 4 },
  surfaces: [{ id: "step", kind: "block", height: { cm: 12 }, under: ["hand.weak", "hand.strong"], depthCm: 34, widthCm: 100 }],
  bothDeg: { ...LIFT.bothDeg, shoulderFlexion: -26, shoulderAbduction: 16, wristExtension: 84 },
  contacts: [...LIFT.contacts, { patch: "hand.weak", on: "step", role: "both" }, { patch: "hand.strong", on: "step", role: "both" }],
};

/** One leg in the bars: the weak foot off the floor, two hands, one hand, then the strong knee bending. */
const BOTH_GRIP: readonly ContactSpecification[] = [GRIP_STRONG, { patch: "grip.weak", on: "bars", role: "both", grips: true }];
const ONE_LEG: PoseSpecification = {
  pelvis: { pitchDeg: 3 },
  bothDeg: { ...LEG_STANDING, ...ARM_ON_BAR },
  weakDeg: { hipFlexion: 18, kneeFlexion: 62, ankleDorsiflexion: -10 },
  surfaces: [BARS],
  contacts: [FOOT_STRONG, ...BOTH_GRIP],
  shift: { toWeakCm: -7 },
  notCounted: ["toes.weak", "toes.strong", "foot.weak"],
};
export const ONE_LEG_TWO_HANDS: PoseSpecification = ONE_LEG;
export const ONE_LEG_KNEE_BEND: PoseSpecification = {
  ...ONE_LEG,
  pelvis: { pitchDeg: 14 },
  trunkDeg: { lumbarFlexion: 3, neckFlexion: -8 },
  strongDeg: { hipFlexion: 32, kneeFlexion: 36, ankleDorsiflexion: 14 },
};
export const ONE_LEG_HEEL_UP: PoseSpecification = {
  ...ONE_LEG,
  strongDeg: { ankleDorsiflexion: -20, toeExtension: 25, kneeFlexion: 2 },
  contacts: [{ patch: "forefoot.strong", on: "floor", role: "both" }, ...BOTH_GRIP],
  shift: { forwardCm: 5, toWeakCm: -8 },
};
export const ONE_LEG_ONE_HAND: PoseSpecification = {
  ...ONE_LEG,
  weakDeg: { ...ONE_LEG.weakDeg, shoulderFlexion: 0, shoulderAbduction: 6, elbowFlexion: 8, pronation: 90, wristExtension: 0 },
  contacts: [FOOT_STRONG, GRIP_STRONG],
  shift: { toWeakCm: -12 },
  notCounted: ["toes.weak", "toes.strong", "foot.weak", "hand.weak"],
};

/** The weak thigh over a firm roll, the strong knee bent: lying, lifted, then lifted on that thigh alone. */
const THIGH_ROLL: SurfaceSpecification = { id: "bolster", kind: "bolster", height: { cm: 13 }, under: ["thighBack.weak"], depthCm: 13, widthCm: 30 };
/** Where there is a lower leg it lies: its heel takes no more than its own weight. */
const WEAK_HEEL_RESTS: ContactSpecification = { patch: "heel.weak", on: "mat", role: "both", effort: "rest" };
export const THIGH_PRESSES_DOWN: PoseSpecification = {
  ...SUPINE,
  surfaces: [HEAD_PILLOW, THIGH_ROLL],
  weakDeg: { hipFlexion: 18, hipExternalRotation: 0, kneeFlexion: 34, ankleDorsiflexion: -10 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "forearm.strong", on: "mat", role: "both", effort: "rest" },
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "thighBack.weak", on: "bolster", role: "both" },
    WEAK_HEEL_RESTS,
    { patch: "heel.strong", on: "mat", role: "both", effort: "rest" },
  ],
};
const LIFTED_ON_THIGH: PoseSpecification = {
  ...THIGH_PRESSES_DOWN,
  pelvis: { pitchDeg: -104 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 4, neckFlexion: 12 },
  weakDeg: { ...THIGH_PRESSES_DOWN.weakDeg, hipFlexion: 0 },
};
export const THIGH_LIFTS_SEAT: PoseSpecification = {
  ...LIFTED_ON_THIGH,
  strongDeg: { hipFlexion: 44, hipExternalRotation: 0, kneeFlexion: 122, ankleDorsiflexion: -10 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "forearm.strong", on: "mat", role: "both" },
    { patch: "thighBack.weak", on: "bolster", role: "both" },
    WEAK_HEEL_RESTS,
    { patch: "foot.strong", on: "mat", role: "both" },
  ],
};
export const THIGH_LIFTS_ALONE: PoseSpecification = {
  ...LIFTED_ON_THIGH,
  strongDeg: { hipFlexion: 84, hipExternalRotation: 0, kneeFlexion: 110, ankleDorsiflexion: -10 },
  contacts: [
    ...HEAD_AND_SHOULDERS,
    { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "forearm.strong", on: "mat", role: "both" },
    { patch: "thighBack.weak", on: "bolster", role: "both" },
    WEAK_HEEL_RESTS,
  ],
  shift: { toWeakCm: 2 },
};

/** Face down with the thighs straight: a firm cushion under the pelvis, flat, then the weak thigh drawn to the midline and the head turned away. */
export const PRONE_ON_CUSHION: PoseSpecification = {
  ...PRONE,
  bothDeg: { ...PRONE.bothDeg, hipFlexion: 10 },
  surfaces: [...(PRONE.surfaces ?? []), { id: "wedge", kind: "wedge", height: { cm: 5 }, under: ["pelvisFront.weak", "pelvisFront.strong"], depthCm: 30, widthCm: 50 }],
  contacts: [
    { patch: "pelvisFront.weak", on: "wedge", role: "both" },
    { patch: "pelvisFront.strong", on: "wedge", role: "both" },
    { patch: "knee.weak", on: "mat", role: "both" },
    { patch: "knee.strong", on: "mat", role: "both" },
    { patch: "instep.weak", on: "mat", role: "both" },
    { patch: "instep.strong", on: "mat", role: "both" },
    { patch: "chestFront", on: "mat", role: "both" },
    { patch: "headSide", on: "pillow", role: "both" },
    { patch: "hand.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "hand.strong", on: "mat", role: "both", effort: "rest" },
  ],
};
export const PRONE_THIGHS_STRAIGHT: PoseSpecification = { ...PRONE, bothDeg: { ...PRONE.bothDeg, hipFlexion: -2 } };
export const PRONE_THIGHS_TOGETHER: PoseSpecification = {
  ...PRONE_THIGHS_STRAIGHT,
  trunkDeg: { ...PRONE.trunkDeg, neckTurn: 62 },
  weakDeg: { hipFlexion: -6, hipAbduction: -3, hipExternalRotation: 0 },
};
