import { describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import { closePose } from "../mechanics/pose/close.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import * as floor from "../practice/positions/floor-and-arm-poses.data.ts";
import * as kneeling from "../practice/positions/kneeling-more-poses.data.ts";
import * as table from "../practice/positions/table-standing-poses.data.ts";

const isPose = (value: unknown): value is PoseSpecification =>
  typeof value === "object" && value !== null && "pelvis" in value;
const POSES = [kneeling, table, floor]
  .flatMap((file) => Object.entries(file))
  .filter((entry): entry is [string, PoseSpecification] => isPose(entry[1]));
const SIZES = [
  { sex: "female", height: 1.63, mass: 68 },
  { sex: "male", height: 1.77, mass: 84 },
  { sex: "female", height: 1.5, mass: 45 },
  { sex: "male", height: 1.95, mass: 120 },
] as const;

describe("poses on the heels, over a low bench, on the way up from the floor, with the hands on a table", () => {
  it.each(POSES)("%s closes on four bodies, contacts touching, nothing below the floor", (_, pose) => {
    for (const size of SIZES) {
      const result = closePose(buildBody(size, -1), pose);
      if (!result.closed) throw new Error(`${size.height}: ${result.because}`);
      expect(result.residual).toBeLessThan(0.001);
      expect(result.sinks).toBeLessThan(0.001);
      const loose = result.contacts.filter(({ specification, touches }) => specification.role === "both" && !touches);
      expect(loose.map(({ patch }) => patch)).toEqual([]);
    }
  });
});
