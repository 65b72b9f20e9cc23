import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import type { Sharing } from "../../mechanics/equilibrium/cubes.ts";
import { STRENGTH_IDS, type StrengthId } from "../../mechanics/body/strength-keys.ts";
import {
  BALANCED_WITHIN,
  describeBalance,
  type JointEffort,
  shareHabitually,
} from "../../mechanics/equilibrium/habitual.ts";
import type { PreparedPose } from "../assess/prepared.ts";
import { namedStrengths } from "../assess/efforts.ts";
import type { EffortModel } from "./evidence.ts";
import { SLOT_COUNT } from "./slots.ts";

/** One habitual solution kept, part by part: a part is one muscle group's share of one joint's effort. */
interface Kept extends Parts {
  readonly sharing: Sharing;
}
interface Parts {
  /** Number of the strength behind each part; one past the last slot where none is. */
  readonly slots: Int32Array;
  /** Effort of each part times the strength it was solved at: divided by today's strength it is today's effort. */
  readonly loads: Float64Array;
  /** Number of the first part of each joint, and one past the last part. */
  readonly starts: Int32Array;
  readonly names: readonly string[];
  /** Effort of each joint as solved, cubed, and all together. */
  readonly own: Float64Array;
  readonly ownSum: number;
}

const SLOT_OF: ReadonlyMap<StrengthId, number> = new Map(STRENGTH_IDS.map((id, i) => [id, i]));
/** A healthy body's effort above this is scaled away: a healthy person passes every task of the look (judgement). */
const HEALTHY_EFFORT = 0.33;
const LEAST = 1e-3;
/** How far from the upper bound toward the lower one the answer is taken to lie, in logarithms: near a kept solution the upper is the closer (derived: 175 strengths solved again; ln effort then off by 0.12, unbiased). */
const TOWARD_BELOW = 0.35;

/**
 * How hard a pose is at any strengths, without solving again: from a few kept solutions, bounds from both sides on the
 * cube norm of the efforts, and a point between. Above: the kept forces stay what they are. Below: no sharing of the
 * load does better than the kept solution's own weights allow.
 * @param anchors strengths at which it is solved once
 * @returns null where the pose cannot be held at full strength
 */
export function keepTaskEfforts(prepared: PreparedPose, anchors: readonly Float64Array[]): EffortModel | null {
  const healthy = keep(prepared, new Float64Array(SLOT_COUNT).fill(1));
  return healthy === null ? null : effortsFrom(prepared, healthy, solveAt(prepared, [healthy], anchors));
}

/** Further solutions, each started from the one before it. */
function solveAt(prepared: PreparedPose, known: readonly Kept[], anchors: readonly Float64Array[]): Kept[] {
  const kept = [...known];
  for (const anchor of anchors) {
    const next = keep(prepared, anchor, kept[kept.length - 1]?.sharing);
    if (next !== null) kept.push(next);
  }
  return kept;
}

function effortsFrom(prepared: PreparedPose, healthy: Kept, kept: readonly Kept[]): EffortModel {
  const scale = Math.log(Math.max(1, Math.cbrt(healthy.ownSum) / HEALTHY_EFFORT));
  const inverse = new Float64Array(SLOT_COUNT + 1).fill(1);
  let last = healthy;
  /** Of all kept solutions the one whose forces are cheapest at these strengths. */
  const cheapest = (strengths: Float64Array): { above: number; by: Kept } => {
    for (let i = 0; i < SLOT_COUNT; i++) inverse[i] = 1 / Math.max(strengths[i] ?? 1, LEAST);
    // The last answer's is likely the cheapest again: the others are then given up early.
    let by = last;
    let above = cubes(last, inverse, Number.POSITIVE_INFINITY);
    for (const each of kept) {
      if (each === last) continue;
      const up = cubes(each, inverse, above);
      if (up < above) {
        above = up;
        by = each;
      }
    }
    last = by;
    return { above, by };
  };
  return {
    logEffort(strengths) {
      const { above, by } = cheapest(strengths);
      const below = Math.min(lower(by, inverse), above);
      return (
        ((1 - TOWARD_BELOW) * Math.log(Math.max(above, 1e-12)) + TOWARD_BELOW * Math.log(Math.max(below, 1e-12))) / 3 -
        scale
      );
    },
    logGradient(strengths, into) {
      into.fill(0);
      const { above, by } = cheapest(strengths);
      for (let j = 0; j < by.own.length; j++) {
        const sum = jointEffort(by, j, inverse);
        for (let k = by.starts[j] ?? 0; k < (by.starts[j + 1] ?? 0); k++) {
          const slot = by.slots[k] ?? SLOT_COUNT;
          if (slot < SLOT_COUNT)
            into[slot] = (into[slot] ?? 0) - (sum * sum * (by.loads[k] ?? 0) * (inverse[slot] ?? 1)) / above;
        }
      }
    },
    jointShare(strengths, name) {
      const { above, by } = cheapest(strengths);
      let own = 0;
      by.names.forEach((each, j) => {
        if (each === name || each.startsWith(`${name}.`)) own += jointEffort(by, j, inverse) ** 3;
      });
      return own / Math.max(above, 1e-12);
    },
    refined: (near) => effortsFrom(prepared, healthy, solveAt(prepared, kept, near)),
  };
}

