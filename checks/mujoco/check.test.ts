import load from "@mujoco/mujoco";
import { describe, expect, it } from "vitest";
import { buildBody } from "../../src/mechanics/body/build.ts";
import type { Body } from "../../src/mechanics/body/body.ts";
import { addForce, gravityMoments, prepareStatics, type Statics } from "../../src/mechanics/equilibrium/statics.ts";
import {
  centreJacobian,
  centreOfMass,
  type Configuration,
  placeFrames,
  pointInRoom,
  pointJacobian,
} from "../../src/mechanics/pose/kinematics.ts";
import { type ClosedPose, closePose } from "../../src/mechanics/pose/close.ts";
import { seededStream } from "../../src/quantity/random.ts";
import { compose, dot, rotate, rotationAbout, unit, type Vector } from "../../src/quantity/vectors.ts";
import { BRIDGE, HANDS_AND_KNEES, STANDING, TALL_KNEELING } from "../poses.ts";
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

/** Any adult: heights and masses beyond what a clinic sees, both sexes, either side the weak one. */
const randomBody = (k: number): Body =>
  buildBody(
    { sex: random() < 0.5 ? "female" : "male", height: between(1.4, 2.05), mass: between(38, 160) },
    k % 2 === 0 ? 1 : -1,
  );

/** Poses that stand on their contacts, weight shifted a little; one that does not close on this body is left out. */
function expectedPoses(body: Body, k: number): ClosedPose[] {
  return [HANDS_AND_KNEES, BRIDGE, TALL_KNEELING, STANDING]
    .slice(k % 3, (k % 3) + 2)
    .map((pose) => closePose(body, { ...pose, shift: { forwardCm: between(-1, 1), toWeakCm: between(-1, 1) } }))
    .filter((pose) => pose.closed);
}

/** One column of the equations of balance in the order of the unknowns, moments about the pelvis and about the tree's own axes. */
function columnOf(statics: Statics, j: number): Float64Array {
  const { unknowns, angles, whole, carried, joints, axes, pose } = statics;
  const out = new Float64Array(6 + angles);
  for (let r = 0; r < 6; r++) out[r] = whole[r * unknowns + j] ?? 0;
  // Ours are moments about the centre of mass; theirs about the pelvis.
  const [x, y, z] = pose.centre.map((value, axis) => value - (pose.configuration.rootPosition[axis] ?? 0));
  const [fx, fy, fz] = [out[0] ?? 0, out[1] ?? 0, out[2] ?? 0];
  out[3] = (out[3] ?? 0) + (y ?? 0) * fz - (z ?? 0) * fy;
  out[4] = (out[4] ?? 0) + (z ?? 0) * fx - (x ?? 0) * fz;
  out[5] = (out[5] ?? 0) + (x ?? 0) * fy - (y ?? 0) * fx;
  for (const joint of joints) {
    for (const i of joint.angles) {
      // A joint with three axes is written about the moving part's own: turned back onto the tree's.
      out[6 + i] = joint.ball
        ? joint.angles.reduce(
            (sum, own) =>
              sum + (carried[own * unknowns + j] ?? 0) * dot(axes[own] ?? [0, 0, 0], pose.frames.axes[i] ?? [0, 0, 0]),
            0,
          )
        : (carried[i * unknowns + j] ?? 0);
    }
  }
  return out;
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
  it("agrees on centre of mass, Jacobians, gravity and contact moments", { timeout: 120_000 }, async () => {
    const library = await load();
    const worst = { centre: 0, jacobian: 0, centreJacobian: 0, gravity: 0, load: 0, contact: 0 };
    let poses = 0;
    let loads = 0;
    let contacts = 0;
    for (let k = 0; k < expected.bodies; k++) {
      const body = randomBody(k);
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
      const closed = expectedPoses(body, k);
      for (let n = 0; n < expected.poses / expected.bodies; n++, poses++) {
        // The first few of each body stand on their contacts; the rest are anywhere.
        const pose = closed[n] ?? null;
        const configuration = pose === null ? randomConfiguration(body) : pose.configuration;
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
        const jacobianAt = (segment: number, at: Vector): Float64Array[] => {
          library.mj_jac(model, data, jacobian, turning, [...at], 1 + tree.segments.indexOf(segment));
          const view: Float64Array = jacobian.GetView();
          return [0, 1, 2].map((axis) =>
            inOurs(view.subarray(axis * unknowns, (axis + 1) * unknowns), configuration.rootRotation),
          );
        };
        const momentsOf = (rows: readonly Float64Array[], force: Vector): Float64Array => {
          const moments = new Float64Array(unknowns);
          for (let i = 0; i < unknowns; i++)
            for (let axis = 0; axis < 3; axis++)
              moments[i] = (moments[i] ?? 0) + (rows[axis]?.[i] ?? 0) * (force[axis] ?? 0);
          return moments;
        };
        // Points and loads on random segments.
        for (let each = 0; each < expected.loadsPerPose; each++, loads++) {
          const segment = Math.floor(random() * body.segments.length);
          const at = pointInRoom(body, frames, segment, [between(-0.2, 0.2), between(-0.2, 0.2), between(-0.4, 0.2)]);
          const force: Vector = [between(-300, 300), between(-300, 300), between(-300, 300)];
          const rows = jacobianAt(segment, at);
          const mine = pointJacobian(body, frames, segment, at);
          rows.forEach((row, axis) => {
            worst.jacobian = Math.max(worst.jacobian, apart(mine[axis] ?? [], row));
          });
          const whole = new Float64Array(6);
          const carried = new Float64Array(body.angles.length);
          const about = { frames, centre: configuration.rootPosition };
          addForce(body, about, frames.axes, segment, at, force, whole, carried, 0, 1);
          worst.load = Math.max(worst.load, apart([...whole, ...carried], momentsOf(rows, force)));
        }
        // Every way in which the contacts of a closed pose can push, as the equations of balance hold it.
        const statics = pose === null ? null : prepareStatics(body, pose);
        statics?.columns.forEach((column, j) => {
          contacts++;
          const theirs = momentsOf(jacobianAt(column.segment, column.at), column.force);
          if (column.other !== null)
            momentsOf(jacobianAt(column.other.segment, column.other.at), column.force).forEach((value, i) => {
              theirs[i] = (theirs[i] ?? 0) - value;
            });
          worst.contact = Math.max(worst.contact, apart(columnOf(statics, j), theirs));
        });
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
      `MuJoCo: ${expected.bodies} bodies, ${poses} poses, ${loads} loads, ${contacts} contact pushes; worst relative difference ${Object.entries(
        worst,
      )
        .map(([what, value]) => `${what} ${value.toExponential(1)}`)
        .join(", ")}`,
    );
    expect(poses).toBe(10_000);
    expect(contacts).toBeGreaterThan(10_000);
    for (const value of Object.values(worst)) expect(value).toBeLessThan(expected.relativeAllowance);
  });
});
