import { add, IDENTITY, rotate, scale, subtract, unit, type Vector } from "../quantity/vectors.ts";
import { SIDES } from "../quantity/sides.ts";
import { placeFrames, pointInRoom } from "../mechanics/pose/kinematics.ts";
import { drawBodyLayer } from "./body-layer.ts";
import { canonicalVector } from "./canonical.ts";
import type { FigureInput } from "./draw-figure.ts";
import type { PosedHelper } from "./helper/pose-helper.ts";
import { STANCES } from "./helper/stances.data.ts";
import { discRadius, drawDisc, drawDot, drawOutline } from "./marks/draw-marks.ts";
import { aimCamera, boundsOf, fitCamera, type Frame, project } from "./picture/camera.ts";
import { Ink } from "./picture/ink.ts";
import { ink as style, type Theme } from "./picture/theme.ts";
import { keptScene } from "./kept.ts";
import { extentOf, type PreparedScene } from "./scene.ts";

export type AboveMarkId = "hands" | "knees" | "feet" | "wayOut" | "wayOutHurry" | "outline" | "centre";

export interface AboveInput extends FigureInput {
  /** The way out of the position: from where to where over the mat [m]. */
  readonly wayOut?: { readonly from: Vector; readonly to: Vector };
  /** The way out in a hurry, where it is another one. */
  readonly wayOutHurry?: { readonly from: Vector; readonly to: Vector };
  /** Words beside the marks, in the reader's language; a mark without a word has none. */
  readonly words?: Readonly<Partial<Record<AboveMarkId, string>>>;
}

export interface AboveFigure {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** Where each mark is in the picture, for pressing on it. */
  readonly marks: readonly { readonly id: AboveMarkId; readonly x: number; readonly y: number }[];
}

/** Looking straight down makes up and down meaningless: a tenth of a degree short of it. */
const STRAIGHT_DOWN = { azimuthDeg: 90, elevationDeg: 89.9 } as const;

/** The mat from above: the person alone, where the weight is, how far it can go, the way out, and the helper's place. */
export function drawFromAbove(input: AboveInput): AboveFigure {
  const { prepared } = keptScene(input);
  const mirrored = (input.body.weakAt === -1) !== (input.mirrored ?? false);
  const turned = (v: Vector): Vector => canonicalVector(input.body.weakAt, v);
  const person = prepared.people[0]?.points ?? new Float64Array(0);
  const helperPoints =
    prepared.helper === null ? [] : helperMarks(prepared.helper, prepared, input.helper?.pose ?? "standing");
  const way = (each: AboveInput["wayOut"]) =>
    each === undefined ? null : { from: turned(each.from), to: turned(each.to) };
  const wayOut = way(input.wayOut);
  const hurry = way(input.wayOutHurry);
  const extra = Float64Array.from(
    [
      ...helperPoints.map((each) => each.at),
      ...[wayOut, hurry].flatMap((each) => (each === null ? [] : [each.from, each.to])),
    ].flat(),
  );
  const wide = Float64Array.from(
    [...helperPoints.flatMap((each) => [add(each.at, [0.12, 0.12, 0]), add(each.at, [-0.12, -0.12, 0])])].flat(),
  );
  const clouds = [person, ...prepared.placed.things.map((thing) => thing.solid.points), extra, wide];
  const { least, most } = extentOf(clouds);
  const camera = aimCamera(STRAIGHT_DOWN, 1, scale(add(least, most), 0.5));
  const frame = fitCamera(camera, boundsOf(camera, clouds), input.size, 16);
  const only = { ...prepared.scene, people: prepared.scene.people.slice(0, 1), things: prepared.placed.things };
  const layer = drawBodyLayer({ ...only, ground: [] }, frame, input.theme, mirrored, input.density ?? 1.5);
  const pen = new Ink(frame.width, mirrored);
  const marks = input.marks ?? {};
  const ground = prepared.placed.matTop;
  let over = "";
  for (const disc of marks.discs ?? [])
    over += drawDisc(frame, turned(disc.at), discRadius(disc.share), pen, input.theme);
  if (marks.outline !== undefined)
    over += drawOutline(frame, marks.outline.points.map(turned), marks.outline.short, pen, input.theme);
  if (marks.centre !== undefined) {
    const at = turned(marks.centre);
    over += drawDot(frame, [at[0], at[1], ground], pen, input.theme, 3.4);
  }
  const places: { id: AboveMarkId; x: number; y: number }[] = [];
  const note = (id: AboveMarkId, at: Vector): void => {
    const [x, y] = project(frame.camera, at);
    places.push({ id, x: pen.x(x) / 10, y: pen.y(y) / 10 });
  };
  if (marks.outline?.points[0] !== undefined) note("outline", turned(marks.outline.points[0]));
  if (marks.centre !== undefined) note("centre", turned(marks.centre));
  if (wayOut !== null) {
    over += drawWayOut(frame, wayOut.from, wayOut.to, pen, input.theme, PLANNED);
    note("wayOut", wayOut.to);
  }
  if (hurry !== null) {
    over += drawWayOut(frame, hurry.from, hurry.to, pen, input.theme, HURRIED);
    note("wayOutHurry", hurry.to);
  }
  for (const mark of helperPoints) {
    over += drawHelperMark(frame, mark, pen, input.theme);
    if (mark.shape !== "chevron")
      note(mark.shape === "hand" ? "hands" : mark.shape === "knee" ? "knees" : "feet", mark.at);
  }
  const words = drawWords(places, input.words ?? {}, frame, input.theme);
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${frame.width} ${frame.height}" width="${frame.width}" height="${frame.height}" aria-hidden="true"><rect width="${frame.width}" height="${frame.height}" ${style(input.theme, { fill: "mat" })}/>${layer.things}${layer.people}${over}${words}</svg>`,
    width: frame.width,
    height: frame.height,
    marks: places,
  };
}

