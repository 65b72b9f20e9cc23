import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadLinearSolver } from "../linear-program/linear-program.ts";
import { inertiaAbout, weighPoints } from "../pose/points.ts";
import { holdALift } from "./hold-a-lift.ts";
import { armHeldOut } from "./hold-time-of-an-arm.ts";
import { leanWhileStanding } from "./lean-while-standing.ts";
import { winterLimb } from "./winter-limb.ts";

const here = (path: string): string => readFileSync(new URL(path, import.meta.url), "utf8");

describe("the library's examples", () => {
  it("work the textbook's limb to its printed millimetre (Winter 2009, chapter 4)", () => {
    const { foot, leg, thigh, limb } = winterLimb();
    for (const [name, { centre }, printed] of [
      ["foot", foot, [0.93, 0.062]],
      ["leg", leg, [0.858, 0.359]],
      ["thigh", thigh, [0.783, 0.764]],
      ["limb", limb, [0.818, 0.584]],
    ] as const) {
      expect(Math.abs(centre[0] - printed[0]), name).toBeLessThan(0.001);
      expect(Math.abs(centre[2] - printed[1]), name).toBeLessThan(0.001);
    }
  });
  it("work its moments of inertia for a body of 100 kg (0.012, 0.082, 0.171, 1.257 about its own centre, 3.317 about the hip)", () => {
    const parts = [
      { mass: 1.45, from: [0.849, 0, 0.11], to: [1.011, 0, 0.013], centre: 0.5 },
      { mass: 4.65, from: [0.864, 0, 0.549], to: [0.849, 0, 0.11], centre: 0.433 },
      { mass: 10, from: [0.721, 0, 0.928], to: [0.864, 0, 0.549], centre: 0.433 },
    ] as const;
    const radii = [0.475, 0.302, 0.323];
    const own = parts.map((part, k) => inertiaAbout([part], [radii[k] ?? 0], weighPoints([part]).centre));
    const limb = inertiaAbout(parts, radii, weighPoints(parts).centre);
    const hip = inertiaAbout(parts, radii, [0.721, 0, 0.928]);
    console.log(`inertia: ${[...own, limb, hip].map((each) => each.toFixed(3)).join(", ")}`);
    for (const [k, printed] of [0.012, 0.082, 0.171].entries())
      expect(Math.abs((own[k] ?? 0) - printed)).toBeLessThan(0.001);
    expect(Math.abs(limb - 1.257)).toBeLessThan(0.005);
    expect(Math.abs(hip - 3.317)).toBeLessThan(0.01);
  });
  it("give the figures the README prints", async () => {
    const readme = here("../README.md");
    const lift = holdALift();
    if ("because" in lift) throw new Error(lift.because);
    const arm = armHeldOut();
    const lean = leanWhileStanding(await loadLinearSolver());
    if (lean === null) throw new Error("no region");
    for (const printed of [
      `${lift.joint}: ${Math.round(lift.effort * 100)} %, feet carry ${Math.round(lift.feetCarry * 100)} %`,
      `${arm.moment.toFixed(1)} N.m, ${Math.round(arm.share * 100)} % of strength, ${Math.round(arm.seconds ?? 0)} s, plan on ${Math.round(arm.planOn ?? 0)} s`,
      `between ${Math.round(lean.least)} and ${Math.round(lean.most)} cm2, outlines ${lean.apart.toFixed(1)} mm apart`,
    ]) {
      console.log(printed);
      expect.soft(readme).toContain(printed);
    }
    expect(lean.most).toBeGreaterThan(lean.least);
  });
  it("stand in the README as they run", () => {
    const readme = here("../README.md");
    const body = here("winter-limb.ts");
    const from = body.indexOf("  const toe");
    expect(readme).toContain(body.slice(from, body.lastIndexOf("}")).trimEnd());
  });
});
