import { parseArgs } from "node:util";
import { type Fault, sayFound } from "../contract/faults.ts";
import { findNearest } from "../contract/nearest.ts";

/** What a command takes: options with a value, options without, and how many names of files. */
export interface CommandForm {
  readonly usage: string;
  readonly values: readonly string[];
  readonly flags: readonly string[];
  readonly files: readonly string[];
}

export interface ReadArguments {
  readonly values: ReadonlyMap<string, string>;
  readonly flags: ReadonlySet<string>;
  readonly files: readonly string[];
  readonly faults: readonly Fault[];
}

/** Sorts what was typed after the name of a command; everything wrong with it is listed at once. */
export function readArguments(typed: readonly string[], form: CommandForm): ReadArguments {
  const options = Object.fromEntries([
    ...form.values.map((name) => [name, { type: "string" as const }]),
    ...form.flags.map((name) => [name, { type: "boolean" as const }]),
  ]);
  const { tokens } = parseArgs({ args: [...typed], options, strict: false, allowPositionals: true, tokens: true });
  const values = new Map<string, string>();
  const flags = new Set<string>();
  const files: string[] = [];
  const faults: Fault[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") files.push(token.value);
    if (token.kind !== "option") continue;
    const { name, rawName, value } = token;
    const given = typeof value === "string" ? value : undefined;
    if (form.flags.includes(name)) {
      if (given === undefined) flags.add(name);
      else faults.push({ path: rawName, found: sayFound(given), expected: "no value" });
    } else if (form.values.includes(name)) {
      if (given === undefined || given === "" || (given.startsWith("--") && !token.inlineValue))
        faults.push({ path: rawName, found: "nothing", expected: "a value after it" });
      else if (values.has(name)) faults.push({ path: rawName, found: "it twice", expected: "it once" });
      else values.set(name, given);
    } else faults.push(unknownOption(rawName, name, form));
  }
  form.files.slice(files.length).forEach((name) => {
    faults.push({ path: name, found: "nothing", expected: form.usage });
  });
  files.slice(form.files.length).forEach((file) => {
    faults.push({ path: sayFound(file), found: "one name too many", expected: form.usage });
  });
  return { values, flags, files, faults };
}

function unknownOption(rawName: string, name: string, form: CommandForm): Fault {
  const known = [...form.values, ...form.flags];
  const nearest = findNearest(name, known);
  return {
    path: rawName,
    found: "an unknown option",
    expected: `one of ${known.map((one) => `--${one}`).join(", ")}${nearest === null ? "" : `; nearest: --${nearest}`}`,
  };
}

export type ReadNumber =
  | { readonly value: number; readonly fault: null }
  | { readonly value: null; readonly fault: Fault };

/** A whole number after an option, or the usual one where it was not given. */
export function readWhole(
  values: ReadonlyMap<string, string>,
  name: string,
  usual: number,
  least: number,
  most: number,
  unit: string,
): ReadNumber {
  const typed = values.get(name);
  if (typed === undefined) return { value: usual, fault: null };
  const value = /^\d{1,9}$/.test(typed) ? Number(typed) : Number.NaN;
  if (value >= least && value <= most) return { value, fault: null };
  return {
    value: null,
    fault: { path: `--${name}`, found: sayFound(typed), expected: `a whole number from ${least} to ${most}${unit}` },
  };
}
