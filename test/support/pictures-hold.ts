import { beforeAll, describe, expect, it } from "vitest";
import { drawHand, PICTURED_PEOPLE, type RungToDraw, rungsFor } from "../../scripts/drawn-rungs.ts";
import { drawMarks } from "../../src/figures/marks/draw-marks.ts";
import { Ink } from "../../src/figures/picture/ink.ts";
import { patchOn } from "../../src/mechanics/body/patches.ts";
import { pointInRoom } from "../../src/mechanics/pose/kinematics.ts";
import { drawFigure, type Figure, type FigureInput } from "../../src/figures/index.ts";
import { helperThroughPerson, limbsThroughEachOther } from "../../src/figures/skin/passing.ts";
import { ACTIVITIES } from "../../src/practice/catalogue.ts";
import { offTheSheet } from "./off-the-sheet.ts";

/** A drawn contact may be this far off what it rests on, a palm this far off the skin [m]. */
const CONTACT = 0.005;
const PALM = 0.015;
/** A hand on its site is shown when this share of it is in sight. */
const SHOWN = 0.6;
/** In its own close-up at least this much of it; all but a palm between shoulder and bench show more. */
const SHOWN_CLOSE = 0.5;
/** In this share of rungs the first hand itself is in the picture; elsewhere the other hand is, and the close-up shows the first. */
const FIRST_HAND_AT_LEAST = 0.9;
/** And this share of all hands, ready ones too, shows in the main picture. */
const HANDS_AT_LEAST = 0.88;
/** A helper, a free forearm or a hand may be this deep in flesh and cloth at most [m], and in this share of rungs deeper than a sleeve gives. */
const DEEPEST = 0.065;
const SLEEVE_GIVES = 0.03;
const DEEPER_AT_MOST = 0.2;
const MIRRORED_EVERY = 17;
/** Every fourth rung is drawn here, others for each person; `npm run pictures` draws and measures all for both. */
const EVERY = 4;

interface Drawn {
  readonly each: RungToDraw;
  readonly input: FigureInput;
  readonly figure: Figure;
}

