import type { RungToday } from "../../plan/assess/rung-today.ts";
import { workingMinutes } from "../../plan/session/build-problem.ts";
import { sizeLimits } from "../../plan/optimiser/problem.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { Wishes } from "./engine.ts";
import type { SolvedSession } from "./plan-session.ts";

/** Fewer items than this is a short plan. */
const FEW = 3;
/** Working minutes that stay free although more could be asked for. */
const MUCH_FREE = 30;

/** Why a plan is empty or far shorter than the slot, and what serves instead; null where it is neither, and on a hold. */
export function whyShort(solved: SolvedSession, minutes: number, wishes: Wishes): PlanAnswer["whyShort"] {
  const { session, person } = solved;
  if (person.hold !== null) return null;
  const items = session?.items.length ?? 0;
  const working = workingMinutes(minutes);
  const used = session?.items.reduce((sum, item) => sum + item.minutes, 0) ?? 0;
  if (items >= FEW) {
    if (working - used < MUCH_FREE) return null;
    return {
      because: [
        `About ${Math.round(working - used)} working minutes stay free: ${items >= sizeLimits.mostItems ? `${items} items are as many as one session holds` : "nothing more fits the strength of today and the way back"}. What is beyond that trains tiredness, not skill.`,
      ],
      instead: [
        {
          text: "Divide the time: a second, shorter session after at least an hour's rest, or rests between the items as long as they need to be.",
          source: "common-practice",
        },
      ],
    };
  }
  return { because: reasonsOf(solved, minutes, working, wishes), instead: insteadOf(solved, items) };
}

function reasonsOf(solved: SolvedSession, minutes: number, working: number, wishes: Wishes): string[] {
  const { person, built, clash, overrides } = solved;
  const { locks, options } = built.problem;
  const reasons: string[] = [];
  const open = person.rungs.filter((today) => today.eligible);
  if (clash.length > 0) reasons.push(`These wishes do not go together today: ${clash.join("; ")}.`);
  if (working === 0)
    reasons.push(
      `${minutes === 0 ? "No time is given" : `${minutes} minutes are given`}; fetching, belt, vital signs and the transfer back take about 11 before anything is done.`,
    );
  if (person.findings.helpers.count === 0)
    reasons.push("Nobody is here to help: what needs a hand, or a person to stand by, is left out.");
  if (open.length === 0) reasons.push(...whatKeepsOut(person.rungs));
  else {
    const barred = options.filter((option) => locks.barPositions.includes(option.position)).length;
    if (barred === options.length && barred > 0)
      reasons.push("Every position in which something is open today is kept out of the session.");
    else if (options.every((option) => locks.leaveOut.includes(option.rung)))
      reasons.push("Everything that is open today was asked to be left out.");
    else if (working > 0 && clash.length === 0 && (wishes.mustHave ?? []).length === 0) {
      const shortest = Math.min(...options.map((option) => option.halfMinutes)) / 2;
      if (shortest > working)
        reasons.push(`The shortest thing that is open takes ${shortest} minutes; ${working} are left for work.`);
      else if (open.length <= 4)
        reasons.push(`Only ${open.length} of the catalogue's rungs are open today.`, ...whatKeepsOut(person.rungs));
      else reasons.push("The minutes, the strength of today and the way back hold no more.");
    }
  }
  for (const { allowed, record } of overrides) if (!allowed) reasons.push(record);
  return reasons.length > 0 ? reasons : ["The minutes, the strength of today and the way back hold no more."];
}

/** The reasons that keep most of the catalogue out, in their own words, the most frequent first. */
function whatKeepsOut(rungs: readonly RungToday[]): string[] {
  const counts = new Map<string, { count: number; detail: string }>();
  for (const { out } of rungs) {
    const first = out[0];
    if (first === undefined) continue;
    const known = counts.get(first.rule);
    if (known === undefined) counts.set(first.rule, { count: 1, detail: first.detail });
    else known.count++;
  }
  return [...counts.values()]
    .sort((a, b) => b.count - a.count || (a.detail < b.detail ? -1 : 1))
    .slice(0, 3)
    .map(({ count, detail }) => `${count} of ${rungs.length} rungs are out, such as by this: ${detail}`);
}

type Instead = NonNullable<PlanAnswer["whyShort"]>["instead"];
const SITTING = ["short-sitting", "bed-sitting", "corner-sitting", "perch-sitting", "long-sitting"];
const practice: SourceId = "common-practice";

/** What can be done in the meantime without any of it: positioning, breathing, sitting out by steps, and whom to call. */
function insteadOf({ person }: SolvedSession, items: number): Instead {
  const lines: Instead = [
    {
      text: "Position well and change it every two hours: lying on either side or on the back, the weak arm and shoulder carried on pillows, heels free, head in the middle.",
      source: practice,
    },
    {
      text: "Breathing, five slow breaths each waking hour: in through the nose, long out through the mouth, never held. Stop at dizziness or chest pain.",
      source: practice,
    },
  ];
  const sitting = person.rungs.filter((today) => SITTING.includes(today.activity.position));
  const barred = sitting.filter((today) => today.out.some(({ rule }) => rule.startsWith("precaution")));
  if (barred.length < sitting.length)
    lines.push({
      text:
        person.findings.helpers.count === 0
          ? "Sitting tolerance only when somebody is there: head of the bed up by steps, pulse and blood pressure after each, down again at dizziness."
          : "Sitting tolerance: head of the bed up by steps, then out in a supported chair; pulse and blood pressure after each step, down again at dizziness.",
      source: practice,
    });
  const precaution = person.rungs.some(({ out }) => out.some(({ rule }) => rule.startsWith("precaution")));
  lines.push({
    text: precaution
      ? "Call whoever set the limits named above, the physician first: what exactly is allowed, and until when? Then plan again."
      : person.findings.helpers.count === 0
        ? "Call a second person before anything out of bed; then plan again."
        : "Call the therapist in charge if it stays so tomorrow: another time of day, more help, or other findings change the plan.",
    source: practice,
  });
  return items === 0 ? lines : lines.slice(-1);
}
