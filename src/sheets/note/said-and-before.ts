import type { EventOf } from "../../session/events.ts";
import type { SessionState } from "../../session/state.ts";
import { fromEvents, type NoteSentence } from "./note.ts";
import { upperFirst, withStop } from "./rung-words.ts";

/** What the person or the family said, word for word. */
export function writeSaid(state: SessionState): readonly NoteSentence[] {
  return state.said.map(({ id, words }) => ({ text: `“${words}”`, from: fromEvents(id) }));
}

/** What was measured before the first move. */
export function writeBefore(state: SessionState): readonly NoteSentence[] {
  return writeVitals(state, "before");
}

export function writeVitals(state: SessionState, when: "before" | "during" | "after"): readonly NoteSentence[] {
  return state.vitals
    .filter((vitals) => vitals.when === when)
    .flatMap((vitals) => {
      const measured = sayVitals(vitals);
      const lead = when === "before" ? "" : `${upperFirst(when)}: `;
      return measured === ""
        ? []
        : [{ text: withStop(lead === "" ? upperFirst(measured) : `${lead}${measured}`), from: fromEvents(vitals.id) }];
    });
}

function sayVitals(vitals: EventOf<"vitalSigns">): string {
  const {
    systolic,
    diastolic,
    heartRate,
    oxygenSaturation,
    respiratoryRate,
    temperatureC,
    painNow,
    lastMealMinutesAgo,
  } = vitals;
  return [
    systolic === undefined && diastolic === undefined
      ? null
      : `blood pressure ${systolic ?? "not read"} over ${diastolic ?? "not read"} mmHg`,
    heartRate === undefined ? null : `pulse ${heartRate} a minute`,
    oxygenSaturation === undefined ? null : `oxygen ${oxygenSaturation} %`,
    respiratoryRate === undefined ? null : `breaths ${respiratoryRate} a minute`,
    temperatureC === undefined ? null : `temperature ${temperatureC} °C`,
    painNow === undefined ? null : `pain ${painNow} of 10`,
    lastMealMinutesAgo === undefined ? null : `last meal ${lastMealMinutesAgo} minutes before`,
  ]
    .filter((part) => part !== null)
    .join(", ");
}