/** Every fourth rung of the catalogue drawn for one person of `npm run pictures`, and what must hold of it. */
export function picturesHold(which: 0 | 1): void {
  const person = PICTURED_PEOPLE[which];
  describe(`rungs drawn for a ${person.words}`, () => {
    const all = rungsFor(person);
    const rungs = all.filter((_, k) => k % EVERY === 2 * which);
    const drawn: Drawn[] = [];
    beforeAll(() => {
      for (const each of rungs)
        if (each.input !== null) drawn.push({ each, input: each.input, figure: drawFigure(each.input) });
    }, 600_000);

    it("has a picture for every rung", () => {
      expect(all).toHaveLength(ACTIVITIES.reduce((sum, activity) => sum + activity.rungs.length, 0));
      expect(all.filter((each) => each.input === null).map((each) => `${each.name}: ${each.because}`)).toEqual([]);
    });

    it("keeps every contact within 5 mm of what it rests on", () => {
      const off = drawn.flatMap(({ each, figure }) =>
        figure.checks.contactGaps
          .filter(({ gap }) => gap > CONTACT)
          .map(({ patch, gap }) => `${each.name} ${patch} ${(gap * 1000).toFixed(1)} mm`),
      );
      expect(drawn.flatMap(({ figure }) => figure.checks.contactGaps).length).toBeGreaterThan(300);
      expect(off).toEqual([]);
    });

    it("keeps every touching palm within 15 mm of the skin, neither off it nor in it", () => {
      const off = drawn.flatMap(({ each, figure }) =>
        figure.checks.palmGaps
          .filter((gap) => Math.abs(gap) > PALM)
          .map((gap) => `${each.name} ${(gap * 1000).toFixed(1)} mm`),
      );
      expect(off).toEqual([]);
    });

    it("shows each touching hand in the picture or in its own close-up, and at least one hand in the picture", () => {
      const hidden: string[] = [];
      let firsts = 0;
      for (const { each, input, figure } of drawn) {
        const seen = figure.checks.siteVisible;
        if ((seen[0] ?? 1) >= SHOWN) firsts++;
        if (seen.length > 0 && Math.max(...seen) < SHOWN) hidden.push(`${each.name}: no hand in the picture`);
        seen.forEach((share, hand) => {
          if (share >= SHOWN || each.rung.helper.hands[hand]?.does === "ready") return;
          const near = drawHand(input, hand).checks.siteVisible[hand] ?? 0;
          if (near < SHOWN_CLOSE)
            hidden.push(`${each.name} hand ${hand + 1}: ${share.toFixed(2)}, close up ${near.toFixed(2)}`);
        });
      }
      expect(hidden).toEqual([]);
      expect(firsts / drawn.length).toBeGreaterThan(FIRST_HAND_AT_LEAST);
    }, 600_000);

    it("shows nearly nine hands of ten in the main picture itself", () => {
      const hands = drawn.flatMap(({ figure }) => figure.checks.siteVisible);
      expect(hands.length).toBeGreaterThan(150);
      expect(hands.filter((share) => share >= SHOWN).length / hands.length).toBeGreaterThan(HANDS_AT_LEAST);
    });

    it("has no limb inside another by more than flesh and cloth give, and few by more than a sleeve", () => {
      const depths = drawn.map(({ each, figure }) => {
        const [body, helper] = figure.prepared.people;
        if (body === undefined) return { name: each.name, depth: 0 };
        const own = limbsThroughEachOther(body).filter(({ part }) => part === "forearm" || part === "hand");
        const other = helper === undefined ? [] : helperThroughPerson(helper, body);
        return { name: each.name, depth: Math.max(0, ...[...own, ...other].map(({ depth }) => depth)) };
      });
      expect(depths.filter(({ depth }) => depth > DEEPEST)).toEqual([]);
      expect(depths.filter(({ depth }) => depth > SLEEVE_GIVES).length / depths.length).toBeLessThan(DEEPER_AT_MOST);
    }, 120_000);

    it("keeps every mark on the sheet", () => {
      const off: string[] = [];
      for (const { each, figure } of drawn) {
        const { body, frames, helper } = figure.prepared;
        const discs = (each.prepared?.possible === true ? (each.input?.specification?.contacts ?? []) : []).flatMap(
          ({ on, patch }) => {
            const found = patchOn(body, patch);
            const [ball] = found.balls;
            if (typeof on !== "string" || ball === undefined) return [];
            const [x, y, z] = pointInRoom(body, frames, found.segment, ball.centre);
            return [{ at: [x, y, z - ball.radius] as const, share: 0.5 }];
          },
        );
        const help = (helper?.palms ?? []).map(({ site }) => ({
          at: site.at,
          direction: [-site.outward[0], -site.outward[1], -site.outward[2]] as const,
        }));
        const { frame, width, height } = figure.bodyLayer;
        const layer = drawMarks(body, frames, frame, { discs, help }, new Ink(width, false), "paper", 0);
        const past = Math.max(offTheSheet(layer, width, height), offTheSheet(figure.marksLayer, width, height));
        if (past > 1) off.push(`${each.name} ${past.toFixed(1)}`);
      }
      expect(off).toEqual([]);
    });

    it("is the exact mirror for somebody weak on the other side", () => {
      const twins = rungsFor({ ...person, weakAt: person.weakAt === 1 ? -1 : 1 });
      const sample = drawn.filter((_, k) => k % MIRRORED_EVERY === 0);
      expect(sample.length).toBeGreaterThan(6);
      for (const { each, figure } of sample) {
        const twin = twins.find((other) => other.name === each.name)?.input;
        if (twin === null || twin === undefined) throw new Error(`${each.name} does not close on the other side`);
        expect(drawFigure({ ...twin, mirrored: true }).svg, each.name).toBe(figure.svg);
      }
    }, 120_000);
  });
}
