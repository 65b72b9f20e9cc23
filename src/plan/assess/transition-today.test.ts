import { beforeAll, describe, expect, it } from "vitest";
import type { BodySize } from "../../mechanics/body/body.ts";
import { buildBody } from "../../mechanics/body/build.ts";
import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import { type Strengths, strengthsFrom } from "../../mechanics/body/strength-keys.ts";
import { solveHabitual } from "../../mechanics/equilibrium/habitual.ts";
import { type LinearSolver, loadLinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { ROCKED_BACK, STRONG_HAND_AHEAD } from "../../practice/activities/poses/hands-and-knees.data.ts";
import { TRANSITIONS } from "../../practice/catalogue.ts";
import { PRONE_ON_ELBOWS } from "../../practice/positions/prone-poses.data.ts";
import { STRONG_HAND_UP_ON_BENCH } from "../../practice/transitions/kneeling-and-standing-poses.data.ts";
import { LOW_ON_ELBOWS } from "../../practice/transitions/lying-and-sitting-poses.data.ts";
import type { KeyPose } from "../../practice/transitions/transition.ts";
import { keepPoses } from "./prepared.ts";
import { assessTransition, type KeyMoment, type TransitionToday, type WayContext } from "./transition-today.ts";

const WAYS = TRANSITIONS.filter(({ keyPoses }) => keyPoses !== undefined);
const SIZES: readonly BodySize[] = [
  { sex: "female", height: 1.5, mass: 45 },
  { sex: "male", height: 1.95, mass: 120 },
  { sex: "female", height: 1.52, mass: 90 },
  { sex: "male", height: 1.9, mass: 70 },
];
const MIDDLE: BodySize = { sex: "female", height: 1.63, mass: 68 };
let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

/** Strengths as shares of normal: the weak limbs, the trunk, the strong limbs, and apart from these the weak arm. */
const strengths = (weak: number, trunk: number, arm = weak): Strengths =>
  strengthsFrom((id) =>
    id.startsWith("trunk") ? trunk : !id.endsWith(".weak") ? 1 : /^(shoulder|elbow|wrist|grip)/.test(id) ? arm : weak,
  );
/** Hip and knee about a third of normal, trunk two thirds, arm nearly nothing: a right-sided weakness two weeks old. */
const CASE_P = strengths(0.35, 0.65, 0.08);

function contextOf(size: BodySize, own: Strengths, weakAt: 1 | -1 = -1): WayContext {
  return {
    keeper: keepPoses({ body: buildBody(size, weakAt), ageYears: 67, loadShareWeak: {}, ranges: {} }),
    draws: [own],
    precautions: [],
    solver,
    findings: { helpers: { backTrouble: false } },
  };
}
function wayOf(context: WayContext, id: string): TransitionToday {
  const transition = TRANSITIONS.find((each) => each.id === id);
  if (transition === undefined) throw new Error(`no way ${id}`);
  return assessTransition(context, transition);
}
function momentOf(context: WayContext, key: KeyPose): KeyMoment {
  const like = TRANSITIONS.find(({ id }) => id === "prone-to-prone-on-elbows");
  if (like === undefined) throw new Error("no such way");
  const moment = assessTransition(context, { ...like, keyPoses: [key] }).moments[0];
  if (moment === undefined) throw new Error("no moment");
  return moment;
}
const newtonsOf = ({ help }: KeyMoment): number => help?.newtons ?? Number.POSITIVE_INFINITY;

describe("a way worked out for a person", () => {
  it("is held with the help it states at every moment on four bodies", () => {
    // Weak limbs at four tenths of normal (about grade 3), the trunk at seven.
    const lost: string[] = [];
    let moments = 0;
    for (const size of SIZES) {
      const context = contextOf(size, strengths(0.4, 0.7));
      for (const way of WAYS)
        for (const { number, held, because } of assessTransition(context, way).moments) {
          moments++;
          if (held === "no") lost.push(`${size.height} m ${way.id} ${number}: ${because}`);
        }
    }
    expect(lost).toEqual([]);
    expect(moments).toBeGreaterThan(4 * 150);
  }, 60_000);

  it("asks the same of someone weak on the other side", () => {
    const [one, other] = ([-1, 1] as const).map((weakAt) => contextOf(MIDDLE, CASE_P, weakAt));
    if (one === undefined || other === undefined) throw new Error("no context");
    for (const way of WAYS) {
      const mirrored = assessTransition(other, way);
      const own = assessTransition(one, way);
      expect(mirrored.helpers, way.id).toBe(own.helpers);
      own.moments.forEach(({ effort }, k) => {
        expect(mirrored.moments[k]?.effort ?? -1).toBeCloseTo(effort ?? -1, 1);
      });
    }
  });

  it("is held alone at normal strength, but for pushes of a touch", () => {
    const context = contextOf(MIDDLE, strengths(1, 1));
    const helped = WAYS.flatMap((way) =>
      assessTransition(context, way)
        .moments.filter(({ help }) => (help?.newtons ?? Number.POSITIVE_INFINITY) > 20)
        .map(({ number }) => `${way.id} ${number}`),
    );
    expect(helped).toEqual([]);
  }, 30_000);

  it("names as hardest the moment that needs most help, and counts no fewer helpers than the way states", () => {
    const context = contextOf(MIDDLE, CASE_P);
    for (const transition of WAYS) {
      const way = assessTransition(context, transition);
      const hardest = way.hardest;
      if (hardest === null) throw new Error(`${transition.id} has no moments`);
      if (way.moments.every(({ held }) => held !== "no")) {
        expect(way.helpers ?? 0, transition.id).toBeGreaterThanOrEqual(transition.helpersNeeded);
        expect(Math.round(newtonsOf(hardest)), transition.id).toBe(
          Math.max(...way.moments.map((moment) => Math.round(newtonsOf(moment)))),
        );
      } else expect(way.helpers, transition.id).toBeNull();
    }
  });

  it("says why a moment cannot be held, in a sentence, and gives no number that is not one", () => {
    const context = contextOf({ sex: "male", height: 1.95, mass: 120 }, strengths(0.02, 0.05));
    const never = WAYS.filter(({ id }) => /standing|hands-and-knees$/.test(id))
      .flatMap((way) => assessTransition(context, way).moments)
      .filter(({ held }) => held === "no");
    expect(never.length).toBeGreaterThan(5);
    for (const { because, effort } of never) {
      expect(because ?? "").toMatch(/^[A-Z].*\.$/);
      expect(Number.isNaN(effort ?? 0)).toBe(false);
    }
  }, 30_000);

  it("counts the thigh apart from the hands: what lies on it needs no second helper", () => {
    const context = contextOf(MIDDLE, CASE_P);
    const way = wayOf(context, "hands-and-knees-to-tall-kneeling-at-bench");
    const onBench = way.moments[1];
    expect(onBench?.key.onThigh).toBe("upperChest.weak");
    expect(onBench?.help?.onThighNewtons ?? 0).toBeGreaterThan(10);
    expect(onBench?.help?.helpers).toBe(1);
  });
});

describe("ways in the order the trade knows (common practice, no source)", () => {
  // Trade fact 5: more load is more demand. The same strength in a heavier body.
  it("ask more help of a heavier body of the same strength", () => {
    const light = contextOf({ sex: "female", height: 1.63, mass: 60 }, CASE_P);
    const heavyBody = buildBody({ sex: "female", height: 1.63, mass: 80 }, -1);
    const lightBody = buildBody({ sex: "female", height: 1.63, mass: 60 }, -1);
    // Norms grow with the body; taken back so that both have the same newton-metres.
    const factor = lightBody.size.mass / heavyBody.size.mass;
    const same = Object.fromEntries(Object.entries(CASE_P).map(([id, share]) => [id, share * factor]));
    const heavy = contextOf(
      { sex: "female", height: 1.63, mass: 80 },
      strengthsFrom((id) => same[id] ?? 0),
    );
    const sumOver = (context: WayContext): number =>
      WAYS.reduce((sum, way) => {
        const hardest = assessTransition(context, way).hardest;
        return sum + (hardest === null ? 0 : Math.min(500, newtonsOf(hardest)));
      }, 0);
    expect(sumOver(heavy)).toBeGreaterThan(sumOver(light) * 1.05);
  }, 30_000);

  // Trade fact 7: elbows slid forward ask more of the shoulders.
  it("ask more of the shoulders with the elbows ahead of them than under them", () => {
    const own = strengths(0.7, 0.9);
    const shoulders = (pose: PoseSpecification): number => {
      const prepared = contextOf(MIDDLE, own).keeper.prepare(pose);
      if (!prepared.possible) throw new Error(prepared.because);
      const balance = solveHabitual(prepared.statics, scaleCapacities(prepared.normal, own));
      if (!balance.balanced) throw new Error(balance.because);
      return Math.max(
        ...balance.efforts.filter(({ joint }) => joint.startsWith("shoulder")).map(({ effort }) => effort),
      );
    };
    expect(shoulders(LOW_ON_ELBOWS)).toBeGreaterThan(shoulders(PRONE_ON_ELBOWS));
  });

  // Trade facts 7 and 8: the weak shoulder held front and back; the weak arm carried under upper arm and forearm.
  it("hold the weak shoulder front and back on the elbows and carry the arm there from below", () => {
    const keys = WAYS.find(({ id }) => id === "prone-to-prone-on-elbows")?.keyPoses ?? [];
    const sites = (key: KeyPose | undefined): readonly string[] => key?.helper.hands.map(({ site }) => site) ?? [];
    expect(sites(keys[0])).toEqual(["upperArmUnder.weak", "forearmUnder.weak"]);
    expect(sites(keys[2])).toEqual(["shoulderFront.weak", "shoulderBack.weak"]);
    expect(keys[2]?.helper.knee).toMatch(/beside the weak upper arm/);
  });

  // Trade fact 13: over the strong hip the weak arm is loaded late, over the weak hip early; a weak arm wants the first.
  it("load the weak hand late over the strong hip and early over the weak hip", () => {
    const context = contextOf(MIDDLE, strengths(0.6, 0.8));
    const loadedFrom = (id: string): number =>
      wayOf(context, id).moments.findIndex(
        ({ asks }) => (asks?.loads.find(({ patch }) => patch === "hand.weak")?.share ?? 0) > 0.05,
      );
    expect(loadedFrom("side-sitting-on-weak-hip-to-hands-and-knees")).toBe(0);
    expect(loadedFrom("side-sitting-on-strong-hip-to-hands-and-knees")).toBe(2);
    const weakArm = contextOf(MIDDLE, CASE_P);
    const turning = (id: string): number => newtonsOf(wayOf(weakArm, id).moments[1] as KeyMoment);
    expect(turning("side-sitting-on-strong-hip-to-hands-and-knees")).toBeLessThan(
      turning("side-sitting-on-weak-hip-to-hands-and-knees"),
    );
  });

  // Trade fact 16: easier by rocking back first; the thigh carries the weak side of the upper chest.
  it("take less help to bring the strong hand up from rocked back than straight from hands and knees", () => {
    const context = contextOf(MIDDLE, CASE_P);
    const helper = WAYS.find(({ id }) => id === "hands-and-knees-to-tall-kneeling-at-bench")?.keyPoses?.[1]?.helper;
    if (helper === undefined) throw new Error("no helper");
    const withThigh = (pose: PoseSpecification): number =>
      newtonsOf(momentOf(context, { step: 1, pose, helper, onThigh: "upperChest.weak", weakArm: "spare" }));
    const fromSquare: PoseSpecification = {
      ...STRONG_HAND_AHEAD,
      contacts: STRONG_HAND_AHEAD.contacts.filter(({ patch }) => patch !== "hand.weak"),
      shift: { forwardCm: 0, toWeakCm: 0 },
    };
    expect(withThigh(STRONG_HAND_UP_ON_BENCH)).toBeLessThan(withThigh(fromSquare));
    // Rocking back itself takes weight off the hands.
    const hands = (pose: PoseSpecification): number =>
      momentOf(contextOf(MIDDLE, strengths(0.7, 0.9)), {
        step: 1,
        pose,
        helper,
        onThigh: null,
        weakArm: "lend",
      }).asks?.loads.reduce((sum, { patch, share }) => (patch.startsWith("hand") ? sum + share : sum), 0) ?? 1;
    expect(hands(ROCKED_BACK)).toBeLessThan(hands({ ...ROCKED_BACK, shift: { forwardCm: 0 } }));
  });

  // Trade fact 20: transfers are first taught to the strong side.
  it("take less help from chair to mat over the strong side than over the weak side", () => {
    const context = contextOf(MIDDLE, CASE_P);
    const hardest = (id: string): number => newtonsOf(wayOf(context, id).hardest as KeyMoment);
    expect(hardest("wheelchair-to-mat-over-strong-side")).toBeLessThan(hardest("wheelchair-to-mat-over-weak-side"));
  });
});
