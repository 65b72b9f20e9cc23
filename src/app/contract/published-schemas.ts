import { z } from "zod";
import { CASE_FILE } from "./case-file.ts";
import { CATALOGUE_ANSWER } from "./catalogue-answer.ts";
import { CHECK_ANSWER } from "./check-answer.ts";
import { EFFORT_ANSWER } from "./effort-answer.ts";
import { PLAN_ANSWER } from "./plan-answer.ts";
import { WEEK_ANSWER } from "./week-answer.ts";

const PUBLISHED = {
  case: { title: "Findings of one person", schema: CASE_FILE },
  plan: { title: "Plan of one session", schema: PLAN_ANSWER },
  week: { title: "Plan of one week", schema: WEEK_ANSWER },
  effort: { title: "What one activity asks of one person", schema: EFFORT_ANSWER },
  catalogue: { title: "Positions, transitions, activities and rungs", schema: CATALOGUE_ANSWER },
  check: { title: "Whether a case file can be used", schema: CHECK_ANSWER },
} as const;

/** The published JSON Schemas, as the text of each file of the folder `schema`. */
export function writePublishedSchemas(): ReadonlyMap<string, string> {
  const files = Object.entries(PUBLISHED).map(([name, { title, schema }]) => {
    const { $schema, ...rest } = z.toJSONSchema(schema, { io: "input", reused: "inline" });
    return [`${name}.schema.json`, `${JSON.stringify({ $schema, title, ...rest }, null, 2)}\n`] as const;
  });
  return new Map(files);
}
