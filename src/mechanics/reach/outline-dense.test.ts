import { beforeAll, describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { buildBody } from "../body/build.ts";
import { normalCapacities, scaleCapacities } from "../body/strength-capacities.ts";
import { strengthsFrom } from "../body/strength-keys.ts";
import { shareHabitually } from "../equilibrium/habitual.ts";
import { prepareStatics } from "../equilibrium/statics.ts";
import { loadLinearSolver } from "../linear-program/linear-program.ts";
import { type SteadySolver, steadySolver } from "../linear-program/steady-solver.ts";
import { type ClosedPose, closePose } from "../pose/close.ts";
import { limitsOf } from "../pose/targets.ts";
import { balanceOutline, prepareStations, TOWARDS } from "./outline.ts";
import { slideCentre } from "./slide.ts";
import { rayEnd } from "./station-region.ts";

const BODY = buildBody({ sex: "male", height: 1.75, mass: 80 }, 1);
const WEAK = strengthsFrom((id) => (id.endsWith(".weak") ? 0.3 : id.startsWith("trunk") ? 0.6 : 0.9));
const POSES = [
  ["hands and knees", poses.HANDS_AND_KNEES],
  ["tall kneeling", poses.TALL_KNEELING],
] as const;
const STEP = 0.01;

let solver: SteadySolver;
beforeAll(async () => {
  solver = steadySolver(await loadLinearSolver());
});

/** The pose with its centre of mass taken so far; null where a joint's range ends the way before. */
function stationAt(pose: ClosedPose, direction: readonly [number, number], metres: number): ClosedPose | null {
  if (metres === 0) return pose;
  return slideCentre(BODY, pose, direction, 0, pose.configuration, metres, limitsOf(BODY)).station;
}

describe("the outline against re-posing the body every centimetre", () => {
  it.each(POSES)(
    "%s: ends where dense stations end, and never beyond what perfect sharing would allow",
    { timeout: 180_000 },
    (name, specification) => {
      const pose = closePose(BODY, specification);
      if (!pose.closed) throw new Error(pose.because);
      const outline = balanceOutline(prepareStations(BODY, 60, pose), WEAK);
      if (!outline.balanced) throw new Error(outline.because);
      const normal = normalCapacities(BODY, 60, pose.configuration.angles);
      const apart: number[] = [];
      for (const [k, towards] of TOWARDS.entries()) {
        const found = outline.directions[k];
        if (found === undefined) throw new Error("no direction");
        const { direction } = found;
        let dense = 0;
        for (let metres = STEP; metres < 0.4; metres += STEP) {
          const station = stationAt(pose, direction, metres);
          if (station === null) break;
          const statics = { ...prepareStatics(BODY, station, {}), sharing: null };
          const capacities = scaleCapacities(normalCapacities(BODY, 60, station.configuration.angles), WEAK);
          const sharing = shareHabitually(statics, capacities);
          if (sharing.residual > 0.05 || sharing.most > outline.level) break;
          dense = metres;
        }
        apart.push(found.metres - dense);
        // Perfect sharing at the outline's own end: it holds there, so the outline promises nothing that cannot be.
        const last = stationAt(pose, direction, Math.max(0, found.metres - 0.005));
        if (last !== null && found.endedBy === "muscle") {
          const statics = prepareStatics(BODY, last, {});
          const capacities = scaleCapacities(normalCapacities(BODY, 60, last.configuration.angles), WEAK);
          const ray = rayEnd(statics, capacities, direction, outline.level, solver);
          expect(ray, `${name} ${towards}`).not.toBeNull();
        }
      }
      expect(normal.moments.length).toBe(86);
      const sorted = apart.map(Math.abs).sort((a, b) => a - b);
      console.log(
        `${name}: outline less dense end, mm: ${apart.map((each) => (each * 1000).toFixed(0)).join(" ")}; middle ${((sorted[4] ?? 0) * 1000).toFixed(0)}; ended by ${outline.directions.map(({ endedBy }) => endedBy).join(" ")}`,
      );
      // Stations a centimetre apart see the end up to a centimetre short; the rest is the curve through three stations.
      for (const each of apart) expect(each).toBeLessThan(0.025);
    },
  );
});
