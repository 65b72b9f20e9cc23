import type { PlanAnswer } from "../../contract/plan-answer.ts";
import { sayNumber, upper } from "../words/person-words.ts";

/** What another order changes, in one or two sentences. */
export function sayDifference(before: PlanAnswer, after: PlanAnswer, name: (activity: string) => string): string {
  const ids = (plan: PlanAnswer) => plan.items.map(({ activity }) => activity);
  const came = ids(after).filter((id) => !ids(before).includes(id));
  const went = ids(before).filter((id) => !ids(after).includes(id));
  const first = after.items[0];
  const last = after.timeline.at(-1);
  const minutes = Math.round(after.workingMinutes - before.workingMinutes);
  const list = (all: readonly string[]) => all.map((id) => name(id)).join(", ");
  const parts = [
    ...(came.length > 0 ? [`In: ${list(came)}.`] : []),
    ...(went.length > 0 ? [`Out: ${list(went)}.`] : []),
    ...(came.length === 0 && went.length === 0
      ? [
          ids(before).join() === ids(after).join()
            ? "The same items in the same order."
            : `The same items in another order; ${first === undefined ? "" : name(first.activity)} comes first.`,
        ]
      : []),
    ...(minutes === 0
      ? []
      : [
          `${upper(sayNumber(Math.abs(minutes)))} working ${Math.abs(minutes) === 1 ? "minute" : "minutes"} ${minutes > 0 ? "more" : "fewer"}.`,
        ]),
    ...(last !== undefined && last.position !== before.timeline.at(-1)?.position
      ? [`It ends in ${last.position.replaceAll("-", " ")}.`]
      : []),
  ];
  return parts.join(" ");
}
