import { expect, it } from "vitest";
import { buildBody } from "../../mechanics/body/build.ts";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import { seededStream } from "../../quantity/random.ts";
import { poseOf } from "../assess/posed.ts";
import { keepPoses } from "../assess/prepared.ts";
import type { EffortModel, Evidence } from "./evidence.ts";
import { quantile } from "./normal.ts";
import { priorBelief, strengthOf } from "./prior.ts";
import { refineTasks } from "./refine.ts";
import { lowerRoot, placed } from "./samples.ts";
import { SLOT_COUNT } from "./slots.ts";
import { keepTaskEfforts } from "./task-efforts.ts";

const body = buildBody({ sex: "female", height: 1.63, mass: 68 }, -1);
const keeper = keepPoses({ body, ageYears: 67, loadShareWeak: {}, ranges: {} });

const RUNGS = [
  ["bridge", "weak-foot-up"],
  ["sit-to-stand", "low-seat"],
  ["prone-on-elbows-hold-and-shift", "flat-hold"],
] as const;

/** Judge: the same pose solved at each of the strengths. */
it("reads efforts off more closely where a person is believed to be than from a healthy body's solution", () => {
  // A person weaker than most.
  const { covariance, ...first } = priorBelief("oneSide");
  const mean = first.mean.map((each, i) => each - Math.sqrt(covariance[i * SLOT_COUNT + i] ?? 0));
  const belief = { mean, covariance: covariance.map((each) => each / 2) };
  const root = lowerRoot(belief.covariance, 1);
  const stream = seededStream(9);
  const squares = { plain: 0, refined: 0 };
  let count = 0;
  for (const [activity, id] of RUNGS) {
    const rung = ACTIVITIES.find((each) => each.id === activity)?.rungs.find((each) => each.id === id);
    const prepared = rung === undefined ? null : keeper.prepare(poseOf(rung));
    const plain = prepared?.possible === true ? keepTaskEfforts(prepared, []) : null;
    if (prepared?.possible !== true || plain === null) throw new Error(`${activity}/${id}`);
    const [refined] = refineTasks([seenWith(plain)], belief);
    if (refined?.quantity.of !== "effort") throw new Error("no task");
    for (let k = 0; k < 12; k++) {
      const noise = Float64Array.from({ length: SLOT_COUNT }, () => quantile(0.001 + 0.998 * stream()));
      const strengths = Float64Array.from(placed(mean, root, noise, 1), strengthOf);
      const exact = keepTaskEfforts(prepared, [strengths])?.logEffort(strengths) ?? Number.NaN;
      squares.plain += (plain.logEffort(strengths) - exact) ** 2;
      squares.refined += (refined.quantity.task.logEffort(strengths) - exact) ** 2;
      count++;
    }
  }
  const off = { plain: Math.sqrt(squares.plain / count), refined: Math.sqrt(squares.refined / count) };
  console.log(
    `ln effort off by ${off.plain.toFixed(3)} before, ${off.refined.toFixed(3)} after (root mean square of ${count})`,
  );
  expect(off.refined).toBeLessThan(0.6 * off.plain);
  // The stated noise of the model is 0.28: what reading off adds must stay below it.
  expect(off.refined).toBeLessThan(0.28);
});

const seenWith = (task: EffortModel): Evidence => ({
  id: "seen",
  words: "seen",
  kind: "look",
  seenInFunction: true,
  quantity: { of: "effort", task },
  logLikelihood: () => 0,
  outcomes: null,
});
