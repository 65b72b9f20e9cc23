import { coverageGain, sizeLimits } from "./problem.ts";
import type { Link, Option, Plan, SessionProblem } from "./problem.ts";

export type RuleName =
  | "known-names"
  | "at-least-one-position"
  | "positions-at-most"
  | "position-once"
  | "items-in-position"
  | "items-at-most"
  | "position-of-item"
  | "rung-once"
  | "rungs-of-activity"
  | "neighbouring-rungs"
  | "one-of-substitutes"
  | "prerequisite-first"
  | "moves-join"
  | "session-can-begin"
  | "session-can-end"
  | "working-minutes"
  | "strength-for-way-back"
  | "strength-for-move"
  | "fresh-enough"
  | "must-have"
  | "left-out"
  | "barred-position"
  | "starts-in";

export interface BrokenRule {
  readonly rule: RuleName;
  readonly detail: string;
}

/** Worth in parts: gains positive, costs negative, `total` their sum. */
export interface Worth {
  readonly coverage: number;
  readonly own: number;
  readonly change: number;
  readonly dropped: number;
  readonly freshness: number;
  readonly helperPlaces: number;
  readonly moves: number;
  readonly short: number;
  readonly total: number;
}

export interface Evaluation {
  readonly worth: Worth;
  readonly broken: readonly BrokenRule[];
  readonly halfMinutes: number;
  readonly strength: number;
  readonly changes: number;
  readonly helperMoves: number;
  /** Strength spent and needed for the way back at every point reached, moves and blocks in order. */
  readonly points: readonly { readonly position: string; readonly spent: number; readonly wayBack: number }[];
}

/** Points a direct move costs. */
export function moveCost(problem: SessionProblem, link: Link): number {
  const { prices } = problem;
  return (
    link.ease +
    link.kneelDowns * prices.kneelDown +
    (link.sideChange ? prices.sideChange : 0) +
    link.halfMinutes * prices.movingHalfMinute
  );
}

