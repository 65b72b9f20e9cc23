import type { Body } from "../../mechanics/body/body.ts";
import { gradeQuantiles } from "../../mechanics/body/grades.ts";
import type { LimbStrengthKey, TrunkStrengthKey } from "../../mechanics/body/strength-keys.ts";
import { peakNorm, trunkNorm } from "../../mechanics/body/strength-norms.ts";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import { seededStream } from "../../quantity/random.ts";
import { poseOf } from "../assess/posed.ts";
import type { PoseKeeper } from "../assess/prepared.ts";
import { LOOK_PLACES } from "../eligibility/look-places.data.ts";
import type { Findings, GradeCode, LookEntry, LookTask, StrengthEntry } from "../findings.ts";
import {
  EXAMINER_SPREAD,
  type EffortModel,
  type Evidence,
  gaveWayLikelihood,
  strengthLikelihood,
  TASK_RESULTS,
  taskLikelihood,
  taskOutcomes,
} from "./evidence.ts";
import { readLogs } from "./log-evidence.ts";
import { RESULT_WORDS } from "./log-reading.ts";
import { cumulative } from "./normal.ts";
import { priorBelief, strengthOf } from "./prior.ts";
import { SLOT_COUNT, slotIndex } from "./slots.ts";
import { keepTaskEfforts } from "./task-efforts.ts";

/** Spread of ln strength of a dynamometer reading: typical error 8 to 28 % ("baschung2018"). */
const DYNAMOMETER_SPREAD = 0.15;
/** Solutions kept for each task besides the healthy one. */
const ANCHORS = 8;

/** All findings about strength as evidence of the person model: grades, readings, tasks of the look, sets logged. */
export function readEvidence(findings: Findings, body: Body, keeper: PoseKeeper): readonly Evidence[] {
  const anchors = anchorStrengths(findings);
  const tasks = keptTasks(keeper, findings.pattern);
  const effortOf = (activity: string, rungId: string): EffortModel | null => {
    const key = `${activity}/${rungId}`;
    let known = tasks.get(key);
    if (known === undefined) {
      const rung = ACTIVITIES.find((each) => each.id === activity)?.rungs.find((each) => each.id === rungId);
      const prepared = rung === undefined ? null : keeper.prepare(poseOf(rung));
      known = prepared?.possible === true ? keepTaskEfforts(prepared, anchors) : null;
      tasks.set(key, known);
    }
    return known;
  };
  return [
    ...findings.strength.map((entry) => readGrade(findings, body, entry)),
    ...findings.look.flatMap((entry, k) => readTask(entry, k, effortOf)),
    ...readLogs(findings, effortOf, (id, where, task, { gaveWay: given }) =>
      given === null ? [] : [gaveWay(id, where, task, given.joint, given.side)],
    ),
  ];
}

const kept = new WeakMap<PoseKeeper, Map<string, Map<string, EffortModel | null>>>();

/** Efforts of tasks depend on the body alone: they stay with its poses. */
function keptTasks(keeper: PoseKeeper, pattern: string): Map<string, EffortModel | null> {
  let byPattern = kept.get(keeper);
  if (byPattern === undefined) {
    byPattern = new Map();
    kept.set(keeper, byPattern);
  }
  let tasks = byPattern.get(pattern);
  if (tasks === undefined) {
    tasks = new Map();
    byPattern.set(pattern, tasks);
  }
  return tasks;
}

/** A few strengths the tasks are solved at: spread over the first guess, the same for everybody with its pattern. */
function anchorStrengths(findings: Findings): Float64Array[] {
  const { mean, covariance } = priorBelief(findings.pattern);
  const stream = seededStream(77);
  return Array.from({ length: ANCHORS }, (_, k) => {
    const common = 1.6 * (2 * stream() - 1);
    return Float64Array.from({ length: SLOT_COUNT }, (_, i) =>
      strengthOf(
        (mean[i] ?? 0) +
          Math.sqrt(covariance[i * SLOT_COUNT + i] ?? 0) *
            (common + 1.1 * (2 * stream() - 1) * (k % 2 === 0 ? 1 : 0.5)),
      ),
    );
  });
}

