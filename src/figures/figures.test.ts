import { beforeAll, describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import type { Body, BodySize } from "../mechanics/body/body.ts";
import { closePose, type ClosedPose } from "../mechanics/pose/close.ts";
import { pointInRoom } from "../mechanics/pose/kinematics.ts";
import type { SegmentId } from "../mechanics/body/names.ts";
import { drawFigure, type Figure, type FigureInput, redrawMarks } from "./draw-figure.ts";
import { drawFromAbove } from "./from-above.ts";
import { project } from "./picture/camera.ts";
import { SAMPLE_HELPERS, SAMPLE_POSES } from "../../test/helpers/sample-poses.ts";
import { textAlternative } from "./text-alternative.ts";

/** Builds from slight to heavy and tall; the widest and narrowest a mat sees (judgement). */
const SIZES: readonly BodySize[] = [
  { sex: "female", height: 1.55, mass: 48 },
  { sex: "female", height: 1.62, mass: 92 },
  { sex: "male", height: 1.8, mass: 105 },
  { sex: "male", height: 1.72, mass: 60 },
];
const SLIGHT = buildBody({ sex: "female", height: 1.55, mass: 48 }, 1);
const HEAVY = buildBody({ sex: "male", height: 1.8, mass: 105 }, 1);
const TWIN = buildBody({ sex: "female", height: 1.55, mass: 48 }, -1);
type PoseName = keyof typeof SAMPLE_POSES;
const POSE_NAMES: readonly PoseName[] = [
  "bridge",
  "strongFootUp",
  "handsAndKnees",
  "proneOnElbows",
  "longSitting",
  "atBench",
  "halfKneeling",
  "inBars",
];
const HELPED = ["strongFootUp", "handsAndKnees", "longSitting", "inBars"] as const;

function closed(body: Body, name: PoseName): ClosedPose {
  const result = closePose(body, SAMPLE_POSES[name]);
  if (!result.closed) throw new Error(`${name}: ${result.because}`);
  return result;
}
function inputFor(body: Body, name: PoseName, more: Partial<FigureInput> = {}): FigureInput {
  return {
    body,
    configuration: closed(body, name).configuration,
    specification: SAMPLE_POSES[name],
    size: { width: 300, height: 240 },
    theme: "paper",
    ...more,
  };
}

describe("the drawn body", () => {
  it("rests on what it rests on: every contact within 5 mm of its surface, on four builds", () => {
    for (const size of SIZES) {
      const body = buildBody(size, 1);
      for (const name of POSE_NAMES) {
        const { contactGaps } = drawFigure(inputFor(body, name)).checks;
        expect(contactGaps.length).toBeGreaterThan(1);
        for (const { patch, gap } of contactGaps)
          expect(gap, `${name} ${patch} ${size.sex} ${size.mass} kg`).toBeLessThan(0.005);
      }
    }
  });

  it("never goes below the mat", () => {
    for (const name of POSE_NAMES) {
      const points = drawFigure(inputFor(HEAVY, name)).prepared.people[0]?.points ?? new Float64Array(0);
      let lowest = Number.MAX_VALUE;
      for (let i = 2; i < points.length; i += 3) lowest = Math.min(lowest, points[i] ?? 0);
      expect(lowest).toBeGreaterThanOrEqual(0);
      expect(lowest).toBeLessThan(0.005);
    }
  });

  it("hatches the weak limbs and nothing else", () => {
    const { kinds } = drawFigure(inputFor(SLIGHT, "handsAndKnees")).bodyLayer;
    const hatched = kinds.filter((kind) => kind?.hatched === true);
    expect(new Set(hatched.map((kind) => kind?.side))).toEqual(new Set(["weak"]));
    for (const part of ["forearm", "hand", "shank", "foot", "thigh", "upperArm"])
      expect(
        hatched.some((kind) => kind?.part === part),
        part,
      ).toBe(true);
    expect(kinds.some((kind) => kind?.part === "trunk" && kind.hatched)).toBe(false);
  });

  it("puts the nearer of two crossing limbs in front", () => {
    const at = (figure: Figure, segment: SegmentId, share: number): string => {
      const { body, frames } = figure.prepared;
      const length = body.segments[body.segmentIndex[segment]]?.length ?? 0;
      const [x, y] = project(
        figure.bodyLayer.frame.camera,
        pointInRoom(body, frames, segment, [0, 0, -share * length]),
      );
      const { buffer, kinds } = figure.bodyLayer;
      const kind =
        kinds[buffer.kinds[Math.floor(y * buffer.density) * buffer.columns + Math.floor(x * buffer.density)] ?? 0];
      return `${kind?.part}.${kind?.side}`;
    };
    const side = { view: { azimuthDeg: 90, elevationDeg: 8 } };
    const other = { view: { azimuthDeg: -90, elevationDeg: 8 } };
    const fours = drawFigure(inputFor(SLIGHT, "handsAndKnees", side));
    expect(at(fours, "thigh.weak", 0.6)).toBe("thigh.weak");
    expect(at(fours, "thigh.strong", 0.6)).toBe("thigh.weak");
    expect(at(fours, "forearm.strong", 0.5)).toBe("forearm.weak");
    const turned = drawFigure(inputFor(SLIGHT, "handsAndKnees", other));
    expect(at(turned, "thigh.weak", 0.6)).toBe("thigh.strong");
    expect(at(drawFigure(inputFor(SLIGHT, "longSitting", side)), "hand.weak", 0.3)).toBe("hand.weak");
  });

  it("gives the same bytes for the same input, also from a body built anew", () => {
    const again = buildBody({ sex: "female", height: 1.55, mass: 48 }, 1);
    expect(drawFigure(inputFor(again, "bridge")).svg).toBe(drawFigure(inputFor(SLIGHT, "bridge")).svg);
  });

  it("holds no words and no numbers that are not finite", () => {
    const { svg } = drawFigure(inputFor(HEAVY, "longSitting", { helper: SAMPLE_HELPERS.longSitting }));
    expect(svg).not.toMatch(/<text|NaN|Infinity|undefined/);
    expect(svg.length).toBeLessThan(40_000);
  });

  it("colours a screen by variables and paper without them", () => {
    expect(drawFigure(inputFor(SLIGHT, "bridge", { theme: "screen" })).svg).toContain("var(--figure-skin,#ffffff)");
    expect(drawFigure(inputFor(SLIGHT, "bridge")).svg).not.toContain("var(");
  });
});

/** Every point of every path, circle and ellipse of a picture, in tenths of a unit. */
function pointsOf(svg: string): { x: number; y: number }[] {
  const points: { x: number; y: number }[] = [];
  for (const match of svg.matchAll(/<(?:circle|ellipse)[^>]*? cx="([-\d.]+)" cy="([-\d.]+)"/g))
    points.push({ x: Math.round(Number(match[1]) * 10), y: Math.round(Number(match[2]) * 10) });
  for (const match of svg.matchAll(/ d="([^"]+)"/g)) {
    let x = 0;
    let y = 0;
    let relative = false;
    for (const piece of (match[1] ?? "").match(/[MLcQz][^MLcQz]*/g) ?? []) {
      relative = piece.startsWith("c");
      const numbers = (piece.slice(1).match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map((each) =>
        Math.round(Number(each) * 10),
      );
      let px = x;
      let py = y;
      for (let i = 0; i + 1 < numbers.length; i += 2) {
        px = (relative ? x : 0) + (numbers[i] ?? 0);
        py = (relative ? y : 0) + (numbers[i + 1] ?? 0);
        points.push({ x: px, y: py });
        // Every third point of a relative curve is the next start; each move and line is its own.
        if (relative && i % 6 === 4) {
          x = px;
          y = py;
        }
      }
      if (!relative) {
        x = px;
        y = py;
      }
    }
  }
  return points;
}

describe("the other side", () => {
  it("is the exact mirror, point for point, with helper and marks", () => {
    const discs = (body: Body): FigureInput["marks"] => ({
      discs: closed(body, "handsAndKnees").contacts.map((contact) => ({
        at: contact.points[0]?.at ?? [0, 0, 0],
        share: 0.2,
      })),
      effort: { segment: "forearm.weak", level: "thick" },
    });
    const one = drawFigure(
      inputFor(SLIGHT, "handsAndKnees", { helper: SAMPLE_HELPERS.handsAndKnees, marks: discs(SLIGHT) ?? {} }),
    );
    const two = drawFigure(
      inputFor(TWIN, "handsAndKnees", { helper: SAMPLE_HELPERS.handsAndKnees, marks: discs(TWIN) ?? {} }),
    );
    const a = pointsOf(one.svg);
    const b = pointsOf(two.svg);
    expect(a.length).toBeGreaterThan(800);
    expect(b.length).toBe(a.length);
    const width = one.bodyLayer.width * 10;
    expect(b).toEqual(a.map(({ x, y }) => ({ x: width - x, y })));
  });

  it("turned over twice is the picture itself", () => {
    expect(drawFigure(inputFor(TWIN, "longSitting", { mirrored: true })).svg).toBe(
      drawFigure(inputFor(SLIGHT, "longSitting")).svg,
    );
  });
});

describe("the helper", () => {
  const drawn: { name: string; figure: Figure; body: Body }[] = [];
  beforeAll(() => {
    for (const body of [SLIGHT, HEAVY])
      for (const name of HELPED)
        drawn.push({ name, body, figure: drawFigure(inputFor(body, name, { helper: SAMPLE_HELPERS[name] })) });
  }, 60_000);

  it("has the palms on the skin: within 15 mm, and not sunk in by more than 5", () => {
    for (const { name, figure } of drawn) {
      expect(figure.checks.palmGaps).toHaveLength(2);
      for (const gap of figure.checks.palmGaps) {
        expect(gap, name).toBeLessThan(0.015);
        expect(gap, name).toBeGreaterThan(-0.005);
      }
      for (const miss of figure.checks.siteMisses) expect(miss, name).toBeLessThan(0.015);
    }
  });

  it("does not pass through the person by more than clothes give", () => {
    for (const { name, figure } of drawn) expect(figure.checks.overlap, name).toBeLessThan(0.03);
  });

  it("stands on the ground", () => {
    for (const { figure } of drawn) {
      const points = figure.prepared.people[1]?.points ?? new Float64Array(0);
      let lowest = Number.MAX_VALUE;
      for (let i = 2; i < points.length; i += 3) lowest = Math.min(lowest, points[i] ?? 0);
      expect(Math.abs(lowest)).toBeLessThan(0.005);
    }
  });

  it("shows each hand at least 60 % close up, and the first one in the picture", () => {
    for (const { name, figure, body } of drawn) {
      expect(Math.max(...figure.checks.siteVisible), name).toBeGreaterThan(0.6);
      for (const hand of [0, 1]) {
        const close = drawFigure(
          inputFor(body, name as (typeof HELPED)[number], {
            helper: SAMPLE_HELPERS[name as (typeof HELPED)[number]],
            closeUp: hand,
          }),
        );
        expect(close.checks.siteVisible[hand], `${name} hand ${hand}`).toBeGreaterThan(0.6);
      }
    }
  });

  it("is darker than the person and wears shoes", () => {
    const kinds = drawn[0]?.figure.bodyLayer.kinds ?? [];
    const helper = new Set(kinds.filter((kind) => kind?.owner === "helper").map((kind) => kind?.tone));
    expect(helper).toEqual(new Set(["helperSkin", "helperShirt", "helperTrousers", "helperHair", "helperShoe"]));
  });
});

describe("marks", () => {
  it("change without the body", () => {
    const input = inputFor(SLIGHT, "bridge");
    const figure = drawFigure(input);
    const one = redrawMarks(figure, input, { effort: { segment: "thigh.weak", level: "thin" } });
    const two = redrawMarks(figure, input, { effort: { segment: "thigh.weak", level: "thick" } });
    expect(one).not.toBe(two);
    expect(one).toContain(figure.bodyLayer.people);
    expect(two).toContain(figure.bodyLayer.people);
  });

  it("make a disc grow with its share", () => {
    const radius = (share: number): number => {
      const svg = drawFigure(inputFor(SLIGHT, "bridge", { marks: { discs: [{ at: [0.4, 0, 0], share }] } })).marksLayer
        .under;
      return Number(/rx="([\d.]+)"/.exec(svg)?.[1]);
    };
    expect(radius(0.4)).toBeGreaterThan(radius(0.1));
  });

  it("from above show the helper's knees, feet and hands and where each is", () => {
    const above = drawFromAbove({
      ...inputFor(HEAVY, "longSitting", { helper: SAMPLE_HELPERS.longSitting }),
      wayOut: { from: [0, 0, 0], to: [0, -0.8, 0] },
      words: { hands: "your hands", wayOut: "way out" },
    });
    expect(above.marks.map((mark) => mark.id).sort()).toEqual(["feet", "hands", "hands", "knees", "wayOut"]);
    for (const mark of above.marks) {
      expect(mark.x).toBeGreaterThan(0);
      expect(mark.x).toBeLessThan(above.width);
      expect(mark.y).toBeGreaterThan(0);
      expect(mark.y).toBeLessThan(above.height);
    }
    expect(above.svg.match(/<text/g)).toHaveLength(2);
  });
});

describe("the text alternative", () => {
  it("says how the person lies, what moves, the helper with each hand, and the weight; only what is in the picture", () => {
    const words = {
      lies: "On the back, seat up",
      moves: "The strong foot is lifted",
      helper: "The helper kneels at the foot end",
      hands: ["one hand on the weak hip bone", "one hand on the strong hip bone"],
      weight: ["the weak foot", "both shoulder blades"],
      and: "and",
      weightIsOn: "Weight is on",
    };
    const helped = drawFigure(inputFor(SLIGHT, "strongFootUp", { helper: SAMPLE_HELPERS.strongFootUp }));
    expect(textAlternative(helped, words)).toEqual([
      "On the back, seat up.",
      "The strong foot is lifted.",
      "The helper kneels at the foot end, one hand on the weak hip bone and one hand on the strong hip bone.",
      "Weight is on the weak foot and both shoulder blades.",
    ]);
    expect(textAlternative(drawFigure(inputFor(SLIGHT, "bridge")), { ...words, moves: null })).toHaveLength(2);
  });
});
