import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, expect, it } from "vitest";
import { INVENTED_ENGINE } from "./helpers/invented-engine.ts";
import { runCommand } from "../src/app/command-line/run-command.ts";
import type { CaseFile } from "../src/app/contract/case-file.ts";
import { parseCase } from "../src/app/contract/parse-case.ts";
import { PLAN_ANSWER, accountedRungs } from "../src/app/contract/plan-answer.ts";
import { createEngine } from "../src/app/engine/create-engine.ts";
import { readFindings } from "../src/app/engine/read-findings.ts";
import { findWays } from "../src/plan/session/ways.ts";
import { cautionsFor } from "../src/practice/precautions/cautions.ts";
import { judgeHolds } from "../src/practice/precautions/holds.ts";
import { completePrecautions } from "../src/practice/precautions/implied.ts";
import { gatherOrders } from "../src/practice/precautions/orders.ts";
import { judgeVitals } from "../src/practice/vital-signs/judge-vitals.ts";
import { otherBodySide } from "../src/quantity/sides.ts";
import { validCase } from "./helpers/case-arbitrary.ts";
import { mirrorAnswer, numbersAstray } from "./helpers/mirror-answer.ts";
import { mirrorCase } from "./helpers/mirror-case.ts";
import { spoiledCase } from "./helpers/spoiled-case.ts";

const SPOILED = 1000;
const VALID = 1000;
const WHOLE = 60;
/** Every so many whole plans the mirrored person's is made too. */
const MIRRORED_EVERY = 6;
const counts = { refused: 0, read: 0, whole: 0, holds: 0, empty: 0, mirrored: 0 };
const folder = mkdtempSync(join(tmpdir(), "fuzz-"));
afterAll(() => {
  rmSync(folder, { recursive: true });
  console.log(
    `fuzz: ${counts.refused} spoiled cases refused; ${counts.read} valid cases read and judged by the rules, each with its mirror; ${counts.whole} valid cases through the whole plan (${counts.holds} on hold, ${counts.empty} with nothing to do), ${counts.mirrored} of them with the mirrored person's`,
  );
});

function parsed(file: unknown): CaseFile {
  const read = parseCase(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

it(`refuses ${SPOILED} spoiled cases with status 2 and names the field`, async () => {
  let number = 0;
  await fc.assert(
    fc.asyncProperty(spoiledCase, async ({ text, names }) => {
      const file = join(folder, `case-${number++ % 2}.json`);
      writeFileSync(file, text);
      let [out, err] = ["", ""];
      const terminal = {
        out: (said: string) => {
          out += said;
        },
        err: (said: string) => {
          err += said;
        },
      };
      const status = await runCommand(["plan", file, "--json"], terminal, INVENTED_ENGINE);
      expect(status).toBe(2);
      expect(out).toBe("");
      const told: { faults: { path: string; found: string; expected: string }[] } = JSON.parse(err);
      expect(told.faults.map(({ path }) => path)).toContain(names === "the file" ? told.faults[0]?.path : names);
      for (const { path, found, expected } of told.faults)
        for (const each of [path, found, expected]) expect(each).not.toBe("");
      expect(err).not.toMatch(/\bat .+:\d+:\d+|node_modules|ZodError/);
      counts.refused++;
    }),
    { numRuns: SPOILED, seed: 1 },
  );
}, 60_000);

it(`reads ${VALID} valid cases; the mirrored case reads alike`, () => {
  fc.assert(
    fc.property(validCase, (file) => {
      const { findings, laterality } = readFindings(parsed(file));
      expect(numbersAstray(findings)).toEqual([]);
      const precautions = completePrecautions(findings);
      const vitals = judgeVitals(findings.vitals, gatherOrders(precautions), findings.medicines);
      const { daysSinceOnset, stroke } = findings;
      const hold = judgeHolds(precautions, { daysSinceOnset, stroke });
      expect(numbersAstray([hold, vitals, cautionsFor(precautions, findings.medicines)])).toEqual([]);
      expect(findWays(findings, precautions).between("supine", "supine")).not.toBeNull();
      const mirrored = readFindings(parsed(mirrorCase(file)));
      expect(mirrored.laterality.weak).toBe(laterality.weak === null ? null : otherBodySide(laterality.weak));
      expect(JSON.stringify(mirrored.findings)).toBe(JSON.stringify(findings));
      counts.read++;
    }),
    { numRuns: VALID, seed: 2 },
  );
}, 60_000);

/** Most random people would only be held, or have nobody beside them: neither in two of three whole plans. */
function settled({ vitals: _vitals, ...file }: CaseFile): CaseFile {
  return {
    ...file,
    daysSinceOnset: Math.max(3, file.daysSinceOnset ?? 3),
    helpers: { ...file.helpers, count: Math.max(1, file.helpers?.count ?? 1) },
    precautions: (file.precautions ?? []).filter((each) => each !== "dvt_suspected" && each !== "acute_24h"),
  };
}

const cases = fc.sample(validCase, { numRuns: WHOLE, seed: 3 }).map((file, i) => ({
  number: i + 1,
  file: i % 3 === 0 ? parsed(file) : settled(parsed(file)),
}));
const engine = await createEngine();
const catalogue = engine.catalogue().activities.flatMap(({ id, rungs }) => rungs.map((rung) => `${id}/${rung.id}`));

it.each(cases)(
  "makes a whole plan of valid case $number",
  ({ number, file }) => {
    const minutes = 20 + (number % 4) * 15;
    const plan = engine.plan(file, minutes);
    const read = PLAN_ANSWER.safeParse(JSON.parse(JSON.stringify(plan)));
    expect(read.success ? [] : read.error.issues.slice(0, 3)).toEqual([]);
    expect(numbersAstray(plan)).toEqual([]);
    expect([...accountedRungs(plan)].sort()).toEqual([...catalogue].sort());
    expect(plan.minutes).toBeLessThanOrEqual(minutes);
    for (const { because } of plan.items) expect(because.length).toBeGreaterThan(0);
    if (plan.hold !== null) {
      expect([plan.items, plan.available, plan.minutes, plan.workingMinutes]).toEqual([[], [], 0, 0]);
      counts.holds++;
    } else if (plan.items.length === 0) counts.empty++;
    if (number % MIRRORED_EVERY === 1) {
      expect(JSON.stringify(mirrorAnswer(engine.plan(mirrorCase(file), minutes)))).toBe(JSON.stringify(plan));
      counts.mirrored++;
    }
    counts.whole++;
  },
  120_000,
);
