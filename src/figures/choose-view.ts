import { rotate, type Vector } from "../quantity/vectors.ts";
import { handVisibility } from "./checks.ts";
import { paint, type Solid } from "./picture/buffer.ts";
import { aimCamera, boundsOf, fitCamera, type Frame, type View } from "./picture/camera.ts";
import { extentOf, type PreparedScene } from "./scene.ts";

/** Aims and fits the picture to the scene, or to a small ball of it. */
export function frameFor(
  prepared: PreparedScene,
  view: View,
  size: { readonly width: number; readonly height?: number; readonly zoom?: number },
  close?: { readonly at: Vector; readonly radius: number },
): Frame {
  if (close !== undefined) {
    const camera = aimCamera(view, 1, close.at);
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

const TURNS = [0, 14, -14, 28, -28, 44, -44, 60, -60, 78, -78, 98, -98, 120, -120, 142, -142] as const;
const RAISES = [0, 8, 15] as const;
/** A hand should be seen at least this much. */
export const WANTED_VISIBLE = 0.62;
const ROUGH = { width: 96, density: 1 } as const;

/**
 * Turns and raises the usual view until the helper's hands show and the helper does not hide the person.
 * @param only number of the one hand that has to show, for a close-up
 */
export function chooseView(prepared: PreparedScene, usual: View, only?: number): View {
  const { helper, people } = prepared;
  const helperPerson = people[1];
  const person = people[0];
  if (helper === null || helperPerson === undefined || person === undefined) return usual;
  const headKinds = person.skin.kinds.map((kind) => kind !== null && (kind.part === "head" || kind.part === "hair"));
  const facing = rotate(helper.reach.configuration.rootRotation, [1, 0, 0]);
  let best = usual;
  let bestScore = -Number.MAX_VALUE;
  for (const raise of RAISES) {
    for (const turn of TURNS) {
      const view: View = { azimuthDeg: usual.azimuthDeg + turn, elevationDeg: usual.elevationDeg + raise };
      const frame = frameFor(prepared, view, { width: ROUGH.width });
      const solids: Solid[] = prepared.scene.people.map((each, k) => ({
        ...each.solid,
        kindOffset: k === 0 ? 0 : 128,
      }));
      solids.push(...prepared.scene.things.map((thing) => ({ ...thing.solid, kindOffset: 250 })));
      const buffer = paint(frame.camera, frame.width, frame.height, ROUGH.density, solids);
      const alone = paint(frame.camera, frame.width, frame.height, ROUGH.density, solids.slice(0, 1));
      const hands = helper.palms.map((palm) =>
        handVisibility(buffer, frame.camera, helperPerson.skin, helperPerson.points, palm.hand),
      );
      let all = 0;
      let shown = 0;
      let weak = 0;
      let head = 0;
      let headShown = 0;
      for (let i = 0; i < alone.kinds.length; i++) {
        const kind = alone.kinds[i] ?? 0;
        if (kind === 0) continue;
        all++;
        const isHead = headKinds[kind] === true;
        if (isHead) head++;
        if (buffer.kinds[i] !== kind) continue;
        shown++;
        if (isHead) headShown++;
        if (person.skin.kinds[kind]?.hatched === true) weak++;
      }
      const seen = all === 0 ? 0 : shown / all;
      const handScore =
        hands.reduce((sum, hand) => sum + Math.min(1, hand / (WANTED_VISIBLE + 0.06)), 0) / Math.max(1, hands.length);
      const leastHand = Math.min(1, ...hands.map((hand) => hand / WANTED_VISIBLE));
      const mostHand = Math.min(1, Math.max(0, ...hands) / WANTED_VISIBLE);
      if (only !== undefined) {
        const alone = hands[only] ?? 0;
        const value = Math.min(alone, 0.85) * 10 - 0.008 * Math.abs(turn) - 0.012 * raise;
        if (value > bestScore) {
          bestScore = value;
          best = view;
        }
        continue;
      }
      const towardEye = -(facing[0] * frame.camera.forward[0] + facing[1] * frame.camera.forward[1]);
      const score =
        2.4 * handScore +
        1.8 * leastHand +
        1.2 * mostHand +
        3.4 * Math.min(seen, 0.92) +
        1.3 * Math.min(1, headShown / Math.max(1, 0.8 * head)) +
        0.9 * Math.min(1, weak / Math.max(1, 0.2 * all)) +
        0.5 * Math.min(0.3, towardEye) -
        0.004 * Math.abs(turn) -
        0.00007 * turn * turn -
        0.02 * raise;
      if (score > bestScore) {
        bestScore = score;
        best = view;
      }
    }
  }
  return best;
}
