import { describe, expect, it } from "vitest";
import { buildBody } from "../../src/mechanics/body/build.ts";
import { gravityShare } from "../../src/mechanics/body/grades.ts";
import { holdTime } from "../../src/mechanics/endurance/hold-time.ts";
import { fatigueRates } from "../../src/mechanics/endurance/rates.ts";
import { SEXES, type Sex } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

/** Seconds the upper body is held level by a person of usual size; `stronger` times the norm. */
function seconds(sex: Sex, age: number, stronger = 1): number {
  const size = sex === "male" ? { height: 1.77, mass: 78 } : { height: 1.65, mass: 64 };
  const share = gravityShare(buildBody({ sex, ...size }, 1), age, "trunk.extension");
  return holdTime(fatigueRates("trunk.extension", sex), share / stronger).seconds ?? Number.MAX_VALUE;
}
const mean = (age: number, stronger = 1): number =>
  SEXES.reduce((sum, sex) => sum + seconds(sex, age, stronger), 0) / SEXES.length;

describe("the trunk held level, face down", () => {
  it("lasts as long as measured, within the printed spread, and less with age", () => {
    console.log(
      `back hold: ${mean(expected.age).toFixed(0)} s against ${expected.seconds} (${expected.spread}); at 25 ${mean(25).toFixed(0)}, at 65 ${mean(65).toFixed(0)}; with twice the strength ${mean(expected.age, 2).toFixed(0)}`,
    );
    expect(Math.abs(mean(expected.age) - expected.seconds)).toBeLessThan(expected.spread);
    expect(mean(65)).toBeLessThan(mean(expected.age));
    expect(mean(expected.age)).toBeLessThan(mean(25));
    expect(Math.abs(mean(expected.age, 2) - expected.seconds)).toBeGreaterThan(5 * expected.spread);
  });
});
