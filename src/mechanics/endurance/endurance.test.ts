import { describe, expect, it } from "vitest";
import { endlessShare, holdTime } from "./hold-time.ts";
import { fatigueRates, type FatigueRates } from "./rates.ts";
import { repetitionsAt, shareForRepetitions } from "./repetitions.ts";
import { leastRest, mostRepetitions, tireOver } from "./tiring.ts";

const SHARES = [0.2, 0.3, 0.5, 0.7, 0.9];
/** The full three-compartment model (active, tired, resting muscle; drive and release 10 a second), stepped through. */
function integrate({ fatigue, recovery }: FatigueRates, share: number): number {
  let active = 0;
  let tired = 0;
  let resting = 1;
  const dt = 0.02;
  for (let t = 0; t < 4000; t += dt) {
    const wanted = share - active;
    const drive = wanted > 0 ? 10 * Math.min(wanted, resting) : 10 * wanted;
    active += dt * (drive - fatigue * active);
    tired += dt * (fatigue * active - recovery * tired);
    resting += dt * (-drive + recovery * tired);
    if (t > 2 && active < share * 0.995 && resting < 1e-3) return t;
  }
  return Number.POSITIVE_INFINITY;
}

describe("how long a share can be held", () => {
  it("is the table worked from the published rates (rakshit2021; seconds at 20, 30, 50, 70, 90 %)", () => {
    const table = [
      ["ankleDorsiflexion", "female", [703, 361, 142, 59, 15]],
      ["ankleDorsiflexion", "male", [786, 385, 148, 61, 15]],
      ["anklePlantarflexion", "female", [834, 402, 153, 63, 16]],
      ["elbowExtension", "female", [281, 144, 57, 23, 6]],
      ["elbowExtension", "male", [367, 200, 82, 34, 9]],
      ["elbowFlexion", "female", [861, 328, 116, 46, 12]],
      ["elbowFlexion", "male", [458, 219, 83, 34, 9]],
      ["grip", "female", [637, 265, 96, 39, 10]],
      ["wristFlexion", "male", [481, 230, 87, 36, 9]],
      ["kneeExtension", "female", [403, 198, 76, 31, 8]],
      ["kneeExtension", "male", [369, 189, 75, 31, 8]],
      ["hipExtension", "male", [517, 271, 108, 45, 12]],
    ] as const;
    for (const [group, sex, seconds] of table)
      SHARES.forEach((share, k) => {
        const ours = holdTime(fatigueRates(group, sex), share).seconds ?? Number.NaN;
        expect(Math.abs(ours - (seconds[k] ?? 0)), `${group} ${sex} ${share}`).toBeLessThan(0.51);
      });
  });

  it("is what stepping the whole three-compartment model gives, within 3 s and 2 %", () => {
    const elbow = fatigueRates("elbowFlexion", "male");
    // 461, 220, 84, 35 s were found elsewhere by integration.
    for (const [share, elsewhere] of [
      [0.2, 461],
      [0.3, 220],
      [0.5, 84],
      [0.7, 35],
    ] as const) {
      const formula = holdTime(elbow, share).seconds ?? Number.NaN;
      const stepped = integrate(elbow, share);
      console.log(`hold at ${share * 100} %: ${formula.toFixed(0)} s, stepped ${stepped.toFixed(0)} s`);
      expect(Math.abs(formula - stepped)).toBeLessThan(3 + 0.02 * stepped);
      expect(Math.abs(formula - elsewhere)).toBeLessThan(3.5);
    }
  });

  it("orders the joints as 194 published papers do: shoulder tires first, then knee, elbow, hand, trunk, ankle last (Frey Law and Avin 2010)", () => {
    const at = (group: Parameters<typeof fatigueRates>[0], share: number): number =>
      ["female", "male"].reduce(
        (sum, sex) =>
          sum + (holdTime(fatigueRates(group, sex === "female" ? "female" : "male"), share).seconds ?? 1e4) / 2,
        0,
      );
    for (const share of [0.3, 0.5]) {
      const order = ["shoulderFlexion", "kneeExtension", "elbowFlexion", "ankleDorsiflexion"] as const;
      for (let k = 1; k < order.length; k++)
        expect(at(order[k] ?? "neck", share), `${order[k]} ${share}`).toBeGreaterThan(
          at(order[k - 1] ?? "neck", share),
        );
      expect(at("trunk.extension", share)).toBeGreaterThan(at("elbowFlexion", share));
    }
    // Its power curves at 30 and 50 %: shoulder 135 and 53 s, trunk 349 and 109 s (coefficients from memory).
    for (const [group, share, seconds] of [
      ["shoulderFlexion", 0.3, 135],
      ["shoulderFlexion", 0.5, 53],
      ["trunk.extension", 0.3, 349],
      ["trunk.extension", 0.5, 109],
    ] as const)
      expect(Math.abs(at(group, share) / seconds - 1), `${group} ${share}`).toBeLessThan(0.3);
  });

  it("holds older people's measured 20 % elbow hold in its range (Hunter 2004: men 24.1 (8.0), women 21.3 (10.7) min; holding a weight 10.6 (6.1))", () => {
    for (const [sex, pushing] of [
      ["male", 24.1],
      ["female", 21.3],
    ] as const) {
      const { low, high } = holdTime(fatigueRates("elbowFlexion", sex), 0.2, { age: 72 });
      console.log(
        `elbow at 20 %, ${sex}: ${((low ?? 0) / 60).toFixed(1)} to ${((high ?? 0) / 60).toFixed(1)} min, measured ${pushing}, weight 10.6`,
      );
      // Cautious: the measured pushing time is never below the low end, and the weight's stands within one spread of the range.
      expect((low ?? 0) / 60).toBeLessThan(pushing);
      expect((low ?? 0) / 60).toBeLessThan(10.6);
      expect((high ?? 0) / 60).toBeGreaterThan(10.6 - 6.1);
    }
  });

  it("has no end below the share that recovery keeps up with, and none of it is left at the maximum", () => {
    const knee = fatigueRates("kneeExtension", "male");
    // 0.097 beside the rates.
    expect(endlessShare(knee)).toBeCloseTo(0.097, 3);
    expect(holdTime(knee, 0.09).seconds).toBeNull();
    expect(holdTime(knee, 1).seconds).toBe(0);
    expect(holdTime(knee, 1.4).seconds).toBe(0);
    expect(holdTime(knee, 0).seconds).toBeNull();
    expect(holdTime(knee, 0.5, { tired: 0.6 }).seconds).toBe(0);
    expect(holdTime(knee, 0.5, { tired: 0.2 }).seconds ?? 0).toBeLessThan(holdTime(knee, 0.5).seconds ?? 0);
  });
});

