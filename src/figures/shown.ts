import { rotate } from "../quantity/vectors.ts";
import { handVisibility } from "./checks.ts";
import { type FreeLimb, MOVING_PARTS } from "./marks/ghost.ts";
import { paintAndKeepFirst, type Solid } from "./picture/buffer.ts";
import type { Frame } from "./picture/camera.ts";
import type { PreparedScene } from "./scene.ts";

/** What a picture shows of what matters, as shares from 0 to 1. */
export interface Shown {
  /** Each of the helper's hands, at its site. */
  readonly hands: readonly number[];
  /** What helper and things leave in sight of the person. */
  readonly person: number;
  /** The same for the head, the weak arm and leg, and the limb that moves; 1 where there is none in the picture. */
  readonly head: number;
  readonly weak: number;
  readonly moving: number;
  /** How large the head, the weak limbs and the moving limb are in sight, as shares of the whole person in the picture. */
  readonly headSize: number;
  readonly weakSize: number;
  readonly movingSize: number;
}

export function solidsOf(prepared: PreparedScene): Solid[] {
  return [
    ...prepared.scene.people.map((each, k) => ({ ...each.solid, kindOffset: k === 0 ? 0 : 128 })),
    ...prepared.scene.things.map((thing) => ({ ...thing.solid, kindOffset: 250 })),
  ];
}

/**
 * Judges frames of one scene: what each shows.
 * @param moves the limb that moves, null where none does
 */
export function judgeFrames(prepared: PreparedScene, moves: FreeLimb | null, density = 1): (frame: Frame) => Shown {
  const kinds = prepared.people[0]?.skin.kinds ?? [];
  const [limb, side] = (moves ?? "hips").split(".");
  const parts = limb === "arm" || limb === "leg" ? MOVING_PARTS[limb] : [];
  const isHead = kinds.map((kind) => kind !== null && (kind.part === "head" || kind.part === "hair"));
  const isWeak = kinds.map((kind) => kind?.hatched === true);
  const isMoving = kinds.map((kind) => kind !== null && kind.side === side && parts.includes(kind.part));
  const solids = solidsOf(prepared);
  const helper = prepared.people[1];
  return ({ camera, width, height }) => {
    const { buffer, firstKinds } = paintAndKeepFirst(camera, width, height, density, solids, true);
    const all = new Float64Array(kinds.length);
    const inSight = new Float64Array(kinds.length);
    for (let i = 0; i < firstKinds.length; i++) {
      const kind = firstKinds[i] ?? 0;
      if (kind === 0) continue;
      all[kind] = (all[kind] ?? 0) + 1;
      if (buffer.kinds[i] === kind) inSight[kind] = (inSight[kind] ?? 0) + 1;
    }
    const sum = (counts: Float64Array, which: readonly boolean[] | null): number =>
      counts.reduce((total, count, kind) => total + (which === null || which[kind] === true ? count : 0), 0);
    const share = (which: readonly boolean[] | null): number => {
      const whole = sum(all, which);
      return whole === 0 ? 1 : sum(inSight, which) / whole;
    };
    const person = Math.max(1, sum(all, null));
    return {
      hands:
        helper === undefined || prepared.helper === null
          ? []
          : prepared.helper.palms.map((palm) => handVisibility(buffer, camera, helper.skin, helper.points, palm.hand)),
      person: share(null),
      head: share(isHead),
      weak: share(isWeak),
      moving: parts.length === 0 ? 1 : share(isMoving),
      headSize: sum(inSight, isHead) / person,
      weakSize: sum(inSight, isWeak) / person,
      movingSize: parts.length === 0 ? 1 : sum(inSight, isMoving) / person,
    };
  };
}

/** Which way the helper faces over the ground. */
export function helperFacing(prepared: PreparedScene): readonly [number, number] {
  if (prepared.helper === null) return [0, 0];
  const [x, y] = rotate(prepared.helper.reach.configuration.rootRotation, [1, 0, 0]);
  return [x, y];
}
