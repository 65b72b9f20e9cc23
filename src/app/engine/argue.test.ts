import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { POSITIONS } from "../../practice/catalogue.ts";
import { type Argument, ARGUMENT_ANSWER, COMPARISON, type Wishes } from "../contract/argument.ts";
import type { CaseFile } from "../contract/case-file.ts";
import { parseCase } from "../contract/parse-case.ts";
import { accountedRungs, PLAN_ANSWER } from "../contract/plan-answer.ts";
import { createEngine } from "./create-engine.ts";
import type { Engine } from "./engine.ts";

const read = (name: string): CaseFile => {
  const parsed = parseCase(readFileSync(`examples/${name}.json`, "utf8"));
  if (!parsed.ok) throw new Error(`${name}: ${JSON.stringify(parsed.faults)}`);
  return parsed.value;
};
let engine: Engine;
const file = read("case-a");
beforeAll(async () => {
  engine = await createEngine();
  engine.plan(file, 45);
}, 60_000);

const ask = (argument: Argument, wishes: Wishes = {}, minutes = 45) => {
  const answer = engine.argue(file, minutes, wishes, argument);
  const checked = ARGUMENT_ANSWER.safeParse(JSON.parse(JSON.stringify(answer)));
  expect(checked.success ? [] : checked.error.issues.slice(0, 3)).toEqual([]);
  expect(answer.asked).toMatch(/^[A-Z0-9].*\.$/);
  // What is said to be in both or in one only is exactly what the two plans hold.
  const before = engine.plan(file, minutes, wishes);
  const names = (plan: typeof before) => plan.items.map(({ activity, rung }) => `${activity}/${rung}`).sort();
  const told = (list: readonly { activity: string; rung: string }[]) =>
    list.map((each) => `${each.activity}/${each.rung}`);
  const { same, onlyFirst, onlySecond } = answer.comparison;
  expect([...told(same), ...told(onlyFirst)].sort()).toEqual(names(before));
  expect([...told(same), ...told(onlySecond)].sort()).toEqual(names(answer.plan));
  for (const { because } of [...onlyFirst, ...onlySecond]) expect(because).not.toBe("");
  // Asking takes nothing over: the plan as it was is still the plan.
  expect(JSON.stringify(engine.plan(file, minutes, wishes))).toBe(JSON.stringify(before));
  return { answer, before };
};
const nth = (wishes: Wishes, number: number) => {
  const item = engine.plan(file, 45, wishes).items[number];
  if (item === undefined) throw new Error("no such item");
  return { activity: item.activity, rung: item.rung };
};

