import { describe, expect, it } from "vitest";
import { gravityMoment } from "../../src/mechanics/body/grades.ts";
import { LIMB_STRENGTH_KEYS } from "../../src/mechanics/body/strength-keys.ts";
import { peakNorm } from "../../src/mechanics/body/strength-norms.ts";
import { referenceBody, type Sex } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

describe("grade 3", () => {
  it("asks the measured share of the maximum", () => {
    const outside: string[] = [];
    let compared = 0;
    for (const { sex, joint, low, high, keys } of expected.rows) {
      const body = referenceBody(sex as Sex);
      for (const name of keys) {
        const key = LIMB_STRENGTH_KEYS.find((each) => each === name);
        const moment = key === undefined ? null : gravityMoment(body, key);
        if (key === undefined || moment === null) throw new Error(name);
        const percent = (100 * moment) / peakNorm(body.size, 25, key);
        console.log(
          `grade three: ${sex} ${joint}, ${name}: ${moment.toFixed(1)} N.m, ${percent.toFixed(1)} % against ${low}-${high} %`,
        );
        if (!(percent >= (low * 2) / 3 && percent <= high * 1.5))
          outside.push(`${sex} ${name} ${percent.toFixed(1)} %`);
        compared++;
      }
    }
    console.log(`grade three: ${compared} rows`);
    expect(outside).toEqual([]);
  });
});
