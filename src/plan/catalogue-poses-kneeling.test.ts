import { describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import { closePose } from "../mechanics/pose/close.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import * as bars from "../practice/activities/poses/bars.data.ts";
import * as fours from "../practice/activities/poses/hands-and-knees.data.ts";
import * as kneeling from "../practice/activities/poses/kneeling.data.ts";
import * as bases from "../practice/positions/kneeling-poses.data.ts";
import * as standing from "../practice/positions/standing-poses.data.ts";

const isPose = (value: unknown): value is PoseSpecification =>
  typeof value === "object" && value !== null && "pelvis" in value;
const POSES = [bars, fours, kneeling, bases, standing]
  .flatMap((file) => Object.entries(file))
  .filter((entry): entry is [string, PoseSpecification] => isPose(entry[1]));
const SIZES = [
  { sex: "female", height: 1.63, mass: 68 },
  { sex: "male", height: 1.77, mass: 84 },
  { sex: "female", height: 1.5, mass: 45 },
  { sex: "male", height: 1.95, mass: 120 },
] as const;

describe("poses on hands and knees, kneeling and in the bars", () => {
  it.each(POSES)("%s closes on four bodies", (_, pose) => {
    for (const size of SIZES) {
      const result = closePose(buildBody(size, 1), pose);
      if (!result.closed) throw new Error(`${size.height}: ${result.because}`);
      expect(result.residual).toBeLessThan(0.001);
      expect(result.sinks).toBeLessThan(0.001);
    }
  });
});