function keep(prepared: PreparedPose, strengths: Float64Array, near?: Sharing): Kept | null {
  const floored = Float64Array.from(strengths, (s) => Math.max(s, 0.02));
  const capacities = scaleCapacities(prepared.normal, namedStrengths(floored));
  const sharing = shareHabitually(prepared.statics, capacities, near);
  if (sharing.residual > BALANCED_WITHIN) return null;
  return { ...groupJoints(describeBalance(prepared.statics, sharing).efforts, floored), sharing };
}

/** Joints with three axes are one effort, the sum over their parts; others are an effort each. */
function groupJoints(efforts: readonly JointEffort[], strengths: Float64Array): Parts {
  const groups = new Map<string, { name: string; slots: number[]; loads: number[]; effort: number }>();
  for (const effort of efforts) {
    if (!effort.counted || effort.capacity <= 0) continue;
    const part = Math.abs(effort.muscleMoment) / effort.capacity;
    if (part < 1e-6) continue;
    const name = `${effort.joint}${effort.side === null ? "" : `.${effort.side}`}`;
    const key = BALLS.has(effort.joint) ? name : `${name}|${effort.angle}`;
    const group = groups.get(key) ?? { name, slots: [], loads: [], effort: 0 };
    const slot = effort.strength === null ? SLOT_COUNT : (SLOT_OF.get(effort.strength) ?? SLOT_COUNT);
    group.slots.push(slot);
    group.loads.push(part * (slot === SLOT_COUNT ? 1 : (strengths[slot] ?? 1)));
    group.effort += part;
    groups.set(key, group);
  }
  // The hardest first: a dear solution is then seen to be dear at once.
  const joints = [...groups.values()].sort((a, b) => b.effort - a.effort);
  const starts = [0];
  for (const joint of joints) starts.push((starts[starts.length - 1] ?? 0) + joint.slots.length);
  const own = Float64Array.from(joints, (joint) => joint.effort ** 3);
  return {
    slots: Int32Array.from(joints.flatMap((joint) => joint.slots)),
    loads: Float64Array.from(joints.flatMap((joint) => joint.loads)),
    starts: Int32Array.from(starts),
    names: joints.map((joint) => joint.name),
    own,
    ownSum: own.reduce((sum, each) => sum + each, 0),
  };
}

const BALLS = new Set(["hip", "shoulder", "trunk", "neck"]);

function jointEffort(kept: Kept, joint: number, inverse: Float64Array): number {
  let sum = 0;
  const end = kept.starts[joint + 1] ?? 0;
  for (let k = kept.starts[joint] ?? 0; k < end; k++)
    sum += (kept.loads[k] ?? 0) * (inverse[kept.slots[k] ?? SLOT_COUNT] ?? 1);
  return sum;
}

/** Cubed efforts at new strengths with the kept forces: no less than the best sharing's. Given up once past `enough`. */
function cubes(kept: Kept, inverse: Float64Array, enough: number): number {
  const { slots, loads, starts } = kept;
  let sum = 0;
  let k = 0;
  for (let j = 1; j < starts.length; j++) {
    const end = starts[j] ?? 0;
    let effort = 0;
    for (; k < end; k++) effort += (loads[k] ?? 0) * (inverse[slots[k] ?? SLOT_COUNT] ?? 1);
    sum += effort * effort * effort;
    if (sum >= enough) return sum;
  }
  return sum;
}

/** The dual bound: (sum e^3)^3 / (sum r^1.5 e^3)^2, with r how much stronger each joint is now. */
function lower(kept: Kept, inverse: Float64Array): number {
  let weighted = 0;
  for (let j = 0; j < kept.own.length; j++) {
    const own = kept.own[j] ?? 0;
    const after = jointEffort(kept, j, inverse);
    weighted += own * Math.sqrt(own / Math.max(after * after * after, 1e-27));
  }
  return kept.ownSum ** 3 / Math.max(weighted ** 2, 1e-18);
}
