import { rotate, type Vector } from "../quantity/vectors.ts";
import { handVisibility } from "./checks.ts";
import { paint, type Solid } from "./picture/buffer.ts";
import { aimCamera, boundsOf, fitCamera, type Frame, type View } from "./picture/camera.ts";
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

/** First all round at two heights, then nearer steps about the best few. */
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
/** The most that seeing the person, the head and the weak limbs adds. */
const MOST_OF_PERSON = 3.4 * 0.92 + 1.3 + 1.1;
const ROUGH = { width: 110, density: 1 } as const;

/**
 * Turns and raises the usual view until the helper's hands show, the first one above all, and the helper does not hide the
 * person.
 */
export function chooseView(prepared: PreparedScene, usual: View): View {
  if (prepared.helper === null || prepared.people.length < 2) return usual;
  return bestAround(usual, valueOfView(prepared, usual));
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

function bestAround(usual: View, valueOf: (view: View) => number): View {
  const tried: { readonly view: View; readonly value: number }[] = [];
  const look = (turn: number, elevation: number, from: View): void => {
    const view: View = {
      azimuthDeg: from.azimuthDeg + turn,
      elevationDeg: Math.max(LOWEST_DEG, Math.min(HIGHEST_DEG, elevation)),
    };
    tried.push({ view, value: valueOf(view) });
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
function valueOfView(prepared: PreparedScene, usual: View): (view: View) => number {
  const { helper, people } = prepared;
  const [person, helperPerson] = people;
  if (helper === null || person === undefined || helperPerson === undefined) return () => 0;
  const solids = solidsOf(prepared);
  const kinds = person.skin.kinds;
  const isHead = kinds.map((kind) => kind !== null && (kind.part === "head" || kind.part === "hair"));
  const isWeak = kinds.map((kind) => kind?.hatched === true);
  const facing = rotate(helper.reach.configuration.rootRotation, [1, 0, 0]);
  let best = -Number.MAX_VALUE;
  const enough = (share: number): number => Math.min(1, share / (WANTED_VISIBLE + TO_BE_SURE));
  return (view) => {
    const frame = frameFor(prepared, view, { width: ROUGH.width });
    const { camera } = frame;
    const buffer = paint(camera, frame.width, frame.height, ROUGH.density, solids);
    let first = 1;
    let others = 1;
    helper.palms.forEach((palm, k) => {
      const share = enough(handVisibility(buffer, camera, helperPerson.skin, helperPerson.points, palm.hand));
      if (k === 0) first = share;
      else others = palm.ready ? 0.6 + 0.4 * share : share;
    });
    const towardEye = -(facing[0] * camera.forward[0] + facing[1] * camera.forward[1]);
    const turn = turnOf(view, usual);
    const certain =
      4.2 * first +
      (first === 1 ? 0.6 : 0) +
      2.2 * others +
      0.5 * Math.min(0.3, towardEye) -
      0.004 * turn -
      0.00007 * turn * turn -
      0.02 * Math.abs(view.elevationDeg - usual.elevationDeg);
    // Even with all of the person in sight this view would not do: spare the second painting.
    if (certain + MOST_OF_PERSON < best) return certain;
    const alone = paint(camera, frame.width, frame.height, ROUGH.density, solids.slice(0, 1));
    let all = 0;
    let shown = 0;
    let weak = 0;
    let head = 0;
    let headShown = 0;
    for (let i = 0; i < alone.kinds.length; i++) {
      const kind = alone.kinds[i] ?? 0;
      if (kind === 0) continue;
      all++;
      if (isHead[kind] === true) head++;
      if (buffer.kinds[i] !== kind) continue;
      shown++;
      if (isHead[kind] === true) headShown++;
      if (isWeak[kind] === true) weak++;
    }
    const seen = all === 0 ? 0 : shown / all;
    const value =
      certain +
      3.4 * Math.min(seen, 0.92) -
      3.5 * Math.max(0, 0.74 - seen) +
      1.3 * Math.min(1, headShown / Math.max(1, 0.8 * head)) +
      1.1 * Math.min(1, weak / Math.max(1, 0.18 * all));
    best = Math.max(best, value);
    return value;
  };
}
