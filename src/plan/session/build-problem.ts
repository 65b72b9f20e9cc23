import { POSITIONS, TRANSITIONS } from "../../practice/catalogue.ts";
import type { PositionId } from "../../practice/codes.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import type { RungToday } from "../assess/rung-today.ts";
import type { Findings } from "../findings.ts";
import type { Locks, Option, SessionProblem } from "../optimiser/problem.ts";
import { type DoseToday, dosesFor } from "./dose-today.ts";
import { type LadderStepToday, stepOnLadder } from "./ladder-step.ts";
import { needsOf } from "./needs.ts";
import { LOST_AFTER, LOST_BEFORE } from "./needs.data.ts";
import type { Ways } from "./ways.ts";

/** What an option of the problem stands for. */
export interface OptionMeaning {
  readonly today: RungToday;
  readonly dose: DoseToday;
}
export interface BuiltProblem {
  readonly problem: SessionProblem;
  readonly meanings: ReadonlyMap<string, OptionMeaning>;
  readonly steps: ReadonlyMap<string, LadderStepToday>;
  readonly arrival: PositionId;
  readonly workingMinutes: number;
}

/** Everything in one currency: a first unit toward a main goal is worth about 45 to 105 points (judgement, shown in words). */
const PRICES = { kneelDown: 12, sideChange: 6, helperPlace: 4, movingHalfMinute: 1, itemShort: 40 } as const;
/** A change against last time has to earn this much, unless there is a reason for it. */
const CHANGE = 110;
const SHIFT = 60;
const FRESH_FIRST = 6;
const ALL_STRENGTH = 100;

/** Minutes of a slot in which something is really done. */
export function workingMinutes(slotMinutes: number): number {
  return Math.max(0, Math.floor((slotMinutes - LOST_BEFORE - LOST_AFTER) * 2) / 2);
}

/** Puts today's eligible rungs, the ways between positions and the wishes into the session problem. */
export function buildProblem(
  findings: Findings,
  precautions: readonly PrecautionFinding[],
  rungs: readonly RungToday[],
  ways: Ways,
  slotMinutes: number,
  locks: Locks,
): BuiltProblem {
  const arrival: PositionId = findings.place === "bed" ? "supine" : "short-sitting";
  const needs = needsOf(findings);
  const last = findings.previous[findings.previous.length - 1];
  const steps = new Map<string, LadderStepToday>();
  for (const { activity } of rungs) {
    if (steps.has(activity.id)) continue;
    const step = stepOnLadder(findings, activity);
    if (step !== null) steps.set(activity.id, step);
  }
  const eligible = rungs.filter((each) => each.eligible);
  const meanings = new Map<string, OptionMeaning>();
  const options: Option[] = [];
  for (const today of eligible) {
    dosesFor(today, precautions, findings.ageYears).forEach((dose, k) => {
      const id = `${today.activity.id}/${today.rung.id}/${k}`;
      meanings.set(id, { today, dose });
      options.push({
        id,
        rung: `${today.activity.id}/${today.rung.id}`,
        activity: today.activity.id,
        ladderIndex: today.index,
        position: today.activity.position,
        helperPlace: `${today.rung.helper.pose} ${today.rung.helper.at.beside}`,
        halfMinutes: dose.halfMinutes,
        strength: dose.strength,
        units: unitsOf(today, dose),
        worth: worthOf(findings, today, steps.get(today.activity.id) ?? null) - (k === 0 ? 0 : 4),
        freshnessLimit: isHard(today) ? 60 : null,
        freshnessCost: isHard(today) ? FRESH_FIRST : 0,
        prerequisite: prerequisiteOf(findings, today, eligible),
        // One rung of a ladder a session: the neighbour waits for another day.
        substitutes: today.activity.id,
        change: changeOf(today, last?.items ?? null, steps.get(today.activity.id) ?? null),
      });
    });
  }
  const used = new Set<string>([
    ...options.map((option) => option.position),
    arrival,
    ...TRANSITIONS.flatMap((each) => [each.from, each.to]),
  ]);
  const positions = POSITIONS.filter((position) => used.has(position.id)).flatMap((position) => {
    const back = ways.back(position.id);
    if (back === null) return [];
    const entry = ways.between(arrival, position.id);
    return [
      {
        id: position.id,
        wayBack: { halfMinutes: halfMinutesOf(back.way.steps), strength: Math.round(back.way.strengthShare * 100) },
        canEnd: back.way.strengthShare <= 0.3,
        entry:
          entry === null
            ? null
            : {
                halfMinutes: halfMinutesOf(entry.steps),
                strength: Math.round(entry.strengthShare * 100),
                cost: entry.kneelDowns * PRICES.kneelDown + entry.sideChanges * PRICES.sideChange,
              },
      },
    ];
  });
  const known = new Set<string>(positions.map((position) => position.id));
  const links = TRANSITIONS.filter(
    (each) =>
      known.has(each.from) && known.has(each.to) && each.from !== each.to && ways.between(each.from, each.to) !== null,
  ).map((each) => ({
    id: each.id,
    from: each.from,
    to: each.to,
    halfMinutes: halfMinutesOf([each]),
    strength: Math.round(each.strengthShare * 100),
    ease: 0,
    threshold: null,
    kneelDowns: each.kneelDowns,
    sideChange: each.sideChange,
  }));
  const dropped = (last?.items ?? [])
    .filter((item) => item.done !== "notDone")
    .flatMap((item) => repeatedToday(item, eligible, steps));
  const problem: SessionProblem = {
    positions,
    links,
    options: options.filter((option) => known.has(option.position)),
    purposes: Object.entries(needs).map(([id, need]) => ({ id, need })),
    lastTime: dropped,
    locks,
    prices: PRICES,
    workingHalfMinutes: Math.round(workingMinutes(slotMinutes) * 2),
    strength: ALL_STRENGTH,
  };
  return { problem, meanings, steps, arrival, workingMinutes: workingMinutes(slotMinutes) };
}

