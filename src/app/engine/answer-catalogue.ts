import { ACTIVITIES, POSITIONS, TRANSITIONS } from "../../practice/catalogue.ts";
import type { CatalogueAnswer } from "../contract/catalogue-answer.ts";
import { VERSION } from "./version.ts";

/** All that the product knows how to do, in weak and strong words. */
export function answerCatalogue(): CatalogueAnswer {
  return {
    version: VERSION,
    positions: POSITIONS.map(({ id, name }) => ({ id, name })),
    transitions: TRANSITIONS.map(({ id, from, to }) => ({ id, from, to })),
    activities: ACTIVITIES.map((activity) => ({
      id: activity.id,
      name: activity.name,
      position: activity.position,
      rungs: activity.rungs.map((rung) => ({
        id: rung.id,
        name: rung.name,
        changes: rung.changes,
        demands: [...rung.demands],
        helper: rung.helper,
        words: rung.words,
        cue: rung.cue,
        good: rung.good,
        faults: rung.faults.map(({ id, fault, do: mend }) => ({ id, fault, do: mend })),
        purpose: activity.purposeWords,
        icf: activity.icf,
        substitutes: rung.substitutes.map((each) => ({ ...each })),
        dose: rung.dose,
        notAtHome: rung.notAtHome,
        sources: [...new Set([...activity.sources, ...rung.sources])],
      })),
    })),
  };
}
