import { rotate, type Vector } from "../quantity/vectors.ts";
import { handVisibility } from "./checks.ts";
import { paint, paintAndKeepFirst, type Solid } from "./picture/buffer.ts";
import { aimCamera, boundsOf, fitCamera, type Frame, type View } from "./picture/camera.ts";
import { type FreeLimb, MOVING_PARTS } from "./marks/ghost.ts";
import { extentOf, type PreparedScene } from "./scene.ts";

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

/** First all round at two heights, then nearer steps about the best. */
const AROUND = [0, 20, -20, 40, -40, 60, -60, 80, -80, 100, -100, 120, -120, 140, -140, 160, -160, 180] as const;
const RAISES = [0, 13] as const;
const NEARER_TURNS = [-9, 0, 9] as const;
const NEARER_RAISES = [-7, 0, 7] as const;
const LOWEST_DEG = 6;
const HIGHEST_DEG = 48;
const LOOKED_AT_AGAIN = 2;
/** A hand should be seen at least this much. */
export const WANTED_VISIBLE = 0.6;
/** The rough picture of the search is not exact. */
const TO_BE_SURE = 0.07;
const ROUGH = { width: 110, density: 1 } as const;

/**
 * Turns and raises the usual view until the helper's hands show, the first one above all, the helper does not hide the
 * person and the limb that moves is in sight.
 */
export function chooseView(prepared: PreparedScene, usual: View, moves: FreeLimb | null): View {
  if (prepared.helper === null || prepared.people.length < 2) return usual;
  return bestAround(usual, valueOfView(prepared, usual, moves));
}

/** From where one hand of the helper is seen best, close to. */
export function chooseCloseView(prepared: PreparedScene, usual: View, hand: number, radius: number): View {
  const palm = prepared.helper?.palms[hand];
  const helperPerson = prepared.people[1];
  if (palm === undefined || helperPerson === undefined) return usual;
  const solids = solidsOf(prepared);
  return bestAround(usual, (view) => {
    const frame = frameFor(prepared, view, { width: 72 }, { at: palm.site.at, radius });
    const buffer = paint(frame.camera, frame.width, frame.height, ROUGH.density, solids);
    const seen = handVisibility(buffer, frame.camera, helperPerson.skin, helperPerson.points, palm.hand);
    return (
      Math.min(seen, 0.85) * 10 - 0.006 * turnOf(view, usual) - 0.012 * Math.abs(view.elevationDeg - usual.elevationDeg)
    );
  });
}

const turnOf = (view: View, usual: View): number => {
  const turn = Math.abs(view.azimuthDeg - usual.azimuthDeg) % 360;
  return Math.min(turn, 360 - turn);
};

function bestAround(usual: View, valueIn: (view: View) => number): View {
  const tried: { readonly view: View; readonly value: number }[] = [];
  const look = (turn: number, elevation: number, from: View): void => {
    const view: View = {
      azimuthDeg: from.azimuthDeg + turn,
      elevationDeg: Math.max(LOWEST_DEG, Math.min(HIGHEST_DEG, elevation)),
    };
    tried.push({ view, value: valueIn(view) });
  };
  for (const raise of RAISES) for (const turn of AROUND) look(turn, usual.elevationDeg + raise, usual);
  const byValue = (): typeof tried => [...tried].sort((a, b) => b.value - a.value);
  for (const { view } of byValue().slice(0, LOOKED_AT_AGAIN))
    for (const turn of NEARER_TURNS)
      for (const raise of NEARER_RAISES) if (turn !== 0 || raise !== 0) look(turn, view.elevationDeg + raise, view);
  return byValue()[0]?.view ?? usual;
}

function solidsOf(prepared: PreparedScene): Solid[] {
  return [
    ...prepared.scene.people.map((each, k) => ({ ...each.solid, kindOffset: k === 0 ? 0 : 128 })),
    ...prepared.scene.things.map((thing) => ({ ...thing.solid, kindOffset: 250 })),
  ];
}

/** How much a view shows: hands, the person, the head, the weak limbs; less for every step away from the usual one. */
function valueOfView(prepared: PreparedScene, usual: View, moves: FreeLimb | null): (view: View) => number {
  const { helper, people } = prepared;
  const [person, helperPerson] = people;
  if (helper === null || person === undefined || helperPerson === undefined) return () => 0;
  const solids = solidsOf(prepared);
  const kinds = person.skin.kinds;
  const isHead = kinds.map((kind) => kind !== null && (kind.part === "head" || kind.part === "hair"));
  const isWeak = kinds.map((kind) => kind?.hatched === true);
  const [limb, side] = (moves ?? "hips").split(".");
  const parts = limb === "arm" || limb === "leg" ? MOVING_PARTS[limb] : [];
  const isMoving = kinds.map((kind) => kind !== null && kind.side === side && parts.includes(kind.part));
  const facing = rotate(helper.reach.configuration.rootRotation, [1, 0, 0]);
  const enough = (share: number): number => Math.min(1, share / (WANTED_VISIBLE + TO_BE_SURE));
  return (view) => {
    const frame = frameFor(prepared, view, { width: ROUGH.width });
    const { camera } = frame;
    const { buffer, firstKinds } = paintAndKeepFirst(camera, frame.width, frame.height, ROUGH.density, solids, true);
    let first = 1;
    let others = 1;
    helper.palms.forEach((palm, k) => {
      const share = enough(handVisibility(buffer, camera, helperPerson.skin, helperPerson.points, palm.hand));
      if (k === 0) first = share;
      else others = palm.ready ? 0.6 + 0.4 * share : share;
    });
    const towardEye = -(facing[0] * camera.forward[0] + facing[1] * camera.forward[1]);
    const turn = turnOf(view, usual);
    const hands =
      4.2 * first +
      (first === 1 ? 0.6 : 0) +
      2.2 * others +
      0.5 * Math.min(0.3, towardEye) -
      0.004 * turn -
      0.00007 * turn * turn -
      0.02 * Math.abs(view.elevationDeg - usual.elevationDeg);
    let all = 0;
    let shown = 0;
    let weak = 0;
    let weakShown = 0;
    let moving = 0;
    let head = 0;
    let headShown = 0;
    for (let i = 0; i < firstKinds.length; i++) {
      const kind = firstKinds[i] ?? 0;
      if (kind === 0) continue;
      all++;
      if (isHead[kind] === true) head++;
      if (isWeak[kind] === true) weak++;
      if (buffer.kinds[i] !== kind) continue;
      shown++;
      if (isHead[kind] === true) headShown++;
      if (isWeak[kind] === true) weakShown++;
      if (isMoving[kind] === true) moving++;
    }
    const seen = all === 0 ? 0 : shown / all;
    return (
      hands +
      3.4 * Math.min(seen, 0.92) -
      3.5 * Math.max(0, 0.74 - seen) +
      1.3 * Math.min(1, headShown / Math.max(1, 0.8 * head)) +
      0.7 * Math.min(1, weakShown / Math.max(1, 0.18 * all)) +
      1.2 * Math.min(1, weakShown / Math.max(1, 0.85 * weak)) +
      (parts.length === 0 ? 0 : 1.5 * Math.min(1, moving / Math.max(1, (limb === "arm" ? 0.09 : 0.18) * all)))
    );
  };
}
