import { degreesOf, radiansOf } from "../../src/quantity/angles.ts";
import { pointInRoom } from "../../src/mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../../src/mechanics/pose/specification.ts";
import { balanceOutline } from "../../src/mechanics/reach/outline.ts";
import { keepPoses } from "../../src/plan/assess/prepared.ts";
import type { Transition } from "../../src/practice/transitions/transition.ts";
import { all, byPeak, type Judged, judged, rising } from "./fact.ts";
import { type Asked, askHeld, askRung, CASE_P, EQUAL, effortOf, findRung, shareOn } from "./people.ts";
import { position, transition } from "./texts.ts";

/** Straight-leg raises from free to short [degrees]; about 80 is common, 60 short, 50 very short ("common practice"). */
const RAISES = [80, 70, 60, 50] as const;

/** Long sitting, knees straight, with hips that bend no further than the straight leg can be raised; equal limbs. */
export function judgeShortHamstrings(): Judged {
  const { body, findings } = CASE_P;
  const pose = position("long-sitting").pose;
  const rows = RAISES.map((raise) => {
    const hip = [radiansOf(-18), radiansOf(raise)] as const;
    const knee = [radiansOf(-1), radiansOf(3)] as const;
    const keeper = keepPoses({
      body,
      ageYears: findings.ageYears,
      loadShareWeak: {},
      ranges: {
        "hipFlexion.weak": hip,
        "hipFlexion.strong": hip,
        "kneeFlexion.weak": knee,
        "kneeFlexion.strong": knee,
      },
    });
    const prepared = keeper.prepare(pose);
    const stations = keeper.stations(pose);
    const own = EQUAL[0];
    if (!prepared.possible || stations === null || own === undefined) throw new Error(`no long sitting at ${raise}`);
    const answer = balanceOutline(stations, own);
    if (!answer.balanced) throw new Error(answer.because);
    const { frames } = prepared.pose;
    const at = (id: "pelvis" | "thorax", up: number) => pointInRoom(body, frames, id, [0, 0, up]);
    const back = (from: readonly number[], to: readonly number[]): number =>
      degreesOf(Math.atan2((from[0] ?? 0) - (to[0] ?? 0), (to[2] ?? 0) - (from[2] ?? 0)));
    return {
      raise,
      pelvis: back(at("pelvis", 0), at("pelvis", 0.1)),
      trunk: back(at("pelvis", 0), at("thorax", 0.2)),
      room: answer.directions.find(({ towards }) => towards === "back")?.metres ?? 0,
      least: answer.least.towards,
    };
  });
  const figures = rows
    .map(
      ({ raise, pelvis, trunk, room, least }) =>
        `raise ${raise}: pelvis ${pelvis.toFixed(0)} and trunk ${trunk.toFixed(0)} degrees back, ${room.toFixed(3)} m to go back, least ${least}`,
    )
    .join("; ");
  const tips = rows.every((row, i) => {
    const freer = rows[i - 1];
    return (
      freer === undefined || (row.pelvis > freer.pelvis + 3 && row.trunk > freer.trunk + 3 && row.room < freer.room)
    );
  });
  const shortest = rows.at(-1);
  return judged(
    tips && shortest?.least.startsWith("back") === true,
    figures,
    "a shorter raise does not tip pelvis and trunk further back with less way to go there",
  );
}

/** What a leg weighs on the mat while it slides, as a share of the body, and the grip of cloth on it ("judgement"). */
const SLIDING_SHARE = 0.075;
const SLIDING_GRIP = 0.35;

