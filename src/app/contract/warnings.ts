import type { CaseFile } from "./case-file.ts";
import type { Fault } from "./faults.ts";

/** What is allowed but worth a second look; nothing is refused for it. */
export function listWarnings(file: CaseFile): readonly Fault[] {
  const warnings: Fault[] = [];
  const add = (path: string, found: string, expected: string) => warnings.push({ path, found, expected });
  if (file.date === undefined) add("date", "nothing", "the day of the plan; without it the papers carry no date");
  const tasks = (file.look ?? []).map(({ task }) => task);
  tasks.forEach((task, index) => {
    if (tasks.indexOf(task) !== index)
      add(`look[${index}].task`, `"${task}" again`, "each task once; the last one counts");
  });
  const codes = (file.precautions ?? []).map((entry) => (typeof entry === "string" ? entry : entry.code));
  codes.forEach((code, index) => {
    if (codes.indexOf(code) !== index) add(`precautions[${index}]`, `"${code}" again`, "each precaution once");
  });
  const { systolic, diastolic } = file.vitals ?? {};
  if (systolic !== undefined && diastolic !== undefined && diastolic >= systolic)
    add(
      "vitals.diastolic",
      `${diastolic} with a systolic pressure of ${systolic}`,
      "a diastolic pressure below the systolic one: measure again",
    );
  const { kind, type, territory, amputation, level } = file.cause ?? {};
  if (kind !== undefined && kind !== "stroke" && (type !== undefined || territory !== undefined))
    add("cause", `type or territory with kind "${kind}"`, 'type and territory only with kind "stroke"');
  if (kind !== undefined && kind !== "amputation" && (amputation !== undefined || level !== undefined))
    add("cause", `an amputation with kind "${kind}"`, 'side, level and prosthesis only with kind "amputation"');
  const dates = (file.previous ?? []).flatMap(({ date }) => (date === undefined ? [] : [date]));
  if (dates.some((date, index) => index > 0 && date < (dates[index - 1] ?? "")))
    add("previous", "a later session before an earlier one", "earlier sessions, oldest first");
  if (file.date !== undefined && dates.some((date) => date > (file.date ?? "")))
    add("previous", "a session after the day of the plan", `sessions up to ${file.date}`);
  if (file.daysSinceOnset !== null && file.daysSinceOnset > file.person.ageYears * 366)
    add("daysSinceOnset", String(file.daysSinceOnset), "fewer days than the person has lived");
  return warnings;
}

/** The amputation of a case, wherever in the cause it was written; null where there is none. */
export function amputationOf(
  file: CaseFile,
): { readonly side?: "left" | "right"; readonly level?: string; readonly prosthesis?: "on" | "off" } | null {
  const { cause } = file;
  if (cause?.kind !== "amputation") return null;
  const { side, level, prosthesis } = cause;
  return {
    ...(side === undefined ? {} : { side }),
    ...(level === undefined ? {} : { level }),
    ...(prosthesis === undefined ? {} : { prosthesis }),
    ...cause.amputation,
  };
}
