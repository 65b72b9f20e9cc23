import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { INVENTED_ENGINE } from "../../../test/helpers/invented-engine.ts";
import type { Engine } from "./engine-form.ts";
import { runCommand } from "./run-command.ts";

let folder: string;
let good: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "matside-command-"));
  good = join(folder, "good.json");
  writeFileSync(
    good,
    JSON.stringify({
      person: { sex: "male", ageYears: 60, heightCm: 175, massKg: 80 },
      weakSide: "right",
      daysSinceOnset: 5,
      date: "2026-03-16",
    }),
  );
  mkdirSync(join(folder, "a-folder"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(...typed: string[]) {
  return runWith(INVENTED_ENGINE, ...typed);
}
async function runWith(engine: Engine, ...typed: string[]) {
  let out = "";
  let err = "";
  const terminal = {
    out: (text: string) => {
      out += text;
    },
    err: (text: string) => {
      err += text;
    },
  };
  const status = await runCommand(typed, terminal, engine);
  expect(err).not.toMatch(/\n\s+at |node:|\.ts:/);
  return { status, out, err };
}
function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe("good input", () => {
  it("plans as words, as JSON and with the slot's minutes", async () => {
    expect(await run("plan", good)).toEqual({ status: 0, out: "Nothing today.\n", err: "" });
    const json = await run("plan", good, "--minutes", "60", "--json");
    expect(json.status).toBe(0);
    expect(JSON.parse(json.out)).toMatchObject({ workingMinutes: 48 });
    expect(JSON.parse((await run("plan", good, "--json")).out)).toMatchObject({ workingMinutes: 33 });
  });

  it("writes papers whole, also through a link, and leaves nothing beside them", async () => {
    const html = join(folder, "plan.html");
    const pdf = join(folder, "plan.pdf");
    symlinkSync(html, join(folder, "link.html"));
    expect((await run("plan", good, "--html", html, "--pdf", pdf)).out).toContain(`Written: ${html}`);
    expect(readFileSync(html, "utf8")).toMatch(/^<!doctype html>/);
    expect(readFileSync(pdf, "latin1")).toBe("%PDF");
    writeFileSync(html, "old");
    expect((await run("plan", good, "--html", join(folder, "link.html"))).status).toBe(0);
    expect(readFileSync(html, "utf8")).toMatch(/^<!doctype html>/);
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  it("says effort, catalogue and check", async () => {
    expect(await run("effort", good, "--activity", "bridge")).toMatchObject({ status: 0, out: "Easy.\n" });
    expect(
      JSON.parse((await run("effort", good, "--activity=bridge", "--rung=both-feet", "--json")).out),
    ).toMatchObject({ rung: "both-feet" });
    expect(JSON.parse((await run("catalogue", "--json")).out).activities[0].rungs[0].id).toBe("both-feet");
    expect((await run("catalogue")).out).toMatch(/^bridge {2}Bridge, hook-lying\n {2}both-feet/);
    expect(await run("check", good)).toMatchObject({ status: 0, out: expect.stringMatching(/can be used/) });
    expect(JSON.parse((await run("check", good, "--json")).out)).toMatchObject({
      ok: true,
      faults: [],
      assumed: ["helpers.count"],
    });
  });

  it("answers help and version", async () => {
    expect((await run("--help")).out).toMatch(/matside plan CASE\.json/);
    expect((await run("plan", "--help")).status).toBe(0);
    expect((await run("--version")).out).toMatch(/^matside 0/);
  });
});

describe("bad input: status 2, a sentence naming the field and what it may be", () => {
  it.each([
    ["no command", [], /matside plan/],
    ["a wrong command", ["paln"], /"paln"; expected one of plan, .*nearest: plan/],
    ["a name of the language itself", ["constructor"], /"constructor"; expected one of/],
    ["no file", ["plan"], /CASE\.json: found nothing/],
    ["two files", ["plan", "a.json", "b.json"], /one name too many/],
    ["a missing file", ["plan", "nowhere.json"], /nowhere\.json: found no such file/],
    [
      "an unknown option",
      ["plan", "x.json", "--minute", "5"],
      /--minute: found an unknown option; expected one of --minutes.*nearest: --minutes/,
    ],
    [
      "words for minutes",
      ["plan", "x.json", "--minutes", "long"],
      /--minutes: found "long"; expected a whole number from 0 to 600/,
    ],
    ["negative minutes", ["plan", "x.json", "--minutes=-5"], /--minutes: found "-5"/],
    ["minutes without a value", ["plan", "x.json", "--minutes"], /--minutes: found nothing/],
    ["minutes twice", ["plan", "x.json", "--minutes", "30", "--minutes", "40"], /it twice/],
    ["a wrong port", ["serve", "--port", "99999"], /--port: found "99999"; expected a whole number from 0 to 65535/],
    ["a shared database", ["serve", "--database-url", "postgres://x"], /not in this version/],
    ["score", ["score", "m", "x.json"], /"score" is not in this version/],
    ["change", ["change"], /not in this version/],
    ["export", ["export", "x.json", "--fhir", "y"], /not in this version/],
  ])("%s", async (_what, typed, sentence) => {
    const { status, out, err } = await run(...typed);
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(sentence);
  });

  it.each([
    ["an empty file", "", /found nothing; expected one case/],
    ["broken JSON", '{"person": ', /broken JSON/],
    [
      "metres and a wrong code together",
      '{"person":{"sex":"f","ageYears":60,"heightCm":1.75,"massKg":1e9},"weakSide":"right","daysSinceOnset":5,"Strength":{}}',
      /person\.sex.*\n.*heightCm.*write 175.*\n.*massKg.*\n.*Strength.*nearest: "strength"/,
    ],
  ])("%s", async (what, text, sentence) => {
    for (const command of ["plan", "check"]) {
      const { status, err } = await run(command, file(`${what}.json`, text));
      expect(status).toBe(2);
      expect(err).toMatch(sentence);
    }
  });

  it("a file of 50 million bytes, and a folder", async () => {
    const huge = await run("plan", file("huge.json", " ".repeat(50_000_000)));
    expect(huge).toMatchObject({
      status: 2,
      err: expect.stringMatching(/50 million bytes; expected a case file of at most 5 million/),
    });
    expect(await run("plan", join(folder, "a-folder"))).toMatchObject({
      status: 2,
      err: expect.stringMatching(/found a folder/),
    });
  });

  it("an activity or rung that the catalogue does not have", async () => {
    expect(await run("effort", good)).toMatchObject({
      status: 2,
      err: expect.stringMatching(/--activity: found nothing; expected an activity: one of bridge/),
    });
    expect(await run("effort", good, "--activity", "brigde")).toMatchObject({
      status: 2,
      err: expect.stringMatching(/found "brigde".*nearest: bridge/),
    });
    expect(await run("effort", good, "--activity", "bridge", "--rung", "one-foot")).toMatchObject({
      status: 2,
      err: expect.stringMatching(/a rung of bridge: one of both-feet/),
    });
  });

  it("a paper that cannot be written: nothing is left behind", async () => {
    const before = readdirSync(folder);
    expect(await run("plan", good, "--html", join(folder, "a-folder"))).toMatchObject({
      status: 2,
      err: expect.stringMatching(/found a folder/),
    });
    expect(
      await run("plan", good, "--html", join(folder, "fine.html"), "--pdf", join(folder, "no", "where.pdf")),
    ).toMatchObject({ status: 2 });
    expect(await run("plan", good, "--html", "/dev/null")).toMatchObject({
      status: 2,
      err: expect.stringMatching(/not an ordinary file/),
    });
    expect(readdirSync(folder)).toEqual(before);
  });

  it("refuses a place that cannot be written before anything is worked out", async () => {
    let asked = 0;
    const counting: Engine = {
      ...INVENTED_ENGINE,
      makePlan: async (...args) => {
        asked++;
        return INVENTED_ENGINE.makePlan(...args);
      },
    };
    const nowhere = join(folder, "no-such-folder", "plan");
    const both = await runWith(
      counting,
      "plan",
      good,
      "--html",
      `${nowhere}.html`,
      "--pdf",
      `${nowhere}.pdf`,
      "--json",
    );
    expect(both.status).toBe(2);
    const told: { faults: { path: string; found: string }[] } = JSON.parse(both.err);
    expect(told.faults.map(({ path }) => path)).toEqual([`${nowhere}.html`, `${nowhere}.pdf`]);
    for (const { found } of told.faults) expect(found).toMatch(/no such/);
    expect(asked).toBe(0);
  });

  it("tells faults as JSON on standard error where JSON is asked for", async () => {
    const bad = file("bad.json", '{"weakSide": "lft"}');
    const plan = await run("plan", bad, "--minutes", "601", "--json");
    expect(plan).toMatchObject({ status: 2, out: "" });
    const told = JSON.parse(plan.err);
    expect(told.faults.map(({ path }: { path: string }) => path)).toEqual(
      ["--minutes", "weakSide", "person", "daysSinceOnset"].sort(
        (a, b) => told.message.indexOf(a) - told.message.indexOf(b),
      ),
    );
    expect(told).toMatchObject({ ok: false, message: expect.stringMatching(/weakSide: found "lft"/) });
    const check = await run("check", bad, "--json");
    expect(check.status).toBe(2);
    expect(JSON.parse(check.out)).toMatchObject({ ok: false, faults: JSON.parse(check.err).faults });
    expect(JSON.parse((await run("score", "--json")).err)).toMatchObject({ ok: false });
  });
});

it("says that a fault of its own is its own, with status 1 and no trace", async () => {
  const broken: Engine = {
    ...INVENTED_ENGINE,
    makePlan: async () => {
      throw new Error("the table is empty");
    },
  };
  expect(await runWith(broken, "plan", good)).toEqual({
    status: 1,
    out: "",
    err: "Fault of Matside itself: the table is empty\n",
  });
  expect(JSON.parse((await runWith(broken, "plan", good, "--json")).err)).toMatchObject({ ok: false });
});
