import { describe, expect, it } from "vitest";
import * as poses from "../../checks/poses.ts";
import { ProgrammingError } from "../quantity/programming-error.ts";
import { buildBody } from "./body/build.ts";
import { refuseSize } from "./body/refuse-size.ts";
import { capacitiesOf } from "./body/strength-capacities.ts";
import { evenStrengths } from "./body/strength-keys.ts";
import { holdTime } from "./endurance/hold-time.ts";
import { fatigueRates } from "./endurance/rates.ts";
import { solveHabitual } from "./equilibrium/habitual.ts";
import { prepareStatics } from "./equilibrium/statics.ts";
import { helperLoad } from "./helper/helper-load.ts";
import { closePose } from "./pose/close.ts";

const BODY = buildBody({ sex: "male", height: 1.75, mass: 80 }, 1);

describe("bad input", () => {
  it.each([
    [Number.NaN, 80, "height"],
    [0, 80, "height"],
    [1.75, 0, "mass"],
    [1.75, -5, "mass"],
    [1.75, Number.POSITIVE_INFINITY, "mass"],
    [9, 80, "height"],
  ])("a body of %f m and %f kg is refused with its %s", (height, mass, what) => {
    expect(refuseSize({ height, mass })).toContain(what);
    if (!(height > 0 && mass > 0 && Number.isFinite(mass)))
      expect(() => buildBody({ sex: "male", height, mass }, 1)).toThrow(ProgrammingError);
    expect(refuseSize({ height: 1.5, mass: 45 })).toBeNull();
  });
  it("a pose with no number in it is refused with the joint, the pelvis or the shift named", () => {
    const hip = closePose(BODY, { ...poses.STANDING, bothDeg: { hipFlexion: Number.NaN } });
    expect(hip).toMatchObject({ closed: false, because: "hipFlexion.weak is not a number in this pose" });
    const pelvis = closePose(BODY, { ...poses.STANDING, pelvis: { pitchDeg: Number.NaN } });
    expect(pelvis).toMatchObject({ closed: false, because: "the pelvis' turn is not a number in this pose" });
    const shift = closePose(BODY, { ...poses.STANDING, shift: { forwardCm: Number.POSITIVE_INFINITY } });
    expect(shift).toMatchObject({ closed: false, because: "the shift is not a number in this pose" });
  });
  it("angles outside their range are taken to its end, a contact out of reach and a pose without support are a no", () => {
    const bent = closePose(BODY, { ...poses.STANDING, bothDeg: { kneeFlexion: 900, elbowFlexion: -900 } });
    if (bent.closed) for (const angle of bent.configuration.angles) expect(Math.abs(angle)).toBeLessThan(3.2);
    const far = closePose(BODY, {
      ...poses.STANDING,
      surfaces: [{ id: "table", kind: "table", height: { cm: 400 } }],
      contacts: [...poses.STANDING.contacts, { patch: "hand.weak", on: "table", role: "both" }],
    });
    expect(far.closed).toBe(false);
    if (!far.closed) expect(far.because).toMatch(/hand|foot/);
    const floating = closePose(BODY, { ...poses.STANDING, contacts: [] });
    if (!floating.closed) return;
    const capacities = capacitiesOf(BODY, 60, floating.configuration.angles, evenStrengths(1));
    expect(solveHabitual(prepareStatics(BODY, floating), capacities)).toMatchObject({ balanced: false });
  });
  it("strengths that are no numbers stand as none: finite efforts, never fewer than with none", () => {
    const statics = poses.closed(BODY, poses.STANDING);
    const hold = (fraction: number): number => {
      const capacities = capacitiesOf(BODY, 60, statics.pose.configuration.angles, evenStrengths(fraction));
      const balance = solveHabitual(statics, capacities);
      return balance.balanced ? (balance.hardest?.effort ?? 0) : Number.NaN;
    };
    for (const fraction of [Number.NaN, -1, 0]) expect(hold(fraction)).toBeCloseTo(hold(0), 9);
    expect(Number.isFinite(hold(0))).toBe(true);
  });
  it("a hold of no share ends at once, and a helper's site that is no place is not reached", () => {
    expect(holdTime(fatigueRates("kneeExtension", "male"), Number.NaN).seconds).toBe(0);
    const site = { forward: Number.NaN, left: 0, up: 0.5, hands: 2 } as const;
    expect(helperLoad(BODY, { stance: "kneeling", site, push: [0, 0, 80] })).toMatchObject({ possible: false });
  });
});
