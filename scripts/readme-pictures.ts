import { mkdirSync, writeFileSync } from "node:fs";
import { drawFigure, drawLegend, type Marks } from "../src/figures/index.ts";
import type { SegmentId } from "../src/mechanics/body/names.ts";
import { scaleCapacities } from "../src/mechanics/body/strength-capacities.ts";
import { evenStrengths } from "../src/mechanics/body/strength-keys.ts";
import { solveHabitual } from "../src/mechanics/equilibrium/habitual.ts";
import type { PreparedPose } from "../src/plan/assess/prepared.ts";
import { PICTURED_PEOPLE, rungsFor } from "./drawn-rungs.ts";

const FOLDER = "docs/images";
const WIDTH = 380;
const EDGE = 8;

/** What README shows: person, rung, file. */
const SHOWN = [
  { person: 0, rung: "bridge/strong-foot-further", file: "bridge" },
  { person: 0, rung: "hands-and-knees-rock/over-roll", file: "hands-and-knees" },
  { person: 1, rung: "half-kneel-weak-forward-hold/weight-to-weak-foot", file: "half-kneeling" },
  { person: 1, rung: "bars-weak-stance/strong-heel-off", file: "bars" },
] as const;

/** Draws README's pictures with helper, marks and legend. @returns a line for each */
export function writeReadmePictures(): string[] {
  mkdirSync(FOLDER, { recursive: true });
  const rungs = PICTURED_PEOPLE.map((person) => rungsFor(person));
  return SHOWN.map(({ person, rung, file }) => {
    const each = rungs[person]?.find((known) => known.name === rung);
    if (each === undefined || each.input === null || each.prepared === null)
      return `${file}: no such rung, or its pose does not close`;
    const figure = drawFigure({ ...each.input, size: { width: WIDTH }, density: 2, marks: marksOf(each.prepared) });
    const legend = drawLegend(
      [
        { id: "weakLimbs", words: "weaker arm and leg" },
        { id: "helper", words: "helper" },
        { id: "weight", words: "weight carried" },
        { id: "hardest", words: "works hardest" },
      ],
      WIDTH,
      "paper",
    );
    const height = figure.bodyLayer.height + EDGE + legend.height;
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}"><rect width="100%" height="100%" fill="#fff"/>${figure.svg}<g transform="translate(0 ${figure.bodyLayer.height + EDGE})">${legend.svg}</g></svg>`;
    writeFileSync(`${FOLDER}/${file}.svg`, svg);
    return `${FOLDER}/${file}.svg: ${Math.round(svg.length / 1000)} kB`;
  });
}

const SEGMENT_OF: Readonly<Record<string, string>> = {
  hip: "thigh",
  knee: "shank",
  ankle: "foot",
  shoulder: "upperArm",
  elbow: "forearm",
  wrist: "hand",
};

/** Weight and the hardest worked joint, for somebody with six tenths of the usual strength on both sides. */
function marksOf(prepared: PreparedPose): Marks {
  const balance = solveHabitual(prepared.statics, scaleCapacities(prepared.normal, evenStrengths(0.6)));
  if (!balance.balanced) return {};
  const hardest = balance.hardest;
  const part = hardest === null ? undefined : SEGMENT_OF[hardest.joint];
  const segment =
    hardest === null || part === undefined || hardest.side === null ? null : (`${part}.${hardest.side}` as SegmentId);
  return {
    discs: balance.loads
      .filter((load) => load.share > 0.02 && !load.internal && !load.patch.startsWith("grip"))
      .map(({ at, share }) => ({ at, share })),
    ...(segment === null
      ? {}
      : { effort: { segment, level: (hardest?.effort ?? 0) > 0.6 ? ("thick" as const) : ("thin" as const) } }),
  };
}
