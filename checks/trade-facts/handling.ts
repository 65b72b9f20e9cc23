import { mirrorCase } from "../../test/helpers/mirror-case.ts";
import { readFindings } from "../../src/app/engine/read-findings.ts";
import { scaleCapacities } from "../../src/mechanics/body/strength-capacities.ts";
import { solveHabitual } from "../../src/mechanics/equilibrium/habitual.ts";
import { poseOf } from "../../src/plan/assess/posed.ts";
import type { Findings } from "../../src/plan/findings.ts";
import { chooseGuard } from "../../src/plan/guard.ts";
import { ACTIVITIES, TRANSITIONS } from "../../src/practice/catalogue.ts";
import { HANDLING_RULES } from "../../src/practice/handling/always.data.ts";
import { all, type Fact, judged, said } from "./fact.ts";
import { CASE_P, findRung, readExample, workOut } from "./people.ts";
import { handsOf, handsText, position, rungText, setUpOf, transition } from "./texts.ts";

const TO_MAT = ["wheelchair-to-mat-over-strong-side", "wheelchair-to-mat-over-weak-side"];

/** Largest difference of any effort between the two bodies that mirror one another, over every rung of the catalogue. */
function compareMirrored(): { readonly rungs: number; readonly efforts: number; readonly most: number } {
  const left = workOut(mirrorCase(readExample("case-p")));
  const [strengths] = CASE_P.draws;
  let [rungs, efforts, most] = [0, 0, 0];
  for (const { rungs: ladder } of ACTIVITIES) {
    for (const rung of ladder) {
      const [own, mirrored] = [CASE_P.keeper.prepare(poseOf(rung)), left.drawn.prepare(poseOf(rung))];
      if (!own.possible || !mirrored.possible || strengths === undefined) {
        if (own.possible !== mirrored.possible) most = Number.POSITIVE_INFINITY;
        continue;
      }
      const [a, b] = [
        solveHabitual(own.statics, scaleCapacities(own.normal, strengths)),
        solveHabitual(mirrored.statics, scaleCapacities(mirrored.normal, strengths)),
      ];
      if (!a.balanced || !b.balanced) {
        if (a.balanced !== b.balanced) most = Number.POSITIVE_INFINITY;
        continue;
      }
      rungs++;
      a.efforts.forEach((effort, i) => {
        efforts++;
        most = Math.max(
          most,
          Math.abs(effort.effort - (b.efforts[i]?.effort ?? Number.POSITIVE_INFINITY)) / Math.max(1, effort.effort),
        );
      });
    }
  }
  return { rungs, efforts, most };
}

const withSigns = (signs: Partial<Findings["signs"]>): Findings => ({
  ...CASE_P.findings,
  signs: { pushing: null, neglect: null, impulsive: null, faints: null, fallSeen: null, ...signs },
});

