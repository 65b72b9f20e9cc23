import { describe, expect, it } from "vitest";
import { buildBody } from "../../mechanics/body/build.ts";
import { closePose } from "../../mechanics/pose/close.ts";
import { limitsOf } from "../../mechanics/pose/targets.ts";
import { POSITIONS } from "../../practice/catalogue.ts";
import type { PositionId } from "../../practice/codes.ts";
import { WAYS_OUT } from "./ways-out.data.ts";
import { waysOutOf } from "./ways-out.ts";

const SIZE = { sex: "female", height: 1.63, mass: 66 } as const;

/** How far each arrow goes forward and to the person's left [m], for a body weak on its left (1) or right (-1). */
function goesOn(id: PositionId, weakAt: 1 | -1) {
  const body = buildBody(SIZE, weakAt);
  const position = POSITIONS.find((each) => each.id === id);
  if (position === undefined) throw new Error(id);
  const closed = closePose(body, position.pose, limitsOf(body, {}));
  if (!closed.closed) throw new Error(closed.because);
  const { planned, hurry, same } = waysOutOf(body, closed.configuration, closed.centre, id);
  const go = (arrow: typeof planned) =>
    arrow === null ? null : { ahead: arrow.to[0] - arrow.from[0], left: arrow.to[1] - arrow.from[1] };
  return { planned: go(planned), hurry: go(hurry), same };
}

describe("the way out on the mat from above", () => {
  it("has a line for every position", () => {
    for (const { id } of POSITIONS) expect(WAYS_OUT[id], id).toBeDefined();
  });

  it("leads from sitting over the strong side, whichever that is", () => {
    // Common practice, no source: down over the strong side, where the person can help.
    for (const weakAt of [1, -1] as const) {
      const { planned, hurry, same } = goesOn("short-sitting", weakAt);
      expect(Math.sign(planned?.left ?? 0)).toBe(-weakAt);
      expect(Math.abs(planned?.left ?? 0)).toBeGreaterThan(0.5);
      expect([hurry, same]).toEqual([null, true]);
    }
  });

  it("tells the planned way from the one in a hurry where they differ", () => {
    const { planned, hurry } = goesOn("hands-and-knees", -1);
    // Planned: seat back toward the heels and the strong hip; in a hurry: straight to the strong side.
    expect(planned?.ahead).toBeLessThan(-0.3);
    expect(planned?.left).toBeGreaterThan(0.3);
    expect(Math.abs(hurry?.ahead ?? 1)).toBeLessThan(0.1);
    expect(hurry?.left).toBeGreaterThan(0.5);
  });

  it("goes to the seat behind from standing", () => {
    expect(goesOn("standing-in-bars", 1).planned?.ahead).toBeLessThan(-0.5);
  });

  it("draws no arrow where one goes straight down", () => {
    expect(goesOn("prone-on-elbows", 1)).toEqual({ planned: null, hurry: null, same: true });
  });
});
