import { gravityForce } from "./loads.ts";
import { strengthOf } from "../../src/plan/person/prior.ts";
import { groupOf, type LimbGroup } from "../../src/plan/person/slots.ts";
import type { PersonToday } from "../../src/app/engine/person-today.ts";
import { TRANSITIONS } from "../../src/practice/catalogue.ts";
import { judgeDemands, keepsOut } from "../../src/practice/precautions/judge-demands.ts";
import { all, byPeak, type Fact, judged, rising, said } from "./fact.ts";
import {
  askHeld,
  askRung,
  CASE_A,
  CASE_P,
  effortOf,
  EQUAL,
  findRung,
  readExample,
  shareOn,
  topThree,
  workOut,
} from "./people.ts";
import { handsOf, rungText, setUpOf, stepThatSays, transitionText } from "./texts.ts";

/** Mean believed strength of a limb, as a share of normal. */
function believed(person: PersonToday, limb: LimbGroup): number {
  const own = [...person.model.belief.mean].filter((_, i) => groupOf(i) === limb).map(strengthOf);
  return own.reduce((sum, each) => sum + each, 0) / own.length;
}
const BRIDGES = [
  "full-lift",
  "weak-foot-light",
  "weak-foot-up",
  "weak-over-strong",
  "strong-heel-light",
  "strong-foot-up",
  "strong-over-weak",
];
const weakHip = (rung: string) => {
  const asked = askRung(CASE_P, `bridge/${rung}`);
  return { name: rung, value: effortOf(asked, "hip", "extension", "weak"), asked };
};

