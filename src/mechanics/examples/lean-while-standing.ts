import { buildBody } from "../body/build.ts";
import { capacitiesOf } from "../body/strength-capacities.ts";
import { evenStrengths } from "../body/strength-keys.ts";
import { prepareStatics } from "../equilibrium/statics.ts";
import type { LinearSolver } from "../linear-program/linear-program.ts";
import { closePose } from "../pose/close.ts";
import { stationRegion } from "../reach/station-region.ts";

/** Where the weight may go over two feet at half the strength of the ankles: area between two proven outlines [cm2], and how close they are [mm]. */
export function leanWhileStanding(
  solver: LinearSolver,
): { readonly least: number; readonly most: number; readonly apart: number } | null {
  const body = buildBody({ sex: "male", height: 1.75, mass: 80 }, 1);
  const pose = closePose(body, {
    pelvis: { pitchDeg: 2 },
    bothDeg: { hipFlexion: 2, kneeFlexion: 4, hipAbduction: 4, ankleDorsiflexion: 4 },
    contacts: [
      { patch: "foot.weak", on: "floor", role: "both" },
      { patch: "foot.strong", on: "floor", role: "both" },
    ],
  });
  if (!pose.closed) return null;
  const capacities = capacitiesOf(body, 40, pose.configuration.angles, evenStrengths(1));
  const region = stationRegion(prepareStatics(body, pose), capacities, 0.5, solver);
  if (region === null) return null;
  return { least: areaOf(region.inner), most: areaOf(region.outer), apart: region.gap * 1000 };
}

function areaOf(corners: readonly (readonly [number, number])[]): number {
  const doubled = corners.reduce((sum, [x, y], k) => {
    const [u, v] = corners[(k + 1) % corners.length] ?? [0, 0];
    return sum + x * v - y * u;
  }, 0);
  return (doubled / 2) * 1e4;
}
