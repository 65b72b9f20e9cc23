import { spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { CATALOGUE_ANSWER } from "../src/app/contract/catalogue-answer.ts";
import { CHECK_ANSWER } from "../src/app/contract/check-answer.ts";
import { EFFORT_ANSWER, RUNG_EFFORT } from "../src/app/contract/effort-answer.ts";
import { PLAN_ANSWER, accountedRungs } from "../src/app/contract/plan-answer.ts";
import { ENGINE } from "../src/app/command-line/engine.ts";
import { runCommand } from "../src/app/command-line/run-command.ts";
import { numbersAstray } from "./helpers/mirror-answer.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const built = `${root}dist/matside.js`;
const folder = mkdtempSync(join(tmpdir(), "command-"));
// Another user of the computer must be able to read what is put here.
chmodSync(folder, 0o755);
afterAll(() => {
  console.log(`commands were run ${existsSync(built) ? "as built" : "in process: nothing is built"}`);
  chmodSync(locked, 0o755);
  rmSync(folder, { recursive: true });
});

interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}
async function run(...typed: string[]): Promise<Ran> {
  if (existsSync(built)) return spawn(typed);
  let [out, err] = ["", ""];
  const terminal = {
    out: (said: string) => {
      out += said;
    },
    err: (said: string) => {
      err += said;
    },
  };
  return { status: await runCommand(typed, terminal, ENGINE), out, err };
}
function spawn(typed: readonly string[], user?: number): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [built, ...typed], {
    encoding: "utf8",
    maxBuffer: 100_000_000,
    ...(user === undefined ? {} : { uid: user }),
  });
  return { status, out: stdout, err: stderr };
}
function put(name: string, text: string): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}
const locked = join(folder, "locked");
mkdirSync(locked);

const caseP = `${root}examples/case-p.json`;
const text = readFileSync(caseP, "utf8");
const SLOW = 180_000;

function expectNoTrace({ out, err }: Ran): void {
  expect(`${out}${err}`).not.toMatch(/^\s+at .+:\d+|node_modules|ZodError/m);
}
async function refused(typed: readonly string[], sentence: RegExp): Promise<Ran> {
  const ran = await run(...typed);
  expect(ran.status).toBe(2);
  expect(ran.out).toBe("");
  expect(ran.err).toMatch(sentence);
  expectNoTrace(ran);
  return ran;
}