export const LYING: readonly Fact[] = [
  {
    fact: "1a",
    says: "After a middle-cerebral stroke the weak leg is commonly stronger than the weak arm: believed before any finding.",
    judge: () => {
      const { person, weakSide, daysSinceOnset, cause } = readExample("case-p");
      const bare = workOut({ person, weakSide, daysSinceOnset, ...(cause === undefined ? {} : { cause }) });
      const [leg, arm] = [believed(bare, "weakLeg"), believed(bare, "weakArm")];
      return judged(
        leg > arm,
        `weak leg ${leg.toFixed(2)} of normal > weak arm ${arm.toFixed(2)}`,
        "the first guess has the arm the stronger",
      );
    },
  },
  {
    fact: "1b",
    says: "Others differ: the findings decide. The arm of Case A is believed stronger than the arm of Case P.",
    judge: () => {
      const [a, p] = [believed(CASE_A, "weakArm"), believed(CASE_P, "weakArm")];
      return judged(
        a > 1.5 * p,
        `weak arm of Case A ${a.toFixed(2)} of normal > of Case P ${p.toFixed(2)}`,
        "the grades of the arm hardly move what is believed of it",
      );
    },
  },
  {
    fact: "2a",
    says: "In a bridge on both feet the weak foot carries less than the strong one.",
    judge: () => {
      const asked = askRung(CASE_P, "bridge/full-lift");
      const [weak, strong] = [shareOn(asked, /^foot\./, "weak"), shareOn(asked, /^foot\./, "strong")];
      return judged(
        weak < strong,
        `weak foot ${weak.toFixed(3)} of body weight < strong foot ${strong.toFixed(3)}`,
        `the weak foot carries as much: ${topThree(asked)}`,
      );
    },
  },
  {
    fact: "2b",
    says: "The cue is a hand on the front of the weak hip bone to push up into; help comes from under the buttock or through the end of the thigh into a blocked foot; the weak side lags.",
    judge: () =>
      said([
        { where: "full lift, hands", text: handsOf("bridge/full-lift").join(", "), pattern: /hipBoneFront\.weak cues/ },
        { where: "full lift, words", text: findRung("bridge/full-lift").rung.words, pattern: /push up into/i },
        {
          where: "half lift, hands",
          text: handsOf("bridge/half-lift").join(", "),
          pattern: /kneeEnd\.weak lifts, underButtock\.weak lifts/,
        },
        { where: "half lift, foot", text: rungText("bridge/half-lift"), pattern: /blocks the weak foot/ },
        { where: "half lift, fault", text: rungText("bridge/half-lift"), pattern: /weak hip comes late/ },
        {
          where: "full lift, where help is counted",
          text: findRung("bridge/full-lift").rung.helper.mayHelpAt.join(", "),
          pattern: /underButtock\.weak, kneeEnd\.weak/,
        },
      ]),
  },
  {
    fact: "3a",
    says: "Load on the weak hip's extensors: weak foot up, both feet, strong heel light, strong foot up, strong leg crossed over.",
    judge: () =>
      rising(["weak-foot-up", "full-lift", "strong-heel-light", "strong-foot-up", "strong-over-weak"].map(weakHip)),
  },
  {
    fact: "3b",
    says: "Difficulty as a whole: both feet, weak foot light, weak foot up, weak leg crossed, strong heel light, strong foot up, strong leg crossed.",
    judge: () => rising(BRIDGES.map((rung) => byPeak(rung, askRung(CASE_P, `bridge/${rung}`)))),
  },
  {
    fact: "3c",
    says: "With the strong foot up the pelvis drops on the strong side: hands on both hip bones.",
    judge: () =>
      said([
        {
          where: "strong foot up, hands",
          text: handsOf("bridge/strong-foot-up").join(", "),
          pattern: /hipBoneFront\.strong \w+, hipBoneFront\.weak/,
        },
        {
          where: "strong foot up, fault",
          text: rungText("bridge/strong-foot-up"),
          pattern: /tips down on the strong, unsupported side/,
        },
      ]),
  },
  {
    fact: "3d",
    says: "With the knee bent, hip flexors of grade 3 manage the weak foot in a bridge.",
    judge: () => {
      const asked = askRung(CASE_P, "bridge/weak-foot-up");
      const hip = asked.efforts.find(
        ({ joint, direction, side }) => joint === "hip" && direction === "flexion" && side === "weak",
      );
      if (hip === undefined) throw new Error("the weak hip does not flex");
      return judged(
        hip.effort <= 1,
        `weak hip ${hip.effort.toFixed(2)} of what it has, at most 1; its flexors alone ${hip.alone.toFixed(2)} of grade 3`,
        `the weak hip as a whole is asked ${hip.effort.toFixed(2)}: ${topThree(asked)}`,
      );
    },
  },
  {
    fact: "4a",
    says: "Legs cross before the hips lift.",
    judge: () =>
      said([
        { where: "weak over strong", text: rungText("bridge/weak-over-strong"), pattern: /before the lift/ },
        {
          where: "weak over strong, fault",
          text: rungText("bridge/weak-over-strong"),
          pattern: /cross while the hips are already up/,
        },
        { where: "strong over weak", text: rungText("bridge/strong-over-weak"), pattern: /before the lift/ },
      ]),
  },
  {
    fact: "4b",
    says: "Not after a hip replacement.",
    judge: () => {
      const rows = (["thr_posterior", "thr_anterior"] as const).flatMap((code) =>
        ["weak-over-strong", "strong-over-weak", "hand-on-belly"].map((id) => ({
          code,
          id,
          out: keepsOut(judgeDemands([{ code }], findRung(`bridge/${id}`).rung.demands, "hook-lying")),
        })),
      );
      const open = rows.filter(({ out }) => !out);
      const uncrossed = keepsOut(
        judgeDemands([{ code: "thr_posterior" }], findRung("bridge/full-lift").rung.demands, "hook-lying"),
      );
      return judged(
        open.length === 0 && !uncrossed,
        `${rows.length - open.length} of ${rows.length} crossed bridges kept out; the uncrossed one ${uncrossed ? "too" : "stays in"}`,
        open
          .map(
            ({ code, id }) =>
              `${id} stays open with ${code}: the rung's own demand that legs cross the midline does not reach it`,
          )
          .join("; "),
      );
    },
  },
  {
    fact: "5a",
    says: "More load is more demand; light guiding resistance is a cue.",
    judge: () => {
      const { pose } = findRung("bridge/full-lift").rung;
      const free = askHeld(CASE_P, pose, EQUAL);
      const guided = askHeld(CASE_P, pose, EQUAL, { outside: [gravityForce(CASE_P, free.prepared, 5)] });
      const loaded = askHeld(CASE_P, pose, EQUAL, { outside: [gravityForce(CASE_P, free.prepared, 100)] });
      const order = rising([
        byPeak("unloaded", free),
        byPeak("5 N on the pelvis", guided),
        byPeak("100 N on the pelvis", loaded),
      ]);
      return all([
        order,
        judged(
          guided.peak - free.peak < 0.05,
          `guiding adds ${(guided.peak - free.peak).toFixed(3)}, less than a twentieth`,
          `a light hand adds ${(guided.peak - free.peak).toFixed(3)}: ${topThree(guided)}`,
        ),
      ]);
    },
  },
  {
    fact: "5b",
    says: "Neither with rising tone, pain, breath-holding or unsettled blood pressure.",
    judge: () => {
      const holdsBreath = findRung("bridge/strong-foot-up").rung;
      const verdicts = judgeDemands([{ code: "uncontrolled_htn_isometric" }], holdsBreath.demands, "hook-lying");
      return all([
        judged(
          verdicts.some(({ verdict }) => verdict !== "watch"),
          `unsettled pressure on strong foot up: ${verdicts.map(({ verdict, demand }) => `${verdict} ${demand}`).join(", ")}`,
          "no row of the precaution reaches a rung that makes one hold the breath",
        ),
        said([
          {
            where: "half lift, tone",
            text: rungText("bridge/half-lift"),
            pattern: /arm folds onto the chest on effort/,
          },
          { where: "strong foot up, breath", text: rungText("bridge/strong-foot-up"), pattern: /talk stops/ },
          { where: "bridge, stop signs", text: holdsBreath.stopSigns.join(" "), pattern: /New pain/ },
        ]),
      ]);
    },
  },
  {
    fact: "6a",
    says: "Rolling: the strong hand holds the weak forearm just above the wrist, fingers not laced.",
    judge: () =>
      said([
        {
          where: "roll to the strong side, set-up",
          text: setUpOf("roll-to-strong-side"),
          pattern: /strong hand holds the weak forearm just above the wrist/,
        },
        {
          where: "way onto the strong side",
          text: transitionText("roll-onto-strong-side"),
          pattern: /just above the wrist; the fingers are not laced/,
        },
      ]),
  },
  {
    fact: "6b",
    says: "Onto the weak side the shoulder blade comes forward first and is never lain on.",
    judge: () => {
      const blade = stepThatSays("roll-onto-weak-side", /blade is drawn forward/);
      const turn = stepThatSays("roll-onto-weak-side", /strong arm crosses/);
      return all([
        judged(
          blade >= 0 && blade < turn,
          `blade in step ${blade + 1}, the turn in step ${turn + 1}`,
          "the turn comes before the blade",
        ),
        said([
          {
            where: "roll to the weak side, set-up",
            text: setUpOf("roll-to-weak-side"),
            pattern: /before anything else moves; it is never lain on/,
          },
        ]),
      ]);
    },
  },
  {
    fact: "6c",
    says: "Going to the strong side the weak leg is brought over; one method for each edge.",
    judge: () => {
      const edges = TRANSITIONS.filter(({ kind }) => kind === undefined).map(({ from, to }) => `${from} to ${to}`);
      const twice = edges.filter((edge, i) => edges.indexOf(edge) !== i);
      return all([
        said([
          {
            where: "a touch at the blade",
            text: rungText("roll-to-strong-side/blade-touched"),
            pattern: /weak knee crosses/,
          },
        ]),
        judged(
          twice.length === 0,
          `${edges.length} ways, ${new Set(edges).size} edges`,
          `two ways for ${twice.join(", ")}`,
        ),
      ]);
    },
  },
];
