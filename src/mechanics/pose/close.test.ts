import { describe, expect, it } from "vitest";
import { buildBody } from "../body/build.ts";
import type { PoseSpecification } from "./specification.ts";
import { closePose } from "./close.ts";

const BRIDGE: PoseSpecification = {
  pelvis: { pitchDeg: -118 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 7, neckFlexion: 18 },
  bothDeg: {
    hipFlexion: 1,
    kneeFlexion: 117,
    ankleDorsiflexion: -2,
    shoulderFlexion: -22,
    shoulderAbduction: 17,
    elbowFlexion: 5,
    pronation: 90,
  },
  contacts: [
    { patch: "foot.weak", on: "mat", role: "both" },
    { patch: "foot.strong", on: "mat", role: "both" },
    { patch: "shoulderBlade.weak", on: "mat", role: "both" },
    { patch: "shoulderBlade.strong", on: "mat", role: "both" },
    { patch: "headBack", on: "mat", role: "both" },
    { patch: "forearm.weak", on: "mat", role: "both", effort: "rest" },
    { patch: "forearm.strong", on: "mat", role: "both" },
  ],
};
const ALL_FOURS: PoseSpecification = {
  pelvis: { pitchDeg: 80 },
  trunkDeg: { lumbarFlexion: -2, thoraxFlexion: -1, neckFlexion: -20 },
  bothDeg: {
    hipFlexion: 77,
    kneeFlexion: 90,
    ankleDorsiflexion: -51,
    shoulderFlexion: 79,
    shoulderAbduction: 8,
    shoulderExternalRotation: 12,
    elbowFlexion: 5,
    pronation: 165,
    wristExtension: 82,
  },
  contacts: [
    { patch: "hand.weak", on: "mat", role: "both" },
    { patch: "hand.strong", on: "mat", role: "both" },
    { patch: "shin.weak", on: "mat", role: "both" },
    { patch: "shin.strong", on: "mat", role: "both" },
    { patch: "instep.weak", on: "mat", role: "both" },
    { patch: "instep.strong", on: "mat", role: "both" },
  ],
};
const SHIFTED: PoseSpecification = { ...ALL_FOURS, shift: { forwardCm: 3, toWeakCm: 2 } };
const ELBOWS: PoseSpecification = {
  pelvis: { pitchDeg: 79 },
  trunkDeg: { lumbarFlexion: -23, thoraxFlexion: -3, neckFlexion: -30 },
  bothDeg: {
    hipFlexion: -9,
    kneeFlexion: 7,
    ankleDorsiflexion: -46,
    shoulderFlexion: 55,
    shoulderAbduction: 9,
    shoulderExternalRotation: -1,
    elbowFlexion: 85,
    pronation: 120,
  },
  contacts: [
    { patch: "forearm.weak", on: "mat", role: "both" },
    { patch: "forearm.strong", on: "mat", role: "both" },
    { patch: "pelvisFront.weak", on: "mat", role: "both" },
    { patch: "pelvisFront.strong", on: "mat", role: "both" },
    { patch: "thighFront.weak", on: "mat", role: "both" },
    { patch: "thighFront.strong", on: "mat", role: "both" },
    { patch: "instep.weak", on: "mat", role: "both" },
    { patch: "instep.strong", on: "mat", role: "both" },
  ],
};
const LONG_SITTING: PoseSpecification = {
  pelvis: { pitchDeg: -8 },
  trunkDeg: { lumbarFlexion: 12, thoraxFlexion: 8, neckFlexion: -5 },
  bothDeg: {
    hipFlexion: 79,
    hipAbduction: 6,
    kneeFlexion: 0,
    ankleDorsiflexion: -11,
    shoulderFlexion: 35,
    shoulderAbduction: 6,
    elbowFlexion: 25,
    pronation: 120,
  },
  contacts: [
    { patch: "buttock.weak", on: "mat", role: "both" },
    { patch: "buttock.strong", on: "mat", role: "both" },
    { patch: "calf.weak", on: "mat", role: "bears" },
    { patch: "calf.strong", on: "mat", role: "bears" },
    { patch: "heel.weak", on: "mat", role: "both" },
    { patch: "heel.strong", on: "mat", role: "both" },
  ],
};
const KNEELING: PoseSpecification = {
  pelvis: { pitchDeg: 2 },
  bothDeg: {
    hipFlexion: 3,
    kneeFlexion: 95,
    ankleDorsiflexion: -50,
    shoulderAbduction: 6,
    elbowFlexion: 8,
    pronation: 90,
  },
  contacts: [
    { patch: "shin.weak", on: "mat", role: "both" },
    { patch: "shin.strong", on: "mat", role: "both" },
    { patch: "instep.weak", on: "mat", role: "both" },
    { patch: "instep.strong", on: "mat", role: "both" },
  ],
};
const POSES = { BRIDGE, ALL_FOURS, SHIFTED, ELBOWS, LONG_SITTING, KNEELING };
const SIZES = [
  { sex: "female", height: 1.63, mass: 68 },
  { sex: "male", height: 1.77, mass: 84 },
  { sex: "female", height: 1.5, mass: 45 },
  { sex: "male", height: 1.95, mass: 120 },
] as const;

describe("closing a pose", () => {
  for (const [name, pose] of Object.entries(POSES)) {
    it(`closes ${name} on four bodies within a millimetre, nothing sinking`, () => {
      for (const size of SIZES) {
        const result = closePose(buildBody(size, 1), pose);
        if (!result.closed) throw new Error(`${size.sex} ${size.height}: ${result.because}`);
        expect(result.residual).toBeLessThan(0.0002);
        expect(result.sinks).toBeLessThan(0.001);
      }
    });
  }

  it("is the exact mirror for the person weak on the other side", () => {
    for (const pose of Object.values(POSES)) {
      const one = closePose(buildBody(SIZES[0], 1), pose);
      const two = closePose(buildBody(SIZES[0], -1), pose);
      if (!one.closed || !two.closed) throw new Error("does not close");
      expect(two.configuration.angles).toEqual(one.configuration.angles);
      expect(two.centre[0]).toBe(one.centre[0]);
      expect(two.centre[1]).toBeCloseTo(-one.centre[1], 12);
      expect(two.centre[2]).toBe(one.centre[2]);
    }
  });

  it("says which part misses its support where the body cannot reach", () => {
    const far: PoseSpecification = {
      ...KNEELING,
      surfaces: [{ id: "bench", kind: "bench", height: { cm: 190 } }],
      contacts: [...KNEELING.contacts, { patch: "hand.strong", on: "bench", role: "closes" }],
    };
    const result = closePose(buildBody(SIZES[2], 1), far);
    expect(result.closed).toBe(false);
    if (!result.closed) expect(result.because).toMatch(/misses its support by \d+ mm/);
  });
});
