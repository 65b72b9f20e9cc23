import { describe, expect, it } from "vitest";
import { SAMPLE_HELPERS, SAMPLE_POSES } from "../../test/helpers/sample-poses.ts";
import { buildBody } from "../mechanics/body/build.ts";
import { closePose } from "../mechanics/pose/close.ts";
import { placeFrames } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { drawFigure, drawMovingFigure, type FigureInput } from "./index.ts";
import { poseBetween } from "./moving.ts";

const BODY = buildBody({ sex: "female", height: 1.6, mass: 62 }, 1);

function closed(specification: PoseSpecification) {
  const pose = closePose(BODY, specification);
  if (!pose.closed) throw new Error(pose.because);
  return pose.configuration;
}
const from = closed(SAMPLE_POSES.bridge);
const to = closed(SAMPLE_POSES.strongFootUp);
const input: FigureInput = {
  body: BODY,
  configuration: to,
  specification: SAMPLE_POSES.strongFootUp,
  size: { width: 300 },
  theme: "paper",
  helper: SAMPLE_HELPERS.strongFootUp,
  start: { configuration: from, moves: "leg.strong" },
};

describe("a rung in motion", () => {
  const moving = drawMovingFigure(input, { moments: 4 });

  it("shows so many moments, all different, and the same bytes again", () => {
    expect(moving?.moments).toHaveLength(4);
    expect(new Set(moving?.moments).size).toBe(4);
    expect(drawMovingFigure(input, { moments: 4 })?.svg).toBe(moving?.svg);
  });

  it("moves only where motion is welcome, and is the still everywhere else", () => {
    const svg = moving?.svg ?? "";
    const style = /<style>(.*)<\/style>/.exec(svg)?.[1] ?? "";
    expect(style.startsWith("@media screen and (prefers-reduced-motion:no-preference){")).toBe(true);
    expect(svg.replace(style, "")).not.toContain("animation");
    expect(svg.match(/<g class="m\d" visibility="hidden">/g)).toHaveLength(4);
    expect(svg).toMatch(/<g class="still">/);
    // The still has the ghost of the start, the moments have not.
    expect(moving?.still).toContain("stroke-dasharray");
    for (const moment of moving?.moments ?? []) expect(moment).not.toContain("stroke-dasharray");
  });

  it("carries the weak side by hatching on every moment, in greys alone", () => {
    for (const moment of moving?.moments ?? []) {
      expect(moment).toMatch(/stroke-width="0\.6"/);
      for (const [, r, g, b] of moment.matchAll(/#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/gi)) {
        expect(r).toBe(g);
        expect(g).toBe(b);
      }
    }
  });

  it("begins at the start pose and ends at the held one, and what rests in both does not slide", () => {
    const at = (share: number) => placeFrames(BODY, poseBetween(BODY, from, to, share, SAMPLE_POSES.strongFootUp));
    const foot = BODY.segmentIndex["foot.weak"];
    const [begin, middle, end] = [at(0), at(0.5), at(1)].map((frames) => frames.positions[foot] ?? [0, 0, 0]);
    const apart = (a: readonly number[] = [], b: readonly number[] = []) =>
      Math.hypot(...a.map((value, k) => value - (b[k] ?? 0)));
    expect(apart(begin, placeFrames(BODY, from).positions[foot])).toBeLessThan(0.01);
    expect(apart(end, placeFrames(BODY, to).positions[foot])).toBeLessThan(0.001);
    expect(apart(middle, end)).toBeLessThan(0.03);
  });

  it("is nothing without a start", () => {
    const { start: _, ...still } = input;
    expect(drawMovingFigure(still)).toBeNull();
    expect(drawFigure(still).svg).not.toContain("<style>");
  });
});
