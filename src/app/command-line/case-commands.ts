import type { CheckAnswer } from "../contract/check-answer.ts";
import type { Fault } from "../contract/faults.ts";
import { findNearest } from "../contract/nearest.ts";
import { type CommandForm, type ReadArguments, readWhole } from "./arguments.ts";
import type { Engine } from "./engine-form.ts";
import { type NewFile, readCaseFile, refuseToWrite, writeFiles } from "./files.ts";
import { BAD_INPUT, GOOD, refuseFaults, type Terminal, writeJson } from "./terminal.ts";

export const PLAN_FORM: CommandForm = {
  usage: "matside plan CASE.json [--minutes 45] [--json | --html FILE | --pdf FILE]",
  values: ["minutes", "html", "pdf"],
  flags: ["json"],
  files: ["CASE.json"],
};

/** Makes today's plan of one case. */
export async function runPlan(
  { values, flags, files, faults }: ReadArguments,
  terminal: Terminal,
  engine: Engine,
): Promise<number> {
  const asJson = flags.has("json");
  const minutes = readWhole(values, "minutes", 45, 0, 600, " minutes");
  const wrong = [...faults, ...(minutes.fault === null ? [] : [minutes.fault])];
  const read = files[0] === undefined ? null : readCaseFile(files[0]);
  if (read !== null && !read.ok) wrong.push(...read.faults);
  if (wrong.length > 0 || read === null || !read.ok || minutes.value === null)
    return refuseFaults(terminal, wrong, asJson);
  const wanted = (["html", "pdf"] as const).flatMap((form) => {
    const name = values.get(form);
    return name === undefined ? [] : [{ form, name }];
  });
  // A place that cannot be written is said before anything is worked out.
  const closed = wanted.flatMap(({ name }) => refuseToWrite(name) ?? []);
  if (closed.length > 0) return refuseFaults(terminal, closed, asJson);
  const plan = await engine.makePlan(read.file, { minutes: minutes.value });
  const papers: NewFile[] = [];
  for (const { form, name } of wanted) papers.push({ name, body: await engine.planSheet(read.file, plan, form) });
  const trouble = writeFiles(papers);
  if (trouble !== null) return refuseFaults(terminal, [trouble], asJson);
  if (asJson) writeJson(terminal, plan);
  else if (papers.length === 0) terminal.out(`${engine.sayPlan(read.file, plan).trimEnd()}\n`);
  else terminal.out(papers.map(({ name }) => `Written: ${name}\n`).join(""));
  return GOOD;
}

export const EFFORT_FORM: CommandForm = {
  usage: "matside effort CASE.json --activity ID [--rung ID] [--json]",
  values: ["activity", "rung"],
  flags: ["json"],
  files: ["CASE.json"],
};

/** Says what one activity, or one rung of it, asks of the person. */
export async function runEffort(
  { values, flags, files, faults }: ReadArguments,
  terminal: Terminal,
  engine: Engine,
): Promise<number> {
  const asJson = flags.has("json");
  const read = files[0] === undefined ? null : readCaseFile(files[0]);
  const wrong = [...faults, ...(read !== null && !read.ok ? read.faults : [])];
  const activity = values.get("activity");
  const rung = values.get("rung");
  const named = faults.some(({ path }) => path === "--activity") ? null : findActivity(engine, activity, rung);
  if (named !== null) wrong.push(named);
  if (wrong.length > 0 || read === null || !read.ok || activity === undefined)
    return refuseFaults(terminal, wrong, asJson);
  const answer = await engine.effort(read.file, activity, rung);
  if (asJson) writeJson(terminal, answer);
  else terminal.out(`${engine.sayEffort(read.file, answer).trimEnd()}\n`);
  return GOOD;
}

/** The fault of an activity or rung that the catalogue does not have; null where it does. */
function findActivity(engine: Engine, activity: string | undefined, rung: string | undefined): Fault | null {
  const say = (path: string, typed: string | undefined, known: readonly string[], what: string): Fault => {
    const nearest = typed === undefined ? null : findNearest(typed, known);
    return {
      path,
      found: typed === undefined ? "nothing" : JSON.stringify(typed.slice(0, 60)),
      expected: `${what}: one of ${known.join(", ")}${nearest === null ? "" : `; nearest: ${nearest}`}`,
    };
  };
  const { activities } = engine.catalogue();
  const found = activities.find(({ id }) => id === activity);
  if (found === undefined)
    return say(
      "--activity",
      activity,
      activities.map(({ id }) => id),
      "an activity",
    );
  if (rung === undefined || found.rungs.some(({ id }) => id === rung)) return null;
  return say(
    "--rung",
    rung,
    found.rungs.map(({ id }) => id),
    `a rung of ${found.id}`,
  );
}

export const CHECK_FORM: CommandForm = {
  usage: "matside check CASE.json [--json]",
  values: [],
  flags: ["json"],
  files: ["CASE.json"],
};

/** Says whether a case file can be used, and what is assumed where it is silent. */
export async function runCheck(
  { flags, files, faults }: ReadArguments,
  terminal: Terminal,
  engine: Engine,
): Promise<number> {
  const asJson = flags.has("json");
  const read = files[0] === undefined ? null : readCaseFile(files[0]);
  if (faults.length > 0 || read === null) return refuseFaults(terminal, faults, asJson);
  if (!read.ok) {
    const answer: CheckAnswer = {
      version: engine.version,
      ok: false,
      faults: [...read.faults],
      warnings: [],
      contradictions: [],
      assumed: [],
    };
    if (asJson) writeJson(terminal, answer);
    refuseFaults(terminal, read.faults, asJson);
    return BAD_INPUT;
  }
  const { contradictions, assumed } = await engine.checkCase(read.file);
  const answer: CheckAnswer = {
    version: engine.version,
    ok: true,
    faults: [],
    warnings: [...read.warnings],
    contradictions,
    assumed,
  };
  if (asJson) writeJson(terminal, answer);
  else terminal.out(sayCheck(answer));
  return GOOD;
}

function sayCheck({ warnings, contradictions, assumed }: CheckAnswer): string {
  const lines = [
    "The case file can be used.",
    ...warnings.map(({ path, found, expected }) => `Look again at ${path}: ${found}; expected ${expected}.`),
    ...contradictions.map(
      ({ findings, believed, because }) =>
        `These do not agree: ${findings.join(" and ")}. Believed: ${believed}, because ${because}`,
    ),
    ...(assumed.length === 0 ? [] : [`Assumed where nothing is said: ${assumed.join(", ")}.`]),
  ];
  return `${lines.join("\n")}\n`;
}

export const CATALOGUE_FORM: CommandForm = {
  usage: "matside catalogue [--json]",
  values: [],
  flags: ["json"],
  files: [],
};

/** Lists the positions, activities and rungs. */
export async function runCatalogue(
  { flags, faults }: ReadArguments,
  terminal: Terminal,
  engine: Engine,
): Promise<number> {
  const asJson = flags.has("json");
  if (faults.length > 0) return refuseFaults(terminal, faults, asJson);
  const catalogue = engine.catalogue();
  if (asJson) writeJson(terminal, catalogue);
  else
    terminal.out(
      catalogue.activities
        .map(
          ({ id, name, position, rungs }) =>
            `${id}  ${name}, ${position}\n${rungs.map((rung) => `  ${rung.id}  ${rung.name}\n`).join("")}`,
        )
        .join(""),
    );
  return GOOD;
}
