import { balanceOutline, type BalanceOutline } from "../../mechanics/reach/outline.ts";
import { POSITIONS, TRANSITIONS } from "../../practice/catalogue.ts";
import type { PositionId, PurposeId } from "../../practice/codes.ts";
import type { Position } from "../../practice/positions/position.ts";
import type { Transition } from "../../practice/transitions/transition.ts";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import { poseOf } from "../assess/posed.ts";
import type { PoseKeeper } from "../assess/prepared.ts";
import type { RungToday } from "../assess/rung-today.ts";
import type { Findings } from "../findings.ts";
import { chooseGuard, type Guard, quadrantOf } from "../guard.ts";
import type { Plan } from "../optimiser/problem.ts";
import type { BuiltProblem } from "./build-problem.ts";
import type { DoseToday } from "./dose-today.ts";
import type { LadderStepToday } from "./ladder-step.ts";
import { ALL_PURPOSES, goalFor, needsOf, PURPOSE_WORDS } from "./needs.ts";
import { LOST_AFTER, LOST_BEFORE } from "./needs.data.ts";
import { effortSentence } from "./sentences.ts";
import type { Ways } from "./ways.ts";

/** One item of today's session, in weak and strong words. */
export interface PlannedItem {
  readonly today: RungToday;
  readonly dose: DoseToday;
  readonly minutes: number;
  readonly purpose: PurposeId;
  readonly because: readonly string[];
  readonly guard: Guard | null;
  /** Worked out, as the guard is, when first asked for. */
  readonly outline: BalanceOutline | null;
  readonly step: LadderStepToday | null;
}
export interface PlannedMove {
  /** Number of the item it leads to; the number of items for the way back. */
  readonly beforeItem: number;
  readonly transition: Transition;
}
export interface HelperMove {
  readonly beforeItem: number;
  readonly from: string;
  readonly to: string;
  readonly words: string;
}
/** A stretch of the session line: what goes on, and how high the centre of mass is above the mat [m]. */
export interface Stretch {
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly position: PositionId;
  readonly centreHeight: number;
}
export interface Session {
  readonly items: readonly PlannedItem[];
  readonly moves: readonly PlannedMove[];
  readonly helperMoves: readonly HelperMove[];
  readonly wayBack: {
    readonly from: PositionId;
    readonly to: PositionId;
    readonly minutes: number;
    readonly planned: readonly string[];
    readonly hurry: readonly string[];
  } | null;
  readonly timeline: readonly Stretch[];
  readonly minutes: number;
  readonly workingMinutes: number;
}

const MAT_HEIGHT = 0.5;

export function positionRow(id: PositionId): Position {
  const row = POSITIONS.find((position) => position.id === id);
  if (row === undefined) throw new ProgrammingError(`no position ${id}`);
  return row;
}

function transitionById(id: string): Transition {
  const found = TRANSITIONS.find((transition) => transition.id === id);
  if (found === undefined) throw new ProgrammingError(`no transition ${id}`);
  return found;
}

const outlines = new WeakMap<RungToday, BalanceOutline | null>();

/** What is known of the outline of one rung: computed once for the strengths in the middle of what is believed. */
export function outlineOf(keeper: PoseKeeper, today: RungToday): BalanceOutline | null {
  let known = outlines.get(today);
  if (known === undefined) {
    known = workOutOutline(keeper, today);
    outlines.set(today, known);
  }
  return known;
}

function workOutOutline(keeper: PoseKeeper, today: RungToday): BalanceOutline | null {
  if (today.asks === null) return null;
  const stations = keeper.stations(poseOf(today.rung));
  if (stations === null) return null;
  const outline = balanceOutline(stations, today.asks.middleStrengths);
  return outline.balanced ? outline : null;
}

export function guardOf(findings: Findings, today: RungToday, outline: BalanceOutline | null): Guard | null {
  const least = outline === null ? null : outline.least.towards;
  return chooseGuard(findings, today.activity.position, today.rung.helper.pose, least);
}
export { quadrantOf };

