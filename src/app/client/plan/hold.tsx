import { useState } from "react";
import { Button, Link } from "react-aria-components";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import { IncidentLeaf } from "../parts/incident-leaf.tsx";
import type { KeptPerson } from "../record/database.ts";
import { newId } from "../record/identifiers.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { keepSessionPlan, planOf, plans } from "../record/plans.ts";
import { addEvents } from "../record/sessions.ts";
import { useCell } from "../state/cell.ts";
import { goTo, pathOf } from "../shell/route.ts";

/** A day on which nothing is done at the mat: what was measured, the limit, what to do, where the limit comes from. */
export function Hold({ person, plan }: { readonly person: KeptPerson; readonly plan: PlanAnswer }) {
  const [calling, setCalling] = useState(false);
  const kept = planOf(useCell(plans), person.id).kept;
  const { hold } = plan;
  if (hold === null) return null;
  const wrongReading = () => {
    const { vitals: _vitals, ...rest } = person.case;
    void changePerson(person.id, { case: rest });
    goTo({ view: "measured", person: person.id });
  };
  const record = async (what: string, done: string) => {
    const version = await writeVersion(person.id);
    if (version === null || kept === null) return;
    await keepSessionPlan(kept, version);
    const session = newId();
    await addEvents(person.id, session, plan.version.knowledge, [
      { kind: "sessionStarted", person: person.id, plan: kept.id, items: [] },
      { kind: "incident", what, ...(done === "" ? {} : { done }) },
    ]);
    await changePerson(person.id, { session });
    goTo({ view: "note", person: person.id });
  };
  const title = `Not today: ${[...new Set(hold.because.map((each) => sayMeasured(each, person.case.vitals)))].join(", ")}.`;
  return (
    <div className="hold">
      <h1>{title}</h1>
      {hold.because.map(({ rule, limit, source }) => (
        <p key={rule} className="said">
          The limit: {limit.replace(/\.?$/, ".")} <span className="least">Source: {source}</span>
        </p>
      ))}
      <p className="stopbox">
        <strong>Do now</strong> {hold.whatToDo}
      </p>
      <div className="row">
        <Link className="press filled" href={pathOf({ view: "measured", person: person.id })}>
          Measure again
        </Link>
        <Button className="press" onPress={wrongReading}>
          It was a wrong reading…
        </Button>
        <Button className="press" onPress={() => setCalling(true)}>
          Call, and record it
        </Button>
      </div>
      <p className="small">The order of the physician and your own protocol decide. Nothing at the mat until then.</p>
      <IncidentLeaf
        open={calling}
        onClose={() => setCalling(false)}
        what={title}
        onRecord={(what, done) => void record(what, done)}
      />
    </div>
  );
}

type Vitals = KeptPerson["case"]["vitals"];

/** "pressure 192 over 104", as it is said; else as it was measured. */
function sayMeasured({ rule, measured }: { readonly rule: string; readonly measured: string }, vitals: Vitals): string {
  const { systolic, diastolic, heartRate, oxygenSaturation } = vitals ?? {};
  if (/systolic|diastolic|pressure/i.test(rule) && systolic !== undefined && diastolic !== undefined)
    return `pressure ${systolic} over ${diastolic}`;
  if (/heart|pulse/i.test(rule) && heartRate !== undefined) return `pulse ${heartRate}`;
  if (/oxygen/i.test(rule) && oxygenSaturation !== undefined) return `oxygen ${oxygenSaturation} percent`;
  return measured;
}
