import { describe, expect, it } from "vitest";
import { buildBody } from "./build.ts";
import { normEvidence } from "./strength-evidence.ts";
import { kneeBentShare, toeFlexionNorm, trunkNorm } from "./strength-norms.ts";

const BODY = buildBody({ sex: "female", height: 1.62, mass: 68 }, 1);
const STILL = BODY.angles.map(() => 0);
const rows = normEvidence(BODY, 70, STILL);

describe("what a normal moment rests on", () => {
  it("is said for every direction, with a range that holds it", () => {
    expect(rows.length).toBe(86);
    for (const row of rows) {
      expect(row.low).toBeLessThan(row.moment);
      expect(row.high).toBeGreaterThan(row.moment);
      expect(row.because.length).toBeGreaterThan(10);
      // Nothing judged is passed off as found.
      if (row.seen === "judgement") expect(row.missing, row.angle).toBe(true);
    }
  });
  it("is called missing where nothing was found, and then more than twofold either way", () => {
    const missing = new Set(rows.filter((row) => row.missing).map((row) => `${row.angle.split(".")[0]} ${row.words}`));
    console.log(`missing norms: ${[...missing].join("; ")}`);
    for (const name of [
      "lumbarSideBend side bend to the weak side",
      "lumbarTurn turn to the weak side",
      "girdleElevation depression",
      "toeExtension extension",
      "hipExternalRotation external rotation",
      "shoulderExternalRotation internal rotation",
      "inversion inversion",
    ])
      expect(missing.has(name), name).toBe(true);
    for (const name of [
      "hipFlexion extension",
      "kneeFlexion extension",
      "elbowFlexion extension",
      "toeExtension flexion",
      "inversion eversion",
    ])
      expect(missing.has(name), name).toBe(false);
    for (const row of rows) if (row.missing && row.seen === "judgement") expect(row.high / row.low).toBeGreaterThan(4);
  });
});

describe("norms against works they were not taken from", () => {
  it("keep the trunk on the cautious side of young adults measured elsewhere (Danneskiold-Samsøe 2009: extension 232 women, 336 men; flexion 96.5, 147)", () => {
    for (const [sex, height, mass, extension, flexion] of [
      ["female", 1.68, 65, 232, 96.5],
      ["male", 1.8, 78, 336, 147],
    ] as const) {
      const ours = [
        trunkNorm({ sex, height, mass }, 25, "extension"),
        trunkNorm({ sex, height, mass }, 25, "flexion"),
      ] as const;
      console.log(
        `trunk of a young ${sex}: extension ${ours[0].toFixed(0)} of ${extension} N.m, flexion ${ours[1].toFixed(0)} of ${flexion}`,
      );
      expect(ours[0]).toBeLessThan(extension);
      expect(ours[1]).toBeLessThan(flexion);
      expect(ours[0]).toBeGreaterThan(0.4 * extension);
    }
  });
  it("give the shoulder girdle what young adults push over straight arms, within 45 % (Garner and Shim: 1101, 810, 1117, 914 N on two handles)", () => {
    const lever = BODY.segments[BODY.segmentIndex["girdle.weak"]]?.length ?? 0;
    const young = (["male", "female"] as const).map((sex) =>
      normEvidence(
        buildBody({ sex, height: sex === "male" ? 1.77 : 1.65, mass: sex === "male" ? 75 : 62 }, 1),
        21,
        STILL,
      ),
    );
    for (const [words, newtons] of [
      ["elevation", 1101],
      ["depression", 810],
      ["protraction", 1117],
      ["retraction", 914],
    ] as const) {
      const ours = young.reduce(
        (sum, each) =>
          sum + (each.find((row) => row.angle.startsWith("girdle") && row.words === words)?.moment ?? 0) / 2,
        0,
      );
      const theirs = (newtons / 2) * lever * 1.1;
      console.log(`girdle ${words}: ${ours.toFixed(0)} N.m against ${theirs.toFixed(0)}`);
      expect(Math.abs(ours / theirs - 1)).toBeLessThan(0.45);
    }
  });
  it("give back toe flexion as printed, and less of the calf with the knee bent", () => {
    const mean = (of: readonly number[]): number => of.reduce((sum, each) => sum + each, 0) / of.length;
    const at = (sex: "male" | "female", age: number): number => toeFlexionNorm({ sex, height: 1.7, mass: 70 }, age);
    // Endo 2002: young 19.0, older 13.5, men 20.2, women 12.3.
    expect(mean([at("male", 22.8), at("female", 22.8)])).toBeCloseTo(19, 0);
    expect(mean([at("male", 73.2), at("female", 73.2)])).toBeCloseTo(13.5, 0);
    expect(mean([at("male", 22.8), at("male", 73.2)])).toBeCloseTo(20.2, 0);
    expect(mean([at("female", 22.8), at("female", 73.2)])).toBeCloseTo(12.3, 0);
    expect(kneeBentShare(Math.PI / 2)).toBeCloseTo(0.8, 9);
    expect(kneeBentShare(0)).toBe(1);
  });
});
