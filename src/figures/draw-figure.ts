import type { Vector } from "../quantity/vectors.ts";
import type { Configuration } from "../mechanics/pose/kinematics.ts";
import type { Body } from "../mechanics/body/body.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { type BodyLayer, drawBodyLayer } from "./body-layer.ts";
import { canonicalConfiguration, canonicalVector } from "./canonical.ts";
import { contactGapsOf, type FigureChecks, handVisibility, palmGapsOf, siteMissesOf } from "./checks.ts";
import type { HelperDrawing } from "./helper/drawing.ts";
import type { Marks } from "./marks/marks.ts";
import { drawMarks, type MarksLayer } from "./marks/draw-marks.ts";
import { type Frame, project, type View } from "./picture/camera.ts";
import { Ink } from "./picture/ink.ts";
import { roomForMarks } from "./marks/room.ts";
import type { Theme } from "./picture/theme.ts";
import { keptScene, keptView } from "./kept.ts";
import type { PreparedScene } from "./scene.ts";
import type { Look } from "./skin/context.ts";
import { frameFor } from "./choose-view.ts";
import { type FreeLimb, ghostOf, movedEnd } from "./marks/ghost.ts";
import { usualView } from "./views.ts";

export interface FigureInput {
  readonly body: Body;
  readonly configuration: Configuration;
  /** What the person rests on and with what; without it the mat alone. */
  readonly specification?: PoseSpecification;
  /** Without it, the usual view of such a pose, turned until the helper's hands show. */
  readonly view?: View;
  readonly size: { readonly width: number; readonly height?: number; readonly zoom?: number };
  readonly theme: Theme;
  readonly look?: Partial<Pick<Look, "hair" | "older" | "footwear" | "hatch">>;
  readonly helper?: HelperDrawing;
  /** The helper's build; a middling one where none is given. */
  readonly helperBody?: Body;
  /** Where the movement starts: the moving limb is drawn there as a ghost, with an arrow to where it is now. */
  readonly start?: { readonly configuration: Configuration; readonly moves: FreeLimb };
  readonly marks?: Marks;
  /** Turns the picture over: the exact mirror. */
  readonly mirrored?: boolean;
  /** Looks at the helper's hand with this number, close up. */
  readonly closeUp?: number;
  /** Where camera and edges are taken from instead of fitting them: for pictures that must lie over one another. */
  readonly frame?: Frame;
  /** Samples per unit; 1.5 for screens, 3 for print. */
  readonly density?: number;
}

export interface Figure {
  readonly svg: string;
  readonly bodyLayer: BodyLayer;
  readonly marksLayer: MarksLayer;
  readonly view: View;
  readonly checks: FigureChecks;
  /** What marks can be drawn on again without the body; see redrawMarks. */
  readonly prepared: PreparedScene;
}

const CLOSE_UP_RADIUS = 0.19;

/** Draws a person in a pose, with what they rest on, the helper and the marks. */
export function drawFigure(input: FigureInput): Figure {
  const scene = keptScene(input);
  const { prepared } = scene;
  const { frames, body } = prepared;
  const mirrored = (input.body.weakAt === -1) !== (input.mirrored ?? false);
  const closeUp = input.closeUp === undefined ? undefined : prepared.helper?.palms[input.closeUp];
  const usual = input.view ?? usualView(body, frames, input.specification ?? null, input.helper !== undefined);
  const close = input.closeUp === undefined ? null : { hand: input.closeUp, radius: CLOSE_UP_RADIUS };
  const view = input.view ?? keptView(scene, usual, close, input.start?.moves ?? null);
  const frame =
    closeUp === undefined
      ? (input.frame ?? frameFor(withRoom(prepared, input), view, input.size))
      : frameFor(prepared, view, input.size, { at: closeUp.site.at, radius: CLOSE_UP_RADIUS });
  const ghost =
    input.start === undefined
      ? null
      : ghostOf(
          prepared,
          canonicalConfiguration(input.body, input.start.configuration),
          input.start.moves,
          frame,
          mirrored,
          input.theme,
        );
  const bodyLayer = drawBodyLayer(prepared.scene, frame, input.theme, mirrored, input.density ?? 1.5);
  const withGhost = ghost === null ? bodyLayer : { ...bodyLayer, ground: bodyLayer.ground + ghost };
  const start = input.start;
  const arrow =
    start === undefined
      ? null
      : movedEnd(prepared, canonicalConfiguration(input.body, start.configuration), start.moves);
  const marks: Marks = {
    ...(arrow === null || hiddenAt(bodyLayer, arrow.to) ? {} : { arrow }),
    ...canonicalMarks(input.body.weakAt, input.marks ?? {}),
  };
  const marksLayer = drawMarks(
    body,
    frames,
    frame,
    marks,
    new Ink(withGhost.width, mirrored),
    input.theme,
    prepared.placed.matTop,
  );
  const helper = prepared.helper;
  const helperPerson = prepared.people[1];
  return {
    svg: joinLayers(withGhost, marksLayer),
    bodyLayer: withGhost,
    marksLayer,
    view,
    prepared,
    checks: {
      palmGaps: palmGapsOf(helper),
      siteMisses: siteMissesOf(helper),
      siteVisible:
        helper === null || helperPerson === undefined
          ? []
          : helper.palms.map((palm) =>
              handVisibility(bodyLayer.buffer, frame.camera, helperPerson.skin, helperPerson.points, palm.hand),
            ),
      contactGaps: contactGapsOf(
        body,
        frames,
        input.specification ?? null,
        prepared.people[0]?.points ?? new Float64Array(0),
        prepared.placed,
      ),
      overlap: helper?.reach.overlap ?? 0,
      supportGap: prepared.supportGap,
    },
  };
}

