import { beforeAll, describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { seededStream } from "../../quantity/random.ts";
import { buildBody } from "../body/build.ts";
import { capacitiesOf } from "../body/strength-capacities.ts";
import { evenStrengths, strengthsFrom, type Strengths } from "../body/strength-keys.ts";
import { limbMass } from "../contact/columns.ts";
import { type LinearSolver, loadLinearSolver } from "../linear-program/linear-program.ts";
import { closePose } from "../pose/close.ts";
import type { PoseSpecification } from "../pose/specification.ts";
import { takeSharing } from "../reach/sharing.ts";
import { solveBestPossible } from "./best-possible.ts";
import { muscleMoments, ratios } from "./efforts.ts";
import { type Balance, solveHabitual } from "./habitual.ts";
import { prepareStatics, type Statics } from "./statics.ts";

const POSES: Readonly<Record<string, PoseSpecification>> = {
  bridge: poses.BRIDGE,
  strongFootUp: poses.BRIDGE_STRONG_FOOT_UP,
  weakFootUp: poses.BRIDGE_WEAK_FOOT_UP,
  handsAndKnees: poses.HANDS_AND_KNEES,
  elbows: poses.PRONE_ON_ELBOWS,
  kneeling: poses.TALL_KNEELING,
  standing: poses.STANDING,
};
const SIZE = { sex: "female", height: 1.62, mass: 68 } as const;
const AGE = 67;
const random = seededStream(3);
const WEAK = strengthsFrom((id) => (id.endsWith(".weak") ? 0.3 : id.startsWith("trunk") ? 0.6 : 0.9));
const STRENGTHS: readonly Strengths[] = [
  evenStrengths(1),
  WEAK,
  ...Array.from({ length: 6 }, () => strengthsFrom(() => 0.05 + 1.1 * random())),
];

function set(name: string, weakAt: 1 | -1 = 1): Statics {
  const body = buildBody(SIZE, weakAt);
  const pose = closePose(body, POSES[name] ?? poses.BRIDGE);
  if (!pose.closed) throw new Error(pose.because);
  return prepareStatics(body, takeSharing(body, pose));
}
const capacityOf = (statics: Statics, strengths: Strengths) =>
  capacitiesOf(statics.body, AGE, statics.pose.configuration.angles, strengths);
function hold(statics: Statics, strengths: Strengths): Balance {
  const balance = solveHabitual(statics, capacityOf(statics, strengths));
  if (!balance.balanced) throw new Error(balance.because);
  return balance;
}

/** Sum of cubed efforts as the criterion counts it: three axes as one, the trunk's parts as their 5-norm. */
function cubes(statics: Statics, x: Float64Array, balance: Balance): number {
  const moments = muscleMoments(statics, x, new Float64Array(statics.angles));
  const ratio = ratios(moments, balance.sharing.allowed, new Float64Array(statics.angles));
  let sum = 0;
  let trunk = 0;
  for (const joint of statics.joints) {
    let effort = 0;
    for (const i of joint.angles) {
      if (joint.ball) effort += ratio[i] ?? 0;
      else sum += (ratio[i] ?? 0) ** 3;
    }
    if (joint.series !== null) trunk += effort ** 5;
    else if (joint.ball) sum += effort ** 3;
  }
  return sum + trunk ** (3 / 5);
}

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

describe("a pose in balance", () => {
  it("adds up: whole body within a thousandth of a newton, loads to the weight, all finite", () => {
    let solved = 0;
    let worst = 0;
    for (const name of Object.keys(POSES)) {
      const statics = set(name);
      for (const strengths of STRENGTHS) {
        const balance = hold(statics, strengths);
        worst = Math.max(worst, balance.residual);
        const up = balance.loads.reduce((sum, load) => sum + load.force[2], 0);
        expect(Math.abs(up - statics.weight)).toBeLessThan(0.01);
        for (const each of balance.efforts)
          expect(Number.isFinite(each.effort) && Number.isFinite(each.moment)).toBe(true);
        solved++;
      }
    }
    console.log(`balance: ${solved} solves, worst error ${worst.toExponential(1)} N`);
    expect(worst).toBeLessThan(1e-2);
  });

  it("is the exact mirror on the tree that is weak on the other side", () => {
    let worst = 0;
    for (const name of Object.keys(POSES)) {
      const left = set(name, 1);
      const right = set(name, -1);
      for (const strengths of STRENGTHS.slice(0, 4)) {
        const a = hold(left, strengths);
        const b = hold(right, strengths);
        a.efforts.forEach((each, k) => {
          expect(b.efforts[k]?.angle).toBe(each.angle);
          worst = Math.max(worst, Math.abs((b.efforts[k]?.effort ?? 9) - each.effort));
        });
        a.loads.forEach((load, k) => {
          expect(b.loads[k]?.patch).toBe(load.patch);
          expect(Math.abs((b.loads[k]?.newtons ?? 0) - load.newtons)).toBeLessThan(0.05);
        });
      }
    }
    console.log(`mirror: worst difference of an effort ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-4);
  });

  it("cannot be shared with a lower sum of cubes: no step toward other balanced sharings gains more than 2 %", () => {
    let tried = 0;
    let most = 0;
    for (const name of Object.keys(POSES)) {
      const statics = set(name);
      for (const strengths of STRENGTHS) {
        const balance = hold(statics, strengths);
        const base = cubes(statics, balance.sharing.x, balance);
        if (balance.sharing.most < 0.05) continue;
        const others = STRENGTHS.filter((each) => each !== strengths).map((each) => hold(statics, each).sharing.x);
        const best = solveBestPossible(statics, capacityOf(statics, strengths), solver);
        if (best.balanced) others.push(best.sharing.x);
        for (const other of others) {
          for (const share of [0.02, 0.1, 0.3]) {
            const x = balance.sharing.x.map((value, j) => value + share * ((other[j] ?? 0) - value));
            const gain = 1 - cubes(statics, x, balance) / base;
            most = Math.max(most, gain);
            tried++;
          }
        }
      }
    }
    console.log(`cubes: ${tried} other sharings tried, largest gain ${(100 * most).toFixed(2)} %`);
    expect(most).toBeLessThan(0.02);
  });

  it("never beats the best possible, which carries its certificate", () => {
    let ratio = 0;
    for (const name of Object.keys(POSES)) {
      const statics = set(name);
      for (const strengths of STRENGTHS) {
        const capacities = capacityOf(statics, strengths);
        const best = solveBestPossible(statics, capacities, solver);
        if (!best.balanced) throw new Error(best.because);
        const habitual = hold(statics, strengths);
        expect(habitual.sharing.most).toBeGreaterThan(best.effort - 1e-6);
        expect(best.limiting.length).toBeGreaterThan(0);
        ratio = Math.max(ratio, habitual.sharing.most / best.effort);
      }
    }
    console.log(
      `best possible: ${solver.record.solved} programs; worst primal ${solver.record.worst.primal.toExponential(1)}, dual ${solver.record.worst.dual.toExponential(1)}, gap ${solver.record.worst.gap.toExponential(1)}; habitual at most ${ratio.toFixed(2)} times`,
    );
    expect(solver.record.worst.primal).toBeLessThan(1e-5);
    expect(solver.record.worst.dual).toBeLessThan(1e-6);
    expect(solver.record.worst.gap).toBeLessThan(1e-6);
  });

  it("takes the person's own sharing between the sides as given", () => {
    for (const share of [0.3, 0.4, 0.5]) {
      const body = buildBody(SIZE, 1);
      const square = closePose(body, poses.STANDING);
      if (!square.closed) throw new Error(square.because);
      const statics = prepareStatics(body, takeSharing(body, square, share), { sharingWeak: share });
      const feet = hold(statics, WEAK).loads;
      const weak = feet.find((load) => load.patch === "foot.weak")?.share ?? 0;
      expect(weak).toBeCloseTo(share, 2);
    }
  });

  it("lets a resting limb carry no more than it weighs", () => {
    const rest = (patch: string): PoseSpecification => ({
      ...poses.BRIDGE_STRONG_FOOT_UP,
      contacts: poses.BRIDGE_STRONG_FOOT_UP.contacts.map((contact) =>
        contact.patch === patch ? { ...contact, effort: "rest" } : contact,
      ),
    });
    const body = buildBody(SIZE, 1);
    const pose = closePose(body, rest("forearm.strong"));
    if (!pose.closed) throw new Error(pose.because);
    const balance = hold(prepareStatics(body, pose), WEAK);
    const load = balance.loads.find((each) => each.patch === "forearm.strong")?.newtons ?? 0;
    expect(load).toBeLessThan(limbMass(body, body.segmentIndex["forearm.strong"]) * 9.81 + 0.01);
  });

  it("loads the weak hip in the order the trade knows: spared with its own foot up, most with the strong foot up", () => {
    const hip = (name: string): number =>
      hold(set(name), WEAK).efforts.find((each) => each.angle === "hipFlexion.weak")?.moment ?? 0;
    const extension = ["weakFootUp", "bridge", "strongFootUp"].map((name) => -hip(name));
    console.log(
      `weak hip extension: own foot up ${extension[0]?.toFixed(1)}, both ${extension[1]?.toFixed(1)}, strong foot up ${extension[2]?.toFixed(1)} N.m`,
    );
    expect(extension[0]).toBeLessThan(extension[1] ?? 0);
    expect(extension[1]).toBeLessThan(extension[2] ?? 0);
  });

  it("says why where nothing bears under the weight", () => {
    const body = buildBody(SIZE, 1);
    const oneArmed: PoseSpecification = { ...poses.STANDING, pelvis: { pitchDeg: 40 }, bothDeg: { hipFlexion: 0 } };
    const pose = closePose(body, oneArmed);
    if (!pose.closed) throw new Error(pose.because);
    const answer = solveHabitual(
      prepareStatics(body, pose),
      capacitiesOf(body, AGE, pose.configuration.angles, evenStrengths(1)),
    );
    expect(answer.balanced).toBe(false);
    if (!answer.balanced) expect(answer.endedBy).toBe("contact");
  });
});

describe("a contact set down a centimetre off", () => {
  it("changes efforts a little and keeps the balance", () => {
    const body = buildBody(SIZE, 1);
    const pose = closePose(body, poses.HANDS_AND_KNEES);
    if (!pose.closed) throw new Error(pose.because);
    const as = hold(prepareStatics(body, pose), WEAK);
    const off = hold(
      prepareStatics(body, pose, { off: (contact) => (contact.patch === "hand.weak" ? [0.01, 0, 0] : [0, 0, 0]) }),
      WEAK,
    );
    console.log(
      `weak hand a centimetre forward: largest effort ${(100 * as.sharing.most).toFixed(1)} to ${(100 * off.sharing.most).toFixed(1)} %`,
    );
    expect(off.residual).toBeLessThan(0.01);
    expect(off.sharing.most).not.toBe(as.sharing.most);
    expect(Math.abs(off.sharing.most - as.sharing.most)).toBeLessThan(0.5 * as.sharing.most);
  });
});