interface HelperMark {
  readonly shape: "hand" | "knee" | "foot" | "chevron";
  readonly at: Vector;
  readonly toward: Vector;
}

/** What of the helper is on the ground and on the person. */
function helperMarks(helper: PosedHelper, prepared: PreparedScene, stance: keyof typeof STANCES): HelperMark[] {
  const { body, reach } = helper;
  const frames = placeFrames(body, reach.configuration);
  const marks: HelperMark[] = [];
  const ahead = (segment: number, axis: Vector): Vector => {
    const v = rotate(frames.rotations[segment] ?? IDENTITY, axis);
    return unit([v[0], v[1], 0]);
  };
  const ground = Math.min(prepared.placed.matTop, prepared.placed.floor);
  for (const side of SIDES) {
    const knee = pointInRoom(body, frames, `shank.${side}`, [0, 0, 0]);
    const sole = pointInRoom(body, frames, `foot.${side}`, [0.05, 0, -0.06]);
    const kneels = knee[2] < ground + 0.12 && STANCES[stance].otherStands.includes("shin");
    if (kneels) marks.push({ shape: "knee", at: knee, toward: ahead(body.segmentIndex[`thigh.${side}`], [1, 0, 0]) });
    else marks.push({ shape: "foot", at: sole, toward: ahead(body.segmentIndex[`foot.${side}`], [1, 0, 0]) });
  }
  for (const palm of helper.palms) {
    const wrist = pointInRoom(body, frames, `hand.${palm.hand}`, [0, 0, 0]);
    const tip = pointInRoom(body, frames, `hand.${palm.hand}`, [0, 0, -0.12]);
    marks.push({
      shape: "hand",
      at: palm.site.at,
      toward: unit(subtract([tip[0], tip[1], 0], [wrist[0], wrist[1], 0])),
    });
  }
  const chest = ahead(body.segmentIndex.pelvis, [1, 0, 0]);
  const hips = reach.configuration.rootPosition;
  marks.push({ shape: "chevron", at: add([hips[0], hips[1], 0], scale(chest, 0.2)), toward: chest });
  return marks;
}

function drawHelperMark(frame: Frame, mark: HelperMark, pen: Ink, theme: Theme): string {
  const [x, y] = project(frame.camera, mark.at);
  const [tx, ty] = project(frame.camera, add(mark.at, scale(mark.toward, 0.1)));
  const length = Math.max(1e-6, Math.hypot(tx - x, ty - y));
  const ux = (tx - x) / length;
  const uy = (ty - y) / length;
  const unitSize = Math.max(40, frame.camera.zoom);
  const at = (along: number, aside: number): readonly [number, number] => [
    x + (ux * along - uy * aside) * unitSize,
    y + (uy * along + ux * aside) * unitSize,
  ];
  const paint = style(theme, { fill: "press", stroke: "halo", width: 1.3 });
  if (mark.shape === "knee")
    return `<circle ${paint} cx="${pen.across(x)}" cy="${pen.down(y)}" r="${(0.062 * unitSize).toFixed(1)}"/>`;
  if (mark.shape === "chevron") {
    const d = pen.polyline([at(-0.05, -0.1), at(0.04, 0), at(-0.05, 0.1)], false);
    return `<path ${style(theme, { stroke: "halo", width: 5.5 })} stroke-linecap="round" stroke-linejoin="round" d="${d}"/><path ${style(theme, { stroke: "press", width: 3 })} stroke-linecap="round" stroke-linejoin="round" d="${d}"/>`;
  }
  const outline: readonly (readonly [number, number])[] =
    mark.shape === "foot"
      ? [
          [-0.12, -0.026],
          [-0.125, 0.0],
          [-0.12, 0.026],
          [-0.03, 0.03],
          [0.07, 0.045],
          [0.12, 0.028],
          [0.13, 0],
          [0.12, -0.03],
          [0.07, -0.045],
          [-0.03, -0.032],
        ]
      : [
          [-0.075, -0.03],
          [-0.02, -0.042],
          [-0.02, -0.085],
          [0.005, -0.085],
          [0.02, -0.045],
          [0.105, -0.036],
          [0.115, -0.012],
          [0.12, 0.012],
          [0.105, 0.036],
          [0.02, 0.042],
          [-0.02, 0.04],
          [-0.075, 0.03],
        ];
  return `<path ${paint} stroke-linejoin="round" d="${pen.polyline(rounded(outline.map(([along, aside]) => at(along, aside))), true)}"/>`;
}

