import { describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import { closePose } from "../mechanics/pose/close.ts";
import { drawFigure } from "./draw-figure.ts";
import { drawLegend } from "./legend.ts";
import { SAMPLE_POSES } from "../../test/helpers/sample-poses.ts";
import { drawSessionLine, type Stretch } from "./session-line.ts";
import { contactSheet, contactSheetSvg } from "./sheet.ts";

const BODY = buildBody({ sex: "female", height: 1.62, mass: 66 }, 1);
const stretch = (
  id: string,
  minutes: number,
  rest: number,
  work: number,
  sets: number,
  repetitions: number,
): Stretch => ({ id, minutes, rest, work, sets, repetitions, hold: false, words: [id] });
const STRETCHES = [
  stretch("arrive", 5, 0.2, 0.2, 1, 0),
  stretch("bridge", 10, 0.1, 0.25, 2, 8),
  stretch("back", 5, 0.1, 0.1, 1, 0),
];

function bridge() {
  const pose = closePose(BODY, SAMPLE_POSES.bridge);
  if (!pose.closed) throw new Error(pose.because);
  return { body: BODY, configuration: pose.configuration, specification: SAMPLE_POSES.bridge } as const;
}

describe("the session line", () => {
  const line = drawSessionLine({ stretches: STRETCHES, width: 428, theme: "paper", matHeight: 0.5 });

  it("gives every stretch its share of the width, end to end", () => {
    expect(line.spans.map((span) => span.id)).toEqual(["arrive", "bridge", "back"]);
    expect(line.spans[0]?.toX).toBeCloseTo(line.spans[1]?.fromX ?? 0, 9);
    const widths = line.spans.map((span) => span.toX - span.fromX);
    expect(widths[1]).toBeCloseTo(2 * (widths[0] ?? 0), 9);
    expect(line.spans[2]?.toX).toBeCloseTo(428 - (line.spans[0]?.fromX ?? 0), 9);
  });

  it("has one bump a repetition, at the height of the work", () => {
    const trace = / d="(M[^"]*C[^"]*)"/.exec(line.svg)?.[1] ?? "";
    const workHeight = (1.55 * 92 - 0.25 * 92).toFixed(1);
    const tops = trace.match(new RegExp(`L[\\d.]+ ${workHeight.replace(".", "\\.")}`, "g")) ?? [];
    expect(tops).toHaveLength(16);
  });

  it("draws the mat at its own height and the body only where it is touched", () => {
    expect(line.svg).toContain(`height="${0.5 * 92}"`);
    expect(line.svg).not.toContain("<g transform");
    const touched = drawSessionLine({
      stretches: STRETCHES,
      width: 428,
      theme: "paper",
      matHeight: 0.5,
      touched: { id: "bridge", figure: bridge() },
    });
    expect(touched.svg.match(/<g transform/g)).toHaveLength(1);
    expect(touched.svg).toContain('font-weight="700"');
  });

  it("takes only the words it is given, made harmless", () => {
    const named = drawSessionLine({
      stretches: [{ ...STRETCHES[1], words: ["A < B & C"] } as Stretch],
      width: 300,
      theme: "paper",
      matHeight: 0.05,
    });
    expect(named.svg).toContain("A &lt; B &amp; C");
  });
});

describe("the legend and the sheet", () => {
  it("shows what is asked for and breaks to a second row when the width ends", () => {
    const entries = [
      { id: "weakLimbs", words: "weaker arm and leg" },
      { id: "helper", words: "helper" },
      { id: "weight", words: "weight on the mat" },
    ] as const;
    const wide = drawLegend(entries, 900, "paper");
    const narrow = drawLegend(entries, 220, "paper");
    expect(wide.svg.match(/<text/g)).toHaveLength(3);
    expect(narrow.height).toBeGreaterThan(wide.height);
  });

  it("puts every picture on the page", () => {
    const { svg } = drawFigure({ ...bridge(), size: { width: 200 }, theme: "paper" });
    const entries = [1, 2, 3].map((n) => ({ svg, title: `Bridge ${n}`, notes: ["seat up"] }));
    expect(contactSheet("Pictures", entries).match(/<figure>/g)).toHaveLength(3);
    expect(contactSheetSvg(entries, 2).match(/viewBox="0 0 200/g)).toHaveLength(3);
  });
});