export const HANDLING: readonly Fact[] = [
  {
    fact: "20",
    says: "Transfers are first taught to the strong side, then both; pushing and neglect change it.",
    judge: () => {
      const order = TRANSITIONS.filter(({ id }) => TO_MAT.includes(id)).map(({ id }) => id);
      const weak = transition("wheelchair-to-mat-over-weak-side");
      return all([
        judged(
          order[0] === TO_MAT[0] && order[1] === TO_MAT[1],
          `in order: ${order.join(", ")}`,
          "the weak side stands first",
        ),
        said([
          {
            where: "over the weak side, prerequisites",
            text: weak.prerequisites.join(" "),
            pattern: /no pushing toward the weak side/,
          },
          {
            where: "over the weak side, second helper",
            text: weak.secondHelper ?? "",
            pattern: /neglect of that side or with pushing/,
          },
        ]),
      ]);
    },
  },
  {
    fact: "21a",
    says: "One device: device, weak leg, strong leg; the device in the strong hand.",
    judge: () =>
      said([
        {
          where: "walking, name",
          text: findRung("bars-weak-step-and-walk/walk-hand-weak-strong").rung.name,
          pattern: /hand, weak, strong/,
        },
        {
          where: "walking, who moves first",
          text: rungText("bars-weak-step-and-walk/walk-hand-weak-strong"),
          pattern: /strong hand slides ahead, then the weak foot/,
        },
        { where: "set-up", text: setUpOf("bars-weak-step-and-walk"), pattern: /only the strong hand on the bar/ },
      ]),
  },
  {
    fact: "22",
    says: "Guard in standing behind and to the weak side, hand on the belt palm up, the other flat on shoulder front or pelvis, never under the armpit; in the bars inside, front or weak side, often seated to block the knee; never pull on the weak arm.",
    judge: () => {
      // A knee can be blocked where the weak foot stands; on the strong leg alone there is none to block.
      const inBars = ACTIVITIES.filter(({ position: at }) => at === "standing-in-bars").flatMap(({ rungs }) =>
        rungs.filter(({ pose }) => pose.contacts.some(({ patch }) => patch === "foot.weak")),
      );
      const wrong = inBars.filter(({ helper }) => helper.at.beside !== "front" && helper.at.beside !== "weak");
      const seated = inBars.filter(({ helper }) => helper.pose === "sitting").length;
      const grips = ACTIVITIES.flatMap(({ rungs }) =>
        rungs.map((rung) => ({ id: rung.id, text: handsText(rung) })),
      ).filter(({ text }) =>
        /\bpulls? (on|at|by) the (weak )?(arm|hand)|\bin the armpit|under the armpit/i.test(
          text.replace(/\b(never|no|nothing goes)\b[^.;,]*/gi, ""),
        ),
      );
      const rules = HANDLING_RULES.map(({ text }) => text).join(" ");
      return all([
        said([
          {
            where: "standing at the table, hands",
            text: handsOf("table-forearms-standing-lean/stand-and-lean").join(", "),
            pattern: /beltBack \w+, shoulderFront\.weak/,
          },
          {
            where: "standing at the table, place",
            text: rungText("table-forearms-standing-lean/stand-and-lean"),
            pattern: /weak side and a little behind/,
          },
          {
            where: "walking, belt",
            text: rungText("bars-weak-step-and-walk/weak-foot-lifts"),
            pattern: /belt at the back, palm up/,
          },
          {
            where: "walking, place",
            text: position("walking-in-bars").helper.place,
            pattern: /behind and at the weak side/,
          },
          { where: "rules", text: rules, pattern: /Never pull on the weak arm/ },
          { where: "rules", text: rules, pattern: /No hand, knee or thigh in the armpit/ },
        ]),
        judged(
          wrong.length === 0 && 2 * seated > inBars.length,
          `${inBars.length} rungs standing on the weak foot in the bars, ${inBars.length - wrong.length} with the helper in front or at the weak side, ${seated} of them seated`,
          `otherwise in ${wrong.map(({ id }) => id).join(", ")}`,
        ),
        judged(
          grips.length === 0,
          "no hand of any rung pulls on the arm or goes under the armpit",
          `${grips.map(({ id }) => id).join(", ")} say otherwise`,
        ),
      ]);
    },
  },
  {
    fact: "25a",
    says: "The geometry mirrors exactly.",
    judge: () => {
      const { rungs, efforts, most } = compareMirrored();
      return judged(
        most < 1e-6 && rungs > 100,
        `${efforts} efforts of ${rungs} rungs, largest difference ${most.toExponential(1)}`,
        `the mirrored body differs by ${most}`,
      );
    },
  },
  {
    fact: "25b",
    says: "The person does not mirror by itself: aphasia, neglect, pushing, dominance, lines and rails do not follow from a side.",
    judge: () => {
      const rows = ["aphasia", "neglect", "case-p"].map((name) => {
        const file = readExample(name);
        const own = readFindings(file).findings;
        const turned = readFindings({ ...file, weakSide: file.weakSide === "left" ? "right" : "left" }).findings;
        const mirrored = readFindings(mirrorCase(file)).findings;
        return {
          name,
          same: JSON.stringify(own) === JSON.stringify(mirrored),
          kept:
            JSON.stringify([own.communication, own.signs, own.precautions]) ===
            JSON.stringify([turned.communication, turned.signs, turned.precautions]),
        };
      });
      return judged(
        rows.every(({ same, kept }) => same && kept),
        rows
          .map(
            ({ name, same, kept }) =>
              `${name}: signs and language ${kept ? "stay" : "change"} with the side alone, findings ${same ? "the same" : "changed"} in the whole mirrored file`,
          )
          .join("; "),
        "something is inferred from a side being the one or the other",
      );
    },
  },
  {
    fact: "26",
    says: "Guard side by authority: special sign, fall seen, taught rule, computed outline; where the outline disagrees the helper stays on the weak side and says so.",
    judge: () => {
      const at = (signs: Partial<Findings["signs"]>) =>
        chooseGuard(withSigns(signs), "standing-in-bars", "standing", "strong");
      const rows = [
        {
          what: "pushing, fall seen to the strong side",
          guard: at({ pushing: "marked", fallSeen: "strong" }),
          by: "sign",
          side: "weak",
        },
        {
          what: "neglect, fall seen to the strong side",
          guard: at({ neglect: "marked", fallSeen: "strong" }),
          by: "sign",
          side: "weak",
        },
        {
          what: "faints, fall seen to the strong side",
          guard: at({ faints: true, fallSeen: "strong" }),
          by: "sign",
          side: "both",
        },
        {
          what: "impulsive, fall seen to the strong side",
          guard: at({ impulsive: true, fallSeen: "strong" }),
          by: "sign",
          side: null,
        },
        { what: "fall seen to the strong side", guard: at({ fallSeen: "strong" }), by: "seen", side: "strong" },
        { what: "nothing seen", guard: at({}), by: "rule", side: "weak" },
      ];
      const wrong = rows.filter(
        ({ guard, by, side }) => guard?.decidedBy !== by || (side !== null && guard.side !== side),
      );
      const spoken = at({})?.because ?? "";
      return all([
        judged(
          wrong.length === 0,
          rows
            .map(({ what, guard }) => `${what}: ${guard?.side ?? "nobody"} by ${guard?.decidedBy ?? "nothing"}`)
            .join("; "),
          wrong.map(({ what, guard }) => `${what} is decided by ${guard?.decidedBy ?? "nothing"}`).join("; "),
        ),
        said([{ where: "the outline disagrees", text: spoken, pattern: /stay at the weak side all the same/ }]),
      ]);
    },
  },
];
