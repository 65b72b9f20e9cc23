import {
  add,
  compose,
  cross,
  norm,
  type Rotation,
  rotationAbout,
  scale,
  subtract,
  unit,
  type Vector,
} from "../quantity/vectors.ts";
import type { Body } from "../mechanics/body/body.ts";
import { patchOn } from "../mechanics/body/patches.ts";
import { type Configuration, type Frames, placeFrames, pointInRoom } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { drawBodyLayer } from "./body-layer.ts";
import { canonicalBody, canonicalConfiguration } from "./canonical.ts";
import { frameFor } from "./choose-view.ts";
import { drawFigure, type FigureInput, joinLayers, withRoom } from "./draw-figure.ts";
import { keptScene } from "./kept.ts";
import { prepareScene } from "./scene.ts";

/** A rung in motion. */
export interface MovingFigure {
  /** One picture that moves by itself where motion is welcome on a screen; printed, or where motion is reduced, it is the still. */
  readonly svg: string;
  /** The held moment with ghost and arrow: what is seen where nothing moves. */
  readonly still: string;
  /** Each moment from the start to the held one, all in one frame, for callers who turn the pages themselves. */
  readonly moments: readonly string[];
  /** How long one round takes: wait, go, hold, come back [s]. */
  readonly seconds: number;
}

/** Shares of a round: waiting at the start, going, holding; the rest is the way back. */
const WAIT = 0.16;
const GO = 0.3;
const HOLD = 0.32;
const FEWEST = 3;
const MOST = 9;

/**
 * Draws a rung from its start pose to its held moment as a short moving picture: a few moments in between, their joints
 * turned evenly, the helper's hands going along. What carries weight in both poses stays where it is.
 *
 * The pictures are plain strokes: hatching marks the weak limbs on every moment, so the picture means the same in black
 * and white. Motion starts only inside `prefers-reduced-motion: no-preference` on a screen; anywhere else, also where
 * style sheets are not read, the still is shown.
 *
 * @param input as for one figure, with `start`; marks are drawn on the still alone
 * @param options moments: how many pictures, start and end included (3 to 9, 5 if not said); seconds: length of a round
 * @returns null where the rung has no start to move from
 */
export function drawMovingFigure(
  input: FigureInput,
  options: { readonly moments?: number; readonly seconds?: number } = {},
): MovingFigure | null {
  const { start } = input;
  if (start === undefined) return null;
  const count = Math.max(FEWEST, Math.min(MOST, Math.round(options.moments ?? 5)));
  const seconds = options.seconds ?? 5;
  const { prepared, stand } = keptScene(input);
  const body = canonicalBody(input.body);
  const from = canonicalConfiguration(input.body, start.configuration);
  const to = canonicalConfiguration(input.body, input.configuration);
  const scenes = [prepared];
  // Backward from the held moment, each helper beginning where the next one is.
  for (let k = count - 2; k >= 0; k--) {
    const configuration = poseBetween(body, from, to, ease(k / (count - 1)), input.specification ?? null);
    const next = scenes[0]?.helper ?? null;
    const how = next === null ? stand : { ...stand, hold: next.hold, from: next.reach.configuration };
    scenes.unshift(prepareScene({ ...input, body, configuration }, how, prepared.placed));
  }
  const all = {
    ...prepared,
    clouds: [...withRoom(prepared, input).clouds, ...scenes.flatMap((scene) => scene.clouds)],
  };
  const first = drawFigure(input);
  const frame = frameFor(all, first.view, input.size);
  const mirrored = (input.body.weakAt === -1) !== (input.mirrored ?? false);
  const ground = drawBodyLayer({ ...prepared.scene, people: [], things: [] }, frame, input.theme, mirrored).ground;
  const moments = scenes.map((scene) => {
    const layer = drawBodyLayer(scene.scene, frame, input.theme, mirrored, input.density ?? 1.5);
    return joinLayers({ ...layer, ground }, { under: "", over: "" });
  });
  const still = drawFigure({ ...input, frame }).svg;
  return { svg: moving(still, moments, seconds), still, moments, seconds };
}

/** Slow away from the start and slow into the hold. */
const ease = (share: number): number => share * share * (3 - 2 * share);

/**
 * A pose between two: joints and hips turned evenly, then shifted so that what rests in both keeps to its way.
 * @param share 0 at the first pose, 1 at the second
 */