describe("good input: status 0, the answer on standard output, nothing on standard error", () => {
  it(
    "plan",
    async () => {
      const { status, out, err } = await run("plan", caseP, "--minutes", "45", "--json");
      expect([status, err]).toEqual([0, ""]);
      const plan = PLAN_ANSWER.parse(JSON.parse(out));
      expect(plan.items.length).toBeGreaterThanOrEqual(4);
      expect(plan.minutes).toBeLessThanOrEqual(45);
      expect(numbersAstray(plan)).toEqual([]);
      const { out: listed } = await run("catalogue", "--json");
      const rungs = CATALOGUE_ANSWER.parse(JSON.parse(listed)).activities.flatMap(({ id, rungs: own }) =>
        own.map((each) => `${id}/${each.id}`),
      );
      expect([...accountedRungs(plan)].sort()).toEqual(rungs.sort());
      // Again, in another process: the same bytes.
      expect((await run("plan", caseP, "--minutes", "45", "--json")).out).toBe(out);
    },
    SLOW,
  );

  it(
    "plan as text for a terminal",
    async () => {
      const { status, out, err } = await run("plan", caseP);
      expect([status, err]).toEqual([0, ""]);
      expect(out.split("\n").length).toBeGreaterThan(5);
      expect(out).not.toMatch(/NaN|undefined|\[object|weak side's weak/);
    },
    SLOW,
  );

  it(
    "effort of a ladder, and of one rung",
    async () => {
      const ladder = await run("effort", caseP, "--activity", "bridge", "--json");
      expect([ladder.status, ladder.err]).toEqual([0, ""]);
      const answers = EFFORT_ANSWER.parse(JSON.parse(ladder.out));
      expect(Array.isArray(answers) ? answers.map(({ rung }) => rung) : []).toContain("full-lift");
      expect(numbersAstray(answers)).toEqual([]);
      const one = await run("effort", caseP, "--activity", "bridge", "--rung", "full-lift", "--json");
      expect(one.status).toBe(0);
      expect(RUNG_EFFORT.parse(JSON.parse(one.out)).rung).toBe("full-lift");
      const said = await run("effort", caseP, "--activity", "bridge", "--rung", "full-lift");
      expect(said.status).toBe(0);
      expect(said.out).not.toMatch(/NaN|undefined|\[object/);
    },
    SLOW,
  );

  it("catalogue", async () => {
    const { status, out } = await run("catalogue");
    expect(status).toBe(0);
    expect(out).toMatch(/^bridge {2}Bridge/m);
  });

  it(
    "check",
    async () => {
      const { status, out, err } = await run("check", caseP, "--json");
      expect([status, err]).toEqual([0, ""]);
      expect(CHECK_ANSWER.parse(JSON.parse(out))).toMatchObject({ ok: true, faults: [] });
    },
    SLOW,
  );

  it(
    "findings that stand against each other are no bad input, and are named",
    async () => {
      const file = JSON.parse(text);
      file.look = [
        { task: "bridge", result: "aloneWell" },
        { task: "bridgeLiftWeakFoot", result: "aloneWell" },
        { task: "standUp", result: "aloneWell", seatHeightCm: 45 },
        { task: "step", result: "aloneWell" },
      ];
      file.strength.right.hipExtension = "0";
      const { status, out } = await run("check", put("against.json", JSON.stringify(file)), "--json");
      expect(status).toBe(0);
      expect(CHECK_ANSWER.parse(JSON.parse(out)).contradictions.length).toBeGreaterThan(0);
    },
    SLOW,
  );

  it(
    "a hold is an answer: status 0, no items, the measured value said",
    async () => {
      const held = put("held.json", JSON.stringify({ ...JSON.parse(text), vitals: { systolic: 240, diastolic: 130 } }));
      const { status, out } = await run("plan", held, "--json");
      expect(status).toBe(0);
      const plan = PLAN_ANSWER.parse(JSON.parse(out));
      expect(plan).toMatchObject({ items: [], available: [], minutes: 0, workingMinutes: 0 });
      expect(plan.hold?.because.map(({ measured }) => measured).join(" ")).toMatch(/240|130/);
    },
    SLOW,
  );

  it(
    "writes the sheet of a plan as HTML and as PDF, whole",
    async () => {
      const [html, pdf] = [join(folder, "plan.html"), join(folder, "plan.pdf")];
      const { status, err } = await run("plan", caseP, "--html", html, "--pdf", pdf);
      expect([status, err]).toEqual([0, ""]);
      expect(readFileSync(html, "utf8")).toMatch(/^<!doctype html>[\s\S]*<\/html>\s*$/i);
      expect(readFileSync(html, "utf8")).not.toMatch(/\b(NaN|undefined)\b/);
      expect(readFileSync(pdf).subarray(0, 5).toString()).toBe("%PDF-");
      expect(readFileSync(pdf).subarray(-6).toString().trim()).toBe("%%EOF");
    },
    SLOW,
  );
});

describe("bad input: status 2, a sentence naming the field and what it may be", () => {
  it(
    "what is not in this version",
    async () => {
      for (const typed of [
        ["score", "fugl-meyer", "answers.json"],
        ["change", "walking-speed", "0.4", "0.6"],
        ["export", caseP, "--fhir", join(folder, "bundle.json")],
        ["serve", "--database-url", "postgres://nowhere/x"],
      ])
        await refused(typed, /not in this version/);
      expect(existsSync(join(folder, "bundle.json"))).toBe(false);
    },
    SLOW,
  );

  it(
    "metres for centimetres",
    async () => {
      const file = put("metres.json", text.replace(/"heightCm": *163/, '"heightCm": 1.63'));
      await refused(["plan", file], /person\.heightCm: found 1\.63.*163/);
      const asJson = await refused(["plan", file, "--json"], /heightCm/);
      expect(JSON.parse(asJson.err)).toMatchObject({ ok: false, faults: [{ path: "person.heightCm" }] });
      const checked = await run("check", file, "--json");
      expect(checked.status).toBe(2);
      expect(CHECK_ANSWER.parse(JSON.parse(checked.out))).toMatchObject({
        ok: false,
        faults: [{ path: "person.heightCm" }],
      });
    },
    SLOW,
  );

  it("everything wrong at once", async () => {
    const { err } = await refused(
      [
        "plan",
        put(
          "many.json",
          '{"person":{"sex":"woman","massKg":1e9},"weakSide":"lft","strength":{"left":{"hipExtension":"7"}},"colour":1}',
        ),
      ],
      /person\.sex/,
    );
    for (const path of [
      "person.ageYears",
      "person.heightCm",
      "person.massKg",
      "weakSide",
      "daysSinceOnset",
      "strength.left.hipExtension",
      "colour",
    ])
      expect(err).toContain(path);
  });

  it(
    "broken JSON, an empty file, a missing file, a folder",
    async () => {
      await refused(["plan", put("broken.json", text.slice(0, 200))], /broken JSON/);
      await refused(["check", put("empty.json", "")], /found nothing/);
      await refused(["plan", join(folder, "nowhere.json")], /no such file/);
      await refused(["plan", folder], /found a folder/);
    },
    SLOW,
  );

  it(
    "a file of 50 million bytes",
    async () => {
      const started = Date.now();
      await refused(["plan", put("huge.json", " ".repeat(50_000_000))], /50 million bytes.*at most 5 million/);
      expect(Date.now() - started).toBeLessThan(5000);
    },
    SLOW,
  );

  it(
    "a wrong activity or rung names the nearest",
    async () => {
      await refused(["effort", caseP, "--activity", "brige"], /--activity: found "brige".*nearest: bridge/);
      await refused(
        ["effort", caseP, "--activity", "bridge", "--rung", "full-lft"],
        /--rung: found "full-lft".*nearest: full-lift/,
      );
      await refused(["plan", caseP, "--minutes", "601"], /--minutes: found "601"; expected a whole number/);
    },
    SLOW,
  );

  it(
    "a folder that cannot be written: nothing is left behind",
    async ({ skip }) => {
      chmodSync(locked, 0o555);
      const typed = ["plan", caseP, "--html", join(locked, "plan.html")];
      // Nobody's rights do not bind the administrator: then the command is run as another user.
      const asAdministrator = process.getuid?.() === 0;
      if (asAdministrator && (!existsSync(built) || spawn(["--version"], 65_534).status !== 0))
        skip("run by the administrator, whom no rights bind");
      const ran = asAdministrator ? spawn(typed, 65_534) : await run(...typed);
      expect(ran.status).toBe(2);
      expect(ran.err).toMatch(/plan\.html: found .*; expected a file that can be written/);
      expectNoTrace(ran);
      expect(readdirSync(locked)).toEqual([]);
    },
    SLOW,
  );
});
