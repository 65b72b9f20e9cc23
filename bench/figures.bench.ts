import { type BenchRow, time } from "./timing.ts";
import { drawFigure, type FigureInput, redrawMarks } from "../src/figures/draw-figure.ts";
import { chooseView } from "../src/figures/choose-view.ts";
import { prepareScene } from "../src/figures/scene.ts";
import { drawBodyLayer } from "../src/figures/body-layer.ts";
import { SAMPLE_HELPERS, SAMPLE_POSES } from "../test/helpers/sample-poses.ts";
import { buildBody } from "../src/mechanics/body/build.ts";
import { closePose } from "../src/mechanics/pose/close.ts";

const RUNS = 60;
const inMilliseconds = (what: string, work: () => void, target?: number): BenchRow => ({
  what,
  ...time(work, RUNS),
  unit: "ms",
  ...(target === undefined ? {} : { target }),
});

/** How long pictures take, warm, 300 units wide. */
export function runBench(): BenchRow[] {
  const body = buildBody({ sex: "male", height: 1.8, mass: 105 }, 1);
  const inputFor = (name: keyof typeof SAMPLE_HELPERS, helped: boolean): FigureInput => {
    const pose = closePose(body, SAMPLE_POSES[name]);
    if (!pose.closed) throw new Error(pose.because);
    return {
      body,
      configuration: pose.configuration,
      specification: SAMPLE_POSES[name],
      size: { width: 300, height: 240 },
      theme: "screen",
      ...(helped ? { helper: SAMPLE_HELPERS[name] } : {}),
    };
  };
  const alone = inputFor("handsAndKnees", false);
  const helped = inputFor("handsAndKnees", true);
  const figureAlone = drawFigure(alone);
  const figureHelped = drawFigure(helped);
  const marks = {
    discs: [0.2, 0.3, 0.25, 0.25].map((share, k) => ({ at: [k * 0.1, 0, 0] as const, share })),
    effort: { segment: "forearm.weak" as const, level: "thick" as const },
    outline: {
      points: [[0, 0, 0] as const, [0.3, 0, 0] as const, [0.3, 0.2, 0] as const, [0, 0.2, 0] as const],
      short: 1,
    },
    centre: [0.1, 0.1, 0.4] as const,
  };
  return [
    inMilliseconds(
      "body layer, one person",
      () => drawBodyLayer(figureAlone.prepared.scene, figureAlone.bodyLayer.frame, "screen", false),
      10,
    ),
    inMilliseconds("body layer, person and helper", () =>
      drawBodyLayer(figureHelped.prepared.scene, figureHelped.bodyLayer.frame, "screen", false),
    ),
    inMilliseconds("marks redrawn on a kept body layer", () => redrawMarks(figureHelped, helped, marks), 0.3),
    inMilliseconds("whole figure, one person, skin kept", () => drawFigure(alone)),
    inMilliseconds("whole figure with a helper, scene and view kept", () => drawFigure(helped), 60),
    inMilliseconds("helper's reach, not kept", () => prepareScene(helped)),
    inMilliseconds("search for a view, not kept", () =>
      chooseView(figureHelped.prepared, { azimuthDeg: 130, elevationDeg: 15 }, null),
    ),
  ];
}
