import { degreesOf } from "../../src/quantity/angles.ts";
import { pointInRoom } from "../../src/mechanics/pose/kinematics.ts";
import type { BalanceOutline, Towards } from "../../src/mechanics/reach/outline.ts";
import { poseOf } from "../../src/plan/assess/posed.ts";
import { weakArmPresses } from "../../src/plan/assess/prepared.ts";
import { ACTIVITIES, TRANSITIONS } from "../../src/practice/catalogue.ts";
import { PRONE_ON_ELBOWS } from "../../src/practice/positions/prone-poses.data.ts";
import { all, byPeak, type Fact, hardest, judged, rising, said } from "./fact.ts";
import {
  type Asked,
  askHeld,
  askRung,
  CASE_P,
  EQUAL,
  findRung,
  outline,
  sayOutline,
  shareOn,
  topThree,
} from "./people.ts";
import { judgeOverWeakHip, judgeShortHamstrings, judgeTrailing } from "./sitting-moves.ts";
import { handsOf, position, rungText, setUpOf, stepThatSays } from "./texts.ts";

const elbowsAhead = (degrees: number) => ({
  ...PRONE_ON_ELBOWS,
  bothDeg: { ...PRONE_ON_ELBOWS.bothDeg, shoulderFlexion: 55 + degrees, elbowFlexion: 85 - degrees / 2 },
});
const shoulders = (asked: Asked): number =>
  Math.max(0, ...asked.efforts.filter(({ joint }) => joint.startsWith("shoulder")).map(({ effort }) => effort));
const ofWeakShoulder = (asked: Asked): number =>
  Math.max(
    0,
    ...asked.efforts
      .filter(({ joint, side }) => joint.startsWith("shoulder") && side === "weak")
      .map(({ effort }) => effort),
  );
const metres = (of: BalanceOutline, towards: Towards): number =>
  of.directions.find((each) => each.towards === towards)?.metres ?? 0;
const ARM = /^(shoulder|elbow|wrist)/;
const LIFT = "prone-on-elbows-lift-and-reach";

