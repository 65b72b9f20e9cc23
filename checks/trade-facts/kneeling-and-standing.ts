import { pointInRoom } from "../../src/mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../../src/mechanics/pose/specification.ts";
import { poseOf } from "../../src/plan/assess/posed.ts";
import { spareWeakArm } from "../../src/plan/assess/prepared.ts";
import { HANDS_AND_KNEES } from "../../src/practice/positions/kneeling-poses.data.ts";
import { judgeDemands, keepsOut } from "../../src/practice/precautions/judge-demands.ts";
import { all, byPeak, type Fact, judged, rising, said } from "./fact.ts";
import {
  ask,
  askHeld,
  askRung,
  CASE_A,
  CASE_P,
  effortOf,
  EQUAL,
  findRung,
  nameOf,
  outline,
  sayOutline,
  shareOn,
  topThree,
} from "./people.ts";
import { handsOf, position, rungText, setUpOf, stepThatSays, transition, transitionText } from "./texts.ts";

const elbowsBent = (degrees: number): PoseSpecification => ({
  ...HANDS_AND_KNEES,
  bothDeg: { ...HANDS_AND_KNEES.bothDeg, elbowFlexion: degrees, shoulderFlexion: 79 - degrees / 2 },
});
const TALL = position("tall-kneeling").pose;
const leaningBack = (centimetres: number): PoseSpecification => {
  const { sharing: _own, ...free } = TALL;
  return centimetres === 0 ? free : { ...free, shift: { forwardCm: -centimetres } };
};
const HANDS = /^hand\./;
const KNEES = /^(shin|knee|instep)\./;
const SEAT = "sit-to-stand";
/** The feet moved ahead under the same body. */
function feetAhead(degrees: number): PoseSpecification {
  const own = poseOf(findRung(`${SEAT}/high-seat-hands-on-knees`).rung);
  const { kneeFlexion = 0, ankleDorsiflexion = 0 } = own.bothDeg ?? {};
  return {
    ...own,
    bothDeg: { ...own.bothDeg, kneeFlexion: kneeFlexion - degrees, ankleDorsiflexion: ankleDorsiflexion - degrees },
  };
}

