import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { compose, rotate, rotationAbout, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../body/body.ts";
import { buildBody } from "../body/build.ts";
import { type Capacities, normalCapacities, scaleCapacities } from "../body/strength-capacities.ts";
import { STRENGTH_IDS, type StrengthId, type Strengths, strengthsFrom } from "../body/strength-keys.ts";
import { leastHelp } from "../help/least-help.ts";
import { sitePushes } from "../help/points.ts";
import type { SiteId } from "../help/sites.ts";
import { loadLinearSolver } from "../linear-program/linear-program.ts";
import { type SteadySolver, steadySolver } from "../linear-program/steady-solver.ts";
import type { ClosedPose } from "../pose/close.ts";
import { centreOfMass, placeFrames } from "../pose/kinematics.ts";
import { solveBestPossible } from "./best-possible.ts";
import { allowedMoments } from "./efforts.ts";
import { shareHabitually } from "./habitual.ts";
import { effortProgram, type ExtraColumns } from "./program.ts";
import { addForce, prepareStatics, shareTwoJointMuscles, type Statics } from "./statics.ts";

const CASES = 1000;
const AGE = 66;
const SITES: readonly SiteId[] = [
  "underButtock.weak",
  "pelvisBack.weak",
  "aboveElbowBack.weak",
  "upperChest.weak",
  "kneeFront.weak",
];

interface Set {
  readonly name: string;
  readonly statics: Statics;
  readonly mirrored: Statics;
  readonly normal: ReturnType<typeof normalCapacities>;
}
const SIZE = { sex: "female", height: 1.6, mass: 70 } as const;
const SETS: readonly Set[] = (
  [
    ["bridge", poses.BRIDGE],
    ["bridge, strong foot up", poses.BRIDGE_STRONG_FOOT_UP],
    ["hands and knees", poses.HANDS_AND_KNEES],
    ["tall kneeling", poses.TALL_KNEELING],
    ["standing", poses.STANDING],
    ["prone on elbows", poses.PRONE_ON_ELBOWS],
  ] as const
).map(([name, pose]) => {
  const body = buildBody(SIZE, 1);
  // Whose side carries how much is the person's own in standing and kneeling: an input, not asked for here.
  const statics = { ...poses.closed(body, pose), sharing: null };
  return {
    name,
    statics,
    mirrored: { ...poses.closed(buildBody(SIZE, -1), pose), sharing: null },
    normal: normalCapacities(body, AGE, statics.pose.configuration.angles),
  };
});

// Drawn by name, so that a counterexample prints short.
const anySet = fc.constantFrom(...SETS.map(({ name }) => name));
const setOf = (name: string): Set => {
  const set = SETS.find((each) => each.name === name);
  if (set === undefined) throw new Error(`no set ${name}`);
  return set;
};
const percent = fc.integer({ min: 3, max: 125 });
/** Hands and feet below 2 N.m hang and set no verdict: whether they do is drawn, and stays as it is when strength grows. */
const DISTAL = /^(wrist|ankle)/;
const COUNTS_FROM = 0.62;
const LIMP = 0.05;
const anyStrengths = fc
  .tuple(
    fc.array(percent, { minLength: STRENGTH_IDS.length, maxLength: STRENGTH_IDS.length }),
    fc.integer({ min: 10, max: 100 }),
  )
  .map(([values, all]) =>
    strengthsFrom((id) => {
      const value = values[STRENGTH_IDS.indexOf(id)] ?? 0;
      if (DISTAL.test(id)) return value < 30 ? LIMP : COUNTS_FROM + value / 200;
      return (value * all) / 10_000;
    }),
  );
/** One to all of the muscle groups, and by how much they grow. */
const anyGain = fc.tuple(
  fc.subarray([...STRENGTH_IDS], { minLength: 1 }),
  fc.integer({ min: 1, max: 60 }).map((by) => by / 100),
);
const stronger = (strengths: Strengths, [which, by]: readonly [readonly StrengthId[], number]): Strengths =>
  strengthsFrom((id) => strengths[id] + (which.includes(id) && strengths[id] !== LIMP ? by : 0));
const countedIn = (statics: Statics, capacities: Capacities): string =>
  allowedMoments(statics, capacities).counted.join("");

let solver: SteadySolver;
beforeAll(async () => {
  solver = steadySolver(await loadLinearSolver());
});
afterAll(() => {
  const { record, broken } = solver;
  console.log(
    `programs: ${record.solved} certified (worst primal ${record.worst.primal.toExponential(1)}, dual ${record.worst.dual.toExponential(1)}, gap ${record.worst.gap.toExponential(1)}); ${broken.first} broke off once, ${broken.twice} twice`,
  );
});
const best = (statics: Statics, capacities: Capacities): number | null => {
  const answer = solveBestPossible(statics, capacities, solver);
  return answer.balanced ? answer.effort : null;
};

/** Fewest newtons of help that bring every joint to the given effort, sharing the load in the best way; null where none do. */
function leastPush(statics: Statics, capacities: Capacities, level: number): number | null {
  const pushes = SITES.flatMap((site) => sitePushes(statics.body, statics.pose.frames, site));
  const count = pushes.length;
  const whole = new Float64Array(6 * count);
  const muscle = new Float64Array(statics.angles * count);
  pushes.forEach((push, h) => {
    addForce(statics.body, statics.pose, statics.axes, push.segment, push.at, push.push, whole, muscle, h, count);
  });
  shareTwoJointMuscles(statics.body, muscle, count);
  const extra: ExtraColumns = { count, whole, muscle, cost: 1, most: 4 * statics.weight };
  const answer = solver.solve(effortProgram({ ...statics, sharing: null }, capacities, level, extra).builder.build());
  return answer.status === "best" ? answer.value : null;
}

/** The same pose with the whole room turned about the vertical. */
function turned(body: Body, pose: ClosedPose, by: number): ClosedPose {
  const r = rotationAbout([0, 0, 1], by);
  const turn = (v: Vector): Vector => rotate(r, v);
  const configuration = {
    ...pose.configuration,
    rootPosition: turn(pose.configuration.rootPosition),
    rootRotation: compose(r, pose.configuration.rootRotation),
  };
  const frames = placeFrames(body, configuration);
  return {
    ...pose,
    configuration,
    frames,
    centre: centreOfMass(body, frames),
    contacts: pose.contacts.map((contact) => ({
      ...contact,
      normal: turn(contact.normal),
      points: contact.points.map(({ at, gap }) => ({ at: turn(at), gap })),
      other: contact.other === null ? null : { ...contact.other, at: turn(contact.other.at) },
    })),
  };
}

describe("what more strength does", () => {
  it("never raises the best possible effort", { timeout: 180_000 }, () => {
    fc.assert(
      fc.property(anySet, anyStrengths, anyGain, (name, strengths, gain) => {
        const { statics, normal } = setOf(name);
        const less = scaleCapacities(normal, strengths);
        const more = scaleCapacities(normal, stronger(strengths, gain));
        expect(countedIn(statics, more)).toBe(countedIn(statics, less));
        const before = best(statics, less);
        if (before === null) return;
        const after = best(statics, more);
        if (after !== null) expect(after).toBeLessThanOrEqual(before * (1 + 1e-6) + 1e-9);
      }),
      { numRuns: CASES, seed: 1 },
    );
  });

  it("may raise it only where a limp end grows past 2 N.m and begins to count", () => {
    const set = setOf("hands and knees");
    const at = (wrist: number) =>
      best(
        set.statics,
        scaleCapacities(
          set.normal,
          strengthsFrom((id) => (id.startsWith("wrist") && id.endsWith(".weak") ? wrist : 0.9)),
        ),
      ) ?? Number.NaN;
    expect(at(0.1)).toBeLessThanOrEqual(at(0.36) + 1e-9);
    expect(at(0.9)).toBeLessThanOrEqual(at(0.36) + 1e-9);
  });

  it("never raises the fewest newtons of help for a given effort", { timeout: 180_000 }, () => {
    let some = 0;
    fc.assert(
      fc.property(anySet, anyStrengths, anyGain, (name, strengths, gain) => {
        const { statics, normal } = setOf(name);
        const less = scaleCapacities(normal, strengths);
        const more = scaleCapacities(normal, stronger(strengths, gain));
        const before = leastPush(statics, less, 0.3);
        if (before === null) return;
        const after = leastPush(statics, more, 0.3);
        if (before > 1) some++;
        if (after !== null) expect(after).toBeLessThanOrEqual(before * (1 + 1e-6) + 1e-6);
      }),
      { numRuns: CASES, seed: 2 },
    );
    console.log(`least help: ${CASES} cases, help needed in ${some}`);
    expect(some).toBeGreaterThan(200);
  });

  it("counts how often the help worked out over the habitual sharing does grow with strength", {
    timeout: 180_000,
  }, () => {
    let needed = 0;
    let grew = 0;
    let worst = 0;
    fc.assert(
      fc.property(anySet, anyStrengths, anyGain, (name, strengths, gain) => {
        const { statics, normal } = setOf(name);
        const request = { allowedShare: 0.4, sites: SITES };
        const less = scaleCapacities(normal, strengths);
        const more = scaleCapacities(normal, stronger(strengths, gain));
        const before = leastHelp(statics, less, request, solver);
        const after = leastHelp(statics, more, request, solver);
        if (!before.enough || !before.needed) return;
        needed++;
        const rise = after.enough ? after.newtons - before.newtons : Number.POSITIVE_INFINITY;
        if (rise > 1) {
          grew++;
          if (Number.isFinite(rise)) worst = Math.max(worst, rise);
        }
      }),
      { numRuns: 400, seed: 3 },
    );
    console.log(`help over the habitual sharing: grew in ${grew} of ${needed}, by at most ${worst.toFixed(0)} N`);
    // People do not share the load in the best way, and which way changes with strength: stated, not hidden.
    expect(needed).toBeGreaterThan(40);
    expect(grew / needed).toBeLessThan(0.1);
  });
});

describe("what changes nothing", () => {
  it("turning the room or mirroring the body: habitual and best possible efforts", { timeout: 180_000 }, () => {
    const worst = { turned: 0, mirrored: 0 };
    fc.assert(
      fc.property(anySet, anyStrengths, fc.integer({ min: -180, max: 180 }), (name, strengths, degrees) => {
        const { statics, mirrored, normal } = setOf(name);
        const capacities = scaleCapacities(normal, strengths);
        const pose = turned(statics.body, statics.pose, (degrees * Math.PI) / 180);
        const again = { ...prepareStatics(statics.body, pose, statics.options), sharing: null };
        const others = { turned: again, mirrored } as const;
        const habitual = shareHabitually(statics, capacities).most;
        const least = best(statics, capacities);
        for (const way of ["turned", "mirrored"] as const) {
          const most = shareHabitually(others[way], capacities).most;
          worst[way] = Math.max(worst[way], Math.abs(most - habitual) / Math.max(1, habitual));
          const other = best(others[way], capacities);
          if (least !== null && other !== null) expect(Math.abs(other - least)).toBeLessThan(1e-6 * Math.max(1, least));
        }
      }),
      { numRuns: CASES, seed: 4 },
    );
    console.log(
      `habitual effort differs by at most ${worst.turned.toExponential(1)} of itself with the room turned, ${worst.mirrored.toExponential(1)} mirrored`,
    );
    // The sharing is found in rounds and ends within its own allowance; the program's answer above is exact.
    expect(worst.turned).toBeLessThan(2e-3);
    expect(worst.mirrored).toBeLessThan(1e-9);
  });
});
