import load from "@mujoco/mujoco";
import { exportTree, positionsFor } from "../checks/mujoco/mjcf.ts";
import * as poses from "../checks/poses.ts";
import { buildBody } from "../src/mechanics/body/build.ts";
import { normalCapacities, scaleCapacities } from "../src/mechanics/body/strength-capacities.ts";
import { STRENGTH_IDS, strengthsFrom, type Strengths } from "../src/mechanics/body/strength-keys.ts";
import { solveBestPossible } from "../src/mechanics/equilibrium/best-possible.ts";
import { solveHabitual } from "../src/mechanics/equilibrium/habitual.ts";
import { gravityMoments, prepareStatics } from "../src/mechanics/equilibrium/statics.ts";
import { leastHelp } from "../src/mechanics/help/least-help.ts";
import type { SiteId } from "../src/mechanics/help/sites.ts";
import { loadLinearSolver } from "../src/mechanics/linear-program/linear-program.ts";
import { closePose } from "../src/mechanics/pose/close.ts";
import { placeFrames } from "../src/mechanics/pose/kinematics.ts";
import { balanceOutline, prepareStations } from "../src/mechanics/reach/outline.ts";
import { takeSharing } from "../src/mechanics/reach/sharing.ts";
import { keepTaskEfforts } from "../src/plan/person/task-efforts.ts";
import { seededStream } from "../src/quantity/random.ts";
import { type BenchRow, type Spread, time } from "./timing.ts";

const AGE = 67;
const SIZE = { sex: "female", height: 1.62, mass: 68 } as const;
const SITES: readonly SiteId[] = [
  "underButtock.weak",
  "underButtock.strong",
  "hipBoneFront.weak",
  "upperChest.weak",
  "shoulderFront.weak",
  "aboveElbowBack.weak",
  "underThigh.weak",
];
const WEAK = strengthsFrom((id) => (id.endsWith(".weak") ? 0.35 : id.startsWith("trunk") ? 0.65 : 0.9));

const scaled = ({ median, low, high }: Spread, by: number): Spread => ({
  median: median * by,
  low: low * by,
  high: high * by,
});

/** Times the mechanics beside its rivals on the same poses, in one run. */
export async function runBench(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  const solver = await loadLinearSolver();
  const body = buildBody(SIZE, 1);
  const specifications = [
    poses.BRIDGE,
    poses.BRIDGE_STRONG_FOOT_UP,
    poses.HANDS_AND_KNEES,
    poses.PRONE_ON_ELBOWS,
    poses.TALL_KNEELING,
    poses.STANDING,
  ];
  const ready = specifications.map((specification) => {
    const pose = closePose(body, specification);
    if (!pose.closed) throw new Error(pose.because);
    const shared = takeSharing(body, pose);
    return {
      specification,
      pose: shared,
      statics: prepareStatics(body, shared),
      normal: normalCapacities(body, AGE, shared.configuration.angles),
    };
  });
  const pick = <T>(list: readonly T[], k: number): T => {
    const item = list[k % list.length];
    if (item === undefined) throw new Error("nothing to time");
    return item;
  };

  // Kinematics and gravity moments, beside inverse dynamics of a rigid-body library on the same tree: batches of ten.
  const library = await load();
  const tree = exportTree(body);
  const model = library.MjModel.from_xml_string(tree.xml);
  const data = new library.MjData(model);
  const positions = ready.map(({ pose }) => positionsFor(tree, pose.configuration));
  const ours = time((k) => {
    for (let n = 0; n < 10; n++) {
      const { pose } = pick(ready, k + n);
      const frames = placeFrames(body, pose.configuration);
      gravityMoments(body, { frames }, frames.axes);
    }
  }, 400);
  const theirs = time((k) => {
    for (let n = 0; n < 10; n++) {
      data.qpos.set(pick(positions, k + n));
      library.mj_inverse(model, data);
    }
  }, 400);
  rows.push({
    what: "kinematics and gravity moments of one pose",
    ...scaled(ours, 100),
    unit: "microseconds",
    rival: "MuJoCo mj_inverse",
    rivalMedian: theirs.median * 100,
  });
  data.delete();
  model.delete();

  rows.push({ what: "closing a pose", ...time((k) => closePose(body, pick(specifications, k)), 300), unit: "ms" });
  rows.push({
    what: "writing a pose as equations",
    ...time((k) => prepareStatics(body, pick(ready, k).pose), 300),
    unit: "ms",
  });
  const habitual = time((k) => {
    const { statics, normal } = pick(ready, k);
    return solveHabitual(statics, scaleCapacities(normal, WEAK));
  }, 300);
  const best = time((k) => {
    const { statics, normal } = pick(ready, k);
    return solveBestPossible(statics, scaleCapacities(normal, WEAK), solver);
  }, 120);
  rows.push({
    what: "habitual sharing of one pose",
    ...habitual,
    unit: "ms",
    rival: "min-max by HiGHS on the same pose",
    rivalMedian: best.median,
  });

  const random = seededStream(9);
  const draw = (): Strengths =>
    strengthsFrom((id) => WEAK[id] * Math.exp(0.5 * (random() + random() + random() - 1.5)));
  const vector = (): Float64Array => {
    const drawn = draw();
    return Float64Array.from(STRENGTH_IDS, (id) => drawn[id]);
  };
  const kept = ready.map(({ pose, statics, normal }) =>
    keepTaskEfforts({ possible: true, pose, statics, normal }, Array.from({ length: 32 }, vector)),
  );
  const samples = Array.from({ length: 64 }, vector);
  const estimate = time((k) => {
    const task = pick(kept, k);
    if (task === null) throw new Error("not in balance");
    for (let n = 0; n < 10; n++) task.logEffort(pick(samples, k + n));
  }, 300);
  rows.push({
    what: "efforts at other strengths, from 32 kept solutions",
    ...scaled(estimate, 100),
    unit: "microseconds",
    rival: "solving",
    rivalMedian: habitual.median * 1000,
  });

  // One rung complete, the pose not kept: closed anew, sharing, efforts as a range of eight samples, outline, help.
  const rangeOf = Array.from({ length: 8 }, draw);
  const bodies = [body, buildBody(SIZE, -1)];
  const rung = time((k) => {
    const fresh = pick(bodies, Math.floor(k / specifications.length));
    const pose = closePose(fresh, pick(specifications, k));
    if (!pose.closed) throw new Error(pose.because);
    const shared = takeSharing(fresh, pose);
    const statics = prepareStatics(fresh, shared);
    const normal = normalCapacities(fresh, AGE, shared.configuration.angles);
    for (const strengths of rangeOf) solveHabitual(statics, scaleCapacities(normal, strengths));
    balanceOutline(prepareStations(fresh, AGE, shared), WEAK);
    leastHelp(statics, scaleCapacities(normal, WEAK), { allowedShare: 0.6, sites: SITES }, solver);
  }, 120);
  rows.push({
    what: "one rung complete, pose not kept: efforts as a range, outline, help",
    ...rung,
    unit: "ms",
    target: 25,
  });
  const again = ready.map(({ pose }) => prepareStations(body, AGE, pose));
  rows.push({
    what: "balance outline, stations kept",
    ...time((k) => balanceOutline(pick(again, k), draw()), 120),
    unit: "ms",
  });
  return rows;
}
