import { describe, expect, it } from "vitest";
import { BIBLIOGRAPHY } from "../../sources/bibliography.ts";
import { CLOSING_CHECKS, COMFORT_CHECKS, HANDLING_RULES, OPENING_CHECKS } from "./always.data.ts";
import { ASSISTANCE } from "./assistance.data.ts";
import { codeOfHelp, nameHelp } from "./assistance.ts";
import { EMERGENCY_CARDS } from "./emergency.data.ts";
import { countHelpers, limitHelper } from "./helper-limit.ts";
import { HELPER_LIMITS } from "./limits.data.ts";
import { STOP_SIGNS } from "./stop-signs.data.ts";

const POUND_NEWTONS = 0.45359237 * 9.80665;

describe("what one helper may lift", () => {
  it("is 35 lb, which is 156 N (Waters 2007, Am J Nurs 107(8):53-58; the newtons by arithmetic)", () => {
    expect(HELPER_LIMITS.lift.value).toBe(Math.round(HELPER_LIMITS.liftPounds.value * POUND_NEWTONS));
    expect(limitHelper({ pose: "strideStanding" })).toMatchObject({ newtons: 156, source: "waters-2007" });
  });

  it("is half of it low, twisted or one-handed, said to be a judgement, and halved once", () => {
    expect(limitHelper({ pose: "halfKneeling" })).toMatchObject({ newtons: 78, source: "judgement" });
    expect(limitHelper({ pose: "standing", twisted: true }).newtons).toBe(78);
    expect(limitHelper({ pose: "kneeling", twisted: true, oneHand: true }).newtons).toBe(78);
  });

  it("is a guiding touch with a troubled back", () => {
    expect(limitHelper({ pose: "standing", backTrouble: true }).newtons).toBe(20);
  });

  it("needs three helpers for half of a 180 lb person (worked example, reliasmedia.com 9596)", () => {
    expect(countHelpers(90 * POUND_NEWTONS, limitHelper({ pose: "standing" }))).toBe(3);
    expect(countHelpers(0, limitHelper({ pose: "standing" }))).toBe(1);
  });

  it("holds the printed figures for pushing and the back (HSE L23; Arjmand 2015; NIOSH 1981)", () => {
    expect([HELPER_LIMITS.pushStartWomen.value, HELPER_LIMITS.pushStartMen.value]).toEqual([150, 200]);
    expect([HELPER_LIMITS.pushKeepWomen.value, HELPER_LIMITS.pushKeepMen.value]).toEqual([70, 100]);
    expect([HELPER_LIMITS.backCompression.value, HELPER_LIMITS.backCompressionMost.value]).toEqual([3400, 6400]);
  });
});

describe("words of help", () => {
  // Public six-level scale of section GG: less than half 3, more than half 2, all or two helpers 1, touching or supervision 4.
  it.each([
    [0, false, 1, "standBy", 4],
    [0, true, 1, "touching", 4],
    [0.05, true, 1, "touching", 4],
    [0.06, true, 1, "minimal", 3],
    [0.25, true, 1, "minimal", 3],
    [0.26, true, 1, "moderate", 3],
    [0.5, true, 1, "moderate", 3],
    [0.51, true, 1, "maximal", 2],
    [0.75, true, 1, "maximal", 2],
    [0.76, true, 1, "dependent", 1],
    [0.1, true, 2, "dependent", 1],
  ] as const)("share %s, touching %s, %s helpers: %s, code %s", (share, touches, helpers, word, code) => {
    expect(nameHelp({ share, touches, helpers })).toBe(word);
    expect(codeOfHelp(word)).toBe(code);
  });

  it("keeps set up and alone for the log", () => {
    expect([codeOfHelp("setUp"), codeOfHelp("alone")]).toEqual([5, 6]);
  });
});

describe("cards, signs and checks", () => {
  const texts = JSON.stringify([
    EMERGENCY_CARDS,
    STOP_SIGNS,
    HANDLING_RULES,
    COMFORT_CHECKS,
    OPENING_CHECKS,
    CLOSING_CHECKS,
    ASSISTANCE,
    HELPER_LIMITS,
  ]);

  it("has the five cards, each with steps and when to call", () => {
    expect(Object.keys(EMERGENCY_CARDS)).toEqual(["slides", "collapses", "seizure", "newSign", "chestPain"]);
    for (const card of Object.values(EMERGENCY_CARDS)) {
      expect(card.steps.length).toBeGreaterThanOrEqual(4);
      expect(card.callWhen.length).toBeGreaterThan(5);
    }
  });

  it("calls for a seizure longer than 5 minutes and puts nothing in the mouth (chp.edu seizures)", () => {
    expect(EMERGENCY_CARDS.seizure.callWhen).toContain("5 minutes");
    expect(EMERGENCY_CARDS.seizure.steps.join(" ")).toContain("Nothing in the mouth");
  });

  it("leads the signs of an emergency to a card", () => {
    const reached = new Set(STOP_SIGNS.flatMap(({ card }) => card ?? []));
    expect([...reached].sort()).toEqual(["chestPain", "collapses", "newSign"]);
  });

  it("never pulls the weak arm nor lifts under the armpit", () => {
    expect(HANDLING_RULES.map(({ id }) => id)).toEqual(expect.arrayContaining(["noPull", "noArmpit"]));
  });

  it("looks after a change of position at arm, pressure, breath and dizziness", () => {
    expect(COMFORT_CHECKS.map(({ id }) => id)).toEqual(expect.arrayContaining(["arm", "pressure", "breath", "dizzy"]));
  });

  it("opens with name and leave to touch, and closes with the bell in reach", () => {
    expect(OPENING_CHECKS.slice(0, 2).map(({ id }) => id)).toEqual(["who", "leave"]);
    expect(CLOSING_CHECKS.map(({ id }) => id)).toContain("bell");
  });

  it("speaks of weak and strong only, with a work behind each row", () => {
    expect(texts).not.toMatch(/\b(left|right|optimal|capacity|margin|solver)\b/i);
    const rows = [
      STOP_SIGNS,
      HANDLING_RULES,
      COMFORT_CHECKS,
      OPENING_CHECKS,
      CLOSING_CHECKS,
      Object.values(EMERGENCY_CARDS),
      Object.values(ASSISTANCE),
      Object.values(HELPER_LIMITS),
    ].flat();
    for (const { source } of rows) expect(Object.keys(BIBLIOGRAPHY)).toContain(source);
  });
});
