import { describe, expect, it } from "vitest";
import { LESS_AFFECTED } from "../../mechanics/body/strength-evidence.data.ts";
import { strengthOf, priorBelief } from "./prior.ts";
import { slotIndex } from "./slots.ts";

describe("the less affected side before any finding", () => {
  it("is taken as weakened as published: its middle inside the printed range of the leg and of knee extension (dorsch2016, watanabe2015)", () => {
    const { mean } = priorBelief("oneSide");
    for (const [key, row] of [
      ["hipExtension", LESS_AFFECTED.leg],
      ["kneeExtension", LESS_AFFECTED.kneeExtension],
    ] as const) {
      const middle = strengthOf(mean[slotIndex("strong", key)] ?? 0);
      console.log(`${key}, less affected side: ${middle.toFixed(2)}, published ${row.low} to ${row.high}`);
      expect(middle).toBeGreaterThan(row.low);
      expect(middle).toBeLessThan(row.high);
    }
  });
});
