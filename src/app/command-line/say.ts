import { ACTIVITIES } from "../../practice/catalogue.ts";
import type { CaseFile } from "../contract/case-file.ts";
import type { EffortAnswer, RungEffort } from "../contract/effort-answer.ts";
import type { PlanAnswer, PlanItemAnswer } from "../contract/plan-answer.ts";

/** Today's plan as lines for a terminal: sentences first, figures after. */
export function sayPlan(file: CaseFile, plan: PlanAnswer): string {
  const lines: string[] = [file.label ?? "This person"];
  if (plan.hold !== null) {
    lines.push(
      `Not today: ${plan.hold.because.map((each) => `${each.rule} (${each.measured}; limit ${each.limit})`).join("; ")}.`,
      plan.hold.whatToDo,
    );
    return lines.join("\n");
  }
  if (plan.items.length === 0)
    return [
      ...lines,
      "Nothing is planned.",
      ...shortLines(plan),
      ...plan.cautions.map(({ text }) => `Caution: ${text}`),
    ].join("\n");
  lines.push(`${plan.items.length} items, ${plan.workingMinutes} working minutes, ${plan.minutes} minutes in all.`);
  for (const { change, because } of plan.changesSinceLast) lines.push(`Changed: ${change} ${because}`);
  plan.items.forEach((item, k) => {
    for (const move of plan.helperMoves) if (move.beforeItem === k) lines.push(`   You: ${move.words}`);
    lines.push(
      `${k + 1}. ${nameOf(item)} (${positionWords(item.position)}), ${doseWords(item)}, ${item.minutes} minutes`,
    );
    for (const reason of item.because) lines.push(`   ${reason}`);
    if (item.guard !== null) lines.push(`   Guard: ${item.guard.side} side. ${item.guard.because}`);
    if (item.help !== null && item.help.newtons > 0)
      lines.push(`   Help: ${item.help.words}, ${item.help.site ?? ""} (${item.help.newtons} N).`);
  });
  if (plan.wayBack !== null) lines.push(wayBackLine(plan.wayBack));
  for (const { record } of plan.overrides ?? []) lines.push(record);
  lines.push(...shortLines(plan));
  for (const { finding, wouldChange } of plan.takeNext.slice(0, 1))
    lines.push(`Worth taking next: ${finding} ${wouldChange}`);
  for (const line of plan.solver.traded ?? []) lines.push(line);
  for (const { text } of plan.cautions) lines.push(`Caution: ${text}`);
  return lines.join("\n");
}

/** Where the session ends in a place to rest nothing has to be walked back; how it is left is said all the same. */
function wayBackLine({ from, minutes, planned }: NonNullable<PlanAnswer["wayBack"]>): string {
  const steps = planned.join(" ");
  if (minutes === 0)
    return `No way back: the session ends at rest in ${positionWords(from)}. To get up from there: ${steps}`;
  return `Way back, ${minutes} ${minutes === 1 ? "minute" : "minutes"}: ${steps}`;
}

/** Why a plan is empty or short, and what serves instead. */
function shortLines({ whyShort }: PlanAnswer): string[] {
  if (whyShort === null || whyShort === undefined) return [];
  return [...whyShort.because, ...whyShort.instead.map(({ text }) => `Instead: ${text}`)];
}

/** What rungs ask, as lines for a terminal. */
export function sayEffort(file: CaseFile, answer: EffortAnswer): string {
  const rungs: readonly RungEffort[] = Array.isArray(answer) ? answer : [answer];
  return [file.label ?? "This person", ...rungs.flatMap(effortLines)].join("\n");
}

function effortLines(rung: RungEffort): string[] {
  const pose = rung.keyPoses[0];
  const lines = [nameOf(rung)];
  if (pose === undefined) return [...lines, "   This body cannot take or hold the position."];
  const hardest = [...pose.joints].sort((a, b) => b.effort.middle - a.effort.middle).slice(0, 3);
  for (const joint of hardest)
    lines.push(
      `   ${joint.side ?? ""} ${joint.joint} ${joint.direction}: ${joint.effort.low} to ${joint.effort.high} of what it has, about ${joint.effort.middle}`.replace(
        "   null ",
        "   ",
      ),
    );
  if (typeof pose.carries === "string") lines.push(`   ${pose.carries}`);
  lines.push(
    `   Tips first ${words(pose.margin.least.towards)}: ${Math.round(pose.margin.least.metres * 100)} cm, held still.`,
  );
  if (rung.help !== null)
    lines.push(
      `   Help: ${rung.help.words}${rung.help.newtons > 0 ? `, ${rung.help.newtons} N ${rung.help.site ?? ""}` : ""}.`,
    );
  return lines;
}

function nameOf(name: { readonly activity: string; readonly rung: string }): string {
  const activity = ACTIVITIES.find((each) => each.id === name.activity);
  const rung = activity?.rungs.find((each) => each.id === name.rung);
  return `${activity?.name ?? name.activity}: ${rung?.name ?? name.rung}`;
}

function doseWords({ dose }: PlanItemAnswer): string {
  const each = dose.repetitions === undefined ? "" : ` of ${dose.repetitions}`;
  const held =
    dose.holdSeconds === undefined ? "" : `, held ${dose.holdSeconds} ${dose.holdSeconds === 1 ? "second" : "seconds"}`;
  return `${dose.sets} ${dose.sets === 1 ? "set" : "sets"}${each}${held}`;
}

const positionWords = (id: string): string => id.replace(/-/g, " ");
const words = (direction: string): string => direction.replace(/([A-Z])/g, " $1").toLowerCase();
