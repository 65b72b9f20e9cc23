import load from "@mujoco/mujoco";
import { describe, expect, it } from "vitest";
import { buildBody } from "../../src/mechanics/body/build.ts";
import type { Body } from "../../src/mechanics/body/body.ts";
import { addForce, gravityMoments } from "../../src/mechanics/equilibrium/statics.ts";
import {
  centreJacobian,
  centreOfMass,
  type Configuration,
  placeFrames,
  pointInRoom,
  pointJacobian,
} from "../../src/mechanics/pose/kinematics.ts";
import { seededStream } from "../../src/quantity/random.ts";
import { compose, rotate, rotationAbout, unit, type Vector } from "../../src/quantity/vectors.ts";
import expected from "./expected.json" with { type: "json" };
import { exportTree, positionsFor } from "./mjcf.ts";

const random = seededStream(20261);
const between = (low: number, high: number): number => low + (high - low) * random();
const direction = (): Vector => unit([between(-1, 1), between(-1, 1), between(-1, 1)]);

function randomConfiguration(body: Body): Configuration {
  return {
    rootPosition: [between(-2, 2), between(-2, 2), between(-1, 2)],
    rootRotation: compose(rotationAbout(direction(), between(-3, 3)), rotationAbout(direction(), between(-3, 3))),
    angles: body.angles.map(() => between(-2, 2)),
  };
}

/** Largest difference of two lists, over the largest entry of the second. */
function apart(ours: ArrayLike<number>, theirs: ArrayLike<number>): number {
  let most = 0;
  let size = 1e-9;
  for (let i = 0; i < theirs.length; i++) {
    most = Math.max(most, Math.abs((ours[i] ?? Number.NaN) - (theirs[i] ?? 0)));
    size = Math.max(size, Math.abs(theirs[i] ?? 0));
  }
  if (Number.isNaN(most)) throw new Error("not a number");
  return most / size;
}

describe("against MuJoCo on the same tree", () => {
  it("agrees on centre of mass, Jacobians, gravity and contact moments", { timeout: 60_000 }, async () => {
    const library = await load();
    const worst = { centre: 0, jacobian: 0, centreJacobian: 0, gravity: 0, contact: 0 };
    let poses = 0;
    const sizes = [
      { sex: "female", height: 1.55, mass: 52 },
      { sex: "male", height: 1.78, mass: 84 },
      { sex: "female", height: 1.7, mass: 110 },
      { sex: "male", height: 1.95, mass: 70 },
    ] as const;
    for (const [k, size] of sizes.entries()) {
      const body = buildBody(size, k % 2 === 0 ? 1 : -1);
      const tree = exportTree(body);
      const model = library.MjModel.from_xml_string(tree.xml);
      const data = new library.MjData(model);
      const unknowns = model.nv;
      expect(unknowns).toBe(6 + body.angles.length);
      const jacobian = new library.DoubleBuffer(3 * unknowns);
      const turning = new library.DoubleBuffer(3 * unknowns);
      /** Their order of a row of unknowns, in ours: their root turns are about the pelvis' own axes. */
      const inOurs = (row: ArrayLike<number>, rotation: Configuration["rootRotation"]): Float64Array => {
        const out = new Float64Array(unknowns);
        for (let i = 0; i < 3; i++) out[i] = row[i] ?? 0;
        const turned = rotate(rotation, [row[3] ?? 0, row[4] ?? 0, row[5] ?? 0]);
        for (let i = 0; i < 3; i++) out[3 + i] = turned[i] ?? 0;
        tree.angles.forEach((angle, j) => {
          out[6 + angle] = row[6 + j] ?? 0;
        });
        return out;
      };
      for (let n = 0; n < expected.poses / sizes.length; n++, poses++) {
        const configuration = randomConfiguration(body);
        const frames = placeFrames(body, configuration);
        data.qpos.set(positionsFor(tree, configuration));
        data.qvel.fill(0);
        data.qacc.fill(0);
        library.mj_fwdPosition(model, data);
        library.mj_inverse(model, data);
        const centre = centreOfMass(body, frames);
        worst.centre = Math.max(worst.centre, apart(centre, data.subtree_com.subarray(3, 6)));
        // Gravity: root rows and joint rows.
        const theirs = inOurs(data.qfrc_inverse, configuration.rootRotation);
        const { own, weight } = gravityMoments(body, { frames }, frames.axes);
        const ours = new Float64Array(unknowns);
        ours[2] = weight;
        const arm = [centre[0] - configuration.rootPosition[0], centre[1] - configuration.rootPosition[1]] as const;
        ours[3] = arm[1] * weight;
        ours[4] = -arm[0] * weight;
        ours.set(own, 6);
        worst.gravity = Math.max(worst.gravity, apart(ours, theirs));
        // A point and a load on a random segment.
        const segment = Math.floor(random() * body.segments.length);
        const at = pointInRoom(body, frames, segment, [between(-0.2, 0.2), between(-0.2, 0.2), between(-0.4, 0.2)]);
        const force: Vector = [between(-300, 300), between(-300, 300), between(-300, 300)];
        library.mj_jac(model, data, jacobian, turning, [...at], 1 + tree.segments.indexOf(segment));
        const view: Float64Array = jacobian.GetView();
        const rows = [0, 1, 2].map((axis) =>
          inOurs(view.subarray(axis * unknowns, (axis + 1) * unknowns), configuration.rootRotation),
        );
        const mine = pointJacobian(body, frames, segment, at);
        rows.forEach((row, axis) => {
          worst.jacobian = Math.max(worst.jacobian, apart(mine[axis] ?? [], row));
        });
        const moments = new Float64Array(unknowns);
        for (let i = 0; i < unknowns; i++)
          for (let axis = 0; axis < 3; axis++)
            moments[i] = (moments[i] ?? 0) + (rows[axis]?.[i] ?? 0) * (force[axis] ?? 0);
        const whole = new Float64Array(6);
        const carried = new Float64Array(body.angles.length);
        addForce(
          body,
          { frames, centre: configuration.rootPosition },
          frames.axes,
          segment,
          at,
          force,
          whole,
          carried,
          0,
          1,
        );
        worst.contact = Math.max(worst.contact, apart([...whole, ...carried], moments));
        // The centre's Jacobian: gravity's moments are its vertical row times the weight.
        const vertical = centreJacobian(body, frames)[2].map((value) => value * weight);
        worst.centreJacobian = Math.max(worst.centreJacobian, apart(vertical, theirs));
      }
      jacobian.delete();
      turning.delete();
      data.delete();
      model.delete();
    }
    console.log(
      `MuJoCo: ${poses} poses; worst relative difference ${Object.entries(worst)
        .map(([what, value]) => `${what} ${value.toExponential(1)}`)
        .join(", ")}`,
    );
    expect(poses).toBeGreaterThanOrEqual(1000);
    for (const value of Object.values(worst)) expect(value).toBeLessThan(expected.relativeAllowance);
  });
});
