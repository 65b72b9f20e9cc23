import type { LimbAngle, MidAngle } from "../../mechanics/body/names.ts";
import type { HelperStance } from "./drawing.ts";

type Degrees<Name extends string> = Readonly<Partial<Record<Name, number>>>;

/** How a helper starts before the hands reach: angles, what stands on the ground, and the trunk's lean [degrees]. Judgement. */
export interface Stance {
  readonly pitchDeg: number;
  readonly trunkDeg: Degrees<MidAngle>;
  readonly bothDeg: Degrees<LimbAngle>;
  /** The leg that is in front, or bent up. */
  readonly leadDeg: Degrees<LimbAngle>;
  readonly otherDeg: Degrees<LimbAngle>;
  readonly stands: readonly ("foot" | "shin" | "instep" | "forefoot")[];
  readonly otherStands: readonly ("foot" | "shin" | "instep" | "forefoot" | "knee")[];
  /** Height of the hips' seat [m]; zero where there is none. */
  readonly seat: number;
}

const ARMS = { shoulderFlexion: 48, shoulderAbduction: 12, shoulderExternalRotation: 0, elbowFlexion: 45, pronation: 110, wristExtension: 15 } as const;

export const STANCES: Readonly<Record<HelperStance, Stance>> = {
  standing: { pitchDeg: 14, trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: 14 }, bothDeg: { ...ARMS, hipFlexion: 28, hipAbduction: 7, kneeFlexion: 24, ankleDorsiflexion: 10 }, leadDeg: {}, otherDeg: {}, stands: ["foot"], otherStands: ["foot"], seat: 0 },
  strideStanding: { pitchDeg: 16, trunkDeg: { lumbarFlexion: 6, thoraxFlexion: 6, neckFlexion: 14 }, bothDeg: { ...ARMS, hipAbduction: 6 }, leadDeg: { hipFlexion: 54, kneeFlexion: 44, ankleDorsiflexion: 6 }, otherDeg: { hipFlexion: 2, kneeFlexion: 22, ankleDorsiflexion: 20 }, stands: ["foot"], otherStands: ["foot"], seat: 0 },
  sitting: { pitchDeg: 14, trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: 12 }, bothDeg: { ...ARMS, hipFlexion: 102, hipAbduction: 14, kneeFlexion: 92, ankleDorsiflexion: 4 }, leadDeg: {}, otherDeg: {}, stands: ["foot"], otherStands: ["foot"], seat: 0.44 },
  halfKneeling: { pitchDeg: 12, trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: 14 }, bothDeg: { ...ARMS }, leadDeg: { hipFlexion: 100, hipAbduction: 16, kneeFlexion: 96, ankleDorsiflexion: 8 }, otherDeg: { hipFlexion: 10, hipAbduction: 8, kneeFlexion: 86, ankleDorsiflexion: -40 }, stands: ["foot"], otherStands: ["shin", "instep"], seat: 0 },
  kneeling: { pitchDeg: 16, trunkDeg: { lumbarFlexion: 8, thoraxFlexion: 6, neckFlexion: 14 }, bothDeg: { ...ARMS, hipFlexion: 40, hipAbduction: 10, kneeFlexion: 108, ankleDorsiflexion: -45 }, leadDeg: {}, otherDeg: {}, stands: ["shin", "instep"], otherStands: ["shin", "instep"], seat: 0 },
};

/** Balls by which the helper is kept out of the person: segment, place [mm in its frame], radius [mm]. */
export const HELPER_BALLS = [
  { segment: "head", front: 12, up: 130, radius: 108 },
  { segment: "head", front: -40, up: 190, radius: 80 },
  { segment: "thorax", front: 0, up: 90, radius: 125 },
  { segment: "thorax", front: 0, up: 190, radius: 105 },
  { segment: "abdomen", front: 0, up: 80, radius: 115 },
  { segment: "pelvis", front: 0, up: 20, radius: 125 },
  { segment: "thigh", front: 0, up: -140, radius: 85 },
  { segment: "thigh", front: 0, up: -280, radius: 72 },
  { segment: "shank", front: 0, up: 0, radius: 62 },
  { segment: "shank", front: 0, up: -150, radius: 58 },
  { segment: "shank", front: 0, up: -290, radius: 48 },
  { segment: "foot", front: 20, up: -35, radius: 45 },
  { segment: "foot", front: 110, up: -50, radius: 42 },
  { segment: "upperArm", front: 0, up: -20, radius: 60 },
  { segment: "upperArm", front: 0, up: -110, radius: 54 },
  { segment: "upperArm", front: 0, up: -190, radius: 50 },
  { segment: "forearm", front: 0, up: 0, radius: 46 },
  { segment: "forearm", front: 0, up: -60, radius: 44 },
  { segment: "forearm", front: 0, up: -120, radius: 40 },
  { segment: "forearm", front: 0, up: -190, radius: 34 },
] as const;

/** Arms, which keep out of the body's own trunk and legs [mm]. */
export const OWN_ARM_BALLS = [
  { segment: "upperArm", up: -150, radius: 46 },
  { segment: "upperArm", up: -220, radius: 44 },
  { segment: "forearm", up: 0, radius: 41 },
  { segment: "forearm", up: -60, radius: 40 },
  { segment: "forearm", up: -120, radius: 36 },
  { segment: "forearm", up: -190, radius: 31 },
  { segment: "hand", up: -50, radius: 24 },
  { segment: "hand", up: -110, radius: 16 },
] as const;

/** A body's own trunk, which its arms keep out of [mm]. */
export const OWN_RODS = [
  { segment: "thorax", from: 20, to: 150, radius: 100, out: 45 },
  { segment: "abdomen", from: 20, to: 120, radius: 105, out: 40 },
  { segment: "pelvis", from: 0, to: 90, radius: 110, out: 50 },
] as const;

/** Rods along the person's segments [mm; shares of the length], as thick as the flesh. */
export const PERSON_RODS = [
  { segment: "head", from: 60, to: 170, radius: 96, out: 0 },
  { segment: "thorax", from: 0, to: 110, radius: 105, out: 60 },
  { segment: "thorax", from: 110, to: 215, radius: 82, out: 75 },
  { segment: "abdomen", from: 20, to: 120, radius: 100, out: 40 },
  { segment: "pelvis", from: -10, to: 90, radius: 105, out: 60 },
] as const;
export const PERSON_LIMB_RODS = [
  { segment: "upperArm", radius: 54 },
  { segment: "forearm", radius: 40 },
  { segment: "thigh", radius: 78 },
  { segment: "shank", radius: 48 },
] as const;

