import { describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { buildBody } from "../body/build.ts";
import { capacitiesOf } from "../body/strength-capacities.ts";
import { evenStrengths, strengthsFrom } from "../body/strength-keys.ts";
import { solveHabitual } from "../equilibrium/habitual.ts";
import { prepareStatics } from "../equilibrium/statics.ts";
import { closePose } from "../pose/close.ts";
import type { PoseSpecification } from "../pose/specification.ts";
import { contactColumns, headingOf } from "./columns.ts";

const body = buildBody({ sex: "female", height: 1.62, mass: 68 }, 1);
function closed(specification: PoseSpecification) {
  const pose = closePose(body, specification);
  if (!pose.closed) throw new Error(pose.because);
  return pose;
}
const IN_BARS: PoseSpecification = {
  ...poses.STANDING,
  bothDeg: { ...poses.STANDING.bothDeg, shoulderFlexion: 10, shoulderAbduction: 12, elbowFlexion: 35, pronation: 80 },
  surfaces: [{ id: "bars", kind: "bars", height: { of: "hipStanding" } }],
  contacts: [...poses.STANDING.contacts, { patch: "grip.strong", on: "bars", role: "both", grips: true }],
};

describe("contacts", () => {
  it("push inside a friction pyramid: up to the coefficient sideways, never pulling", () => {
    const pose = closed(poses.HANDS_AND_KNEES);
    for (const column of contactColumns(body, pose)) {
      expect(column.force[2]).toBeCloseTo(1, 9);
      expect(Math.hypot(column.force[0], column.force[1])).toBeLessThanOrEqual(0.35 + 1e-9);
    }
    for (const load of solveBalance(poses.HANDS_AND_KNEES).loads) expect(load.newtons).toBeGreaterThanOrEqual(-1e-6);
  });

  it("face the way the person faces, or their head when lying", () => {
    expect(headingOf(closed(poses.STANDING).frames)[0]).toBeGreaterThan(0.99);
    expect(headingOf(closed(poses.BRIDGE).frames)[0]).toBeLessThan(-0.9);
  });

  it("let a gripping hand pull, within its grip", () => {
    const columns = contactColumns(body, closed(IN_BARS)).filter((column) => typeof column.most === "object");
    expect(columns.length).toBe(5);
    expect(columns.some((column) => column.load === -1)).toBe(true);
  });

  it("change nothing when the whole room is turned", () => {
    const turned: PoseSpecification = {
      ...poses.HANDS_AND_KNEES,
      pelvis: { ...poses.HANDS_AND_KNEES.pelvis, turnToWeakDeg: 40 },
    };
    const weak = strengthsFrom((id) => (id.endsWith(".weak") ? 0.35 : 0.9));
    const one = solveBalance(poses.HANDS_AND_KNEES, weak);
    const two = solveBalance(turned, weak);
    console.log(
      `room turned by 40 degrees: largest effort ${one.sharing.most.toFixed(4)} and ${two.sharing.most.toFixed(4)}`,
    );
    expect(two.sharing.most).toBeCloseTo(one.sharing.most, 2);
  });
});

function solveBalance(specification: PoseSpecification, strengths = evenStrengths(1)) {
  const pose = closed(specification);
  const balance = solveHabitual(
    prepareStatics(body, pose),
    capacitiesOf(body, 60, pose.configuration.angles, strengths),
  );
  if (!balance.balanced) throw new Error(balance.because);
  return balance;
}
