import type { Side } from "../../quantity/sides.ts";
import type { Vector } from "../../quantity/vectors.ts";
import type { AngleId } from "../body/names.ts";
import type { PatchId } from "../body/patches.ts";
import { LIMB_DIRECTIONS, MID_DIRECTIONS } from "../body/strength-directions.data.ts";
import type { LimbAngle, MidAngle } from "../body/names.ts";
import type { StrengthId } from "../body/strength-keys.ts";
import type { Capacities } from "../body/strength-capacities.ts";
import { shareByCubes, type Sharing } from "./cubes.ts";
import { jointEfforts } from "./effort-measure.ts";
import { whyNoBalance } from "./feasible.ts";
import type { Joint } from "./joints.ts";
import type { Statics } from "./statics.ts";

/** How hard one joint works one way. */
export interface JointEffort {
  /** Plain name: hip, knee, trunk, shoulder girdle. */
  readonly joint: string;
  readonly angle: AngleId;
  /** Plain name of the direction the muscles push in. */
  readonly direction: string;
  readonly side: Side | null;
  /** Moment about this axis by the joint as a whole [N.m]. */
  readonly moment: number;
  /** The part muscles carry once joint ends and two-joint muscles are counted [N.m]; effort is this over capacity. */
  readonly muscleMoment: number;
  readonly capacity: number;
  /** 1 is all there is. On the leading direction of a joint with three axes: of the joint as one body. */
  readonly effort: number;
  readonly limitedBy: "muscle" | "jointEnd";
  /** What it rests on, where a joint's end carries. */
  readonly restsOn: string | null;
  /** False for limp ends, and for the lesser of joints in series: not part of the verdict. */
  readonly counted: boolean;
  readonly strength: StrengthId | null;
}

/** What one patch of skin carries. */
export interface ContactLoad {
  readonly patch: PatchId;
  readonly side: Side | null;
  /** On another part of the same body: it adds nothing to what the ground carries. */
  readonly internal: boolean;
  /** Force along the surface's normal [N]; negative where a gripping hand pulls. */
  readonly newtons: number;
  /** As a share of body weight. */
  readonly share: number;
  /** Whole force on the body [N], room. */
  readonly force: Vector;
  /** Where it acts on the whole [m], room. */
  readonly at: Vector;
}

/** A pose in balance: efforts, loads, and how well the whole adds up. */
export interface Balance {
  readonly balanced: true;
  readonly efforts: readonly JointEffort[];
  readonly loads: readonly ContactLoad[];
  /** The hardest worked counted direction; null where nothing works. */
  readonly hardest: JointEffort | null;
  /** Largest error of the balance [N, N.m]. */
  readonly residual: number;
  /** Share the weak side took where it is the person's own; null where the pose decides. */
  readonly weakShare: number | null;
  readonly sharing: Sharing;
}
export interface NoBalance {
  readonly balanced: false;
  readonly because: string;
  /** What ends it: no contact there, or too little friction. */
  readonly endedBy: "contact" | "friction";
  readonly residual: number;
}

/** Largest error of the balance that passes [N, N.m]. */
export const BALANCED_WITHIN = 0.1;

/**
 * How a person habitually shares the load of a pose: the sharing with the least sum of cubed efforts.
 * @returns efforts and loads; or why the pose cannot be in balance at all
 */
export function solveHabitual(statics: Statics, capacities: Capacities): Balance | NoBalance {
  const sharing = shareHabitually(statics, capacities);
  if (sharing.residual > BALANCED_WITHIN) return whyNoBalance(statics, capacities, sharing.residual);
  return describeBalance(statics, sharing);
}

/**
 * The bare numbers of solveHabitual, for loops: the given sharing between the sides, or the nearest that balance allows.
 * @param start answer of a neighbour: other strengths, another push from outside, or a pose a little off
 */
export function shareHabitually(statics: Statics, capacities: Capacities, start?: Sharing): Sharing {
  const first = shareByCubes(statics, capacities, start === undefined ? {} : { start });
  if (first.residual <= BALANCED_WITHIN || statics.sharing === null) return first;
  return shareByCubes(statics, capacities, { keepSharing: "near" });
}

/** Puts names and units to a solved sharing. */
export function describeBalance(statics: Statics, sharing: Sharing): Balance {
  const efforts = describeEfforts(statics, sharing);
  let hardest: JointEffort | null = null;
  for (const each of efforts) if (each.counted && (hardest === null || each.effort > hardest.effort)) hardest = each;
  return {
    balanced: true,
    efforts,
    loads: describeLoads(statics, sharing.x),
    hardest,
    residual: sharing.residual,
    weakShare: statics.sharing === null ? null : weakShareOf(statics, sharing.x),
    sharing,
  };
}

/** The bare figures behind a sharing's efforts, in the order of `efforts`: joint by joint, direction by direction. */
export interface EffortFigures {
  readonly effort: Float64Array;
  readonly capacity: Float64Array;
  /** Place in the order of the hardest worked counted direction; -1 where nothing works. */
  readonly hardest: number;
}

/** The same figures as describeBalance gives, without names, for loops over strengths. */
export function effortFigures(statics: Statics, sharing: Sharing): EffortFigures {
  const { joints, angles } = statics;
  const { moments, ratios, allowed } = sharing;
  const effort = new Float64Array(angles);
  const capacity = new Float64Array(angles);
  const whole = new Float64Array(joints.length);
  jointEfforts(joints, ratios, whole);
  const series = mostInSeries(joints, whole);
  let hardest = -1;
  let next = 0;
  joints.forEach((joint, k) => {
    const own = whole[k] ?? 0;
    const lesser = joint.series !== null && own < (series.get(joint.series) ?? 0);
    const lead = leadOf(joint, ratios);
    for (const i of joint.angles) {
      effort[next] = joint.ball && i === lead ? own : (ratios[i] ?? 0);
      capacity[next] = ((moments[i] ?? 0) >= 0 ? allowed.up[i] : allowed.down[i]) ?? 0;
      const counts = allowed.counted[i] === 1 && !lesser;
      if (counts && (hardest < 0 || (effort[next] ?? 0) > (effort[hardest] ?? 0))) hardest = next;
      next++;
    }
  });
  return { effort, capacity, hardest };
}

