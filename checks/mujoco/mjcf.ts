import type { Body, Segment } from "../../src/mechanics/body/body.ts";
import type { Configuration } from "../../src/mechanics/pose/kinematics.ts";

/** The jointed body in the open model format of the outside library, with the order in which its joints come there. */
export interface Exported {
  readonly xml: string;
  /** Our angle number for each hinge, in the file's order. */
  readonly angles: readonly number[];
  /** Our segment number for each body, in the file's order (the world is 0 there). */
  readonly segments: readonly number[];
}

export function exportTree(body: Body): Exported {
  const angles: number[] = [];
  const segments: number[] = [];
  const write = (segment: Segment): string => {
    segments.push(segment.index);
    const joints =
      segment.parent === null
        ? "<freejoint/>"
        : segment.turns
            .map((turn) => {
              angles.push(body.angleIndex[turn.id]);
              return `<joint type="hinge" axis="${turn.axis.join(" ")}"/>`;
            })
            .join("");
    const inertia = segment.gyration.map((radius) => segment.mass * Math.max(radius, 0.02) ** 2 + 1e-5);
    // A diagonal inertia has to obey the triangle inequality; statics does not look at it.
    const even = Math.max(...inertia);
    const children = body.segments.filter((each) => each.parent === segment.index).map(write);
    return `<body name="${segment.id}" pos="${segment.joint.join(" ")}">${joints}<inertial pos="${segment.centre.join(" ")}" mass="${segment.mass}" diaginertia="${even} ${even} ${even}"/>${children.join("")}</body>`;
  };
  const root = body.segments[0];
  const tree = root === undefined ? "" : write(root);
  return {
    xml: `<mujoco><compiler angle="radian"/><option gravity="0 0 -9.81"/><worldbody>${tree}</worldbody></mujoco>`,
    angles,
    segments,
  };
}

/** Position, orientation as a quaternion (w first) and hinge angles as the library wants them. */
export function positionsFor(exported: Exported, configuration: Configuration): number[] {
  return [
    ...configuration.rootPosition,
    ...quaternionOf(configuration.rootRotation),
    ...exported.angles.map((angle) => configuration.angles[angle] ?? 0),
  ];
}

function quaternionOf(r: Configuration["rootRotation"]): [number, number, number, number] {
  const candidates = [1 + r[0] + r[4] + r[8], 1 + r[0] - r[4] - r[8], 1 - r[0] + r[4] - r[8], 1 - r[0] - r[4] + r[8]];
  const largest = candidates.indexOf(Math.max(...candidates));
  const s = 2 * Math.sqrt(candidates[largest] ?? 1);
  if (largest === 0) return [s / 4, (r[7] - r[5]) / s, (r[2] - r[6]) / s, (r[3] - r[1]) / s];
  if (largest === 1) return [(r[7] - r[5]) / s, s / 4, (r[1] + r[3]) / s, (r[2] + r[6]) / s];
  if (largest === 2) return [(r[2] - r[6]) / s, (r[1] + r[3]) / s, s / 4, (r[5] + r[7]) / s];
  return [(r[3] - r[1]) / s, (r[2] + r[6]) / s, (r[5] + r[7]) / s, s / 4];
}
