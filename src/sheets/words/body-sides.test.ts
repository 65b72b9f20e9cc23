import { describe, expect, it } from "vitest";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import { fillSides, sayOfPerson } from "./body-sides.ts";

const swap = (text: string): string =>
  text.replace(/\b(left|right)\b/g, (side) => (side === "left" ? "right" : "left"));

describe("a text said of a person", () => {
  it("names the side of this person's body", () => {
    expect(fillSides("Lift your {weak} foot with your {strong} hand.", { weak: "right" })).toBe(
      "Lift your right foot with your left hand.",
    );
    expect(sayOfPerson("Kneel beside the weak hip; the strong knee stays.", { weak: "left" })).toBe(
      "Kneel beside the left hip; the right knee stays.",
    );
    expect(sayOfPerson("Weak side first.", { weak: "left" })).toBe("Left side first.");
  });

  it("tells two limbs apart where neither side is weaker", () => {
    expect(fillSides("Lift your {weak} foot, then your {strong} foot.", { weak: null })).toBe(
      "Lift your one foot, then your other foot.",
    );
    expect(sayOfPerson("the weak hip", { weak: null })).toBe("the weak hip");
  });

  it("leaves no weak or strong in any text of the catalogue, and mirrors every one", () => {
    const texts = ACTIVITIES.flatMap((activity) =>
      activity.rungs.flatMap((rung) => [
        activity.name,
        rung.name,
        rung.words,
        rung.good,
        rung.helper.place,
        ...rung.faults.map(({ fault }) => fault),
        rung.home?.sentences ?? "",
        rung.home?.stopIf ?? "",
        rung.plainName,
      ]),
    );
    expect(texts.length).toBeGreaterThan(100);
    for (const text of texts) {
      const said = sayOfPerson(text, { weak: "left" });
      expect(said).not.toMatch(/\b(weak|strong)(er)?\b|[{}]/i);
      expect(swap(said.toLowerCase())).toBe(sayOfPerson(text, { weak: "right" }).toLowerCase());
    }
  });
});
