import { beforeAll, describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { buildBody } from "../body/build.ts";
import { capacitiesOf } from "../body/strength-capacities.ts";
import { evenStrengths, strengthsFrom } from "../body/strength-keys.ts";
import type { Statics } from "../equilibrium/statics.ts";
import { type LinearSolver, loadLinearSolver } from "../linear-program/linear-program.ts";
import type { PoseSpecification } from "../pose/specification.ts";
import { contactReach, FURTHEST } from "./contact-reach.ts";
import { outsideHull } from "./polygon.ts";
import { nameRayEnd, rayEnd, stationRegion } from "./station-region.ts";

const BODY = buildBody({ sex: "female", height: 1.62, mass: 68 }, 1);
const WEAK = strengthsFrom((id) => (id.endsWith(".weak") ? 0.4 : id.startsWith("trunk") ? 0.7 : 0.9));
const STATIONS: readonly (readonly [string, PoseSpecification, number | null])[] = [
  ["standing, muscles aside", poses.STANDING, null],
  ["standing", poses.STANDING, 0.5],
  ["tall kneeling", poses.TALL_KNEELING, 1],
  ["hands and knees", poses.HANDS_AND_KNEES, 1],
  ["hands and knees, muscles aside", poses.HANDS_AND_KNEES, null],
  ["push-up on the knees", poses.PUSH_UP_ON_KNEES, 2],
];

/** Leaning back against a wall: the only one here whose contacts do not all push straight up. */
const AT_WALL: PoseSpecification = {
  pelvis: { pitchDeg: -12 },
  bothDeg: { hipFlexion: 0, kneeFlexion: 3, hipAbduction: 4, ankleDorsiflexion: -11 },
  surfaces: [{ id: "wall", kind: "wall", height: { cm: 0 } }],
  contacts: [
    ...poses.STANDING.contacts,
    ...(["weak", "strong"] as const).map(
      (side) => ({ patch: `shoulderBlade.${side}`, on: "wall", role: "both" }) as const,
    ),
  ],
};

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

describe("the region of one station", () => {
  it.each(STATIONS)("%s: inner and outer outline within 2 mm, and dense rays end between them", (name, pose, level) => {
    const statics: Statics = poses.closed(BODY, pose);
    const capacities = capacitiesOf(BODY, 60, statics.pose.configuration.angles, WEAK);
    const region = stationRegion(statics, capacities, level, solver);
    if (region === null) throw new Error(`${name} cannot be held`);
    expect(region.gap).toBeLessThanOrEqual(0.002);
    let worst = 0;
    let least = Number.MAX_VALUE;
    let most = 0;
    for (let degrees = 0; degrees < 360; degrees += 2) {
      const turn = (degrees * Math.PI) / 180;
      const end = rayEnd(statics, capacities, [Math.cos(turn), Math.sin(turn)], level, solver);
      if (end === null) throw new Error(`no end at ${degrees}`);
      const point = [Math.cos(turn) * end.metres, Math.sin(turn) * end.metres] as const;
      expect(outsideHull(region.outer, point)).toBeLessThan(1e-6);
      worst = Math.max(worst, outsideHull(region.inner, point));
      least = Math.min(least, end.metres);
      most = Math.max(most, end.metres);
    }
    console.log(
      `${name}: ${region.programs} programs, outlines ${(region.gap * 1000).toFixed(2)} mm apart, 180 rays at most ${(worst * 1000).toFixed(2)} mm outside the inner one; ends ${(least * 100).toFixed(1)} to ${(most * 100).toFixed(1)} cm`,
    );
    expect(worst).toBeLessThanOrEqual(0.002);
  });

  it("agrees with the quick search for the contacts' end within 2 mm, in 180 directions", () => {
    for (const [name, pose] of [
      ["standing", poses.STANDING],
      ["tall kneeling", poses.TALL_KNEELING],
      ["hands and knees", poses.HANDS_AND_KNEES],
    ] as const) {
      const statics = poses.closed(BODY, pose);
      const capacities = capacitiesOf(BODY, 60, statics.pose.configuration.angles, WEAK);
      let worst = 0;
      for (let degrees = 0; degrees < 360; degrees += 2) {
        const turn = (degrees * Math.PI) / 180;
        const direction = [Math.cos(turn), Math.sin(turn)] as const;
        const quick = contactReach(statics, direction, capacities.grip);
        const exact = rayEnd(statics, capacities, direction, null, solver)?.metres ?? Number.NaN;
        expect(exact).toBeLessThan(FURTHEST + 1e-9);
        worst = Math.max(worst, Math.abs(quick - exact));
      }
      console.log(`${name}: quick search against linear program, worst difference ${(worst * 1000).toFixed(2)} mm`);
      expect(worst).toBeLessThan(0.002);
    }
  });

  it("says what ends every direction: on level ground never friction, against a wall friction, with a weak ankle the ankle", () => {
    const counts = new Map<string, number>();
    for (const [, pose, level] of STATIONS) {
      const statics = poses.closed(BODY, pose);
      const capacities = capacitiesOf(BODY, 60, statics.pose.configuration.angles, WEAK);
      for (let k = 0; k < 16; k++) {
        const direction = [Math.cos((k * Math.PI) / 8), Math.sin((k * Math.PI) / 8)] as const;
        const end = nameRayEnd(statics, capacities, direction, level, solver);
        if (end === null) throw new Error("no end");
        expect(end.what.length).toBeGreaterThan(0);
        counts.set(end.endedBy, (counts.get(end.endedBy) ?? 0) + 1);
      }
    }
    console.log(`ends by name: ${[...counts].map(([name, count]) => `${name} ${count}`).join(", ")}`);
    for (const name of ["muscle", "contact"]) expect(counts.get(name) ?? 0, name).toBeGreaterThan(0);
    // Straight pushes on one level can carry whatever sloped ones can: friction ends nothing there.
    expect(counts.get("friction")).toBeUndefined();
    const leaning = poses.closed(BODY, AT_WALL);
    const strong = capacitiesOf(BODY, 60, leaning.pose.configuration.angles, evenStrengths(1));
    expect(nameRayEnd(leaning, strong, [-1, 0], null, solver)?.endedBy).toBe("friction");
    const statics = poses.closed(BODY, poses.STANDING);
    const limp = strengthsFrom((id) => (id.startsWith("ankle") ? 0.3 : 1));
    const capacities = capacitiesOf(BODY, 60, statics.pose.configuration.angles, limp);
    const end = nameRayEnd(statics, capacities, [1, 0], 1, solver);
    expect(end?.endedBy).toBe("muscle");
    expect(end?.what.some((joint) => joint.startsWith("ankle"))).toBe(true);
  });

  it("of a rigid body standing on known points is their hull, worked by hand", () => {
    // Muscles aside and friction ample, the centre may go to the edge of the feet's hull: forward, to the foremost points.
    const statics = poses.closed(BODY, poses.STANDING);
    const capacities = capacitiesOf(BODY, 60, statics.pose.configuration.angles, WEAK);
    const end = rayEnd(statics, capacities, [1, 0], null, solver)?.metres ?? Number.NaN;
    const xs = statics.columns.map((column) => column.at[0]);
    // Both feet's inner front points are as far forward; the line x = that ends it.
    expect(end).toBeCloseTo(Math.max(...xs) - statics.pose.centre[0], 3);
  });
});
