import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { radiansOf } from "../../quantity/angles.ts";
import { rotate, rotationAbout, unit, type Vector } from "../../quantity/vectors.ts";
import { buildBody } from "../body/build.ts";
import { normalCapacities, scaleCapacities } from "../body/strength-capacities.ts";
import { STRENGTH_IDS, strengthsFrom } from "../body/strength-keys.ts";
import { frictionOf } from "../contact/friction.ts";
import { addForce, gravityMoments, prepareStatics, type Statics } from "../equilibrium/statics.ts";
import { loadLinearSolver } from "../linear-program/linear-program.ts";
import { type SteadySolver, steadySolver } from "../linear-program/steady-solver.ts";
import type { ClosedPose } from "../pose/close.ts";
import { placeFrames, pointInRoom } from "../pose/kinematics.ts";
import { contactReach } from "./contact-reach.ts";
import { rayEnd } from "./station-region.ts";

const CASES = 1000;
const BODY = buildBody({ sex: "male", height: 1.75, mass: 80 }, 1);
const STATIONS = (
  [
    ["standing", poses.STANDING],
    ["tall kneeling", poses.TALL_KNEELING],
    ["hands and knees", poses.HANDS_AND_KNEES],
    ["bridge", poses.BRIDGE],
  ] as const
).map(([name, pose]) => {
  const statics = poses.closed(BODY, pose);
  return { name, statics, normal: normalCapacities(BODY, 60, statics.pose.configuration.angles) };
});
type Station = (typeof STATIONS)[number];
const stationOf = (name: string): Station => {
  const station = STATIONS.find((each) => each.name === name);
  if (station === undefined) throw new Error(`no station ${name}`);
  return station;
};
const anyStation = fc.constantFrom(...STATIONS.map(({ name }) => name));
const anyStrengths = fc
  .array(fc.integer({ min: 20, max: 125 }), { minLength: STRENGTH_IDS.length, maxLength: STRENGTH_IDS.length })
  .map((values) => strengthsFrom((id) => (values[STRENGTH_IDS.indexOf(id)] ?? 0) / 100));
const anyTurn = fc.integer({ min: 0, max: 359 }).map(radiansOf);

/** The same pose on contacts that reach further: every point of a patch away from the patch's middle, or a lone point beside itself. */
function widened(pose: ClosedPose, times: number): ClosedPose {
  return {
    ...pose,
    contacts: pose.contacts.map((contact) => {
      const { points } = contact;
      const middle = (axis: 0 | 1): number => points.reduce((sum, p) => sum + p.at[axis], 0) / points.length;
      const away = (axis: 0 | 1, p: Vector): number => middle(axis) + times * (p[axis] - middle(axis));
      const wide = points.map((p) => ({ ...p, at: [away(0, p.at), away(1, p.at), p.at[2]] as const }));
      const first = points[0];
      if (points.length > 1 || first === undefined) return { ...contact, points: wide };
      const beside = ([-1, 1] as const).map((by) => ({
        ...first,
        at: [first.at[0] + by * 0.02 * (times - 1), first.at[1], first.at[2]] as const,
      }));
      return { ...contact, points: [first, ...beside] };
    }),
  };
}

let solver: SteadySolver;
beforeAll(async () => {
  solver = steadySolver(await loadLinearSolver());
});

