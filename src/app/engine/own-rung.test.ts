import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { CaseFile } from "../contract/case-file.ts";
import { parseCase, validateCase } from "../contract/parse-case.ts";
import { accountedRungs, PLAN_ANSWER } from "../contract/plan-answer.ts";
import { createEngine } from "./create-engine.ts";
import type { Engine } from "./engine.ts";
import type { OwnRung } from "./own-activities.ts";
import { therapistPaperOf } from "./papers.ts";

const read = (name: string): CaseFile => {
  const parsed = parseCase(readFileSync(`examples/${name}.json`, "utf8"));
  if (!parsed.ok) throw new Error(name);
  return parsed.value;
};
const FROM = { activity: "bridge", rung: "full-lift" };
const OWN: OwnRung = {
  id: "own-1",
  from: FROM,
  name: "Full lift, strong knee straighter",
  words: "Both feet, push up",
  cue: "both",
  angles: [{ joint: "kneeFlexion", side: "strong", degrees: 80 }],
  sets: 2,
  repetitions: 5,
  by: "T1",
  at: "2026-03-16T09:00:00Z",
};
let engine: Engine;
beforeAll(async () => {
  engine = await createEngine();
}, 30_000);

describe("a rung of the therapist's own", () => {
  const file = read("case-p");
  const own = (change: Partial<OwnRung>): OwnRung => ({ ...OWN, ...change });

  it("says what there is to change, within this body's own ranges", () => {
    const start = engine.ownStart(file, FROM);
    expect(start?.supports.map(({ part }) => part)).toEqual(expect.arrayContaining(["foot.weak", "foot.strong"]));
    const knee = start?.angles.find(({ joint, side }) => joint === "kneeFlexion" && side === "strong");
    expect(knee?.degrees).toBeGreaterThan(80);
    expect([knee?.least, knee?.most]).toEqual([-1, 152]);
    expect(engine.ownStart(file, { activity: "bridge", rung: "none" })).toBeNull();
  });

  it("is posed, weighed and drawn like the others", () => {
    const trial = engine.tryOwnRung(file, OWN, 400);
    if (!trial.posed) throw new Error(trial.because);
    expect(trial.weighed.effort?.sentence).toMatch(/\.$/);
    expect(trial.weighed.effort?.peak.middle).toBeGreaterThan(0);
    expect(trial.picture.svg).toMatch(/^<svg/);
    expect(trial.picture.text).toMatch(/full lift, strong knee straighter/);
    const base = engine.weigh(file, FROM, null);
    expect(trial.weighed.effort?.figure).not.toBe(base.effort?.figure);
  });

  it("refuses in plain words what cannot be posed, with the joint or the part named", () => {
    const because = (change: Partial<OwnRung>): string => {
      const trial = engine.tryOwnRung(file, own(change), 400);
      return trial.posed ? "posed" : trial.because;
    };
    expect(because({ angles: [{ joint: "kneeFlexion", side: "weak", degrees: 170 }] })).toMatch(
      /^Weak knee, bent goes from -1 to 152 degrees here; 170 cannot be posed\.$/,
    );
    expect(because({ angles: [{ joint: "hipFlexion", degrees: 120 }] })).toMatch(
      /^(Weak|Strong) hip, bent comes out at -?\d+ degrees, not 120: what it rests on does not let it go there\.$/,
    );
    expect(because({ support: [{ part: "knee.weak", how: "away" }] })).toBe(
      "The weak knee rests on nothing in that rung.",
    );
    expect(because({ words: "one two three four five six seven" })).toBe("The words to say are at most six.");
    expect(because({ from: { activity: "bridge", rung: "none" } })).toMatch(/not in the catalogue/);
    expect(because({ weightToWeakCm: 15 })).toMatch(
      /weight cannot be taken|contact ends the movement|misses its support/,
    );
    const nothing = ["foot.weak", "foot.strong", "shoulderBlade.weak", "shoulderBlade.strong"];
    expect(
      because({ limbFree: "leg.weak", support: nothing.slice(1).map((part) => ({ part, how: "away" as const })) }),
    ).toMatch(/^(It cannot be held still|.* misses its support)/);
  });

  it("joins the catalogue of that person, is planned, explained and printed, and leaves everybody else's alone", () => {
    const withOwn: CaseFile = { ...file, ownRungs: [OWN] };
    expect(validateCase(withOwn).ok).toBe(true);
    const name = { activity: "own-1", rung: "own-1" };
    const plan = engine.plan(withOwn, 45, { mustHave: [name], leaveOut: [FROM] });
    expect(PLAN_ANSWER.safeParse(plan).success).toBe(true);
    const item = plan.items.find(({ activity }) => activity === "own-1");
    expect(item?.dose).toMatchObject({ sets: 2 });
    expect(item?.position).toBe("hook-lying");
    const all = accountedRungs(plan);
    expect(new Set(all).size).toBe(all.length);
    const rungsOf = (one?: CaseFile) =>
      engine.catalogue(one).activities.flatMap(({ id, rungs }) => rungs.map((rung) => `${id}/${rung.id}`));
    const known = rungsOf(withOwn);
    expect([...all].sort()).toEqual([...known].sort());
    expect(known.length).toBe(rungsOf().length + 1);
    expect(engine.sheet(withOwn, name)).toMatchObject({ say: "Both feet, push up", cue: "both" });
    expect(engine.sheet(withOwn, name).notAtHome).toMatch(/treatment first/);
    const undrawn: Engine = { ...engine, picture: () => ({ svg: "", text: "" }) };
    expect(JSON.stringify(therapistPaperOf(undrawn, withOwn, plan))).toContain("Both feet, push up");
  });

  it("is refused by the case file where a code or a limit is wrong, with the field named", () => {
    const bad = validateCase({
      ...file,
      ownRungs: [{ ...OWN, limbFree: "tail", angles: [{ joint: "knee", degrees: 900 }] }],
    });
    expect(bad.ok).toBe(false);
    if (!bad.ok)
      expect(bad.faults.map(({ path }) => path)).toEqual(
        expect.arrayContaining([
          "ownRungs[0].limbFree",
          "ownRungs[0].angles[0].joint",
          "ownRungs[0].angles[0].degrees",
        ]),
      );
  });
});
