import { BIBLIOGRAPHY } from "../src/sources/bibliography.ts";
import type { Activity } from "../src/practice/activities/activity.ts";
import { equipmentOf, insteadOf, measureOf, teachingOf } from "../src/practice/activities/teaching/catalogue.ts";
import { KEPT_APART } from "../src/practice/activities/teaching/kept-apart.data.ts";
import { MEASURES } from "../src/practice/activities/teaching/measures.data.ts";
import { TEACHING_SOURCES } from "../src/practice/activities/teaching/ordinary.data.ts";

/** Names of pieces that are written as one word in the tables. */
const PIECE_NAMES: Readonly<Record<string, string>> = {
  nonSlip: "non-slip mat",
  footBlock: "block",
  quadCane: "four-footed cane",
};

/** What is taught around every activity, as a therapist reads it: one heading an activity, one line a point. */
export function teachingSection(activities: readonly Activity[]): string {
  const measures = Object.values(MEASURES).map(({ name, tells, icf, source }) => {
    const { authors, year, seen } = BIBLIOGRAPHY[source];
    return `- ${name}: ${tells} (${icf.join(", ")}; ${authors}${year === null ? "" : ` ${year}`}, ${seen})`;
  });
  return [
    "## Around each activity",
    "",
    "Why, where a gain would be seen, how to say it without words, where to stand, gear, what does instead, family.",
    `Texts rest on ${[...new Set(Object.values(TEACHING_SOURCES).flat())].join(", ")}; the measures' names on the list below.`,
    "",
    "### Measures",
    "",
    ...measures,
    "",
    ...activities.flatMap(describeTeaching),
  ].join("\n");
}

function describeTeaching(activity: Activity): readonly string[] {
  const { measure, why, aphasia, neglect, gear, family } = teachingOf(activity);
  const { name, icf } = measureOf(teachingOf(activity));
  const instead = equipmentOf(activity).map(
    (piece) => `- Instead of the ${PIECE_NAMES[piece] ?? piece}: ${insteadOf(activity, piece) ?? "nothing known"}`,
  );
  const close = activity.rungs.flatMap((rung) => {
    const because = KEPT_APART[`${activity.id}/${rung.id}`];
    return because === undefined ? [] : [`- Two rungs, though alike in numbers (${rung.name}): ${because}`];
  });
  return [
    `### ${activity.name}`,
    "",
    `- Why: ${why}`,
    `- For: ${activity.purposeWords} (${activity.icf})`,
    `- Seen in: ${name} (${icf.join(", ")}). ${measure.shows}`,
    `- With aphasia: "${aphasia.word}". ${aphasia.gesture}`,
    `- With neglect: ${neglect.stand} Eyes: ${neglect.eyes}`,
    `- Gear: ${gear}`,
    ...instead,
    `- Family, after two show-backs: ${family.words}`,
    ...close,
    "",
  ];
}
