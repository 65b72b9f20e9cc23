import { expect, it } from "vitest";
import { wishesFor } from "./wishes.ts";

const OF = { activity: "bridge", rung: "full-lift" } as const;
const OTHER = { activity: "bridge", rung: "half-lift" } as const;

it("puts in what is open as a wish, and what the plan keeps out as an override with its reason", () => {
  expect(wishesFor("putIn", {}, OF)).toEqual({ mustHave: [OF], leaveOut: [], overrides: [] });
  expect(wishesFor("putIn", { mustHave: [OF] }, OF, "Did it this morning")).toEqual({
    mustHave: [],
    leaveOut: [],
    overrides: [{ ...OF, why: "Did it this morning" }],
  });
});

it("takes an override back when the rung is kept out, and leaves the others", () => {
  const wishes = {
    overrides: [
      { ...OF, why: "a" },
      { ...OTHER, why: "b" },
    ],
  };
  expect(wishesFor("keepOut", wishes, OF)).toEqual({
    mustHave: [],
    leaveOut: [OF],
    overrides: [{ ...OTHER, why: "b" }],
  });
});
