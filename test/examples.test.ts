import { beforeAll, describe, expect, it } from "vitest";
import { type PlanAnswer, PLAN_ANSWER, accountedRungs } from "../src/app/contract/plan-answer.ts";
import { createEngine } from "../src/app/engine/create-engine.ts";
import type { Engine } from "../src/app/engine/engine.ts";
import { EXAMPLES, readExample } from "./helpers/example-cases.ts";
import { numbersAstray } from "./helpers/mirror-answer.ts";

interface Expected {
  /** Towards which a fall is guarded wherever one can fall. */
  readonly guard: "left" | "right" | "both";
  /** Rungs that must be in the plan or available. */
  readonly open: readonly string[];
  /** Rungs that must be out, each with a rule that must be among its reasons. */
  readonly out: Readonly<Record<string, string>>;
}

/** What a therapist would expect of each invented case (common practice, no source). */
const EXPECTED: Readonly<Record<string, Expected>> = {
  aphasia: {
    guard: "right",
    open: ["bridge/full-lift", "short-sitting-reach/hand-slides-ahead", "table-forearms-standing-lean/stand-and-lean"],
    out: {
      "bridge/strong-foot-up": "effort",
      "hands-and-knees-rock/diagonal-forward-weak": "helpers",
      "bars-weak-stance/strong-heel-off": "balance",
    },
  },
  "case-a": {
    guard: "right",
    open: [
      "bridge/full-lift",
      "table-forearms-sitting-lean/over-weak-forearm",
      "tall-kneel-bench-hold-and-shift/strong-hand-hold",
    ],
    out: {
      "bridge/strong-over-weak": "effort",
      "sit-to-stand/strong-foot-ahead": "balance",
      "hands-and-knees-rock/diagonal-forward-weak": "helpers",
    },
  },
  "case-p": {
    guard: "right",
    open: [
      "bridge/full-lift",
      "tall-kneel-bench-hold-and-shift/strong-hand-hold",
      "side-lying-to-sit-over-strong/hand-prop",
    ],
    out: {
      "bridge/strong-foot-up": "effort",
      "hands-and-knees-rock/rock-to-weak": "approach",
      "prone-on-elbows-lift-and-reach/strong-arm-ahead": "approach",
    },
  },
  "look-only": {
    guard: "left",
    open: [
      "bridge/full-lift",
      "long-sitting-balance-and-reach/strong-hand-props",
      "roll-to-weak-side/strong-arm-reaches",
    ],
    out: {
      "bars-strong-step/strong-foot-lifts": "seen",
      "bars-weak-stance/strong-heel-off": "balance",
      "bridge/strong-over-weak": "effort",
    },
  },
  "many-precautions": {
    guard: "both",
    open: ["bridge/full-lift", "bars-weak-stance/stand-seat-close", "short-sitting-hip-hike/strong-hip-hand-on-table"],
    out: {
      "bridge/strong-over-weak": "precaution:thr_posterior",
      "prone-on-elbows-hold-and-shift/flat-hold": "precaution:feeding_tube",
      "weak-arm-forward-side-lying/arm-placed": "precaution:hemi_shoulder_pain",
    },
  },
  "nearly-walking": {
    guard: "left",
    open: ["bars-strong-step/strong-foot-taps", "sit-to-stand/middle-seat", "bridge/strong-foot-further"],
    out: {
      "prone-on-elbows-hold-and-shift/over-a-wedge": "equipment",
      "prone-on-elbows-lift-and-reach/strong-arm-ahead": "effort",
      "hands-and-knees-lift/strong-hand-ahead": "effort",
    },
  },
  neglect: {
    guard: "left",
    open: [
      "short-sitting-hip-hike/strong-hip-hand-on-table",
      "long-sitting-balance-and-reach/strong-hand-props",
      "trunk-counter-rotation-side-lying/pelvis-ahead",
    ],
    out: {
      "bridge/strong-foot-up": "effort",
      "hands-and-knees-rock/rock-forward": "approach",
      "long-sitting-balance-and-reach/beyond-to-weak": "balance",
    },
  },
  "previous-sessions": {
    guard: "right",
    open: ["bridge/full-lift", "sit-to-stand/perch-forearms-on-table", "bars-weak-stance/stand-seat-close"],
    out: {
      "bridge/strong-over-weak": "effort",
      "prone-on-elbows-hold-and-shift/over-a-wedge": "equipment",
      "bars-weak-step-and-walk/walk-hand-weak-strong": "helpers",
    },
  },
  "sore-knees": {
    guard: "left",
    open: ["bridge/full-lift", "table-forearms-sitting-lean/rest-on-forearms", "bars-weak-stance/stand-seat-close"],
    out: {
      "hands-and-knees-rock/rock-back": "precaution:knee_arthritis_skin",
      "tall-kneel-bench-hold-and-shift/strong-hand-hold": "stoppedInLook",
      "prone-on-elbows-hold-and-shift/flat-hold": "precaution:prone_relative",
    },
  },
};
const MINUTES = 45;
const engine: Engine = await createEngine();
const plans = new Map<string, PlanAnswer>();
function planOf(name: string): PlanAnswer {
  const plan = plans.get(name) ?? engine.plan(readExample(name), MINUTES);
  plans.set(name, plan);
  return plan;
}
const nameOf = ({ activity, rung }: { readonly activity: string; readonly rung: string }): string =>
  `${activity}/${rung}`;

