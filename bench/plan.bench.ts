import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { CaseFile } from "../src/app/contract/case-file.ts";
import { parseCase } from "../src/app/contract/parse-case.ts";
import { createEngine } from "../src/app/engine/create-engine.ts";
import { type BenchRow, spreadOf } from "./timing.ts";

const COMMAND = "dist/matside.js";
const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".json"));

const now = (): number => performance.now();

function readExample(name: string): CaseFile {
  const read = parseCase(readFileSync(join("examples", name), "utf8"));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return read.value;
}

/** The same body with one finding changed: the grade of the trunk's flexion. */
function withOneChange(file: CaseFile): CaseFile {
  const trunk = { ...file.strength?.trunk, flexion: file.strength?.trunk?.flexion === "3" ? "3+" : "3" } as const;
  return { ...file, strength: { ...file.strength, trunk } };
}

/** Wall and processor time of a piece of work [ms]: on a busy machine the second still says what the work costs. */
function timeBoth(work: () => unknown): { readonly wall: number; readonly processor: number } {
  const from = now();
  const used = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(used);
  return { wall: now() - from, processor: (user + system) / 1000 };
}

/** Plans of every example in a fresh engine, and again with one finding changed. */
async function timePlans(): Promise<BenchRow[]> {
  const cold: ReturnType<typeof timeBoth>[] = [];
  const warm: ReturnType<typeof timeBoth>[] = [];
  for (const name of EXAMPLES) {
    const file = readExample(name);
    const changed = withOneChange(file);
    const engine = await createEngine();
    cold.push(timeBoth(() => engine.plan(file, 45)));
    warm.push(timeBoth(() => engine.plan(changed, 45)));
  }
  const row = (what: string, figures: number[], target?: number): BenchRow => ({
    what,
    ...spreadOf(figures),
    unit: "ms",
    ...(target === undefined ? {} : { target }),
  });
  const wall = (all: typeof cold): number[] => all.map((each) => each.wall);
  const processor = (all: typeof cold): number[] => all.map((each) => each.processor);
  return [
    row("full plan in a fresh engine, over the examples", wall(cold)),
    row("the same, processor time", processor(cold)),
    row("full plan again, one finding changed, over the examples", wall(warm), 500),
    row("the same, processor time", processor(warm)),
  ];
}

/** Node's own start and end [ms]. */
function timeNode(): number {
  const from = now();
  spawnSync(process.execPath, ["-e", "0"]);
  return now() - from;
}

/** Plans from the command line, each beside a start of Node that does nothing. */
function timeCommand(): BenchRow {
  const taken = EXAMPLES.map((name) => {
    const node = timeNode();
    const from = now();
    const { status } = spawnSync(process.execPath, [COMMAND, "plan", join("examples", name), "--json"]);
    if (status !== 0) throw new Error(`the plan of ${name} ended with ${status}`);
    return now() - from - node;
  });
  return {
    what: "full plan from the command line, without Node's start",
    ...spreadOf(taken),
    unit: "ms",
    target: 2000,
  };
}

function untilItAnswers(server: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    server.stdout?.on("data", (chunk) => {
      said += String(chunk);
      const address = /http:\/\/[^\s"]+/.exec(said)?.[0];
      if (address !== undefined) resolve(address);
    });
    server.once("exit", () => reject(new Error("the server did not start")));
  });
}

/** Starts of the server on an empty folder until the page is answered, each beside a start of Node that does nothing. */
async function timeServer(): Promise<BenchRow> {
  const taken: number[] = [];
  for (let k = 0; k < 7; k++) {
    const folder = mkdtempSync(join(tmpdir(), "matside-bench-"));
    const node = timeNode();
    const from = now();
    const server = spawn(process.execPath, [COMMAND, "serve", "--port", "0", "--data", folder]);
    const answer = await fetch(await untilItAnswers(server));
    await answer.text();
    taken.push(now() - from - node);
    const gone = new Promise((resolve) => server.once("exit", resolve));
    server.kill("SIGTERM");
    await gone;
    rmSync(folder, { recursive: true });
  }
  return {
    what: "server up and the page answered, without Node's start",
    ...spreadOf(taken),
    unit: "ms",
    target: 1000,
  };
}

/** Script and style that the first view loads, compressed; fonts apart. */
function weighPage(): BenchRow {
  const html = readFileSync("dist/page/index.html", "utf8");
  const files = [...html.matchAll(/(?:src|href)="\/?([^"]+\.(?:js|css))"/g)].map(([, file = ""]) => file);
  const bytes = files.reduce((sum, file) => sum + gzipSync(readFileSync(join("dist/page", file))).length, 0);
  return {
    what: "first view of the page, script and style compressed",
    ...spreadOf([bytes / 1000]),
    unit: "kB",
    target: 250,
  };
}

/** Times plans, the command, the server's start, and weighs the page. */
export async function runBench(): Promise<BenchRow[]> {
  return [...(await timePlans()), timeCommand(), await timeServer(), weighPage()];
}