describe("arguing with a plan", () => {
  it("keeps what is in, and nothing changes", () => {
    const { answer } = ask({ say: "keep", of: nth({}, 1) });
    expect(answer.verdict).toBe("follows");
    expect(answer.comparison.sentence).toBe("Nothing changes.");
    expect(answer.comparison.cost).toEqual([]);
  });

  it("leaves something out: says what comes in its place and what it costs", () => {
    const of = nth({}, 0);
    const { answer } = ask({ say: "leave", of });
    expect(answer.plan.items.some((item) => item.rung === of.rung && item.activity === of.activity)).toBe(false);
    expect(answer.comparison.sentence).toMatch(/Goes out/);
    expect(answer.comparison.onlyFirst.find((each) => each.rung === of.rung)?.because).toBe(
      "It was asked to be left out.",
    );
    expect(answer.wishes.leaveOut).toEqual([of]);
    // And back in: what it stands against is let go.
    expect(ask({ say: "putIn", of }, answer.wishes).answer.wishes.leaveOut).toEqual([]);
  });

  it("starts standing, keeps off the floor, and takes twenty minutes only", () => {
    const standing = ask({ say: "startIn", position: "standing-in-bars" }).answer;
    expect(standing.plan.items[0]?.position).toBe("standing-in-bars");
    const floor = new Set(POSITIONS.filter((row) => row.floorStance).map(({ id }) => id));
    const off = ask({ say: "noFloor" }).answer;
    expect(off.plan.items.filter(({ position }) => [...floor].some((id) => id === position))).toEqual([]);
    const { answer: short } = ask({ say: "minutes", minutes: 20 });
    expect(short.minutes).toBe(20);
    expect(short.plan.minutes).toBeLessThanOrEqual(20);
    expect(short.comparison.cost.join(" ")).toMatch(/fewer minutes of work/);
    expect(short.comparison.cost.join(" ")).toMatch(/fewer items/);
  });

  it("does with one helper or none what one or none can do, and refuses to invent a second", () => {
    const two: CaseFile = { ...file, helpers: { ...file.helpers, count: 2 } };
    const one = engine.argue(two, 45, {}, { say: "helpers", count: 1 });
    expect(one.verdict).toBe("follows");
    expect(JSON.stringify(one.plan.items.map(({ rung }) => rung))).toBe(
      JSON.stringify(
        engine.plan({ ...file, helpers: { ...file.helpers, count: 1 } }, 45).items.map(({ rung }) => rung),
      ),
    );
    const more = ask({ say: "helpers", count: 5 }).answer;
    expect(more.verdict).toBe("refused");
    expect(more.because[0]?.detail).toMatch(/write a further person down/);
    const none = ask({ say: "helpers", count: 0 }).answer;
    for (const { because } of none.comparison.onlyFirst) expect(because).toMatch(/\.$/);
    expect([...accountedRungs(none.plan)].sort()).toEqual([...accountedRungs(engine.plan(file, 45))].sort());
  });

  it("plans without a thing that is not at hand: everything that needs it is out and says so", () => {
    for (const thing of ["bolster", "stool", "table", "bars"] as const) {
      const { answer } = ask({ say: "without", thing });
      const needing = answer.plan.excluded.filter(({ because }) =>
        because.some(({ rule, detail }) => rule === "equipment" && detail.includes("not at hand today")),
      );
      const named = new Set(needing.map(({ activity, rung }) => `${activity}/${rung}`));
      for (const { activity, rung } of [...answer.plan.items, ...answer.plan.available])
        expect(named.has(`${activity}/${rung}`)).toBe(false);
      if (thing === "bars") expect(needing.length).toBeGreaterThan(3);
    }
  });

  it("asks for a reason before it overrules what keeps a rung out, and puts the reason into the plan", () => {
    const of = { activity: "bridge", rung: "strong-foot-up" };
    const silent = ask({ say: "putIn", of }).answer;
    expect(silent.verdict).toBe("needsReason");
    expect(silent.because[0]?.rule).toBe("effort");
    expect(silent.comparison.sentence).toBe("Nothing changes.");
    expect(ask({ say: "keep", of }).answer.verdict).toBe("needsReason");
    expect(ask({ say: "putIn", of, why: "  " }).answer.verdict).toBe("needsReason");
    const { answer } = ask({ say: "putIn", of, why: "seen on the ward this morning" });
    expect(answer.verdict).toBe("follows");
    const item = answer.plan.items.find((each) => each.activity === of.activity && each.rung === of.rung);
    expect(item?.because.join(" ")).toMatch(/Put in by hand.*against this.*seen on the ward this morning\./);
    expect(answer.plan.overrides).toHaveLength(1);
    expect(answer.plan.overrides?.[0]).toMatchObject({ ...of, allowed: true, why: "seen on the ward this morning" });
    expect([...accountedRungs(answer.plan)].sort()).toEqual([...accountedRungs(engine.plan(file, 45))].sort());
    // Asked for without a word against the reason: the rest is planned and the answer says why it is not in.
    const unsaid = engine.plan(file, 45, { mustHave: [of] });
    expect(unsaid.items.length).toBeGreaterThanOrEqual(5);
    expect(unsaid.overrides?.[0]).toMatchObject({ ...of, allowed: false });
    expect(unsaid.overrides?.[0]?.record).toMatch(/A reason has to be given/);
  });

  it("never overrules a precaution, with whatever reason", () => {
    const sore = read("sore-knees");
    const of = { activity: "hands-and-knees-rock", rung: "rock-back" };
    const answer = engine.argue(sore, 45, {}, { say: "putIn", of, why: "they insist" });
    expect(answer.verdict).toBe("refused");
    expect(answer.because.length).toBeGreaterThan(0);
    const plan = engine.plan(sore, 45, { overrides: [{ ...of, why: "they insist" }] });
    expect(plan.items.some(({ activity }) => activity === of.activity)).toBe(false);
    expect(plan.overrides?.[0]).toMatchObject({ allowed: false });
    expect(plan.excluded.some((each) => each.activity === of.activity && each.rung === of.rung)).toBe(true);
  });

  it("answers why not, with what it would cost, for what is open and for what is out by effort", () => {
    const plan = engine.plan(file, 45);
    const spare = plan.available.find(({ activity }) => !plan.items.some((item) => item.activity === activity));
    if (spare === undefined) throw new Error("everything is planned");
    expect(engine.absence(file, 45, {}, spare).cost).toMatch(/Leaves:|Nothing leaves|does not fit/);
    const bridge = engine.absence(file, 45, {}, { activity: "bridge", rung: "strong-foot-up" });
    expect(bridge.mayForce).toBe(true);
    expect(bridge.cost).toMatch(/Leaves:|Nothing leaves|does not fit/);
  });

  it("puts two plans side by side, also of different findings", () => {
    const first = { case: file, minutes: 45 };
    const equal = engine.compare(first, first);
    expect(COMPARISON.safeParse(equal).success).toBe(true);
    expect(equal).toMatchObject({ sentence: "Nothing changes.", onlyFirst: [], onlySecond: [], cost: [] });
    const told = engine.compare(first, { case: read("sore-knees"), minutes: 45 });
    expect(told.onlyFirst.length + told.onlySecond.length).toBeGreaterThan(0);
    for (const line of told.cost) expect(line).toMatch(/^[A-Z0-9].*\.$/);
    expect(told.cost.join(" ")).not.toMatch(/\b(left|right|optimal|capacity|margin|solver)\b/i);
  });
});

