import type { Vector } from "../quantity/vectors.ts";
import { handVisibility } from "./checks.ts";
import { paint } from "./picture/buffer.ts";
import { aimCamera, boundsOf, fitCamera, type Frame, type View } from "./picture/camera.ts";
import type { FreeLimb } from "./marks/ghost.ts";
import { extentOf, type PreparedScene } from "./scene.ts";
import { helperFacing, judgeFrames, type Shown, solidsOf } from "./shown.ts";

/** Nothing further than this in front of a hand hides it in its close-up [m]. */
const CLOSE_UP_DEPTH = 0.2;

/** Aims and fits the picture to the scene, or to a small ball of it. */
export function frameFor(
  prepared: PreparedScene,
  view: View,
  size: { readonly width: number; readonly height?: number; readonly zoom?: number },
  close?: { readonly at: Vector; readonly radius: number },
): Frame {
  if (close !== undefined) {
    const aimed = aimCamera(view, 1, close.at);
    const camera = { ...aimed, cutAt: aimed.distance - CLOSE_UP_DEPTH };
    const r = close.radius;
    return fitCamera(
      camera,
      { fromX: -r, toX: r, fromY: -r, toY: r },
      { width: size.width, height: size.height ?? size.width },
      0,
    );
  }
  const { least, most } = extentOf(prepared.clouds);
  const aim: Vector = [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2, (least[2] + most[2]) / 2];
  const camera = aimCamera(view, 1, aim);
  return fitCamera(camera, boundsOf(camera, prepared.clouds), size);
}

/** First all round at three heights, then nearer steps about the best. */
const AROUND = [0, 20, -20, 40, -40, 60, -60, 80, -80, 100, -100, 120, -120, 140, -140, 160, -160, 180] as const;
const RAISES = [0, 13, 28] as const;
const FEWER_RAISES = [0, 24] as const;
/** A close-up may look from higher up. */
const CLOSE_RAISES = [0, 13, 28, 45] as const;
const NEARER_TURNS = [-9, 0, 9] as const;
const NEARER_RAISES = [-7, 0, 7] as const;
const LOWEST_DEG = 6;
const HIGHEST_DEG = 52;
const HIGHEST_CLOSE_DEG = 75;
const LOOKED_AT_AGAIN = 3;
/** A hand should be seen at least this much. */
export const WANTED_VISIBLE = 0.6;
/** The rough picture of the search is not exact. */
const TO_BE_SURE = 0.06;
const ROUGH_WIDTH = 140;

/** A view and what it is worth. */
export interface ViewFound {
  readonly view: View;
  readonly value: number;
  readonly shown: Shown;
}

/**
 * Turns and raises the usual view until the helper's hands show, the first one above all, the helper does not hide the
 * person and the limb that moves is in sight.
 */
export function chooseView(prepared: PreparedScene, usual: View, moves: FreeLimb | null): View {
  return searchView(prepared, usual, moves)?.view ?? usual;
}

/**
 * The same with what the view shows; null where there is no helper to turn round.
 * @param closely looks from more heights, and about the best of the views
 */
export function searchView(
  prepared: PreparedScene,
  usual: View,
  moves: FreeLimb | null,
  closely = true,
): ViewFound | null {
  if (prepared.helper === null || prepared.people.length < 2) return null;
  const judge = judgeFrames(prepared, moves);
  const [fx, fy] = helperFacing(prepared);
  return bestAround(
    usual,
    (view) => {
      const frame = frameFor(prepared, view, { width: ROUGH_WIDTH });
      const { forward } = frame.camera;
      const shown = judge(frame);
      const towardEye = -(fx * forward[0] + fy * forward[1]);
      return { view, shown, value: worthOf(shown, moves) + 0.5 * Math.min(0.3, towardEye) - strangeness(view, usual) };
    },
    closely,
  );
}

/** How far a view is from the usual one of such a pose. */
function strangeness(view: View, usual: View): number {
  const turn = turnOf(view, usual);
  return 0.004 * turn + 0.0001 * turn * turn + 0.02 * Math.abs(view.elevationDeg - usual.elevationDeg);
}

/** Hands, the person, the head, the weak limbs, the limb that moves. */
function worthOf(shown: Shown, moves: FreeLimb | null): number {
  const enough = (share: number): number => Math.min(1, share / (WANTED_VISIBLE + TO_BE_SURE));
  const [first = 1, other = 1] = shown.hands.map(enough);
  const limbSize = moves?.startsWith("arm") === true ? 0.09 : 0.18;
  return (
    4.2 * first +
    (first === 1 ? 1.8 : 0) +
    3.2 * other +
    (first === 1 || other === 1 ? 2 : 0) +
    (first === 1 && other === 1 ? 1.8 : 0) +
    3.4 * Math.min(shown.person, 0.92) -
    7 * Math.max(0, 0.74 - shown.person) -
    5 * Math.max(0, 0.66 - shown.weak) +
    1.3 * Math.min(1, shown.head / 0.8) +
    0.7 * Math.min(1, shown.weakSize / 0.18) +
    1.2 * Math.min(1, shown.weak / 0.85) +
    (moves === null || moves === "hips" ? 0 : 1.5 * Math.min(1, shown.movingSize / limbSize))
  );
}

/** From where one hand of the helper is seen best, close to. */
export function chooseCloseView(prepared: PreparedScene, usual: View, hand: number, radius: number): View {
  const palm = prepared.helper?.palms[hand];
  const helperPerson = prepared.people[1];
  if (palm === undefined || helperPerson === undefined) return usual;
  const solids = solidsOf(prepared);
  return bestAround(
    usual,
    (view) => {
      const frame = frameFor(prepared, view, { width: 72 }, { at: palm.site.at, radius });
      const buffer = paint(frame.camera, frame.width, frame.height, 1, solids);
      const seen = handVisibility(buffer, frame.camera, helperPerson.skin, helperPerson.points, palm.hand);
      const turned = 0.006 * turnOf(view, usual) + 0.012 * Math.abs(view.elevationDeg - usual.elevationDeg);
      return { view, value: Math.min(seen, 0.85) * 10 - turned };
    },
    true,
    CLOSE_RAISES,
    HIGHEST_CLOSE_DEG,
  ).view;
}

const turnOf = (view: View, usual: View): number => {
  const turn = Math.abs(view.azimuthDeg - usual.azimuthDeg) % 360;
  return Math.min(turn, 360 - turn);
};

function bestAround<Found extends { readonly view: View; readonly value: number }>(
  usual: View,
  lookFrom: (view: View) => Found,
  closely = true,
  raises: readonly number[] = closely ? RAISES : FEWER_RAISES,
  highestDeg: number = HIGHEST_DEG,
): Found {
  let best = lookFrom(usual);
  const tried: Found[] = [best];
  const look = (turn: number, elevation: number, from: View): void => {
    const azimuthDeg = from.azimuthDeg + turn;
    const elevationDeg = Math.max(LOWEST_DEG, Math.min(highestDeg, elevation));
    tried.push(lookFrom({ azimuthDeg, elevationDeg }));
  };
  for (const raise of raises) for (const turn of AROUND) look(turn, usual.elevationDeg + raise, usual);
  const promising = [...tried].sort((a, b) => b.value - a.value).slice(0, closely ? LOOKED_AT_AGAIN : 0);
  for (const { view } of promising)
    for (const turn of NEARER_TURNS)
      for (const raise of NEARER_RAISES) if (turn !== 0 || raise !== 0) look(turn, view.elevationDeg + raise, view);
  for (const found of tried) if (found.value > best.value) best = found;
  return best;
}
