import { ACTIVITIES, POSITIONS, TRANSITIONS } from "../../practice/catalogue.ts";
import type { CaseFile } from "../contract/case-file.ts";
import type { CatalogueAnswer } from "../contract/catalogue-answer.ts";
import { activitiesOf } from "./own-activities.ts";
import { VERSION } from "./version.ts";

/** All that the product knows how to do, in weak and strong words; with a case, that person's own rungs behind it. */
export function answerCatalogue(file: CaseFile | null = null): CatalogueAnswer {
  return {
    version: VERSION,
    positions: POSITIONS.map(({ id, name }) => ({ id, name })),
    transitions: TRANSITIONS.map(({ id, from, to }) => ({ id, from, to })),
    activities: (file === null ? ACTIVITIES : activitiesOf(file)).map((activity) => ({
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