export function poseBetween(
  body: Body,
  from: Configuration,
  to: Configuration,
  share: number,
  pose: PoseSpecification | null,
): Configuration {
  const raw: Configuration = {
    rootPosition: add(from.rootPosition, scale(subtract(to.rootPosition, from.rootPosition), share)),
    rootRotation: turnedBetween(from.rootRotation, to.rootRotation, share),
    angles: to.angles.map((angle, i) => {
      const begin = from.angles[i] ?? angle;
      return begin + (angle - begin) * share;
    }),
  };
  const [a, b, now] = [from, to, raw].map((each) => placeFrames(body, each));
  if (a === undefined || b === undefined || now === undefined) return raw;
  const rests = (pose?.contacts ?? []).filter(({ on, role }) => typeof on === "string" && role !== "bears");
  const middle = (frames: Frames, patch: (typeof rests)[number]["patch"]): Vector => {
    const { segment, balls } = patchOn(body, patch);
    return balls.reduce<Vector>(
      (sum, ball) => add(sum, scale(pointInRoom(body, frames, segment, ball.centre), 1 / balls.length)),
      [0, 0, 0],
    );
  };
  // Only what stays put: a limb that is lifted has no say.
  const stays = rests.filter(({ patch }) => norm(subtract(middle(a, patch), middle(b, patch))) < 0.06);
  let shift: Vector = [0, 0, 0];
  for (const { patch } of stays) {
    const wanted = add(middle(a, patch), scale(subtract(middle(b, patch), middle(a, patch)), share));
    shift = add(shift, scale(subtract(wanted, middle(now, patch)), 1 / stays.length));
  }
  return { ...raw, rootPosition: add(raw.rootPosition, shift) };
}

function turnedBetween(from: Rotation, to: Rotation, share: number): Rotation {
  const back: Rotation = [from[0], from[3], from[6], from[1], from[4], from[7], from[2], from[5], from[8]];
  const turn = compose(to, back);
  const axis: Vector = [turn[7] - turn[5], turn[2] - turn[6], turn[3] - turn[1]];
  const angle = Math.atan2(norm(axis) / 2, (turn[0] + turn[4] + turn[8] - 1) / 2);
  if (angle < 1e-6) return to;
  // Half a turn has no axis of its own here: any one across will do.
  const about = norm(axis) > 1e-6 ? unit(axis) : unit(cross([turn[0] + 1, turn[3], turn[6]], [0, 0, 1]));
  return compose(rotationAbout(about, angle * share), from);
}

/** The still and the moments in one picture, the moments hidden until a style sheet lets them move. */
function moving(still: string, moments: readonly string[], seconds: number): string {
  const inner = (svg: string): string => svg.replace(/^<svg[^>]*>/, "").replace(/<\/svg>$/, "");
  const name = `moving-${hash(still)}`;
  const last = moments.length - 1;
  const percent = (share: number): string => `${(share * 100).toFixed(1)}%`;
  let rules = "";
  let groups = "";
  moments.forEach((svg, k) => {
    // Shown from its own moment of the way to the next one's, on the way there and on the way back.
    const begins = k === 0 ? 0 : WAIT + (GO * (k - 1)) / last + GO / last / 2;
    const ends = k === last ? WAIT + GO + HOLD : WAIT + (GO * k) / last + GO / last / 2;
    const back = 1 - WAIT - GO - HOLD;
    const again = 1 - (back * (k + 0.5)) / last;
    const againEnds = 1 - (back * (k - 0.5)) / last;
    const hidden = "{visibility:hidden}";
    const shown = "{visibility:visible}";
    const steps =
      k === last
        ? `0%${hidden}${percent(begins)}${shown}${percent(1 - back / last / 2)}${hidden}`
        : k === 0
          ? `0%${shown}${percent(ends)}${hidden}${percent(1 - back / last / 2)}${shown}`
          : `0%${hidden}${percent(begins)}${shown}${percent(ends)}${hidden}${percent(again)}${shown}${percent(againEnds)}${hidden}`;
    rules += `@keyframes ${name}-${k}{${steps}}.${name}>.m${k}{animation:${name}-${k} ${seconds}s step-end infinite}`;
    groups += `<g class="m${k}" visibility="hidden">${inner(svg)}</g>`;
  });
  const style = `<style>@media screen and (prefers-reduced-motion:no-preference){.${name}>.still{visibility:hidden}${rules}}</style>`;
  const open = /^<svg[^>]*>/.exec(still)?.[0] ?? "<svg>";
  return `${open}${style}<g class="${name}"><g class="still">${inner(still)}</g>${groups}</g></svg>`;
}

/** A short name from a text, the same every time. */
function hash(text: string): string {
  let h = 2166136261;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 16777619);
  return (h >>> 0).toString(36);
}
