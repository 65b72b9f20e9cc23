import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { createApplication } from "../server/application.ts";
import { startServer } from "../server/start-server.ts";
import { openStore } from "../store/open-store.ts";
import type { Store } from "../store/store.ts";
import { type CommandForm, type ReadArguments, readWhole } from "./arguments.ts";
import type { Engine } from "./engine-form.ts";
import { readCaseFile } from "./files.ts";
import { GOOD, refuseFaults, refuseSentence, type Terminal } from "./terminal.ts";

const USUAL_PORT = 4175;

export const SERVE_FORM: CommandForm = {
  usage: "matside serve [--port 4175] [--data DIR] [--demo] [--open]",
  values: ["port", "data", "database-url"],
  flags: ["demo", "open", "json"],
  files: [],
};

/** Where the program was put: the built page lies beside it, examples and records a folder up. */
const HOME = dirname(fileURLToPath(import.meta.url));

/** Opens the records and answers the page until it is told to end. */
export async function runServe(
  { values, flags, faults }: ReadArguments,
  terminal: Terminal,
  engine: Engine,
): Promise<number> {
  const asJson = flags.has("json");
  const port = readWhole(values, "port", USUAL_PORT, 0, 65_535, "");
  const wrong = [...faults, ...(port.fault === null ? [] : [port.fault])];
  if (wrong.length > 0 || port.value === null) return refuseFaults(terminal, wrong, asJson);
  if (values.has("database-url"))
    return refuseSentence(
      terminal,
      "--database-url is not in this version: the records are kept in a folder of this computer, see --data.",
      asJson,
    );
  const opened = await openStore(values.get("data") ?? join(HOME, "..", ".data"), {
    now: () => new Date().toISOString(),
  });
  if (!opened.ok) return refuseSentence(terminal, opened.because, asJson);
  const { store } = opened;
  if (flags.has("demo")) {
    const trouble = await addDemoPeople(store, engine);
    if (trouble !== null) {
      await store.close();
      return refuseSentence(terminal, trouble, asJson);
    }
  }
  const app = createApplication({
    store,
    version: engine.version,
    computePlan: engine.makePlan,
    makeSheet: engine.makeSheet,
    pageFolder: join(HOME, "page"),
    report: (error) => terminal.err(`Fault of Matside itself: ${error instanceof Error ? error.message : "unknown"}\n`),
  });
  const started = await startServer(app, port.value);
  if (!started.ok) {
    await store.close();
    return refuseSentence(terminal, started.because, asJson);
  }
  const { server } = started;
  terminal.out(
    asJson
      ? `${JSON.stringify({ ok: true, address: server.address, port: server.port })}\n`
      : `Matside is open at ${server.address}\n`,
  );
  if (flags.has("open")) openBrowser(server.address);
  await untilTold();
  await server.close();
  await store.close();
  return GOOD;
}

/** Puts the invented people of the examples into an empty store. @returns what is wrong, or null */
async function addDemoPeople(store: Store, engine: Engine): Promise<string | null> {
  if ((await store.listPeople()).length > 0) return null;
  const folder = join(HOME, "..", "examples");
  for (const name of listExamples(folder)) {
    const read = readCaseFile(join(folder, name));
    if (!read.ok)
      return `The example ${name} cannot be read: ${read.faults[0]?.path ?? ""} ${read.faults[0]?.expected ?? ""}`;
    const person = name.replace(/\.json$/, "");
    const kept = await store.writeCase({
      id: `demo-${person}`,
      person,
      at: new Date().toISOString(),
      knowledge: engine.version.knowledge,
      case: read.file,
    });
    if (!kept.ok) return kept.because;
  }
  return null;
}

function listExamples(folder: string): readonly string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith(".json"))
      .sort()
      .reverse();
  } catch {
    return [];
  }
}

/** Shows the page in the usual browser; where there is none, the address stands in the terminal. */
function openBrowser(address: string): void {
  const [command, ...before] =
    process.platform === "darwin" ? ["open"] : process.platform === "win32" ? ["cmd", "/c", "start", ""] : ["xdg-open"];
  const opener = spawn(command ?? "xdg-open", [...before, address], { stdio: "ignore", detached: true });
  opener.on("error", () => {});
  opener.unref();
}

function untilTold(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
  });
}
