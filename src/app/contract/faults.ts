import type { z } from "zod";
import { findNearest } from "./nearest.ts";

/** One thing that is wrong in what was given: where, what stands there, what may stand there. */
export interface Fault {
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** Longest piece of a value that a fault repeats. */
const SHOWN = 60;

/** Most faults that are told of one value; a file with more is no case file. */
const TOLD_AT_MOST = 500;

/** Every fault of a value that a schema refused, in the order of the file, each in plain words. */
export function listFaults(issues: readonly Issue[], input: unknown): readonly Fault[] {
  const faults = new Map<string, Fault>();
  for (const issue of issues) {
    for (const fault of sayIssue(issue, issue.path, input)) {
      if (faults.size >= TOLD_AT_MOST) return [...faults.values(), TOO_MANY];
      faults.set(`${fault.path}\n${fault.expected}`, fault);
    }
  }
  return [...faults.values()];
}

const TOO_MANY: Fault = {
  path: "the file",
  found: `more than ${TOLD_AT_MOST} faults`,
  expected: "one case as schema/case.schema.json describes it",
};

/** The fault as one line of text. */
export function sayFault({ path, found, expected }: Fault): string {
  return `${path}: found ${found}; expected ${expected}`;
}

function sayIssue(issue: Issue, path: Path, input: unknown): readonly Fault[] {
  if (issue.code === "unrecognized_keys")
    return issue.keys
      .slice(0, TOLD_AT_MOST + 1)
      .map((key) => sayUnknownKey([...path, key], key, issue.message.split(" ")));
  if (issue.code === "invalid_union") {
    const branch = chooseBranch(issue.errors, valueAt(input, path));
    if (branch !== null) return branch.flatMap((inner) => sayIssue(inner, [...path, ...inner.path], input));
  }
  return [{ path: sayPath(path), found: sayFound(valueAt(input, path)), expected: issue.message }];
}

function sayUnknownKey(path: Path, key: string, known: readonly string[]): Fault {
  const nearest = findNearest(key, known);
  const shown = known.length > 24 ? "a field of schema/case.schema.json" : `one of the fields ${known.join(", ")}`;
  return {
    path: sayPath(path),
    found: "an unknown field",
    expected: nearest === null ? shown : `${shown}; nearest: "${nearest}"`,
  };
}

/** Of the forms a value may have, the one it was meant to be: of its kind, and with the fewest unknown names and faults. */
function chooseBranch(branches: readonly (readonly Issue[])[], value: unknown): readonly Issue[] | null {
  const ofItsKind = branches.filter(
    (issues) => !issues.some((issue) => issue.path.length === 0 && isOfAnotherKind(issue, value)),
  );
  const sorted = [...ofItsKind].sort((a, b) => countUnknown(a) - countUnknown(b) || a.length - b.length);
  return sorted[0] ?? null;
}

function isOfAnotherKind(issue: Issue, value: unknown): boolean {
  return issue.code === "invalid_type" || (issue.code === "invalid_value" && typeof value !== "string");
}

function countUnknown(issues: readonly Issue[]): number {
  return issues.reduce((sum, issue) => sum + (issue.code === "unrecognized_keys" ? issue.keys.length : 0), 0);
}

function sayPath(path: Path): string {
  if (path.length === 0) return "the file";
  return path.reduce<string>((text, step) => {
    if (typeof step === "number") return `${text}[${step}]`;
    const name = String(step).slice(0, SHOWN);
    const plain = /^[A-Za-z_$][\w$]*$/.test(name);
    if (!plain) return `${text}[${JSON.stringify(name)}]`;
    return text === "" ? name : `${text}.${name}`;
  }, "");
}

function valueAt(input: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, step) => {
    if (typeof value !== "object" || value === null) return undefined;
    return Object.getOwnPropertyDescriptor(value, step)?.value;
  }, input);
}

export function sayFound(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "null";
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object") return "an object";
  if (typeof value === "number") return String(value);
  const text = JSON.stringify(value) ?? "something else";
  return text.length > SHOWN ? `${text.slice(0, SHOWN - 1)}…` : text;
}