/** The scene with room for marks round it. */
export function withRoom(prepared: PreparedScene, input: FigureInput): PreparedScene {
  const start =
    input.start === undefined
      ? null
      : { ...input.start, configuration: canonicalConfiguration(input.body, input.start.configuration) };
  return {
    ...prepared,
    clouds: [...prepared.clouds, roomForMarks(prepared, input.specification ?? null, start)],
  };
}

/** Whether the helper or a thing hides a point of the person by more than a limb's thickness. */
function hiddenAt(layer: BodyLayer, at: Vector): boolean {
  const { buffer, kinds } = layer;
  const [x, y, depth] = project(layer.frame.camera, at);
  const column = Math.floor(x * buffer.density);
  const row = Math.floor(y * buffer.density);
  if (column < 0 || row < 0 || column >= buffer.columns || row >= buffer.rows) return true;
  const sample = row * buffer.columns + column;
  return kinds[buffer.kinds[sample] ?? 0]?.owner !== "person" && (buffer.depth[sample] ?? 0) < depth * 1000 - 60;
}

/** Draws other marks on a body that stays as it is. */
export function redrawMarks(figure: Figure, input: FigureInput, marks: Marks): string {
  const mirrored = (input.body.weakAt === -1) !== (input.mirrored ?? false);
  const { prepared, bodyLayer } = figure;
  return joinLayers(
    bodyLayer,
    drawMarks(
      prepared.body,
      prepared.frames,
      bodyLayer.frame,
      canonicalMarks(input.body.weakAt, marks),
      new Ink(bodyLayer.width, mirrored),
      input.theme,
      prepared.placed.matTop,
    ),
  );
}

/** Lays the layers over one another: ground, marks on it, things, people, marks over them. */
export function joinLayers(body: BodyLayer, marks: MarksLayer): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${body.width} ${body.height}" width="${body.width}" height="${body.height}" aria-hidden="true">${body.ground}${marks.under}${body.things}${body.people}${marks.over}</svg>`;
}

function canonicalMarks(weakAt: 1 | -1, marks: Marks): Marks {
  if (weakAt === 1) return marks;
  const turned = (v: Vector): Vector => canonicalVector(weakAt, v);
  return {
    ...marks,
    ...(marks.discs === undefined ? {} : { discs: marks.discs.map((disc) => ({ ...disc, at: turned(disc.at) })) }),
    ...(marks.outline === undefined ? {} : { outline: { ...marks.outline, points: marks.outline.points.map(turned) } }),
    ...(marks.centre === undefined ? {} : { centre: turned(marks.centre) }),
    ...(marks.arrow === undefined ? {} : { arrow: { from: turned(marks.arrow.from), to: turned(marks.arrow.to) } }),
    ...(marks.help === undefined
      ? {}
      : { help: marks.help.map((push) => ({ at: turned(push.at), direction: turned(push.direction) })) }),
  };
}