describe("the invented cases", () => {
  it("are each expected something of, and half of the first eight are weak on the left", () => {
    expect(EXAMPLES).toEqual(Object.keys(EXPECTED).sort());
    const sides = EXAMPLES.filter((name) => name !== "previous-sessions").map((name) => readExample(name).weakSide);
    expect(sides.filter((side) => side === "left")).toHaveLength(4);
    expect(sides.filter((side) => side === "right")).toHaveLength(4);
  });
});

describe.each(EXAMPLES)("%s", (name) => {
  let plan: PlanAnswer;
  beforeAll(() => {
    plan = planOf(name);
  }, 60_000);
  const expected = EXPECTED[name] ?? { guard: "both", open: [], out: {} };

  it("gets a plan of the published form with every number finite", () => {
    const read = PLAN_ANSWER.safeParse(JSON.parse(JSON.stringify(plan)));
    expect(read.success ? [] : read.error.issues.slice(0, 3)).toEqual([]);
    expect(numbersAstray(plan)).toEqual([]);
    expect(plan.hold).toBeNull();
    expect(plan.items.length).toBeGreaterThanOrEqual(4);
    console.log(
      `${name}: ${plan.items.length} items, ${plan.available.length} available, ${plan.excluded.length} out, ${plan.minutes} minutes (${plan.workingMinutes} working), ${plan.solver.status}`,
    );
  });

  it("accounts for the whole catalogue, each rung once", () => {
    const catalogue = engine.catalogue().activities.flatMap(({ id, rungs }) => rungs.map((rung) => `${id}/${rung.id}`));
    expect([...accountedRungs(plan)].sort()).toEqual([...catalogue].sort());
    const positions = engine.catalogue().positions.map(({ id }) => id);
    for (const { position } of plan.timeline) expect(positions).toContain(position);
  });

  it("stays inside the slot, and the line of the session is as long as the plan", () => {
    expect(plan.minutes).toBeLessThanOrEqual(MINUTES);
    expect(plan.workingMinutes).toBeLessThanOrEqual(plan.minutes);
    expect(plan.items.reduce((sum, { minutes }) => sum + minutes, 0)).toBeLessThanOrEqual(plan.workingMinutes + 1e-9);
    plan.timeline.forEach(({ fromMinute, toMinute }, i) => {
      expect(toMinute).toBeGreaterThanOrEqual(fromMinute);
      expect(fromMinute).toBeCloseTo(plan.timeline[i - 1]?.toMinute ?? 0, 9);
    });
    expect(plan.timeline[plan.timeline.length - 1]?.toMinute ?? 0).toBeLessThanOrEqual(MINUTES);
  });

  it("says for every item why it is in, for every rung left out why not", () => {
    for (const item of plan.items) {
      expect(item.because.length, nameOf(item)).toBeGreaterThan(0);
      for (const reason of item.because) expect(reason.trim(), nameOf(item)).not.toBe("");
    }
    for (const rung of plan.excluded) for (const { detail } of rung.because) expect(detail, nameOf(rung)).not.toBe("");
  });

  it("guards the side a therapist would guard", () => {
    const guarded = plan.items.filter(({ guard }) => guard !== null);
    expect(guarded.length).toBeGreaterThan(0);
    expect(guarded.map(({ guard }) => guard?.side)).toEqual(guarded.map(() => expected.guard));
  });

  it("has open what must be open", () => {
    const open = [...plan.items, ...plan.available].map(nameOf);
    expect(expected.open).toHaveLength(3);
    for (const rung of expected.open) expect(open).toContain(rung);
  });

  it.each(Object.entries(expected.out))("leaves out %s because of %s", (rung, rule) => {
    const found = plan.excluded.find((each) => nameOf(each) === rung);
    expect(found?.because.map((reason) => reason.rule)).toContain(rule);
  });
});

