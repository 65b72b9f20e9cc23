import { findNearest } from "../contract/nearest.ts";
import { type CommandForm, type ReadArguments, readArguments } from "./arguments.ts";
import {
  CATALOGUE_FORM,
  CHECK_FORM,
  EFFORT_FORM,
  PLAN_FORM,
  runCatalogue,
  runCheck,
  runEffort,
  runPlan,
} from "./case-commands.ts";
import type { Engine } from "./engine-form.ts";
import { runServe, SERVE_FORM } from "./serve-command.ts";
import { GOOD, OUR_FAULT, refuseFaults, refuseSentence, type Terminal } from "./terminal.ts";

type Command = (typed: ReadArguments, terminal: Terminal, engine: Engine) => Promise<number>;

const COMMANDS: Readonly<Record<string, { readonly form: CommandForm; readonly run: Command }>> = {
  plan: { form: PLAN_FORM, run: runPlan },
  effort: { form: EFFORT_FORM, run: runEffort },
  catalogue: { form: CATALOGUE_FORM, run: runCatalogue },
  check: { form: CHECK_FORM, run: runCheck },
  serve: { form: SERVE_FORM, run: runServe },
};
const LATER = ["score", "change", "export"];

const HELP = `${Object.values(COMMANDS)
  .map(({ form }) => form.usage)
  .join("\n")}

A computation to support a licensed clinician, who decides. The physician's orders and the local protocol prevail.
`;

/**
 * Runs one command. @returns its exit status: 0 good, 2 bad input, 1 a fault of our own. Faults are told on standard
 * error, without a trace of the program's insides.
 */
export async function runCommand(typed: readonly string[], terminal: Terminal, engine: Engine): Promise<number> {
  const [name, ...rest] = typed;
  const asJson = rest.includes("--json");
  try {
    if (name === undefined) return refuseSentence(terminal, HELP.trimEnd(), false);
    if (name === "--help" || name === "-h" || name === "help") return say(terminal, HELP);
    if (name === "--version")
      return say(terminal, `matside ${engine.version.product}, knowledge ${engine.version.knowledge}\n`);
    if (LATER.includes(name)) return refuseSentence(terminal, `"${name}" is not in this version.`, asJson);
    const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
    if (command === undefined) return refuseFaults(terminal, [unknownCommand(name)], asJson);
    if (rest.includes("--help") || rest.includes("-h")) return say(terminal, `${command.form.usage}\n`);
    return await command.run(readArguments(rest, command.form), terminal, engine);
  } catch (error) {
    const message = `Fault of Matside itself: ${error instanceof Error ? error.message : "unknown"}`;
    refuseSentence(terminal, message, asJson);
    return OUR_FAULT;
  }
}

function say(terminal: Terminal, text: string): number {
  terminal.out(text);
  return GOOD;
}

function unknownCommand(name: string) {
  const known = [...Object.keys(COMMANDS), ...LATER];
  const nearest = findNearest(name, known);
  return {
    path: "command",
    found: JSON.stringify(name.slice(0, 60)),
    expected: `one of ${known.join(", ")}${nearest === null ? "" : `; nearest: ${nearest}`}`,
  };
}
