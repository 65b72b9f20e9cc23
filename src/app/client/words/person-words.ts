import type { CaseFile } from "../../contract/case-file.ts";

/** She or he, as the case says. */
export interface Pronouns {
  readonly she: string;
  readonly her: string;
  readonly herOwn: string;
}
export function pronounsOf({ person }: CaseFile): Pronouns {
  return person.sex === "female" ? { she: "she", her: "her", herOwn: "her" } : { she: "he", her: "him", herOwn: "his" };
}

export function saySide({ weakSide }: CaseFile): string {
  if (weakSide === "both") return "both sides weak";
  return weakSide === "neither" ? "no weaker side" : `${weakSide} side weak`;
}

export function sayDay({ daysSinceOnset }: CaseFile): string {
  return daysSinceOnset === null ? "" : `, day ${Math.round(daysSinceOnset)}`;
}

const WEEKDAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;

/** "Friday" within the last week, else "last time". */
export function sayLastDay(date: string | undefined, today: string): string {
  if (date === undefined) return "last time";
  const [then, now] = [Date.parse(`${date}T00:00:00Z`), Date.parse(`${today}T00:00:00Z`)];
  const days = Math.round((now - then) / 86_400_000);
  return days >= 1 && days <= 7 ? (WEEKDAYS[new Date(then).getUTCDay()] ?? "last time") : "last time";
}

const NUMBERS = [
  "none",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
] as const;
/** Small numbers as words. */
export function sayNumber(value: number): string {
  return NUMBERS[value] ?? String(value);
}
export function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
export function minutesOf(value: number): string {
  return String(Math.round(value));
}

/** "helpers.canKneel" as words. */
export function sayPath(path: string): string {
  return path
    .split(".")
    .map((part) => part.replace(/([A-Z])/g, " $1").toLowerCase())
    .join(" ");
}