describe("a plan that can hold nothing or little", () => {
  const cases: readonly (readonly [string, CaseFile, number, Wishes, RegExp])[] = [
    ["no minutes", file, 0, {}, /No time is given/],
    ["five minutes", file, 5, {}, /5 minutes are given/],
    ["nobody to help", { ...file, helpers: { count: 0 } }, 45, { noFloor: true }, /./],
    [
      "every position kept out",
      file,
      45,
      { barPositions: POSITIONS.map(({ id }) => id) },
      /Every position|do not go together/,
    ],
    ["everything asked to be out", file, 45, { leaveOut: [] }, /./],
    [
      "wishes that contradict",
      file,
      45,
      { startIn: "standing-in-bars", barPositions: ["standing-in-bars"] },
      /do not go together/,
    ],
  ];
  it.each(cases)("%s: says why and what to do instead", (_name, given, minutes, asked, words) => {
    const wishes =
      _name === "everything asked to be out"
        ? {
            leaveOut: [...engine.plan(file, 45).items, ...engine.plan(file, 45).available].map(
              ({ activity, rung }) => ({ activity, rung }),
            ),
          }
        : asked;
    const plan = engine.plan(given, minutes, wishes);
    expect(PLAN_ANSWER.safeParse(JSON.parse(JSON.stringify(plan))).success).toBe(true);
    expect(plan.minutes).toBeLessThanOrEqual(minutes);
    if (plan.items.length >= 3) return;
    expect(plan.whyShort?.because.join(" ")).toMatch(words);
    const instead = plan.whyShort?.instead.map(({ text }) => text).join(" ") ?? "";
    if (plan.items.length === 0) {
      expect(instead).toMatch(/Position well/);
      expect(instead).toMatch(/Breathing/);
      expect(instead).toMatch(/Sitting tolerance/);
    }
    expect(instead).toMatch(/Call/);
  });

  it("says of 600 minutes that one session does not hold them", () => {
    const plan = engine.plan(file, 600);
    expect(plan.items.length).toBeLessThanOrEqual(7);
    expect(plan.whyShort?.because[0]).toMatch(/working minutes stay free/);
    expect(plan.whyShort?.instead[0]?.text).toMatch(/Divide the time/);
    expect(engine.plan(file, 45).whyShort).toBeNull();
  });
});
