import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import { STRENGTH_IDS, type StrengthId } from "../../mechanics/body/strength-keys.ts";
import { type JointEffort, solveHabitual } from "../../mechanics/equilibrium/habitual.ts";
import type { PreparedPose } from "../assess/prepared.ts";
import { namedStrengths } from "../assess/efforts.ts";
import type { EffortModel } from "./evidence.ts";
import { SLOT_COUNT } from "./slots.ts";

/** One habitual solution kept: the strengths it was solved for and what each joint's parts took. */
interface Kept {
  readonly strengths: Float64Array;
  readonly joints: readonly KeptJoint[];
}
interface KeptJoint {
  readonly name: string;
  /** Number of the strength behind each part, -1 where none is; and the part's effort. */
  readonly slots: readonly number[];
  readonly efforts: readonly number[];
}

const SLOT_OF: ReadonlyMap<StrengthId, number> = new Map(STRENGTH_IDS.map((id, i) => [id, i]));
/** A healthy body's effort above this is scaled away: a healthy person passes every task of the look (judgement). */
const HEALTHY_EFFORT = 0.33;
const LEAST = 1e-3;

/**
 * How hard a pose is at any strengths, without solving again: from a few kept solutions, bounds from both sides on the
 * cube norm of the efforts, and their geometric mean. Above: the kept forces stay what they are. Below: no sharing of the
 * load does better than the kept solution's own weights allow.
 * @param anchors strengths at which it is solved once
 * @returns null where the pose cannot be held at full strength
 */
export function keepTaskEfforts(prepared: PreparedPose, anchors: readonly Float64Array[]): EffortModel | null {
  const healthy = keep(prepared, new Float64Array(SLOT_COUNT).fill(1));
  if (healthy === null) return null;
  const kept = [healthy, ...anchors.flatMap((each) => keep(prepared, each) ?? [])];
  const scale = Math.log(Math.max(1, Math.cbrt(cubes(healthy, healthy.strengths)) / HEALTHY_EFFORT));
  const tightest = (strengths: Float64Array): { above: number; below: number; by: Kept } => {
    let above = Number.POSITIVE_INFINITY;
    let below = 0;
    let by = healthy;
    for (const each of kept) {
      const up = cubes(each, strengths);
      if (up < above) {
        above = up;
        by = each;
      }
      below = Math.max(below, lower(each, strengths));
    }
    return { above, below: Math.min(below, above), by };
  };
  return {
    logEffort(strengths) {
      const { above, below } = tightest(strengths);
      return (Math.log(Math.max(above, 1e-12)) + Math.log(Math.max(below, 1e-12))) / 6 - scale;
    },
    logGradient(strengths, into) {
      into.fill(0);
      const { above, by } = tightest(strengths);
      for (const joint of by.joints) {
        const sum = jointEffort(joint, by.strengths, strengths);
        joint.slots.forEach((slot, k) => {
          if (slot >= 0) into[slot] = (into[slot] ?? 0) - (sum * sum * (joint.efforts[k] ?? 0) * ratio(by.strengths, strengths, slot)) / above;
        });
      }
    },
    jointShare(strengths, name) {
      const { above, by } = tightest(strengths);
      let own = 0;
      for (const joint of by.joints) if (joint.name === name || joint.name.startsWith(`${name}.`)) own += jointEffort(joint, by.strengths, strengths) ** 3;
      return own / Math.max(above, 1e-12);
    },
  };
}

function keep(prepared: PreparedPose, strengths: Float64Array): Kept | null {
  const floored = Float64Array.from(strengths, (s) => Math.max(s, 0.02));
  const balance = solveHabitual(prepared.statics, scaleCapacities(prepared.normal, namedStrengths(floored)));
  return balance.balanced ? { strengths: floored, joints: groupJoints(balance.efforts) } : null;
}

/** Joints with three axes are one effort, the sum over their parts; others are an effort each. */
function groupJoints(efforts: readonly JointEffort[]): KeptJoint[] {
  const groups = new Map<string, { name: string; slots: number[]; efforts: number[] }>();
  for (const effort of efforts) {
    if (!effort.counted || effort.capacity <= 0) continue;
    const part = Math.abs(effort.muscleMoment) / effort.capacity;
    if (part < 1e-6) continue;
    const name = `${effort.joint}${effort.side === null ? "" : `.${effort.side}`}`;
    const key = BALLS.has(effort.joint) ? name : `${name}|${effort.angle}`;
    const group = groups.get(key) ?? { name, slots: [], efforts: [] };
    group.slots.push(effort.strength === null ? -1 : (SLOT_OF.get(effort.strength) ?? -1));
    group.efforts.push(part);
    groups.set(key, group);
  }
  return [...groups.values()];
}

const BALLS = new Set(["hip", "shoulder", "trunk", "neck"]);

const ratio = (kept: Float64Array, now: Float64Array, slot: number): number => (kept[slot] ?? 1) / Math.max(now[slot] ?? 1, LEAST);

function jointEffort(joint: KeptJoint, kept: Float64Array, now: Float64Array): number {
  let sum = 0;
  joint.slots.forEach((slot, k) => {
    sum += (joint.efforts[k] ?? 0) * (slot < 0 ? 1 : ratio(kept, now, slot));
  });
  return sum;
}

/** Cubed efforts at new strengths with the kept forces: no less than the best sharing's. */
function cubes(kept: Kept, now: Float64Array): number {
  let sum = 0;
  for (const joint of kept.joints) {
    const effort = jointEffort(joint, kept.strengths, now);
    sum += effort * effort * effort;
  }
  return sum;
}

/** The dual bound: (sum e^3)^3 / (sum r^1.5 e^3)^2, with r how much stronger each joint is now. */
function lower(kept: Kept, now: Float64Array): number {
  let own = 0;
  let weighted = 0;
  for (const joint of kept.joints) {
    const before = joint.efforts.reduce((sum, each) => sum + each, 0);
    const after = jointEffort(joint, kept.strengths, now);
    own += before * before * before;
    const stronger = before / Math.max(after, 1e-9);
    weighted += before * before * before * stronger * Math.sqrt(stronger);
  }
  return own ** 3 / Math.max(weighted ** 2, 1e-18);
}