/** Each move takes half a minute at least, as the session line counts it. */
const halfMinutesOf = (steps: readonly { readonly minutes: number }[]): number =>
  steps.reduce((sum, { minutes }) => sum + Math.max(1, Math.round(minutes * 2)), 0);

/** What is done first in the same session, until it has been seen (common practice: "look first" of each ladder). */
const FIRST: Readonly<Record<string, string>> = {
  "bars-strong-step": "bars-weak-stance/weight-to-weak",
  "bars-weak-step-and-walk": "bars-weak-stance/weight-to-weak",
  "half-kneel-weak-forward-hold": "tall-kneel-bench-hold-and-shift/strong-hand-hold",
  "half-kneel-strong-forward-rise": "tall-kneel-bench-hold-and-shift/strong-hand-hold",
  "heel-sit-to-tall-kneel": "tall-kneel-bench-hold-and-shift/strong-hand-hold",
  "hands-and-knees-lift": "hands-and-knees-rock/rock-back",
  "prone-on-elbows-lift-and-reach": "prone-on-elbows-hold-and-shift/flat-hold",
};

function prerequisiteOf(findings: Findings, today: RungToday, eligible: readonly RungToday[]): string | null {
  const first = FIRST[today.activity.id];
  if (first === undefined || today.seenDone) return null;
  const [activity, rung] = first.split("/");
  const before = eligible.find((each) => each.activity.id === activity && each.rung.id === rung);
  const logged = findings.previous.some((session) =>
    session.items.some((item) => item.activity === activity && item.done === "asPlanned"),
  );
  return before?.seenDone === true || logged ? null : first;
}

const isHard = (today: RungToday): boolean => today.asks !== null && today.asks.cautious > 0.6;

function unitsOf(today: RungToday, dose: DoseToday): Option["units"] {
  const full = dose.sets >= today.rung.dose.sets;
  return Object.entries(today.rung.trains).flatMap(([purpose, units]) => {
    const whole = full ? Math.round(units) : Math.max(0, Math.round(units / 2));
    return whole > 0 ? [{ purpose, units: whole }] : [];
  });
}

/** What a rung is worth by itself: near enough to its limit to train, the chosen approach followed, what was seen preferred. */
function worthOf(findings: Findings, today: RungToday, step: LadderStepToday | null): number {
  const effort = today.asks === null ? 0 : today.asks.cautious;
  let worth = effort < 0.15 ? -12 : effort < 0.3 ? 0 : effort <= 0.85 ? 14 : effort <= 1 ? 2 : -4;
  // A ladder not seen yet is entered low, and where it takes no push.
  if (today.seen === null && step === null)
    worth -= 5 * today.index + (today.help !== null && today.help.newtons > 0 ? 20 : 0);
  for (const limb of ["arm", "leg", "trunk"] as const) {
    if (findings.approach[limb] === "train" && today.rung.limbs[limb] === "train") worth += 6;
    if (findings.approach[limb] === "spare" && today.rung.limbs[limb] === "lend") worth -= 8;
  }
  if (today.help !== null && today.help.code <= 2) worth -= 10;
  if (today.seenDone) worth += 6;
  if (step !== null && step.today === today.index) worth += 10;
  return worth;
}

function changeOf(
  today: RungToday,
  last: readonly { readonly activity: string; readonly rung: string }[] | null,
  step: LadderStepToday | null,
): Option["change"] {
  if (last === null) return { kind: "kept", cost: 0 };
  const same = last.find((item) => item.activity === today.activity.id);
  if (same === undefined) return { kind: "new", cost: CHANGE };
  if (same.rung === today.rung.id)
    return {
      kind: "kept",
      cost: step !== null && step.step !== "stay" && step.last === today.index && step.today !== today.index ? 10 : 0,
    };
  return { kind: "shifted", cost: step !== null && step.today === today.index ? 0 : SHIFT };
}

/** What of last time is expected again: the rung the ladder has come to. What is barred today is dropped for nothing: it has a reason. */
function repeatedToday(
  item: { readonly activity: string; readonly rung: string },
  eligible: readonly RungToday[],
  steps: ReadonlyMap<string, LadderStepToday>,
): SessionProblem["lastTime"] {
  const own = eligible.filter((each) => each.activity.id === item.activity);
  const step = steps.get(item.activity);
  const target =
    (step === undefined ? undefined : own.find((each) => each.index === step.today)) ??
    own.find((each) => each.rung.id === item.rung);
  return target === undefined ? [] : [{ rung: `${item.activity}/${target.rung.id}`, dropCost: CHANGE }];
}