/** The moment the weak hip is light, with the leg sliding: its calf carried by the mat, which drags it one way. */
function dragged(pose: PoseSpecification, legGoes: "back" | "ahead"): Asked {
  const { body, keeper, draws } = CASE_P;
  const sliding: PoseSpecification = {
    ...pose,
    contacts: pose.contacts
      .filter(({ patch }) => patch !== "thighBack.weak" && patch !== "heel.weak")
      .map((contact) => (contact.patch === "calf.weak" ? { ...contact, role: "closes" as const } : contact)),
  };
  const prepared = keeper.prepare(sliding);
  if (!prepared.possible) throw new Error(prepared.because);
  const carried = SLIDING_SHARE * prepared.statics.weight;
  const segment = body.segmentIndex["shank.weak"];
  const along = 0.3 * (body.segments[segment]?.length ?? 0);
  const [x, y] = pointInRoom(body, prepared.pose.frames, "shank.weak", [0, 0, -along]);
  const drag = (legGoes === "back" ? 1 : -1) * SLIDING_GRIP * carried;
  return askHeld(CASE_P, sliding, draws, { outside: [{ segment, at: [x, y, 0], force: [drag, 0, carried] }] });
}

/** Backward against forward: the two held moments in long sitting, the drag on one and the same moment, and on the edge of a seat. */
export function judgeTrailing(): Judged {
  const ahead = findRung("long-sitting-scoot/weak-hip-ahead").rung.pose;
  const hip = (legGoes: "back" | "ahead"): number => effortOf(dragged(ahead, legGoes), "hip", "extension", "weak");
  const [trails, pushed] = [hip("back"), hip("ahead")];
  return all([
    rising([
      byPeak("weak hip back", askRung(CASE_P, "long-sitting-scoot/weak-hip-back")),
      byPeak("weak hip ahead", askRung(CASE_P, "long-sitting-scoot/weak-hip-ahead")),
    ]),
    judged(
      trails < pushed,
      `one moment, the leg dragged: weak hip ${trails.toFixed(2)} when it trails, ${pushed.toFixed(2)} when it is pushed`,
      `the drag itself asks the weak hip ${trails.toFixed(2)} when the leg trails and ${pushed.toFixed(2)} when it is pushed`,
    ),
    rising([
      byPeak("on the edge, weak hip back", askRung(CASE_P, "edge-scoot-back-and-ahead/weak-hip-back-on-edge")),
      byPeak("weak hip ahead", askRung(CASE_P, "edge-scoot-back-and-ahead/weak-hip-ahead-on-edge")),
    ]),
  ]);
}

/** More than this share of the body's weight counts as loading the weak hand. */
const LOADS = 0.05;

/** Where on the way the weak hand first carries, and what it carries with the seat just up; equal limbs. */
export function judgeOverWeakHip(): Judged {
  const [weak, strong] = (
    ["side-sitting-on-weak-hip-to-hands-and-knees", "side-sitting-on-strong-hip-to-hands-and-knees"] as const
  ).map((id) => weakHandOn(transition(id)));
  if (weak === undefined || strong === undefined) throw new Error("a way is missing");
  const say = (way: typeof weak): string =>
    `${way.shares.map(({ step, share }) => `step ${step} ${(share * 100).toFixed(0)} %`).join(", ")} of the weight on the weak hand, first at ${(way.first * 100).toFixed(0)} % of the way`;
  return all([
    judged(
      weak.first < strong.first,
      `over the weak hip: ${say(weak)}; over the strong hip: ${say(strong)}`,
      "the way over the weak hip does not load the weak hand before the other does",
    ),
    judged(
      weak.seatUp > strong.seatUp + LOADS,
      `with the seat just up ${(weak.seatUp * 100).toFixed(0)} % and ${(strong.seatUp * 100).toFixed(0)} %`,
      "with the seat just up the weak hand carries no more than on the other way",
    ),
  ]);
}

function weakHandOn(way: Transition) {
  const shares = way.steps.flatMap(({ pose }, i) =>
    pose === undefined ? [] : [{ step: i + 1, share: shareOn(askHeld(CASE_P, pose, EQUAL), /^hand/, "weak") }],
  );
  const first = shares.find(({ share }) => share > LOADS)?.step ?? way.steps.length + 1;
  // The last key pose is hands and knees itself; the one before it has the seat just up.
  return { shares, first: first / way.steps.length, seatUp: shares.at(-2)?.share ?? 0 };
}