/** The one judge of a plan: what it is worth, part by part, and every rule it breaks. Knows nothing of how a plan is found. */
export function evaluate(problem: SessionProblem, plan: Plan): Evaluation {
  const broken: BrokenRule[] = [];
  const breakRule = (rule: RuleName, detail: string) => broken.push({ rule, detail });
  const positions = new Map(problem.positions.map((p) => [p.id, p]));
  const links = new Map(problem.links.map((l) => [l.id, l]));
  const options = new Map(problem.options.map((o) => [o.id, o]));
  const chosen: Option[] = [];
  const placesWithItems = new Set<string>();
  const points: { position: string; spent: number; wayBack: number }[] = [];
  let minutes = 0,
    spent = 0,
    moves = 0,
    freshness = 0,
    helperPlaces = 0,
    helperMoves = 0;
  let lastPlace: string | null = null;

  const reach = (id: string) => {
    const wayBack = positions.get(id)?.wayBack.strength ?? 0;
    points.push({ position: id, spent, wayBack });
    if (spent + wayBack > problem.strength)
      breakRule("strength-for-way-back", `${id}: ${spent} spent and ${wayBack} to get back, of ${problem.strength}`);
  };

  if (plan.blocks.length === 0) breakRule("at-least-one-position", "no position");
  if (plan.blocks.length > sizeLimits.positions) breakRule("positions-at-most", `${plan.blocks.length} positions`);
  plan.blocks.forEach((block, index) => {
    const position = positions.get(block.position);
    if (!position) {
      breakRule("known-names", `position ${block.position}`);
      return;
    }
    if (placesWithItems.has(block.position)) breakRule("position-once", block.position);
    placesWithItems.add(block.position);
    if (problem.locks.barPositions.includes(block.position)) breakRule("barred-position", block.position);
    if (index === 0) {
      if (block.links.length > 0) breakRule("moves-join", "a move before the first position");
      if (position.entry === null) breakRule("session-can-begin", block.position);
      if (problem.locks.startIn !== null && problem.locks.startIn !== block.position)
        breakRule("starts-in", `${block.position}, not ${problem.locks.startIn}`);
      minutes += position.entry?.halfMinutes ?? 0;
      spent += position.entry?.strength ?? 0;
      moves += position.entry?.cost ?? 0;
      reach(block.position);
    } else {
      let here = plan.blocks[index - 1]?.position ?? "";
      for (const id of block.links) {
        const link = links.get(id);
        if (!link) {
          breakRule("known-names", `move ${id}`);
          continue;
        }
        if (link.from !== here) breakRule("moves-join", `${id} does not start in ${here}`);
        if (link.threshold !== null && spent > link.threshold)
          breakRule("strength-for-move", `${id}: ${spent} spent, at most ${link.threshold}`);
        minutes += link.halfMinutes;
        spent += link.strength;
        moves += moveCost(problem, link);
        here = link.to;
        if (problem.locks.barPositions.includes(here) && here !== block.position)
          breakRule("barred-position", `${here}, passed through`);
        reach(here);
      }
      if (here !== block.position) breakRule("moves-join", `moves end in ${here}, not ${block.position}`);
    }
    if (block.options.length < 1 || block.options.length > sizeLimits.itemsInPosition)
      breakRule("items-in-position", `${block.position}: ${block.options.length}`);
    const onEntering = spent;
    const places = new Set<string>();
    for (const id of block.options) {
      const option = options.get(id);
      if (!option) {
        breakRule("known-names", `option ${id}`);
        continue;
      }
      if (option.position !== block.position) breakRule("position-of-item", `${id} in ${block.position}`);
      if (option.freshnessLimit !== null && onEntering > option.freshnessLimit)
        breakRule("fresh-enough", `${id}: ${onEntering} spent, at most ${option.freshnessLimit}`);
      if (option.prerequisite !== null && !chosen.some((o) => o.rung === option.prerequisite))
        breakRule("prerequisite-first", `${id} needs ${option.prerequisite}`);
      chosen.push(option);
      places.add(option.helperPlace);
      if (lastPlace !== null && lastPlace !== option.helperPlace) helperMoves += 1;
      lastPlace = option.helperPlace;
      minutes += option.halfMinutes;
      spent += option.strength;
      freshness += option.freshnessCost * index;
    }
    helperPlaces += places.size;
    reach(block.position);
  });

  const last = positions.get(plan.blocks.at(-1)?.position ?? "");
  if (last && !last.canEnd) breakRule("session-can-end", last.id);
  minutes += last?.wayBack.halfMinutes ?? 0;
  if (minutes > problem.workingHalfMinutes)
    breakRule("working-minutes", `${minutes} of ${problem.workingHalfMinutes} half-minutes`);
  checkSelection(problem, chosen, breakRule);

  const coverage = problem.purposes.reduce((sum, purpose) => {
    const units = chosen.reduce(
      (n, o) => n + o.units.reduce((m, u) => m + (u.purpose === purpose.id ? u.units : 0), 0),
      0,
    );
    return sum + coverageGain(purpose.need, units);
  }, 0);
  const rungs = new Set(chosen.map((o) => o.rung));
  const missing = problem.lastTime.filter((l) => !rungs.has(l.rung));
  const parts = {
    coverage,
    own: chosen.reduce((n, o) => n + o.worth, 0),
    change: -chosen.reduce((n, o) => n + o.change.cost, 0),
    dropped: -missing.reduce((n, l) => n + l.dropCost, 0),
    freshness: -freshness,
    helperPlaces: -helperPlaces * problem.prices.helperPlace,
    moves: -moves,
    short: -Math.max(0, sizeLimits.fewestItems - chosen.length) * problem.prices.itemShort,
  };
  const total = Object.values(parts).reduce((a, b) => a + b, 0);
  const changes = chosen.filter((o) => o.change.kind !== "kept").length + missing.length;
  return { worth: { ...parts, total }, broken, halfMinutes: minutes, strength: spent, changes, helperMoves, points };
}

function checkSelection(
  problem: SessionProblem,
  chosen: readonly Option[],
  breakRule: (rule: RuleName, detail: string) => void,
): void {
  const group = (key: (o: Option) => string | null) => {
    const groups = new Map<string, Option[]>();
    for (const option of chosen) {
      const name = key(option);
      if (name !== null) groups.set(name, [...(groups.get(name) ?? []), option]);
    }
    return groups;
  };
  if (chosen.length > sizeLimits.mostItems) breakRule("items-at-most", `${chosen.length} items`);
  for (const [rung, members] of group((o) => o.rung)) if (members.length > 1) breakRule("rung-once", rung);
  for (const [activity, members] of group((o) => o.activity)) {
    if (members.length > sizeLimits.rungsOfActivity) breakRule("rungs-of-activity", `${activity}: ${members.length}`);
    const indices = members.map((o) => o.ladderIndex);
    if (Math.max(...indices) - Math.min(...indices) > 1) breakRule("neighbouring-rungs", activity);
  }
  for (const [name, members] of group((o) => o.substitutes))
    if (members.length > 1) breakRule("one-of-substitutes", name);
  for (const rung of problem.locks.mustHave) if (!chosen.some((o) => o.rung === rung)) breakRule("must-have", rung);
  for (const option of chosen) if (problem.locks.leaveOut.includes(option.rung)) breakRule("left-out", option.rung);
}
