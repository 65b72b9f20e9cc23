import { beforeAll, describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { buildBody } from "../body/build.ts";
import { type Capacities, capacitiesOf } from "../body/strength-capacities.ts";
import { evenStrengths, strengthsFrom } from "../body/strength-keys.ts";
import { shareHabitually } from "../equilibrium/habitual.ts";
import { prepareStatics, type Statics } from "../equilibrium/statics.ts";
import { type LinearSolver, loadLinearSolver } from "../linear-program/linear-program.ts";
import { closePose } from "../pose/close.ts";
import { leastHelp } from "./least-help.ts";
import { sitePushes } from "./points.ts";
import { SITE_TABLE } from "./sites.data.ts";
import type { SiteId } from "./sites.ts";

const WEAK = strengthsFrom((id) => (id.endsWith(".weak") ? 0.3 : id.startsWith("trunk") ? 0.7 : 1));
const SITES: readonly SiteId[] = [
  "underButtock.weak",
  "underButtock.strong",
  "hipBoneFront.weak",
  "kneeEnd.weak",
  "upperChest.weak",
  "shoulderFront.weak",
];

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

function set(
  weakAt: 1 | -1,
  specification = poses.BRIDGE_STRONG_FOOT_UP,
  strengths = WEAK,
): { statics: Statics; capacities: Capacities } {
  const body = buildBody({ sex: "male", height: 1.75, mass: 80 }, weakAt);
  const pose = closePose(body, specification);
  if (!pose.closed) throw new Error(pose.because);
  return {
    statics: prepareStatics(body, pose),
    capacities: capacitiesOf(body, 60, pose.configuration.angles, strengths),
  };
}

describe("least help", () => {
  it("brings every joint under the allowed share, from places it was given", () => {
    for (const specification of [poses.BRIDGE_STRONG_FOOT_UP, poses.HANDS_AND_KNEES]) {
      const { statics, capacities } = set(1, specification);
      const before = shareHabitually(statics, capacities).most;
      const allowedShare = before * 0.8;
      const help = leastHelp(statics, capacities, { allowedShare, sites: SITES, ceiling: 400 }, solver);
      if (!help.enough) throw new Error(help.because);
      console.log(
        `help: ${(before * 100).toFixed(0)} % to ${(help.effortWith * 100).toFixed(0)} % with ${help.pushes.map((push) => `${push.newtons.toFixed(0)} N ${push.words}`).join(", ")}, share ${help.share.toFixed(2)}`,
      );
      expect(help.needed).toBe(true);
      expect(help.effortWith).toBeLessThanOrEqual(allowedShare * 1.006);
      expect(help.share).toBeGreaterThan(0);
      expect(help.share).toBeLessThanOrEqual(1);
      for (const push of help.pushes) expect(SITES).toContain(push.site);
    }
  });

  it("is none where none is needed, and never comes from a barred place", () => {
    const { statics, capacities } = set(1, poses.BRIDGE, evenStrengths(1));
    const none = leastHelp(statics, capacities, { allowedShare: 0.6, sites: SITES }, solver);
    expect(none.enough && !none.needed).toBe(true);
    const weak = set(1);
    const free = leastHelp(weak.statics, weak.capacities, { allowedShare: 1, sites: SITES, ceiling: 400 }, solver);
    if (!free.enough) throw new Error(free.because);
    const barred = free.pushes.map((push) => push.site);
    const other = leastHelp(
      weak.statics,
      weak.capacities,
      { allowedShare: 1, sites: SITES, barred, ceiling: 400 },
      solver,
    );
    if (other.enough) {
      for (const push of other.pushes) expect(barred).not.toContain(push.site);
      expect(other.newtons).toBeGreaterThanOrEqual(free.newtons * 0.9);
    } else expect(other.because.length).toBeGreaterThan(10);
  });

  it("says so where it would take more than a helper may give", () => {
    const { statics, capacities } = set(1);
    const answer = leastHelp(statics, capacities, { allowedShare: 0.3, sites: SITES, ceiling: 20 }, solver);
    expect(answer.enough).toBe(false);
    if (!answer.enough) expect(answer.because).toMatch(/N a helper may give|no push/);
    const nowhere = leastHelp(statics, capacities, { allowedShare: 0.3, sites: SITES, barred: SITES }, solver);
    expect(nowhere.enough).toBe(false);
  });

  it("mirrors", () => {
    const one = set(1);
    const two = set(-1);
    const a = leastHelp(one.statics, one.capacities, { allowedShare: 1, sites: SITES, ceiling: 400 }, solver);
    const b = leastHelp(two.statics, two.capacities, { allowedShare: 1, sites: SITES, ceiling: 400 }, solver);
    if (!a.enough || !b.enough) throw new Error("not enough");
    expect(b.pushes.map((push) => push.site)).toEqual(a.pushes.map((push) => push.site));
    expect(b.newtons).toBeCloseTo(a.newtons, 1);
  });

  it("knows a place and a direction for every site on both sides", () => {
    const { statics } = set(1);
    let sites = 0;
    for (const [name, row] of Object.entries(SITE_TABLE)) {
      for (const site of row.paired ? [`${name}.weak`, `${name}.strong`] : [name]) {
        const pushes = sitePushes(statics.body, statics.pose.frames, site as SiteId);
        expect(pushes.length).toBe(row.pushes.length);
        for (const push of pushes) expect(Math.hypot(...push.push)).toBeCloseTo(1, 9);
        sites++;
      }
    }
    expect(sites).toBeGreaterThan(40);
  });
});
