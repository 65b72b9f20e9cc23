import type { Findings, PreviousItem } from "../findings.ts";
import {
  DAY_SPREAD,
  EFFORT_BORDERS,
  type EffortModel,
  type Evidence,
  MODEL_SPREAD,
  outcomesWithin,
  TASK_RESULTS,
  type TaskResult,
} from "./evidence.ts";
import { AGE_SPREAD, LOG_DELAY, LOG_READINGS, SESSIONS_READ } from "./log-reading.data.ts";
import { type LogReading, readLoggedItem } from "./log-reading.ts";
import { cumulativeDelayed, density } from "./normal.ts";

/** One logged item of one rung, read. */
interface LoggedSet {
  readonly reading: LogReading;
  readonly sessionsAgo: number;
  readonly item: PreviousItem;
}

/**
 * What was logged, rung by rung. All sets of one rung share what the model does not know of this body in that pose, so
 * ten sessions of it narrow what is believed less than ten different rungs would; only the day's own scatter evens out.
 */
export function readLogs(
  findings: Pick<Findings, "previous">,
  effortOf: (activity: string, rung: string) => EffortModel | null,
  gaveWay: (id: string, where: string, task: EffortModel, item: PreviousItem) => Evidence[],
): Evidence[] {
  const sessions = findings.previous.slice(-SESSIONS_READ);
  const rungs = new Map<string, LoggedSet[]>();
  sessions.forEach((session, s) => {
    for (const item of session.items) {
      const reading = readLoggedItem(session, item);
      if (reading === null) continue;
      const key = `${item.activity}.${item.rung}`;
      const sets = rungs.get(key) ?? [];
      sets.push({ reading, sessionsAgo: sessions.length - 1 - s, item });
      rungs.set(key, sets);
    }
  });
  return [...rungs].flatMap(([key, sets]) => {
    const last = sets[sets.length - 1];
    if (last === undefined) return [];
    const { item, reading } = last;
    const task = effortOf(item.activity, item.rung);
    if (task === null) return [];
    const id = `log.${key}`;
    const times = sets.length === 1 ? "" : ` (${sets.length} sessions)`;
    const evidence: Evidence = {
      id,
      words: `logged ${item.activity}, ${item.rung}${times}: ${reading.words}`,
      kind: "log",
      seenInFunction: true,
      quantity: { of: "effort", task },
      logLikelihood: likelihoodOfSets(sets),
      outcomes: {
        found: TASK_RESULTS.indexOf(reading.result),
        probabilities: outcomesWithin(Math.hypot(MODEL_SPREAD, spreadOf(last)), delayOf(reading)),
      },
    };
    const given = sets.findLast((set) => set.item.gaveWay !== null)?.item;
    return [evidence, ...(given === undefined ? [] : gaveWay(`${id}.gaveWay`, `logged ${item.activity}`, task, given))];
  });
}

const delayOf = ({ id }: LogReading): number => LOG_DELAY * LOG_READINGS[id].delayTimes;
const spreadOf = ({ reading, sessionsAgo }: LoggedSet): number =>
  Math.hypot(DAY_SPREAD, AGE_SPREAD * sessionsAgo, LOG_READINGS[reading.id].spread);

/** Points in ln effort at which the sets of a rung are weighed, and between which they are read off. */
const FROM = -4.5;
const STEP = 0.1;
const COUNT = 91;
/** Half as many steps of the model's own spread are summed over on either side. */
const WIDE = Math.ceil((3 * MODEL_SPREAD) / STEP);

function likelihoodOfSets(sets: readonly LoggedSet[]): (x: number) => number {
  const logs = new Float64Array(COUNT);
  for (const set of sets) {
    const own = likelihoodOfSet(set);
    for (let k = 0; k < COUNT; k++) logs[k] = (logs[k] ?? 0) + (own[k] ?? 0);
  }
  const mixed = Float64Array.from(logs, (_, k) => {
    let top = Number.NEGATIVE_INFINITY;
    for (let m = -WIDE; m <= WIDE; m++) top = Math.max(top, logs[clamp(k + m)] ?? 0);
    let sum = 0;
    let weights = 0;
    for (let m = -WIDE; m <= WIDE; m++) {
      const weight = density((m * STEP) / MODEL_SPREAD);
      weights += weight;
      sum += weight * Math.exp((logs[clamp(k + m)] ?? 0) - top);
    }
    return top + Math.log(sum / weights);
  });
  return (x) => {
    const at = Math.min(Math.max((x - FROM) / STEP, 0), COUNT - 1.001);
    const k = Math.floor(at);
    return (mixed[k] ?? 0) * (1 - at + k) + (mixed[k + 1] ?? 0) * (at - k);
  };
}

const clamp = (k: number): number => Math.min(Math.max(k, 0), COUNT - 1);

const known = new Map<string, Float64Array>();
/** Sets read alike weigh alike: they are worked out once. */
function likelihoodOfSet(set: LoggedSet): Float64Array {
  const { reading } = set;
  const key = `${reading.id} ${reading.result} ${set.sessionsAgo}`;
  let logs = known.get(key);
  if (logs === undefined) {
    const delay = delayOf(reading);
    const spread = spreadOf(set);
    const [harder, easier] = bandOf(reading);
    const below = (border: number, x: number) => cumulativeDelayed(border - x + 0.69 * delay, spread, delay);
    logs = Float64Array.from({ length: COUNT }, (_, k) => {
      const x = FROM + STEP * k;
      const most = harder === null ? 1 : below(harder, x);
      const least = easier === null ? 0 : below(easier, x);
      return Math.log(Math.max(most - least, LAPSE_OF_SET));
    });
    known.set(key, logs);
  }
  return logs;
}

/** Chance of a set simply logged wrong, and come out as any result (judgement). */
const LAPSE_OF_SET = 0.005;

/** ln effort between which a result lies. "Alone" says at least alone, unless it was felt to be near all there is. */
function bandOf({ id, result }: LogReading): readonly [number | null, number | null] {
  const [cannot, help, touch, well] = EFFORT_BORDERS;
  const bands: Readonly<Record<TaskResult, readonly [number | null, number | null]>> = {
    cannot: [null, cannot],
    withHelp: [cannot, help],
    withTouch: [help, touch],
    alone: [touch, null],
    aloneWell: [well, null],
  };
  return id === "hard" && result === "alone" ? [help, well] : bands[result];
}
