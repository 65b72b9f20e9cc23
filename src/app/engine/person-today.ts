import type { Body } from "../../mechanics/body/body.ts";
import { buildBody } from "../../mechanics/body/build.ts";
import type { AngleId } from "../../mechanics/body/names.ts";
import type { Strengths } from "../../mechanics/body/strength-keys.ts";
import type { LinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import { representatives } from "../../plan/assess/efforts.ts";
import { keepPoses, type PoseKeeper } from "../../plan/assess/prepared.ts";
import { assessRung, type RungToday } from "../../plan/assess/rung-today.ts";
import { ownRanges } from "../../plan/assess/own-ranges.ts";
import type { Findings } from "../../plan/findings.ts";
import { buildPersonModel, type PersonModel } from "../../plan/person/model.ts";
import { readEvidence } from "../../plan/person/read-evidence.ts";
import { judgeWorsening } from "../../plan/worsening.ts";
import { findWays, type Ways } from "../../plan/session/ways.ts";
import type { Activity, Rung } from "../../practice/activities/activity.ts";
import { type Caution, cautionsFor } from "../../practice/precautions/cautions.ts";
import { type Hold, judgeHolds } from "../../practice/precautions/holds.ts";
import { completePrecautions } from "../../practice/precautions/implied.ts";
import { gatherOrders } from "../../practice/precautions/orders.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import { judgeVitals } from "../../practice/vital-signs/judge-vitals.ts";
import type { Laterality } from "../../quantity/sides.ts";
import type { CaseFile } from "../contract/case-file.ts";
import { cautionsOfFamily } from "./family-helper.ts";
import { activitiesOf } from "./own-activities.ts";
import { readFindings } from "./read-findings.ts";

/** Everything worked out about one person for today. Computed in weak and strong words on a body weak on its right. */
export interface PersonToday {
  readonly findings: Findings;
  readonly laterality: Laterality;
  /** The catalogue with this person's own rungs behind it. */
  readonly activities: readonly Activity[];
  readonly precautions: readonly PrecautionFinding[];
  readonly body: Body;
  readonly keeper: PoseKeeper;
  /** The person's own body, for drawing: the mirror of the other where the weak side is the left one. */
  readonly drawn: PoseKeeper;
  readonly drawnBody: Body;
  readonly model: PersonModel;
  readonly draws: readonly Strengths[];
  /** Every rung of the catalogue as it stands today; worked out when first asked for. */
  readonly rungs: readonly RungToday[];
  /** One rung alone, so that a question about it does not wait for the others; undefined where it is not known. */
  rung(name: { readonly activity: string; readonly rung: string }): RungToday | undefined;
  readonly ways: Ways;
  readonly hold: Hold | null;
  readonly cautions: readonly Caution[];
}

interface KeptBody {
  readonly body: Body;
  readonly keeper: PoseKeeper;
}

/** Keeps bodies with their poses, and the last people worked out, so that a second question is quick. */
export interface People {
  today(file: CaseFile): PersonToday;
}

const KEPT = 6;

export function keepPeople(solver: LinearSolver): People {
  const bodies = new Map<string, KeptBody>();
  const people = new Map<string, PersonToday>();
  const bodyFor = (findings: Findings, weakAt: 1 | -1): KeptBody => {
    const ranges = ownRanges(findings);
    const key = JSON.stringify([findings.size, findings.ageYears, findings.loadShareWeak, ranges, weakAt]);
    let known = bodies.get(key);
    if (known === undefined) {
      const body = buildBody(findings.size, weakAt);
      known = {
        body,
        keeper: keepPoses({
          body,
          ageYears: findings.ageYears,
          loadShareWeak: findings.loadShareWeak,
          ranges: ranges as Partial<Record<AngleId, readonly [number, number]>>,
        }),
      };
      forgetOldest(bodies, 2 * KEPT);
      bodies.set(key, known);
    }
    return known;
  };
  return {
    today(file) {
      // What only words and papers use decides nothing here.
      const { label: _label, bounds: _bounds, ...said } = file;
      const key = JSON.stringify(said, (name, value) => (name === "shownTwice" ? undefined : value));
      const known = people.get(key);
      if (known !== undefined) return known;
      const { findings, laterality } = readFindings(file);
      const { body, keeper } = bodyFor(findings, -1);
      const drawn = bodyFor(findings, laterality.weak === "left" ? 1 : -1);
      const precautions = completePrecautions(findings);
      const model = buildPersonModel(findings.pattern, readEvidence(findings, body, keeper));
      const draws = representatives(model.samples);
      const assessed = new Map<Rung, RungToday>();
      const assess = (activity: Activity, rung: Rung): RungToday => {
        let today = assessed.get(rung);
        if (today === undefined) {
          today = assessRung({ findings, precautions, keeper, draws, solver }, activity, rung);
          assessed.set(rung, today);
        }
        return today;
      };
      let rungs: readonly RungToday[] | null = null;
      let ways: Ways | null = null;
      const activities = activitiesOf(file);
      const vitals = judgeVitals(findings.vitals, gatherOrders(precautions), findings.medicines);
      const person: PersonToday = {
        findings,
        laterality,
        activities,
        precautions,
        body,
        keeper,
        drawn: drawn.keeper,
        drawnBody: drawn.body,
        model,
        draws,
        get rungs() {
          rungs ??= activities.flatMap((activity) => activity.rungs.map((rung) => assess(activity, rung)));
          return rungs;
        },
        rung(name) {
          const activity = activities.find(({ id }) => id === name.activity);
          const rung = activity?.rungs.find(({ id }) => id === name.rung);
          return activity === undefined || rung === undefined ? undefined : assess(activity, rung);
        },
        get ways() {
          ways ??= findWays(findings, precautions);
          return ways;
        },
        hold: joinHolds(
          joinHolds(
            judgeHolds(precautions, { daysSinceOnset: findings.daysSinceOnset, stroke: findings.stroke }),
            vitals.hold,
          ),
          judgeWorsening(findings),
        ),
        cautions: [...cautionsOfFamily(file), ...cautionsFor(precautions, findings.medicines), ...vitals.cautions],
      };
      forgetOldest(people, KEPT);
      people.set(key, person);
      return person;
    },
  };
}

function forgetOldest<T>(kept: Map<string, T>, most: number): void {
  const oldest = kept.keys().next();
  if (kept.size >= most && oldest.done !== true) kept.delete(oldest.value);
}

function joinHolds(a: Hold | null, b: Hold | null): Hold | null {
  if (a === null) return b;
  if (b === null) return a;
  return { because: [...a.because, ...b.because], whatToDo: [...new Set([a.whatToDo, b.whatToDo])].join(" ") };
}