export const PRONE_AND_SITTING: readonly Fact[] = [
  {
    fact: "7a",
    says: "Prone on elbows: upper arms upright under the shoulders, elbows bent about 90 degrees.",
    judge: () => {
      const { body } = CASE_P;
      const { pose } = askRung(CASE_P, "prone-on-elbows-hold-and-shift/flat-hold").prepared;
      const rows = (["weak", "strong"] as const).map((side) => {
        const shoulder = pointInRoom(body, pose.frames, `upperArm.${side}`, [0, 0, 0]);
        const elbow = pointInRoom(body, pose.frames, `forearm.${side}`, [0, 0, 0]);
        const tilt = degreesOf(
          Math.atan2(Math.hypot(elbow[0] - shoulder[0], elbow[1] - shoulder[1]), shoulder[2] - elbow[2]),
        );
        return { side, tilt, bent: degreesOf(pose.configuration.angles[body.angleIndex[`elbowFlexion.${side}`]] ?? 0) };
      });
      const figures = rows
        .map(
          ({ side, tilt, bent }) =>
            `${side} upper arm ${tilt.toFixed(0)} degrees off upright, elbow ${bent.toFixed(0)}`,
        )
        .join("; ");
      return judged(
        rows.every(({ tilt, bent }) => tilt < 15 && Math.abs(bent - 90) <= 15),
        figures,
        `the pose as closed on this body stands off: ${figures}`,
      );
    },
  },
  {
    fact: "7b",
    says: "Elbows slid forward ask more of the shoulders (equal limbs).",
    judge: () =>
      rising(
        [0, 10, 20].map((degrees) => {
          const asked = askHeld(CASE_P, elbowsAhead(degrees), EQUAL);
          return { name: `elbows ${degrees} degrees ahead`, value: shoulders(asked), asked };
        }),
      ),
  },
  {
    fact: "7c",
    says: "The weak shoulder is supported front and back; a leg set beside it frees the hands; the substitute is forearms on a table.",
    judge: () =>
      said([
        {
          where: "flat hold, hands",
          text: handsOf("prone-on-elbows-hold-and-shift/flat-hold").join(", "),
          pattern: /shoulderFront\.weak \w+, shoulderBack\.weak/,
        },
        {
          where: "position, helper",
          text: position("prone-on-elbows").helper.place,
          pattern: /thigh along the upper arm so that the hands get free/,
        },
        {
          where: "ladder, substitutes",
          text: ACTIVITIES.filter(({ position: at }) => at === "prone-on-elbows")
            .flatMap(({ rungs }) => rungs.flatMap(({ substitutes }) => substitutes.map(({ activity }) => activity)))
            .join(", "),
          pattern: /table-forearms-sitting-lean/,
        },
      ]),
  },
  {
    fact: "8a",
    says: "Prone on elbows, unloading the weak arm trains the strong arm to bear.",
    judge: () => {
      const rows = ["prone-on-elbows-hold-and-shift/flat-hold", `${LIFT}/weak-forearm-lifted`].map((name) => {
        const asked = askRung(CASE_P, name);
        return {
          name: `strong arm's share in ${name.split("/")[1]}`,
          value: shareOn(asked, /^(forearm|elbow|hand)\./, "strong"),
          asked,
        };
      });
      return rising(rows);
    },
  },
  {
    fact: "8b",
    says: "At grades 1 to 2 the weak arm is lifted for the person, low, under upper arm and forearm.",
    judge: () =>
      said([
        {
          where: "weak forearm lifted, hands",
          text: handsOf(`${LIFT}/weak-forearm-lifted`).join(", "),
          pattern: /upperArmUnder\.weak lifts, forearmUnder\.weak lifts/,
        },
        {
          where: "weak forearm lifted, low",
          text: rungText(`${LIFT}/weak-forearm-lifted`),
          pattern: /a few centimetres/,
        },
      ]),
  },
  {
    fact: "8c",
    says: "Lifting the strong arm loads the weak shoulder and is harder; only with the support in place first.",
    judge: () => {
      // The lifted weak arm lies in the helper's hands and sets no verdict; under the lifted strong arm it carries.
      const lifted = askRung(CASE_P, `${LIFT}/weak-forearm-lifted`);
      const ahead = askHeld(CASE_P, findRung(`${LIFT}/strong-arm-ahead`).rung.pose, CASE_P.draws);
      return all([
        rising([byPeak("weak forearm lifted", lifted), byPeak("strong arm ahead", ahead)]),
        judged(
          ofWeakShoulder(ahead) > 1,
          `weak shoulder ${ofWeakShoulder(ahead).toFixed(2)} with the strong arm ahead, over 1`,
          `the weak shoulder carries little: ${topThree(ahead)}`,
        ),
        said([
          {
            where: "strong arm ahead, place",
            text: rungText(`${LIFT}/strong-arm-ahead`),
            pattern: /support is there before the strong arm goes/,
          },
        ]),
        judged(
          ["strong-arm-ahead", "strong-arm-out", "strong-arm-across"].every(
            (id) => findRung(`${LIFT}/${id}`).rung.helper.always === true,
          ),
          "support is part of all three rungs",
          "a rung that lifts the strong arm is written without its support",
        ),
      ]);
    },
  },
  {
    fact: "9a",
    says: "Activities in which both arms push are out for a weak arm unless the helper takes its share.",
    judge: () => {
      const pushing = CASE_P.rungs.filter(({ rung }) => rung.limbs.arm !== "spare" && weakArmPresses(rung.pose));
      const unhelped = pushing
        .filter(({ eligible, help }) => eligible && (help === null || help.newtons === 0))
        .map(({ activity, rung }) => ({
          name: `${activity.id}/${rung.id}`,
          asked: askRung(CASE_P, `${activity.id}/${rung.id}`),
        }))
        .map((each) => ({
          ...each,
          arm: Math.max(
            0,
            ...each.asked.efforts
              .filter(({ joint, side }) => side === "weak" && ARM.test(joint))
              .map(({ effort }) => effort),
          ),
        }));
      const tooMuch = unhelped.filter(({ arm }) => arm > 1);
      return judged(
        tooMuch.length === 0,
        `${pushing.length} rungs in which the weak arm pushes: ${pushing.filter(({ eligible }) => !eligible).length} out for Case P; open without help ${unhelped.map(({ name, arm }) => `${name} (weak arm at most ${arm.toFixed(2)})`).join(", ") || "none"}`,
        tooMuch
          .map(({ name, asked }) => `${name} stays open; hardest is ${hardest(asked)}: ${topThree(asked)}`)
          .join("; "),
      );
    },
  },
  {
    fact: "9b",
    says: "Each has a substitute for the same purpose.",
    judge: () => {
      const pushing = ACTIVITIES.flatMap((activity) => activity.rungs.map((rung) => ({ activity, rung }))).filter(
        ({ rung }) => rung.limbs.arm !== "spare" && weakArmPresses(rung.pose),
      );
      const without = pushing.filter(
        ({ activity, rung }) =>
          !rung.substitutes.some(
            (each) => findRung(`${each.activity}/${each.rung}`).activity.position !== activity.position,
          ),
      );
      return judged(
        without.length === 0,
        `${pushing.length} rungs, ${pushing.length - without.length} with a substitute in another position`,
        `none for ${without.map(({ activity, rung }) => `${activity.id}/${rung.id}`).join(", ")}`,
      );
    },
  },
  {
    fact: "10",
    says: "Side-lying to sitting is first taught over the strong side: elbow, then hand, then walk the hand in; the weak arm across the body.",
    judge: () => {
      const ladder =
        ACTIVITIES.find(({ id }) => id === "side-lying-to-sit-over-strong")?.rungs.map(({ id }) => id) ?? [];
      return all([
        judged(
          ladder.indexOf("forearm-prop") >= 0 && ladder.indexOf("forearm-prop") < ladder.indexOf("hand-prop"),
          `rungs in order: ${ladder.join(", ")}`,
          "the hand comes before the elbow",
        ),
        said([
          {
            where: "hand prop",
            text: rungText("side-lying-to-sit-over-strong/hand-prop"),
            pattern: /the hand walks in/,
          },
          {
            where: "set-up",
            text: setUpOf("side-lying-to-sit-over-strong"),
            pattern: /Lying on the strong side.*the weak arm across the body/,
          },
        ]),
      ]);
    },
  },
  {
    fact: "11a",
    says: "Long sitting: the usual fall is back and to the weak side.",
    judge: () => {
      const of = outline(CASE_P, poseOf(findRung("long-sitting-balance-and-reach/hands-on-thighs").rung), CASE_P.draws);
      const least = of.least.towards;
      const shorter = metres(of, "back") < metres(of, "forward") && metres(of, "backWeak") < metres(of, "backStrong");
      return judged(
        least === "backWeak" || (shorter && least !== "forward" && least !== "strong"),
        sayOutline(of),
        `held still the weight has least to go ${least}, ended by ${of.least.what}; back ${metres(of, "back").toFixed(3)} m, forward ${metres(of, "forward").toFixed(3)} m`,
      );
    },
  },
  {
    fact: "11b",
    says: "The helper half-kneels behind and to the weak side, the near thigh as a backrest.",
    judge: () =>
      all([
        judged(
          position("long-sitting").helper.pose === "halfKneeling",
          `helper: ${position("long-sitting").helper.pose}`,
          "another stance stands in the data",
        ),
        said([
          {
            where: "long sitting, helper",
            text: position("long-sitting").helper.place,
            pattern: /behind and to the weak side, the near thigh as a backrest/,
          },
        ]),
      ]),
  },
  {
    fact: "11c",
    says: "Half kneeling is steadier for the helper than high kneeling (equal limbs).",
    judge: () => {
      const half = outline(CASE_P, findRung("half-kneel-weak-forward-hold/hand-off").rung.pose, EQUAL);
      const high = outline(CASE_P, position("tall-kneeling").pose, EQUAL);
      return judged(
        half.least.metres > high.least.metres,
        `half kneeling ${half.least.metres.toFixed(3)} m ${half.least.towards} > high kneeling ${high.least.metres.toFixed(3)} m ${high.least.towards}`,
        `half kneeling ends sooner: ${sayOutline(half)}`,
      );
    },
  },
  {
    fact: "11d",
    says: "Short hamstrings send anyone back.",
    judge: () =>
      all([
        judgeShortHamstrings(),
        said([
          {
            where: "long sitting, look first",
            text: findRung("long-sitting-balance-and-reach/wedge-and-prop").activity.lookFirst,
            pattern: /short hamstrings pull it back, bend the knees over a roll or start on the wedge/,
          },
        ]),
      ]),
  },
  {
    fact: "12a",
    says: "Scooting in the walking order, device hand, weak, strong; backward first.",
    judge: () => {
      const ladder = ACTIVITIES.find(({ id }) => id === "long-sitting-scoot")?.rungs.map(({ id }) => id) ?? [];
      return all([
        said([
          { where: "weak hip back", text: rungText("long-sitting-scoot/weak-hip-back"), pattern: /hand, weak, strong/ },
          { where: "set-up", text: setUpOf("long-sitting-scoot"), pattern: /Backward is learned before forward/ },
        ]),
        judged(
          ladder.indexOf("weak-hip-back") < ladder.indexOf("weak-hip-ahead"),
          `rungs in order: ${ladder.join(", ")}`,
          "forward comes first in the ladder",
        ),
      ]);
    },
  },
  {
    fact: "12b",
    says: "Trailing the legs is easier than pushing them ahead.",
    judge: judgeTrailing,
  },
  {
    fact: "12c",
    says: "The trunk leans away from the hip that moves.",
    judge: () => {
      const { body } = CASE_P;
      // The computed body is weak on its own right: y grows toward the strong side.
      const lean = (name: string): number => {
        const { pose } = askRung(CASE_P, `long-sitting-scoot/${name}`).prepared;
        return (
          pointInRoom(body, pose.frames, "thorax", [0, 0, 0.3])[1] -
          pointInRoom(body, pose.frames, "pelvis", [0, 0, 0])[1]
        );
      };
      const [strongMoves, weakMoves] = [lean("strong-hip-back"), lean("weak-hip-back")];
      return judged(
        strongMoves < 0 && weakMoves > 0,
        `strong hip moves: trunk ${(-strongMoves * 100).toFixed(1)} cm toward the weak side; weak hip moves: ${(weakMoves * 100).toFixed(1)} cm toward the strong side`,
        "the pose leans the trunk over the hip that moves",
      );
    },
  },
  {
    fact: "13a",
    says: "To hands and knees over the strong hip, the strong hand as pivot, loads the weak arm late; Case P goes that way or with the helper's thigh under the weak shoulder first.",
    judge: () => {
      const ways = TRANSITIONS.filter(
        ({ to, from }) => to === "hands-and-knees" && /(lying|long-sitting|strong-hip)/.test(from),
      );
      return all(
        ways.map(({ id }) => {
          const [pivot, placed, thigh] = [
            stepThatSays(id, /strong hand( is the|\s+as) pivot/i),
            stepThatSays(id, /weak hand (is )?placed/i),
            stepThatSays(id, /thigh (ready|up)/),
          ];
          return all([
            judged(
              pivot >= 0 && placed > pivot,
              `${id}: pivot in step ${pivot + 1}, the weak hand placed in step ${placed + 1}`,
              `${id} loads the weak hand before the pivot`,
            ),
            judged(
              thigh >= 0 && thigh < pivot,
              `thigh ready in step ${thigh + 1}`,
              `${id}: no thigh under the weak shoulder before the turn`,
            ),
          ]);
        }),
      );
    },
  },
  {
    fact: "13b",
    says: "Over the weak hip, swinging the strong arm, it is loaded early.",
    judge: judgeOverWeakHip,
  },
];