function readGrade(findings: Findings, body: Body, entry: StrengthEntry): Evidence {
  const slot = slotIndex(entry.side, entry.key);
  const name = `${entry.side === null ? "trunk" : entry.side} ${words(entry.key)}`;
  const key: LimbStrengthKey | `trunk.${TrunkStrengthKey}` = entry.side === null ? `trunk.${entry.key}` : entry.key;
  const { reading } = entry;
  const id = `strength.${entry.side ?? "trunk"}.${entry.key}`;
  if ("grade" in reading) {
    const quantiles = gradeQuantiles(body, findings.ageYears, key, reading.grade);
    return {
      id,
      words: `${name} graded ${reading.grade}`,
      kind: "grade",
      seenInFunction: false,
      quantity: { of: "strength", slot },
      logLikelihood: strengthLikelihood(quantiles, EXAMINER_SPREAD),
      outcomes: gradeOutcomes(findings, body, key, reading.grade),
    };
  }
  const moment = "newtonMetres" in reading ? reading.newtonMetres : reading.newtons * reading.leverMetres;
  const normal =
    entry.side === null
      ? trunkNorm(body.size, findings.ageYears, entry.key)
      : peakNorm(body.size, findings.ageYears, entry.key);
  const middle = Math.max(moment / normal, 0.005);
  const spread = Math.exp(1.645 * DYNAMOMETER_SPREAD);
  return {
    id,
    words: `${name} measured ${Math.round(moment)} newton-metres`,
    kind: "dynamometer",
    seenInFunction: false,
    quantity: { of: "strength", slot },
    logLikelihood: strengthLikelihood([middle / spread, middle, middle * spread]),
    outcomes: null,
  };
}

const GRADES: readonly GradeCode[] = ["0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"];

/** Probability of each grade for a latent strength: thresholds midway (in ln) between the medians of neighbouring grades. */
function gradeOutcomes(
  findings: Findings,
  body: Body,
  key: LimbStrengthKey | `trunk.${TrunkStrengthKey}`,
  found: GradeCode,
): NonNullable<Evidence["outcomes"]> {
  const medians = GRADES.map((grade) =>
    Math.log(Math.max(gradeQuantiles(body, findings.ageYears, key, grade)[1], 0.002)),
  );
  const borders = medians.slice(1).map((median, k) => (median + (medians[k] ?? median)) / 2);
  const at = GRADES.indexOf(found === "1+" ? "2-" : found);
  return {
    found: at,
    probabilities: (z) => {
      const log = Math.log(Math.max(strengthOf(z), 0.002));
      const below = borders.map((border) => cumulative((border - log) / 0.3));
      return GRADES.map(
        (_, k) => Math.max((below[k] ?? 1) - (k === 0 ? 0 : (below[k - 1] ?? 0)), 0) * 0.97 + 0.03 / GRADES.length,
      );
    },
  };
}

function readTask(
  entry: LookEntry,
  k: number,
  effortOf: (activity: string, rung: string) => EffortModel | null,
): Evidence[] {
  if (entry.result === "notTried") return [];
  const place = LOOK_PLACES[entry.task];
  const task = effortOf(place.activity, rungFor(entry, place.rung));
  if (task === null) return [];
  const delay = place.delay * (entry.gaveWay !== null ? 0.4 : entry.stoppedBy !== null ? 2.5 : 1);
  const evidence: Evidence[] = [
    {
      id: `look.${entry.task}.${k}`,
      words: `${place.words}: ${RESULT_WORDS[entry.result]}`,
      kind: "look",
      seenInFunction: true,
      quantity: { of: "effort", task },
      logLikelihood: taskLikelihood(entry.result, delay),
      outcomes: { found: TASK_RESULTS.indexOf(entry.result), probabilities: taskOutcomes(delay) },
    },
  ];
  if (entry.gaveWay !== null)
    evidence.push(
      gaveWay(`look.${entry.task}.${k}.gaveWay`, place.words, task, entry.gaveWay.joint, entry.gaveWay.side),
    );
  return evidence;
}

/** Standing up is another task from another seat: the nearest rung of the ladder by the height seen. */
function rungFor(entry: LookEntry, usual: string): string {
  if (entry.task !== "standUp" || entry.seatHeight === null) return usual;
  if (entry.seatHeight >= 0.52) return "high-seat-hands-on-knees";
  return entry.seatHeight >= 0.46 ? "middle-seat" : "low-seat";
}

function gaveWay(id: string, where: string, task: EffortModel, joint: string, side: string | null): Evidence {
  const name = joint === "trunk" || side === null ? joint : `${joint}.${side}`;
  return {
    id,
    words: `${where}: the ${side === null || joint === "trunk" ? "" : `${side} `}${joint} gave way`,
    kind: "gaveWay",
    seenInFunction: true,
    quantity: { of: "share", task, joint: name },
    logLikelihood: gaveWayLikelihood,
    outcomes: null,
  };
}

/** The effort model of a look task, for ranking findings still to take. */
export function taskModel(findings: Findings, keeper: PoseKeeper, task: LookTask): EffortModel | null {
  const place = LOOK_PLACES[task];
  const rung = ACTIVITIES.find((each) => each.id === place.activity)?.rungs.find((each) => each.id === place.rung);
  const prepared = rung === undefined ? null : keeper.prepare(poseOf(rung));
  return prepared?.possible === true ? keepTaskEfforts(prepared, anchorStrengths(findings)) : null;
}

const words = (key: string): string => key.replace(/([A-Z])/g, " $1").toLowerCase();