describe("single cases", () => {
  it("a person with sore knees goes neither prone nor on hands and knees nor kneeling, and is offered something else", () => {
    const plan = planOf("sore-knees");
    const never = ["prone-on-elbows", "hands-and-knees", "tall-kneeling", "tall-kneeling-at-bench", "half-kneeling"];
    const open = [...plan.items, ...plan.available].map(({ activity }) => activity);
    const positions = engine
      .catalogue()
      .activities.filter(({ id }) => open.includes(id))
      .map(({ position }) => position);
    expect(positions.filter((position) => never.some((each) => position.startsWith(each)))).toEqual([]);
    expect(plan.timeline.map(({ position }) => position).filter((each) => never.includes(each))).toEqual([]);
    const absence = engine.absence(
      readExample("sore-knees"),
      MINUTES,
      {},
      { activity: "hands-and-knees-rock", rung: "rock-back" },
    );
    expect(absence.instead.some(({ eligible }) => eligible)).toBe(true);
    expect(absence.mayForce).toBe(false);
  }, 60_000);

  it("a person with logged sessions opens on what changes since the last, each change with its reason", () => {
    const file = readExample("previous-sessions");
    const plan = planOf("previous-sessions");
    const last = file.previous?.[file.previous.length - 1]?.items ?? [];
    const same = plan.items.filter((item) =>
      last.some((each) => each.activity === item.activity && each.rung === item.rung),
    );
    console.log(
      `previous-sessions: ${same.length} of ${last.length} items as last time, ${plan.changesSinceLast.length} changes`,
    );
    expect(same.length).toBeGreaterThan(0);
    expect(plan.changesSinceLast.length).toBeGreaterThan(0);
    for (const { change, because } of plan.changesSinceLast) {
      expect(change).toMatch(/^(New|One up|One down|Not today): .+\.$/);
      expect(because).not.toBe("");
    }
  }, 60_000);

  it("a person known by the look alone gets a plan, and hears what is assumed and which finding to take next", () => {
    const plan = planOf("look-only");
    expect(plan.assumed).toEqual(expect.arrayContaining(["helpers.count", "approach.arm", "vitals"]));
    expect(plan.takeNext.length).toBeGreaterThan(0);
  }, 60_000);

  it("many precautions bring their cautions, each with a source", () => {
    const plan = planOf("many-precautions");
    expect(plan.cautions.length).toBeGreaterThan(9);
    for (const { text, source } of plan.cautions) expect(`${text}${source}`).not.toBe("");
  }, 60_000);
});
