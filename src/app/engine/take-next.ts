import { quadratic } from "../../plan/person/approximation.ts";
import { type Candidate, rankCandidates } from "../../plan/person/take-next.ts";
import { logSlope, strengthOf } from "../../plan/person/prior.ts";
import { SLOT_COUNT, SLOTS } from "../../plan/person/slots.ts";
import { LOOK_PLACES } from "../../plan/eligibility/look-places.data.ts";
import { LOOK_TASKS } from "../../plan/findings.ts";
import { poseOf } from "../../plan/assess/posed.ts";
import { keepTaskEfforts } from "../../plan/person/task-efforts.ts";
import type { RungToday } from "../../plan/assess/rung-today.ts";
import type { Session } from "../../plan/session/session-plan.ts";
import { lowerFirst } from "./words.ts";
import type { PersonToday } from "./person-today.ts";

/** Minutes a grade and a task take (judgement), and the noise of each in its own logarithm. */
const GRADE_MINUTES = 1;
const TASK_MINUTES = 1.5;
const GRADE_NOISE = 0.35;
const TASK_NOISE = 0.45;
const TARGETS = 8;

/** Which finding is worth taking next, and which rung it would tell most about. Ranked by what it narrows per minute. */
export function takeNextOf(person: PersonToday, session: Session | null): { finding: string; wouldChange: string }[] {
  const targets = targetRungs(person, session);
  if (targets.length === 0) return [];
  const { belief } = person.model;
  const gradients = targets.map((today) => gradientOf(person, today));
  const graded = new Set(person.findings.strength.map((entry) => `${entry.side ?? "trunk"}.${entry.key}`));
  const candidates: Candidate[] = [];
  const words = new Map<string, string>();
  SLOTS.forEach((slot, i) => {
    const name = `${slot.side ?? "trunk"}.${slot.key}`;
    if (graded.has(name) || slot.key === "grip" || slot.key.startsWith("wrist")) return;
    const direction = new Float64Array(SLOT_COUNT);
    direction[i] = 1;
    const slope = Math.max(logSlope(belief.mean[i] ?? 0), 0.05);
    candidates.push({
      id: `grade.${name}`,
      direction,
      noiseVariance: (GRADE_NOISE / slope) ** 2,
      minutes: GRADE_MINUTES,
    });
    words.set(
      `grade.${name}`,
      `Test the ${slot.side === null ? "trunk's" : `${slot.side} side's`} ${slot.key.replace(/([A-Z])/g, " $1").toLowerCase()}`,
    );
  });
  const seen = new Set(person.findings.look.filter((entry) => entry.result !== "notTried").map((entry) => entry.task));
  for (const task of LOOK_TASKS) {
    if (seen.has(task)) continue;
    const place = LOOK_PLACES[task];
    const today = person.rungs.find((each) => each.activity.id === place.activity && each.rung.id === place.rung);
    if (
      today === undefined ||
      today.out.some((reason) => reason.rule.startsWith("precaution") || reason.rule === "stoppedInLook")
    )
      continue;
    candidates.push({
      id: `task.${task}`,
      direction: gradientOf(person, today),
      noiseVariance: TASK_NOISE ** 2,
      minutes: TASK_MINUTES,
    });
    words.set(`task.${task}`, `See whether she or he ${place.words}`.replace("she or he", "the person"));
  }
  return rankCandidates(belief, candidates, gradients)
    .filter((worth) => worth.narrowing > 1e-4)
    .slice(0, 3)
    .map((worth) => {
      const today = targets[worth.mostFor];
      const rung = today === undefined ? "the plan" : `${today.activity.name}, ${lowerFirst(today.rung.name)}`;
      const gradient = gradients[worth.mostFor];
      const spread = gradient === undefined ? 0 : Math.sqrt(quadratic(belief.covariance, gradient));
      const share = spread === 0 ? 0 : Math.min(0.95, worth.narrowing / (targets.length * spread * spread));
      return {
        finding: `${words.get(worth.id) ?? worth.id}.`,
        wouldChange: `It would tell most about ${rung}${today === undefined ? "" : today.eligible ? ", which is open today" : ", which is out today"}; ${share > 0.4 ? "most" : share > 0.15 ? "a good part" : "a little"} of the doubt would go.`,
      };
    });
}

/** The rungs whose verdict is least sure: those in the plan and those near the border of what may be asked. */
function targetRungs(person: PersonToday, session: Session | null): RungToday[] {
  const inPlan = session === null ? [] : session.items.map((item) => item.today);
  const near = person.rungs
    .filter(
      (today) =>
        !inPlan.includes(today) && today.out.every((reason) => reason.rule === "effort") && today.asks !== null,
    )
    .map((today) => ({
      today,
      off: today.asks === null ? 9 : Math.abs(Math.log(Math.max(today.asks.cautious, 0.01) / 0.85)),
    }))
    .sort((a, b) => a.off - b.off || (a.today.activity.id < b.today.activity.id ? -1 : 1))
    .map(({ today }) => today);
  return [...inPlan, ...near].filter((today) => today.asks !== null).slice(0, TARGETS);
}

function gradientOf(person: PersonToday, today: RungToday): Float64Array {
  const into = new Float64Array(SLOT_COUNT);
  const prepared = person.keeper.prepare(poseOf(today.rung));
  if (!prepared.possible) return into;
  const strengths = Float64Array.from(person.model.belief.mean, strengthOf);
  const efforts = keepTaskEfforts(prepared, [strengths]);
  if (efforts === null) return into;
  efforts.logGradient(strengths, into);
  for (let i = 0; i < SLOT_COUNT; i++) into[i] = (into[i] ?? 0) * logSlope(person.model.belief.mean[i] ?? 0);
  return into;
}
