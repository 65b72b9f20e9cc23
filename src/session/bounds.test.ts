import { describe, expect, it } from "vitest";
import { boundsOf, helpOutOf, liftedBy, rungOutOf, sayBounds } from "./bounds.ts";
import type { SessionEvent } from "./events.ts";
import { foldSession } from "./fold-session.ts";

const LADDER = ["tilt", "half", "full", "light"];

describe("bounds for an assistant", () => {
  it("take a ladder's own before the whole plan's, and the stop signs of both", () => {
    const written = [
      { mostHelp: "touching" as const, stopIf: ["pain"] },
      { activity: "bridge", fromRung: "half", mostHelp: "minimal" as const, stopIf: ["the knee shakes"] },
    ];
    expect(boundsOf(written, "bridge")).toEqual({
      fromRung: "half",
      mostHelp: "minimal",
      stopIf: ["the knee shakes", "pain"],
    });
    expect(boundsOf(written, "sit-to-stand")).toEqual({ mostHelp: "touching", stopIf: ["pain"] });
    expect(boundsOf([{ activity: "bridge", fromRung: "half" }], "sit-to-stand")).toBeNull();
  });

  it("tell a rung below or above them from one inside", () => {
    const bounds = { fromRung: "half", toRung: "full" };
    expect(LADDER.map((rung) => rungOutOf(bounds, LADDER, rung))).toEqual(["below", null, null, "above"]);
    expect(rungOutOf(null, LADDER, "light")).toBeNull();
    expect(rungOutOf({ toRung: "half" }, LADDER, "tilt")).toBeNull();
  });

  it("tell more help than allowed from as much, in the order of the trade's words for help", () => {
    // Order of the words: the public six-level code, 6 (alone) to 1 (dependent).
    const bounds = { mostHelp: "touching" as const };
    expect((["alone", "touching", "minimal", "dependent"] as const).map((help) => helpOutOf(bounds, help))).toEqual([
      false,
      false,
      true,
      true,
    ]);
    expect(helpOutOf({}, "dependent")).toBe(false);
  });

  it("are lifted for one ladder once the therapist was called and let it go on, and not where the call is undone", () => {
    const head = { session: "s", at: "2026-03-16T10:00:00Z", knowledge: "k" };
    const start: SessionEvent = {
      ...head,
      id: "1",
      sequence: 1,
      kind: "sessionStarted",
      person: "p",
      plan: "q",
      items: [],
    };
    const call = (id: string, sequence: number, activity: string, allowed: boolean): SessionEvent => ({
      ...head,
      ...{ id, sequence, kind: "therapistCalled", activity, about: "one rung up", allowed },
    });
    const events = [start, call("2", 2, "bridge", false), call("3", 3, "sit-to-stand", true)];
    const lifted = (all: readonly SessionEvent[]) =>
      ["bridge", "sit-to-stand"].map((activity) => liftedBy(foldSession(all), activity));
    expect(lifted(events)).toEqual([false, true]);
    expect(lifted([...events, { ...head, id: "4", sequence: 4, kind: "undone", event: "3" }])).toEqual([false, false]);
  });

  it("are said in one line", () => {
    expect(
      sayBounds(
        { fromRung: "half", toRung: "full", mostHelp: "touching", stopIf: ["it hurts", "he is pale"] },
        (rung) => `${rung} lift`,
      ),
    ).toBe(
      "From half lift to full lift; at most touching; stop if it hurts, or if he is pale. Beyond that, call the therapist.",
    );
    expect(sayBounds({ toRung: "full" }, (rung) => rung)).toBe("Not above full. Beyond that, call the therapist.");
  });
});