export const KNEELING_AND_STANDING: readonly Fact[] = [
  {
    fact: "14a",
    says: "Hands and knees: a straight elbow under the shoulder asks little of the triceps, a bent one much (equal limbs).",
    judge: () =>
      rising(
        [5, 15, 30, 45].map((degrees) => {
          const asked = askHeld(CASE_P, elbowsBent(degrees), EQUAL);
          return {
            name: `elbows bent ${degrees} degrees: triceps`,
            value: effortOf(asked, "elbow", "extension", "weak"),
            asked,
          };
        }),
      ),
  },
  {
    fact: "14b",
    says: "With the elbow blocked the shoulder is then the limit.",
    judge: () => {
      const asked = askHeld(CASE_P, findRung("hands-and-knees-rock/rock-forward").rung.pose, CASE_P.draws);
      const next = asked.efforts.find(({ joint, side }) => !(joint === "elbow" && side === "weak"));
      if (next === undefined) throw new Error("no effort");
      return judged(
        next.joint.startsWith("shoulder") && next.side === "weak",
        `weak triceps ${effortOf(asked, "elbow", "extension", "weak").toFixed(2)}; next ${nameOf(next)} ${next.effort.toFixed(2)}`,
        `next is the ${nameOf(next)}: ${topThree(asked)}`,
      );
    },
  },
  {
    fact: "14c",
    says: "The block: a hand on the back of the upper arm just above the elbow, never forced past straight; knee or thigh under shoulder and upper chest, never in the armpit; turning the arm out brings the elbow straight.",
    judge: () =>
      said([
        {
          where: "rock back, hands",
          text: handsOf("hands-and-knees-rock/rock-back").join(", "),
          pattern: /aboveElbowBack\.weak blocks/,
        },
        {
          where: "rock back, words of the hand",
          text: rungText("hands-and-knees-rock/rock-back"),
          pattern: /just above the elbow; never push past straight/,
        },
        {
          where: "rock back, thigh",
          text: findRung("hands-and-knees-rock/rock-back").rung.helper.knee ?? "",
          pattern: /under the front of the weak shoulder and upper chest, never in the armpit/,
        },
        { where: "set-up", text: setUpOf("hands-and-knees-rock"), pattern: /elbow straight and turned out/ },
      ]),
  },
  {
    fact: "15a",
    says: "On hands and knees shifting forward loads the arms, backward the legs (equal limbs).",
    judge: () => {
      const rows = ["rock-back", "rock-forward"].map((id) =>
        askHeld(CASE_P, findRung(`hands-and-knees-rock/${id}`).rung.pose, EQUAL),
      );
      const [back, ahead] = rows;
      if (back === undefined || ahead === undefined) throw new Error("two rungs");
      const still = askHeld(CASE_P, HANDS_AND_KNEES, EQUAL);
      const arms = [back, still, ahead].map((asked, i) => ({
        name: `share on the hands, ${["back", "still", "forward"][i]}`,
        value: shareOn(asked, HANDS),
        asked,
      }));
      const legs = [ahead, still, back].map((asked, i) => ({
        name: `share on the knees, ${["forward", "still", "back"][i]}`,
        value: shareOn(asked, KNEES),
        asked,
      }));
      return all([rising(arms), rising(legs)]);
    },
  },
  {
    fact: "15b",
    says: "The least balanced direction is forward and diagonally to the weak hand.",
    judge: () =>
      all(
        [CASE_P, CASE_A].map((person, i) => {
          const of = outline(person, HANDS_AND_KNEES, person.draws);
          return judged(
            of.least.towards === "forwardWeak",
            `Case ${i === 0 ? "P" : "A"}: least ${of.least.towards}; ${sayOutline(of)}`,
            `Case ${i === 0 ? "P" : "A"} has least to go ${of.least.towards}, ended by ${of.least.what}`,
          );
        }),
      ),
  },
  {
    fact: "16",
    says: "Coming up to kneeling: rocking back first, the helper's thigh carries the weak upper chest, the strong hand goes to a raised surface; not with a painful or slipped shoulder.",
    judge: () => {
      const id = "hands-and-knees-to-tall-kneeling-at-bench";
      const [back, hand] = [
        stepThatSays(id, /Rock back toward the heels/),
        stepThatSays(id, /strong hand goes up onto the bench/),
      ];
      const out = (["hemi_shoulder_pain", "hemi_shoulder_subluxation_weight"] as const).map((code) => ({
        code,
        out: keepsOut(judgeDemands([{ code }], transition(id).demands, transition(id).to)),
      }));
      return all([
        judged(
          back >= 0 && back < hand,
          `rock back in step ${back + 1}, hand to the bench in step ${hand + 1}`,
          "the hand goes first",
        ),
        said([{ where: "the way up", text: transitionText(id), pattern: /Thigh carries the weak upper chest/ }]),
        judged(
          out.every((each) => each.out),
          out.map((each) => `${each.code}: ${each.out ? "kept out" : "open"}`).join(", "),
          `open with ${out
            .filter((each) => !each.out)
            .map(({ code }) => code)
            .join(", ")}: the row changes the load on the weak shoulder and does not bar the way`,
        ),
      ]);
    },
  },
  {
    fact: "17a",
    says: "Tall kneeling: the forward edge is the front of the knees and is near; sideways only the knees' width (equal limbs).",
    judge: () => {
      const of = outline(CASE_P, TALL, EQUAL);
      const { pose } = askHeld(CASE_P, TALL, EQUAL).prepared;
      const half =
        Math.abs(
          pointInRoom(CASE_P.body, pose.frames, "shank.weak", [0, 0, 0])[1] -
            pointInRoom(CASE_P.body, pose.frames, "shank.strong", [0, 0, 0])[1],
        ) / 2;
      const ahead = of.directions.find(({ towards }) => towards === "forward");
      const back = of.directions.find(({ towards }) => towards === "back");
      const sideways =
        of.directions
          .filter(({ towards }) => towards === "weak" || towards === "strong")
          .reduce((sum, { metres }) => sum + metres, 0) / 2;
      if (ahead === undefined || back === undefined) throw new Error("no direction");
      return all([
        judged(
          ahead.endedBy === "contact" && ahead.metres < back.metres / 2,
          `forward ${ahead.metres.toFixed(3)} m (${ahead.what}), back ${back.metres.toFixed(3)} m`,
          `forward is ended by ${ahead.what} at ${ahead.metres.toFixed(3)} m`,
        ),
        judged(
          Math.abs(sideways - half) < 0.06,
          `sideways ${sideways.toFixed(3)} m, half the knees' distance ${half.toFixed(3)} m`,
          `sideways reaches ${sideways.toFixed(3)} m against ${half.toFixed(3)} m between knee and middle`,
        ),
      ]);
    },
  },
  {
    fact: "17b",
    says: "Leaning back with straight hips is held by the knee extensors (equal limbs).",
    judge: () => {
      const rows = [0, 4, 8].map((centimetres) => ({
        centimetres,
        asked: askHeld(CASE_P, leaningBack(centimetres), EQUAL),
      }));
      const last = rows[rows.length - 1]?.asked.efforts[0];
      return all([
        rising(
          rows.map(({ centimetres, asked }) => ({
            name: `knee extensors, ${centimetres} cm back`,
            value: effortOf(asked, "knee", "extension", "weak"),
            asked,
          })),
        ),
        judged(
          last?.joint === "knee" && last.direction === "extension",
          `hardest at the end: ${last === undefined ? "none" : nameOf(last)}`,
          `hardest is ${last === undefined ? "none" : nameOf(last)}`,
        ),
      ]);
    },
  },
  {
    fact: "17c",
    says: "The clinical collapse is hips folding.",
    judge: () =>
      said([
        {
          where: "kneeling at the bench, fault",
          text: rungText("tall-kneel-bench-hold-and-shift/strong-forearm-hold"),
          pattern: /hips fold backward/,
        },
      ]),
  },
  {
    fact: "18a",
    says: "Half kneeling: rising is easier with the strong foot in front (the weight ahead over the front foot, before the knee leaves).",
    judge: () =>
      rising([
        byPeak("strong foot in front", askRung(CASE_P, "half-kneel-strong-forward-rise/weight-to-strong-foot")),
        byPeak("weak foot in front", askRung(CASE_P, "half-kneel-weak-forward-hold/weight-to-weak-foot")),
      ]),
  },
  {
    fact: "18b",
    says: "Holding is easier with the weak foot in front, the strong knee down.",
    judge: () =>
      rising([
        byPeak("weak foot in front", askRung(CASE_P, "half-kneel-weak-forward-hold/hold-at-bench")),
        byPeak("strong foot in front", askRung(CASE_P, "half-kneel-strong-forward-rise/hold-at-bench")),
      ]),
  },
  {
    fact: "19a",
    says: "Sit to stand: a higher seat is easier.",
    judge: () =>
      rising(
        ["high-seat-hands-on-knees", "middle-seat", "low-seat"].map((id) =>
          byPeak(id, askRung(CASE_P, `${SEAT}/${id}`)),
        ),
      ),
  },
  {
    fact: "19b",
    says: "Feet back within the ankle's range is easier.",
    judge: () => {
      const [back, ahead, far] = [0, 8, 16].map((degrees) => ask(CASE_P, feetAhead(degrees), CASE_P.draws));
      if (back === undefined || ahead === undefined || far === undefined || !back.held)
        throw new Error("feet back is held");
      const say = far.held ? far.peak.toFixed(3) : `cannot be held (${far.because})`;
      if (!ahead.held)
        return judged(
          true,
          `feet back ${back.peak.toFixed(3)}; 8 degrees ahead cannot be held (${ahead.because}); 16 degrees ahead ${say}`,
          "",
        );
      const order = rising([byPeak("feet back", back), byPeak("8 degrees ahead", ahead)]);
      return { ...order, figures: `${order.figures}; 16 degrees ahead ${say}` };
    },
  },
  {
    fact: "19c",
    says: "Hands to push make it easier.",
    judge: () => {
      const asTaught = rising([
        byPeak("strong hand pushes", askRung(CASE_P, `${SEAT}/high-seat-hand-pushes`)),
        byPeak("hands resting on the knees", askRung(CASE_P, `${SEAT}/high-seat-hands-on-knees`)),
      ]);
      const shared = ask(
        CASE_P,
        spareWeakArm({ ...findRung(`${SEAT}/high-seat-hand-pushes`).rung.pose, sharing: "standing" }),
        CASE_P.draws,
      );
      return {
        ...asTaught,
        figures: `${asTaught.figures}; the same push with the usual sharing between the feet ${shared.held ? shared.peak.toFixed(3) : `is not held (${shared.because})`}`,
      };
    },
  },
  {
    fact: "19d",
    says: "The strong foot ahead loads the weak leg and is a harder rung, with the knee guarded.",
    judge: () => {
      const [level, ahead] = ["low-seat", "strong-foot-ahead"].map((id) => askRung(CASE_P, `${SEAT}/${id}`));
      if (level === undefined || ahead === undefined) throw new Error("two rungs");
      return all([
        rising([byPeak("feet level", level), byPeak("strong foot ahead", ahead)]),
        rising([
          { name: "share on the weak foot, level", value: shareOn(level, /^foot\./, "weak"), asked: level },
          { name: "ahead", value: shareOn(ahead, /^foot\./, "weak"), asked: ahead },
        ]),
        said([
          {
            where: "strong foot ahead",
            text: rungText(`${SEAT}/strong-foot-ahead`),
            pattern: /knee: it is guarded here/,
          },
        ]),
      ]);
    },
  },
  {
    fact: "24a",
    says: "Equal limbs: supine, side-lying, sitting, prone on elbows, hands and knees, tall kneeling, half kneeling, standing on one leg.",
    judge: () => {
      const rows: [string, PoseSpecification][] = [
        ["supine", position("supine").pose],
        ["side-lying", position("side-lying-on-strong-side").pose],
        ["sitting", position("long-sitting").pose],
        ["prone on elbows", position("prone-on-elbows").pose],
        ["hands and knees", position("hands-and-knees").pose],
        ["tall kneeling", position("tall-kneeling").pose],
        ["half kneeling", findRung("half-kneel-weak-forward-hold/hand-off").rung.pose],
        ["standing on one leg", findRung("bars-strong-step/strong-foot-lifts").rung.pose],
      ];
      return rising(rows.map(([name, pose]) => byPeak(name, askHeld(CASE_P, pose, EQUAL))));
    },
  },
  {
    fact: "24b",
    says: "Case P: tall kneeling with the strong hand on a bench and supported standing come before hands and knees.",
    judge: () => {
      const onHands = byPeak("hands and knees", askHeld(CASE_P, HANDS_AND_KNEES, CASE_P.draws));
      return all([
        rising([
          byPeak(
            "tall kneeling, strong hand on the bench",
            askRung(CASE_P, "tall-kneel-bench-hold-and-shift/strong-hand-hold"),
          ),
          onHands,
        ]),
        rising([
          byPeak(
            "standing in the bars",
            askHeld(CASE_P, spareWeakArm(position("standing-in-bars").pose), CASE_P.draws),
          ),
          onHands,
        ]),
      ]);
    },
  },
];