describe("tiring over a session", () => {
  const knee = fatigueRates("kneeExtension", "female");
  const item = { share: 0.4, repetitions: 10, hold: 10, rest: 5, restAfter: 120 };
  it("ends one long hold when the hold time says", () => {
    const seconds = holdTime(knee, 0.5).seconds ?? 0;
    const once = (hold: number) => tireOver(knee, [{ ...item, share: 0.5, repetitions: 1, hold }]).givesWay;
    expect(once(seconds * 0.99)).toBeNull();
    expect(once(seconds * 1.01)).not.toBeNull();
  });
  it("asks more of every repetition of a set, and of the same set later in the session", () => {
    const { repetitions, hardest } = tireOver(knee, [item, item, item]);
    expect(repetitions.length).toBe(30);
    for (let k = 1; k < 10; k++) expect(repetitions[k]?.effort ?? 0).toBeGreaterThan(repetitions[k - 1]?.effort ?? 0);
    expect(repetitions[29]?.effort ?? 0).toBeGreaterThan(repetitions[9]?.effort ?? 0);
    expect(hardest).toEqual(repetitions[29]);
  });
  it("finds the least rest and the most repetitions that keep the last one under the allowed effort", () => {
    const rest = leastRest(knee, { share: 0.4, repetitions: 10, hold: 10 }, 0.5);
    if (rest === null) throw new Error("no rest does it");
    const worst = (seconds: number): number => tireOver(knee, [{ ...item, rest: seconds }]).hardest?.effort ?? 0;
    expect(worst(rest)).toBeLessThanOrEqual(0.5 + 1e-9);
    expect(worst(rest - 1)).toBeGreaterThan(0.5);
    const most = mostRepetitions(knee, { share: 0.4, hold: 10, rest: 5 }, 0.5);
    const effortOf = (n: number): number => tireOver(knee, [{ ...item, repetitions: n }]).hardest?.effort ?? 0;
    expect(effortOf(most)).toBeLessThanOrEqual(0.5);
    expect(effortOf(most + 1)).toBeGreaterThan(0.5);
    expect(leastRest(knee, { share: 0.9, repetitions: 10, hold: 30 }, 0.95)).toBeNull();
  });
});

describe("repetitions to the end", () => {
  it("are the published line (1, 2, 3 repetitions: 97, 94, 91 %) and its table", () => {
    const printed = { 1: 97, 2: 94, 3: 91, 5: 86, 8: 79, 10: 75, 12: 71, 15: 67, 20: 60, 25: 55, 30: 50 };
    for (const [count, percent] of Object.entries(printed)) {
      const [low, high] = shareForRepetitions(Number(count));
      expect(low).toBeLessThanOrEqual(percent / 100 + 0.006);
      expect(high).toBeGreaterThanOrEqual(percent / 100 - 0.006);
    }
    // Ten at three quarters, within what the lines leave open.
    expect(repetitionsAt(0.75)).toBeGreaterThanOrEqual(8);
    expect(repetitionsAt(0.75)).toBeLessThanOrEqual(10);
    expect(repetitionsAt(1.2)).toBe(0);
  });
});
