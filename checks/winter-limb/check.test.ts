import { describe, expect, it } from "vitest";
import type { Body } from "../../src/mechanics/body/body.ts";
import { buildBody } from "../../src/mechanics/body/build.ts";
import { centreOfMass, type Frames } from "../../src/mechanics/pose/kinematics.ts";
import { IDENTITY, type Vector } from "../../src/quantity/vectors.ts";
import { type Compared, printRows } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

type Marker = keyof typeof expected.markers;

/** A body of three segments standing at the markers: its parts' centres lie between their ends by the published shares. */
function limb(parts: typeof expected.segments): { body: Body; frames: Frames } {
  const whole = buildBody({ sex: "male", height: 1.75, mass: 80 }, 1);
  const place = (name: string): Vector => {
    const [x, z] = expected.markers[name as Marker] as [number, number];
    return [x, 0, z];
  };
  const template = whole.segments[0];
  if (template === undefined) throw new Error("no segment");
  const segments = parts.map((part, index) => {
    const from = place(part.from);
    const to = place(part.to);
    return {
      ...template,
      index,
      mass: part.mass,
      centre: [(to[0] - from[0]) * part.centre, 0, (to[2] - from[2]) * part.centre] as const,
    };
  });
  const frames = {
    configuration: { rootPosition: [0, 0, 0], rootRotation: IDENTITY, angles: [] },
    positions: parts.map((part) => place(part.from)),
    rotations: parts.map(() => IDENTITY),
    axes: [],
  } as const;
  return { body: { ...whole, segments }, frames };
}

describe("the worked lower limb", () => {
  it("has its printed centres of mass", () => {
    const rows: Compared[] = [];
    const compare = (what: string, parts: typeof expected.segments, theirs: readonly number[]): void => {
      const { body, frames } = limb(parts);
      const centre = centreOfMass(body, frames);
      rows.push(
        { what: `${what} forward`, ours: centre[0], theirs: theirs[0] ?? 0, allowed: 0.001 },
        { what: `${what} up`, ours: centre[2], theirs: theirs[1] ?? 0, allowed: 0.001 },
      );
    };
    for (const part of expected.segments) compare(part.name, [part], part.expect);
    compare("limb", expected.segments, expected.limb);
    expect(printRows("winter limb", rows)).toEqual([]);
  });
});