function mostInSeries(joints: readonly Joint[], whole: Float64Array): Map<number, number> {
  const series = new Map<number, number>();
  joints.forEach((joint, k) => {
    if (joint.series !== null) series.set(joint.series, Math.max(series.get(joint.series) ?? 0, whole[k] ?? 0));
  });
  return series;
}

/** The axis of a joint that works hardest. */
function leadOf(joint: Joint, ratios: Float64Array): number {
  let lead = joint.angles[0] ?? 0;
  for (const i of joint.angles) if ((ratios[i] ?? 0) > (ratios[lead] ?? 0)) lead = i;
  return lead;
}

function describeEfforts(statics: Statics, sharing: Sharing): JointEffort[] {
  const { body, joints, columns, stops, unknowns, own, carried } = statics;
  const { x, moments, ratios, allowed } = sharing;
  const efforts: JointEffort[] = [];
  const whole = new Float64Array(joints.length);
  jointEfforts(joints, ratios, whole);
  const series = mostInSeries(joints, whole);
  joints.forEach((joint, k) => {
    const effort = whole[k] ?? 0;
    const lesser = joint.series !== null && effort < (series.get(joint.series) ?? 0);
    const lead = leadOf(joint, ratios);
    for (const i of joint.angles) {
      const m = moments[i] ?? 0;
      const sign = m >= 0 ? 0 : 1;
      const id = body.angles[i] ?? "lumbarFlexion";
      const { words, strength } = wordsOf(id, sign);
      let net = own[i] ?? 0;
      for (let j = 0; j < columns.length; j++) net -= (carried[i * unknowns + j] ?? 0) * (x[j] ?? 0);
      const stop = stops.findIndex((each) => each.angle === i);
      const borne = stop < 0 ? 0 : (x[columns.length + stop] ?? 0);
      efforts.push({
        joint: joint.name,
        angle: id,
        direction: words,
        side: body.segments[joint.segment]?.side ?? null,
        moment: net,
        muscleMoment: Math.abs(m),
        capacity: (sign === 0 ? allowed.up[i] : allowed.down[i]) ?? 0,
        effort: joint.ball && i === lead ? effort : (ratios[i] ?? 0),
        limitedBy: borne > Math.max(0.3, Math.abs(m)) ? "jointEnd" : "muscle",
        restsOn: borne > 0.3 ? (stops[stop]?.words ?? null) : null,
        counted: allowed.counted[i] === 1 && !lesser,
        strength,
      });
    }
  });
  return efforts;
}

interface AngleWords {
  readonly words: string;
  readonly strength: StrengthId | null;
}
const knownWords = [new Map<AngleId, AngleWords>(), new Map<AngleId, AngleWords>()] as const;

/** Plain words and muscle group of an angle turned up (0) or down (1). */
export function wordsOf(id: AngleId, sign: 0 | 1): AngleWords {
  const known = knownWords[sign].get(id) ?? findWords(id, sign);
  knownWords[sign].set(id, known);
  return known;
}

function findWords(id: AngleId, sign: 0 | 1): AngleWords {
  const [name, side] = id.split(".");
  if (side === "weak" || side === "strong") {
    const row = LIMB_DIRECTIONS[name as LimbAngle][sign];
    return { words: row.words, strength: `${row.key}.${side}` };
  }
  const row = MID_DIRECTIONS[name as MidAngle][sign];
  return { words: row.words, strength: row.trunk === undefined ? null : `trunk.${row.trunk}` };
}

function describeLoads(statics: Statics, x: Float64Array): ContactLoad[] {
  const { pose, columns, weight, body } = statics;
  return pose.contacts.map((contact, index): ContactLoad => {
    let newtons = 0;
    let pushed = 0;
    const force: [number, number, number] = [0, 0, 0];
    const at: [number, number, number] = [0, 0, 0];
    columns.forEach((column, j) => {
      if (column.contact !== index) return;
      const amount = x[j] ?? 0;
      newtons += column.load * amount;
      pushed += amount;
      for (const k of [0, 1, 2] as const) {
        force[k] += column.force[k] * amount;
        at[k] += column.at[k] * amount;
      }
    });
    const middle = contact.points[0]?.at ?? [0, 0, 0];
    return {
      patch: contact.patch,
      side: body.segments[contact.segment]?.side ?? sideOfPatch(contact.patch),
      internal: contact.other !== null,
      newtons,
      share: newtons / weight,
      force,
      at: pushed > 1e-6 ? [at[0] / pushed, at[1] / pushed, at[2] / pushed] : middle,
    };
  });
}

const sideOfPatch = (patch: PatchId): Side | null =>
  patch.endsWith(".weak") ? "weak" : patch.endsWith(".strong") ? "strong" : null;

function weakShareOf(statics: Statics, x: Float64Array): number {
  const { columns, sharing, pose } = statics;
  let weak = 0;
  let all = 0;
  columns.forEach((column, j) => {
    if ((sharing?.row[j] ?? 0) === 0) return;
    const load = column.load * (x[j] ?? 0);
    all += load;
    if (pose.contacts[column.contact]?.patch.endsWith(".weak") === true) weak += load;
  });
  return all > 0 ? weak / all : 0;
}