/** Turns the chosen options into the session a therapist reads: items with their reasons, moves, the helper's own moves, the line. */
export function unfoldSession(
  findings: Findings,
  built: BuiltProblem,
  chosen: Plan,
  ways: Ways,
  keeper: PoseKeeper,
): Session {
  const needs = needsOf(findings);
  const items: PlannedItem[] = [];
  const moves: PlannedMove[] = [];
  const timeline: Stretch[] = [];
  let at = built.arrival;
  let clock = LOST_BEFORE;
  const restHeight = (id: PositionId) => heightOf(findings, keeper, positionRow(id).pose);
  timeline.push({ fromMinute: 0, toMinute: LOST_BEFORE, position: at, centreHeight: restHeight(at) });
  const covered = new Map<PurposeId, number>();
  const minded = new Set<string>();
  const go = (steps: readonly Transition[]) => {
    for (const transition of steps) {
      moves.push({ beforeItem: items.length, transition });
      const minutes = Math.max(0.5, Math.round(transition.minutes * 2) / 2);
      timeline.push({
        fromMinute: clock,
        toMinute: clock + minutes,
        position: transition.to,
        centreHeight: restHeight(transition.to),
      });
      clock += minutes;
      at = transition.to;
    }
  };
  chosen.blocks.forEach((block, k) => {
    go(k === 0 ? (ways.between(at, block.position as PositionId)?.steps ?? []) : block.links.map(transitionById));
    for (const id of block.options) {
      const meaning = built.meanings.get(id);
      if (meaning === undefined) throw new ProgrammingError(`no option ${id}`);
      const { today, dose } = meaning;
      const purpose = mainPurpose(today, needs, covered);
      const step = built.steps.get(today.activity.id) ?? null;
      const minutes = dose.halfMinutes / 2;
      items.push({
        today,
        dose,
        minutes,
        purpose,
        because: becauseOf(findings, today, purpose, step, minded),
        // Worked out when first asked for: of a plan that is only compared nobody asks.
        get guard() {
          return guardOf(findings, today, outlineOf(keeper, today));
        },
        get outline() {
          return outlineOf(keeper, today);
        },
        step,
      });
      for (const each of Object.keys(today.rung.trains) as PurposeId[]) covered.set(each, (covered.get(each) ?? 0) + 1);
      timeline.push({
        fromMinute: clock,
        toMinute: clock + minutes,
        position: today.activity.position,
        centreHeight: heightOf(findings, keeper, poseOf(today.rung)),
      });
      clock += minutes;
    }
  });
  let wayBack: Session["wayBack"] = null;
  if (items.length > 0) {
    const from = at;
    const back = ways.back(from);
    const before = clock;
    go(back?.way.steps ?? []);
    const row = positionRow(from);
    wayBack = { from, to: at, minutes: clock - before, planned: row.wayOut.planned, hurry: row.wayOut.hurry };
    timeline.push({ fromMinute: clock, toMinute: clock + LOST_AFTER, position: at, centreHeight: restHeight(at) });
    clock += LOST_AFTER;
  }
  return {
    items,
    moves,
    helperMoves: helperMovesOf(items, moves),
    wayBack,
    timeline: items.length === 0 ? [] : timeline,
    minutes: items.length === 0 ? 0 : clock,
    workingMinutes: built.workingMinutes,
  };
}

/** The purpose an item is mainly for: the most wanted one it trains that is not covered yet. */
function mainPurpose(
  today: RungToday,
  needs: Readonly<Record<PurposeId, number>>,
  covered: ReadonlyMap<PurposeId, number>,
): PurposeId {
  let best: PurposeId = today.activity.purposes[0] ?? "trunkControl";
  let most = Number.NEGATIVE_INFINITY;
  for (const purpose of ALL_PURPOSES) {
    const units = today.rung.trains[purpose] ?? 0;
    if (units <= 0) continue;
    const value = (units * needs[purpose]) / (1 + 2 * (covered.get(purpose) ?? 0));
    if (value > most + 1e-9) {
      most = value;
      best = purpose;
    }
  }
  return best;
}

function becauseOf(
  findings: Findings,
  today: RungToday,
  purpose: PurposeId,
  step: LadderStepToday | null,
  minded: Set<string>,
): string[] {
  const goal = goalFor(findings, [purpose]);
  const reasons = [
    `For ${PURPOSE_WORDS[purpose]}${goal === null ? "" : `, toward the goal "${goal}"`}. ${today.activity.purposeWords}`,
  ];
  if (step !== null && step.today === today.index) reasons.push(step.because);
  if (step !== null && step.trend !== null) reasons.push(`${step.trend.words} ${step.trend.tryThis}`);
  if (today.asks !== null) reasons.push(effortSentence(today.asks));
  if (today.seen !== null) reasons.push(today.seen.words);
  // What is to be minded everywhere is said at the first item it concerns, not on every line.
  for (const { detail } of today.mind) {
    if (minded.has(detail)) continue;
    minded.add(detail);
    reasons.push(detail);
  }
  return reasons;
}

/** Height of the centre of mass above the mat. Sitting and standing are posed from the floor, the raised mat is half a metre up. */
function heightOf(findings: Findings, keeper: PoseKeeper, specification: Parameters<PoseKeeper["prepare"]>[0]): number {
  const prepared = keeper.prepare(specification);
  if (!prepared.possible) return 0.2;
  const fromFloor = specification.contacts.some((contact) => contact.on === "floor" || contact.on === "seat");
  const mat = fromFloor && findings.place !== "floorMat" ? MAT_HEIGHT : 0;
  return Math.round((prepared.pose.centre[2] - mat) * 100) / 100;
}

/** Where the helper goes before each item, which hand stays, and that it is done before the person moves. */
function helperMovesOf(items: readonly PlannedItem[], moves: readonly PlannedMove[]): HelperMove[] {
  const found: HelperMove[] = [];
  let place = "beside the person at the edge";
  items.forEach((item, k) => {
    const to = item.today.rung.helper.place;
    const path = moves.filter((move) => move.beforeItem === k);
    const steps = path.flatMap((move) =>
      move.transition.steps.filter((step) => step.whoMoves !== "person").map((step) => step.helper),
    );
    if (to !== place) {
      const knee = item.today.rung.helper.knee;
      found.push({
        beforeItem: k,
        from: place,
        to,
        words: [
          `${to} Be there before the person moves; one hand stays on.`,
          ...(knee === null ? [] : [knee]),
          ...steps.slice(0, 2),
        ].join(" "),
      });
      place = to;
    }
  });
  return found;
}