describe("a station's outline", () => {
  const compare = (
    title: string,
    seed: number,
    larger: (statics: Statics, by: number) => Statics,
    amounts: fc.Arbitrary<number>,
  ): void => {
    it(title, { timeout: 180_000 }, () => {
      let farther = 0;
      let compared = 0;
      fc.assert(
        fc.property(anyStation, anyStrengths, anyTurn, amounts, (name, strengths, turn, by) => {
          const { statics, normal } = stationOf(name);
          const capacities = scaleCapacities(normal, strengths);
          const direction = [Math.cos(turn), Math.sin(turn)] as const;
          const more = larger(statics, by);
          const before = rayEnd(statics, capacities, direction, 1, solver);
          const after = rayEnd(more, capacities, direction, 1, solver);
          if (before === null) return;
          compared++;
          if (after === null) throw new Error("held before, not after");
          if (after.metres > before.metres + 1e-3) farther++;
          expect(after.metres).toBeGreaterThanOrEqual(before.metres - 1e-6);
          // The quick search for the contacts' end obeys it too, to a tenth of a millimetre.
          const quick = contactReach(statics, direction, capacities.grip);
          expect(contactReach(more, direction, capacities.grip)).toBeGreaterThanOrEqual(quick - 1e-4);
        }),
        { numRuns: CASES, seed },
      );
      console.log(`${title}: ${compared} compared, farther by over 1 mm in ${farther}`);
      expect(compared).toBeGreaterThan(0.9 * CASES);
      expect(farther).toBeGreaterThan(20);
    });
  };
  compare(
    "never shrinks with more friction",
    11,
    (statics, by) =>
      prepareStatics(statics.body, statics.pose, {
        ...statics.options,
        friction: (contact) => frictionOf(contact) * by,
      }),
    fc.integer({ min: 101, max: 250 }).map((percent) => percent / 100),
  );
  compare(
    "never shrinks with larger contacts",
    12,
    (statics, by) => prepareStatics(statics.body, widened(statics.pose, by), statics.options),
    fc.integer({ min: 101, max: 150 }).map((percent) => percent / 100),
  );
});

describe("a load at the end of a straight free limb", () => {
  it("never lowers any moment of the joint that carries it", () => {
    const anyAngle = fc.integer({ min: -170, max: 170 }).map(radiansOf);
    fc.assert(
      fc.property(
        fc.constantFrom("upperArm.weak", "upperArm.strong", "thigh.weak", "thigh.strong"),
        fc.tuple(anyAngle, anyAngle, anyAngle),
        fc.tuple(anyAngle, anyAngle, anyAngle),
        fc.integer({ min: 1, max: 20 }),
        (limb, root, joint, kilograms) => {
          const segment = BODY.segmentIndex[limb];
          const own = BODY.segments[segment]?.turns ?? [];
          const angles = BODY.angles.map((id) => {
            const k = own.findIndex((turn) => turn.id === id);
            return k < 0 ? 0 : (joint[k] ?? 0);
          });
          const axis: Vector = unit([Math.sin(root[1]), Math.cos(root[1]), Math.sin(root[2])]);
          const frames = placeFrames(BODY, {
            rootPosition: [0, 0, 1],
            rootRotation: rotationAbout(axis, root[0]),
            angles,
          });
          const r = frames.rotations[segment];
          if (r === undefined) throw new Error("no frame");
          const axes = frames.axes.map((each, i) => {
            const k = own.findIndex((turn) => turn.id === BODY.angles[i]);
            return k < 0 ? each : rotate(r, own[k]?.axis ?? [1, 0, 0]);
          });
          const { own: without } = gravityMoments(BODY, { frames }, axes);
          // The straight limb's end: on the line from the joint through the limb's centre of mass, as far as the last joint.
          const below = BODY.segments.filter((each) => {
            for (let s: number | null = each.index; s !== null; s = BODY.segments[s]?.parent ?? null)
              if (s === segment) return true;
            return false;
          });
          const sum: [number, number, number] = [0, 0, 0];
          let mass = 0;
          for (const each of below) {
            const place = pointInRoom(BODY, frames, each.index, each.centre);
            mass += each.mass;
            for (const k of [0, 1, 2] as const) sum[k] += each.mass * place[k];
          }
          const from = frames.positions[segment] ?? [0, 0, 0];
          const line = unit([sum[0] / mass - from[0], sum[1] / mass - from[1], sum[2] / mass - from[2]]);
          const last = limb.startsWith("thigh") ? 0.8 : 0.7;
          const at: Vector = [from[0] + last * line[0], from[1] + last * line[1], from[2] + last * line[2]];
          const carried = new Float64Array(BODY.angles.length);
          addForce(
            BODY,
            { frames, centre: [0, 0, 0] },
            axes,
            segment,
            at,
            [0, 0, -9.81 * kilograms],
            new Float64Array(6),
            carried,
            0,
            1,
          );
          for (const turn of own) {
            const i = BODY.angleIndex[turn.id];
            const alone = without[i] ?? 0;
            const loaded = alone - (carried[i] ?? 0);
            expect(Math.abs(loaded)).toBeGreaterThanOrEqual(Math.abs(alone) - 1e-9);
          }
        },
      ),
      { numRuns: 2 * CASES, seed: 13 },
    );
  });
});
