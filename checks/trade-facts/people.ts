import { readFileSync } from "node:fs";
import { keepPeople, type PersonToday } from "../../src/app/engine/person-today.ts";
import type { CaseFile } from "../../src/app/contract/case-file.ts";
import { parseCase } from "../../src/app/contract/parse-case.ts";
import { scaleCapacities } from "../../src/mechanics/body/strength-capacities.ts";
import { evenStrengths, type Strengths } from "../../src/mechanics/body/strength-keys.ts";
import { type Balance, type ContactLoad, solveHabitual } from "../../src/mechanics/equilibrium/habitual.ts";
import type { StaticsOptions } from "../../src/mechanics/equilibrium/statics.ts";
import { prepareStatics } from "../../src/mechanics/equilibrium/statics.ts";
import { loadLinearSolver } from "../../src/mechanics/linear-program/linear-program.ts";
import type { PoseSpecification } from "../../src/mechanics/pose/specification.ts";
import { balanceOutline, type BalanceOutline } from "../../src/mechanics/reach/outline.ts";
import { poseOf } from "../../src/plan/assess/posed.ts";
import type { PreparedPose } from "../../src/plan/assess/prepared.ts";
import type { Activity, Rung } from "../../src/practice/activities/activity.ts";
import { ACTIVITIES } from "../../src/practice/catalogue.ts";
import type { Side } from "../../src/quantity/sides.ts";

const people = keepPeople(await loadLinearSolver());

export function readExample(name: string): CaseFile {
  const read = parseCase(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}
export const workOut = (file: CaseFile): PersonToday => people.today(file);
/** Post arm: arm grades 1 to 2, leg about 3, trunk 3. */
export const CASE_P = workOut(readExample("case-p"));
/** The same person with the arm returning. */
export const CASE_A = workOut(readExample("case-a"));
/** Equal limbs: every strength as is normal for size and age. */
export const EQUAL: readonly Strengths[] = [evenStrengths(1)];

export function findRung(name: string): { readonly activity: Activity; readonly rung: Rung } {
  for (const activity of ACTIVITIES)
    for (const rung of activity.rungs) if (`${activity.id}/${rung.id}` === name) return { activity, rung };
  throw new Error(`no rung ${name}`);
}

export interface Worked {
  readonly joint: string;
  readonly direction: string;
  readonly side: Side | null;
  readonly effort: number;
  /** Its own moment over what its own muscles have; the effort above it counts the whole joint where that has three axes. */
  readonly alone: number;
}
/** What a pose asks at the middle of the strengths given. */
export interface Asked {
  readonly held: true;
  readonly peak: number;
  /** Counted efforts, the largest first. */
  readonly efforts: readonly Worked[];
  readonly loads: readonly ContactLoad[];
  readonly prepared: PreparedPose;
}
export interface NotHeld {
  readonly held: false;
  readonly because: string;
}

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

const aloneOf = (effort: Balance["efforts"][number] | undefined): number =>
  effort === undefined || effort.capacity <= 0 ? 0 : effort.muscleMoment / effort.capacity;

/** Asks a pose of the person's body at some strengths; every figure is the middle one over them. */
export function ask(
  person: PersonToday,
  pose: PoseSpecification,
  strengths: readonly Strengths[],
  options: StaticsOptions = {},
): Asked | NotHeld {
  const prepared = person.keeper.prepare(pose);
  if (!prepared.possible) return { held: false, because: prepared.because };
  const statics =
    Object.keys(options).length === 0 ? prepared.statics : prepareStatics(person.body, prepared.pose, options);
  const solved: Balance[] = [];
  for (const each of strengths) {
    const balance = solveHabitual(statics, scaleCapacities(prepared.normal, each));
    if (!balance.balanced) return { held: false, because: balance.because };
    solved.push(balance);
  }
  const first = solved[Math.floor(solved.length / 2)];
  if (first === undefined) return { held: false, because: "no strength given" };
  const efforts = first.efforts
    .map((effort, i) => ({
      joint: effort.joint,
      direction: effort.direction,
      side: effort.side,
      counted: effort.counted,
      effort: middleOf(solved.map((balance) => balance.efforts[i]?.effort ?? 0)),
      alone: middleOf(solved.map((balance) => aloneOf(balance.efforts[i]))),
    }))
    .filter(({ counted }) => counted)
    .sort((a, b) => b.effort - a.effort);
  const loads = first.loads.map((load, i) => ({
    ...load,
    share: middleOf(solved.map((balance) => balance.loads[i]?.share ?? 0)),
  }));
  return {
    held: true,
    peak: middleOf(solved.map((balance) => balance.hardest?.effort ?? 0)),
    efforts,
    loads,
    prepared,
  };
}
export function askHeld(
  person: PersonToday,
  pose: PoseSpecification,
  strengths: readonly Strengths[],
  options: StaticsOptions = {},
): Asked {
  const asked = ask(person, pose, strengths, options);
  if (!asked.held) throw new Error(asked.because);
  return asked;
}
/** A rung as it is planned for this person: a spared weak arm sets no verdict. */
export const askRung = (person: PersonToday, name: string): Asked =>
  askHeld(person, poseOf(findRung(name).rung), person.draws);

export const effortOf = (asked: Asked, joint: string, direction: string, side: Side | null): number =>
  asked.efforts.find((each) => each.joint === joint && each.direction === direction && each.side === side)?.effort ?? 0;

export const shareOn = (asked: Asked, patch: RegExp, side?: Side): number =>
  asked.loads
    .filter((load) => patch.test(load.patch) && (side === undefined || load.side === side))
    .reduce((sum, load) => sum + load.share, 0);

export function nameOf({ joint, direction, side }: Worked): string {
  return `${side === null ? "" : `${side} `}${joint} ${direction}`;
}
export const topThree = (asked: Asked): string =>
  asked.efforts
    .slice(0, 3)
    .map((each) => `${nameOf(each)} ${each.effort.toFixed(2)}`)
    .join(", ");

export function outline(person: PersonToday, pose: PoseSpecification, strengths: readonly Strengths[]): BalanceOutline {
  const stations = person.keeper.stations(pose);
  const own = strengths[Math.floor(strengths.length / 2)];
  if (stations === null || own === undefined) throw new Error("no outline: the pose is not possible");
  const answer = balanceOutline(stations, own);
  if (!answer.balanced) throw new Error(answer.because);
  return answer;
}
export const sayOutline = (answer: BalanceOutline): string =>
  answer.directions.map(({ towards, metres, what }) => `${towards} ${metres.toFixed(3)} m (${what})`).join("; ");
