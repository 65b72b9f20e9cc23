import { scaleCapacities } from "../../mechanics/body/strength-capacities.ts";
import { solveBestPossible } from "../../mechanics/equilibrium/best-possible.ts";
import type { LinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import { poseOf } from "../../plan/assess/posed.ts";
import type { RungToday } from "../../plan/assess/rung-today.ts";
import { guardOf, outlineOf } from "../../plan/session/session-plan.ts";
import { loadSentence } from "../../plan/session/sentences.ts";
import type { RungEffort } from "../contract/effort-answer.ts";
import { answerGuard, answerHelp } from "./answer-plan.ts";
import { effortBasis, helpBasis, outlineBasis } from "./basis.ts";
import type { PersonToday } from "./person-today.ts";
import { answerDirection, jointSide, round2, round3 } from "./sides.ts";
import { VERSION } from "./version.ts";

/** Below this share of a joint's strength, and this share of body weight, a line is left out of the answer. */
const SMALL_EFFORT = 0.01;
const SMALL_LOAD = 0.005;

/** What one rung asks of this person: every joint, every contact, the outline, the help, and what it all rests on. */
export function answerEffort(person: PersonToday, today: RungToday, solver: LinearSolver): RungEffort {
  const { laterality } = person;
  const { asks, prepared } = today;
  const outline = outlineOf(person.keeper, today);
  // Computed on a body weak on its right: y is negated where the weak side is the left one.
  const flip = laterality.weak === "left" ? -1 : 1;
  const keyPoses: RungEffort["keyPoses"] =
    asks === null || prepared === null
      ? []
      : [
          {
            name: today.rung.name,
            joints: asks.efforts
              .filter((effort) => effort.effort.middle > SMALL_EFFORT)
              .map((effort) => ({
                joint: effort.joint,
                direction: effort.direction,
                side: jointSide(effort.side, laterality),
                capacity: {
                  low: round2(effort.capacity.low),
                  middle: round2(effort.capacity.middle),
                  high: round2(effort.capacity.high),
                },
                effort: {
                  low: round2(effort.effort.low),
                  middle: round2(effort.effort.middle),
                  high: round2(effort.effort.high),
                },
                limitedBy: effort.limitedBy,
              })),
            contacts: asks.loads
              .filter((load) => Math.abs(load.share) > SMALL_LOAD)
              .map((load) => ({
                segment: load.patch.split(".")[0] ?? load.patch,
                side: jointSide(load.side, laterality),
                share: round3(load.share),
                newtons: Math.round(load.newtons),
              })),
            outline:
              outline === null
                ? []
                : outline.directions.map((way) => ({
                    x: round3(way.direction[0] * way.metres),
                    y: round3(way.direction[1] * way.metres * flip),
                  })),
            margin: {
              least:
                outline === null
                  ? { metres: 0, towards: answerDirection("weak", laterality) }
                  : {
                      metres: round3(outline.least.metres),
                      towards: answerDirection(outline.least.towards, laterality),
                    },
            },
            carries: loadSentence(asks).sentence,
            bestPossible: best(person, today, solver),
          },
        ];
  return {
    version: VERSION,
    activity: today.activity.id,
    rung: today.rung.id,
    keyPoses,
    help: answerHelp(person, today),
    guard: answerGuard(person, guardOf(person.findings, today, outline)),
    evidence: person.model.trail.map((entry) => ({
      id: entry.id,
      words: entry.words,
      believed: entry.believed,
      narrowed: round2(entry.narrowed),
    })),
    basis: [...effortBasis(person, today), ...outlineBasis(outline), ...helpBasis(today)].map(
      ({ formula, inputs, source }) => ({ formula, inputs, source }),
    ),
  };
}

/** What perfect use of everything would allow, at the strengths help is worked out for. */
function best(
  person: PersonToday,
  today: RungToday,
  solver: LinearSolver,
): RungEffort["keyPoses"][number]["bestPossible"] {
  const { asks } = today;
  const prepared = person.keeper.prepare(poseOf(today.rung));
  if (asks === null || !prepared.possible) return null;
  const answer = solveBestPossible(prepared.statics, scaleCapacities(prepared.normal, asks.cautiousStrengths), solver);
  if (!answer.balanced) return null;
  const first = answer.limiting[0];
  return {
    effort: round2(answer.effort),
    limiting:
      first === undefined
        ? { joint: "none", direction: "none", side: null }
        : { joint: first.joint, direction: "any", side: jointSide(first.side, person.laterality) },
  };
}
