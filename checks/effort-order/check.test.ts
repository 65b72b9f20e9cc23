import { describe, expect, it } from "vitest";
import type { Body } from "../../src/mechanics/body/body.ts";
import { buildBody } from "../../src/mechanics/body/build.ts";
import { capacitiesOf } from "../../src/mechanics/body/strength-capacities.ts";
import { evenStrengths } from "../../src/mechanics/body/strength-keys.ts";
import { type Balance, solveHabitual } from "../../src/mechanics/equilibrium/habitual.ts";
import { prepareStatics } from "../../src/mechanics/equilibrium/statics.ts";
import { closePose, movePose } from "../../src/mechanics/pose/close.ts";
import type { PoseSpecification } from "../../src/mechanics/pose/specification.ts";
import { BRIDGE, BRIDGE_STRONG_FOOT_UP, HANDS_AND_KNEES, PUSH_UP_ON_KNEES, PUSH_UP_ON_TOES } from "../poses.ts";
import expected from "./expected.json" with { type: "json" };
import { ARM_AND_LEG_LIFTED, FEET_ON_30, FEET_ON_60, HANDS_ON_30, HANDS_ON_60 } from "./poses.ts";

const BODIES: readonly Body[] = [
  buildBody({ sex: "female", height: 1.65, mass: 60 }, 1),
  buildBody({ sex: "male", height: 1.78, mass: 76 }, 1),
];

/** Held with the easiest of a few small shifts: people take their weight where it is easy. */
function hold(body: Body, pose: PoseSpecification): Balance {
  const closed = closePose(body, pose);
  if (!closed.closed) throw new Error(closed.because);
  let best: Balance | null = null;
  for (const forward of [0, -0.03]) {
    for (const aside of [0, 0.03, -0.03]) {
      const moved = forward === 0 && aside === 0 ? closed : movePose(body, closed, [forward, aside]);
      if (!moved.closed) continue;
      const found = solveHabitual(
        prepareStatics(body, moved),
        capacitiesOf(body, 24, moved.configuration.angles, evenStrengths(1)),
      );
      if (found.balanced && (best === null || (found.hardest?.effort ?? 9) < (best.hardest?.effort ?? 9))) best = found;
    }
  }
  if (best === null) throw new Error("not held");
  return best;
}
const onHands = (balance: Balance): number =>
  balance.loads.filter(({ patch }) => patch.startsWith("hand")).reduce((sum, { share }) => sum + share, 0);
const shoulder = (balance: Balance): number =>
  Math.max(...balance.efforts.filter(({ joint }) => /shoulder/.test(joint)).map(({ effort }) => effort));
const hip = (balance: Balance): number =>
  Math.max(
    ...balance.efforts
      .filter(({ angle, direction }) => angle.startsWith("hipFlexion") && direction === "extension")
      .map(({ effort }) => effort),
  );

describe("published orders of load and activity", () => {
  it("come out as printed but for the one that is named", { timeout: 60_000 }, () => {
    let held = 0;
    let all = 0;
    const failed = new Set<string>();
    const less = (name: string, low: number, high: number): void => {
      all++;
      if (low < high) held++;
      else failed.add(name);
    };
    for (const body of BODIES) {
      const of = (pose: PoseSpecification): Balance => hold(body, pose);
      const toes = of(PUSH_UP_ON_TOES);
      const knees = of(PUSH_UP_ON_KNEES);
      const low = [of(HANDS_ON_60), of(HANDS_ON_30), knees];
      const high = [of(FEET_ON_30), of(FEET_ON_60)];
      const fours = of(HANDS_AND_KNEES);
      low.forEach((each, k) => {
        less(`hands up or knees ${k} < toes`, onHands(each), onHands(toes));
      });
      high.forEach((each, k) => {
        less(`toes < feet up ${k}`, onHands(toes), onHands(each));
      });
      less("hands 60 < feet 60", onHands(low[0] ?? toes), onHands(high[1] ?? toes));
      less("knees < toes, shoulder", shoulder(knees), shoulder(toes));
      less("hands and knees < knees, shoulder", shoulder(fours), shoulder(knees));
      less("hands and knees < toes, load", onHands(fours), onHands(toes));
      const lifted = hip(of(ARM_AND_LEG_LIFTED));
      const bridge = hip(of(BRIDGE));
      const oneFoot = hip(of(BRIDGE_STRONG_FOOT_UP));
      less("bridge < arm and leg lifted", bridge, lifted);
      less("bridge < one foot's bridge", bridge, oneFoot);
      less("one foot's bridge < arm and leg lifted", oneFoot, lifted);
      // The published positions differ in how much the arms carry, arms square to the trunk.
      const steps = [fours, knees, toes, ...high];
      const loads = steps.map(onHands);
      const efforts = steps.map(shoulder);
      const r = correlation(loads, efforts);
      console.log(
        `${body.size.sex}: hands' loads ${loads.map((each) => each.toFixed(2)).join(" ")}; shoulder efforts ${efforts.map((each) => each.toFixed(2)).join(" ")}; r ${r.toFixed(2)}; hip ${bridge.toFixed(2)}, one foot ${oneFoot.toFixed(2)}, lifted ${lifted.toFixed(2)}`,
      );
      expect(r).toBeGreaterThan(expected.correlation);
      expect(shoulder(fours)).toBeLessThan(expected.quadrupedShoulderAtMost);
    }
    console.log(`orders: ${held} of ${all} as published; not: ${[...failed].join("; ")}`);
    expect(held).toBeGreaterThanOrEqual(expected.heldAtLeast);
    expect([...failed].filter((name) => !expected.named.includes(name))).toEqual([]);
  });
});

function correlation(a: readonly number[], b: readonly number[]): number {
  const mean = (of: readonly number[]): number => of.reduce((sum, each) => sum + each, 0) / of.length;
  const [ma, mb] = [mean(a), mean(b)];
  let ab = 0;
  let aa = 0;
  let bb = 0;
  a.forEach((value, k) => {
    const [x, y] = [value - ma, (b[k] ?? 0) - mb];
    ab += x * y;
    aa += x * x;
    bb += y * y;
  });
  return ab / Math.sqrt(aa * bb);
}
