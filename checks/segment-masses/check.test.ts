import { describe, expect, it } from "vitest";
import { type Compared, printRows, referenceBody, SEXES } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

describe("segment masses against the printed table", () => {
  it("agree to the last printed digit", () => {
    const rows: Compared[] = [];
    for (const sex of SEXES) {
      const body = referenceBody(sex);
      const total = body.size.mass;
      const share = (names: readonly string[], paired: boolean): number =>
        body.segments
          .filter((each) => names.includes(each.id.split(".")[0] ?? ""))
          .reduce((sum, each) => sum + each.mass, 0) /
        total /
        (paired ? 2 : 1);
      for (const [name, theirs] of expected[sex] as [string, number][]) {
        const ours =
          name === "upperTrunk"
            ? share(["thorax", "girdle"], false)
            : name === "foot"
              ? share(["foot", "toes"], true)
              : share([name], !["head", "abdomen", "pelvis"].includes(name));
        rows.push({ what: `${sex} ${name}`, ours, theirs, allowed: 0.0001 });
      }
    }
    expect(printRows("segment masses", rows)).toEqual([]);
  });
});