/** Cuts the corners of a closed shape, twice. */
function rounded(points: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  let now = points;
  for (let pass = 0; pass < 2; pass++) {
    now = now.flatMap(([x, y], k) => {
      const [nx, ny] = now[(k + 1) % now.length] ?? [x, y];
      return [
        [0.75 * x + 0.25 * nx, 0.75 * y + 0.25 * ny] as const,
        [0.25 * x + 0.75 * nx, 0.25 * y + 0.75 * ny] as const,
      ];
    });
  }
  return now;
}

/** Dots for the planned way, heavier strokes for the one in a hurry. */
const PLANNED = { width: 2.6, dashes: ".1 5.4" } as const;
const HURRIED = { width: 3.4, dashes: "9 5" } as const;

/** A broken line with a head: where to and which way. */
function drawWayOut(
  frame: Frame,
  from: Vector,
  to: Vector,
  pen: Ink,
  theme: Theme,
  line: { readonly width: number; readonly dashes: string },
): string {
  const [x0, y0] = project(frame.camera, from);
  const [x1, y1] = project(frame.camera, to);
  const length = Math.max(1, Math.hypot(x1 - x0, y1 - y0));
  const ux = (x1 - x0) / length;
  const uy = (y1 - y0) / length;
  const path = pen.polyline(
    [
      [x0, y0],
      [x1 - ux * 7, y1 - uy * 7],
    ],
    false,
  );
  const head = pen.polyline(
    [
      [x1, y1],
      [x1 - ux * 9 - uy * 4.5, y1 - uy * 9 + ux * 4.5],
      [x1 - ux * 9 + uy * 4.5, y1 - uy * 9 - ux * 4.5],
    ],
    true,
  );
  return (
    `<path ${style(theme, { stroke: "halo", width: 5 })} stroke-linecap="round" d="${path}"/>` +
    `<path ${style(theme, { stroke: "mark", width: line.width })} stroke-linecap="round" stroke-dasharray="${line.dashes}" d="${path}"/>` +
    `<path ${style(theme, { fill: "mark", stroke: "halo", width: 1.2 })} d="${head}"/>`
  );
}

/** Half the width and the height of a written word, and how far round a mark nothing is written, pixels. */
const HALF_WORD = 34;
const LINE = 14;
const ROUND_MARK = 20;

/** One word a kind of mark, along the upper or the lower edge, clear of the marks and of one another, with a leader line. */
function drawWords(
  places: AboveFigure["marks"],
  words: Readonly<Partial<Record<AboveMarkId, string>>>,
  frame: Frame,
  theme: Theme,
): string {
  let out = "";
  const done = new Set<AboveMarkId>();
  const written: (readonly [number, number])[] = [];
  /** The leader's length, with a price for each mark and each word written over. */
  const costs = (x: number, y: number, from: { readonly x: number; readonly y: number }): number => {
    const marks = places.filter(
      (place) => Math.abs(place.x - x) < HALF_WORD + ROUND_MARK / 2 && Math.abs(place.y - (y - 4)) < ROUND_MARK,
    ).length;
    const others = written.filter(([ax, ay]) => Math.abs(ax - x) < 2 * HALF_WORD && Math.abs(ay - y) < LINE).length;
    return Math.hypot(x - from.x, y - from.y) + 200 * marks + 2000 * others;
  };
  for (const place of places) {
    const word = words[place.id];
    if (word === undefined || done.has(place.id)) continue;
    done.add(place.id);
    let best: readonly [number, number] = [place.x, 13];
    let least = Number.POSITIVE_INFINITY;
    for (const y of [13, 13 + LINE, frame.height - 5, frame.height - 5 - LINE]) {
      for (const aside of [0, -40, 40, -80, 80, -120, 120]) {
        const x = Math.min(Math.max(place.x + aside, HALF_WORD), frame.width - HALF_WORD);
        const cost = costs(x, y, place);
        if (cost < least) {
          least = cost;
          best = [x, y];
        }
      }
    }
    written.push(best);
    const [x, y] = best;
    out += `<path ${style(theme, { stroke: "mark", width: 0.9 })} d="M${place.x.toFixed(1)} ${place.y.toFixed(1)}L${x.toFixed(1)} ${(y > place.y ? y - 11 : y + 3).toFixed(1)}"/>`;
    out += `<text ${style(theme, { fill: "mark", stroke: "halo", width: 3 })} paint-order="stroke" font-size="12" font-family="inherit" text-anchor="middle" x="${x.toFixed(1)}" y="${y.toFixed(1)}">${escapeText(word)}</text>`;
  }
  return out;
}

export const escapeText = (word: string): string =>
  word.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
