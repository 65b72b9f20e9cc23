import { useState } from "react";
import { Button, Input, Label, Link, TextArea, TextField } from "react-aria-components";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import { Leaf } from "../parts/leaf.tsx";
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
  const title = `Not today: ${hold.because.map(({ measured }) => measured).join(", ")}.`;
  return (
    <div className="hold">
      <h1>{title}</h1>
      {hold.because.map(({ rule, limit, source }) => (
        <p key={rule} className="said">
          {limit.replace(/\.?$/, ".")} <span className="least">Source: {source}</span>
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
      <CallLeaf
        open={calling}
        onClose={() => setCalling(false)}
        what={title}
        onRecord={(what, done) => void record(what, done)}
      />
    </div>
  );
}

function CallLeaf({
  open,
  onClose,
  what,
  onRecord,
}: {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly what: string;
  readonly onRecord: (what: string, done: string) => void;
}) {
  const [words, setWords] = useState(what);
  const [done, setDone] = useState("");
  return (
    <Leaf open={open} onClose={onClose} label="Who was called">
      <h2>Who was called, and what was said?</h2>
      <TextField className="field" value={words} onChange={setWords}>
        <Label className="label">What was found</Label>
        <Input />
      </TextField>
      <TextField className="field" value={done} onChange={setDone}>
        <Label className="label">What was done</Label>
        <TextArea />
      </TextField>
      <div className="row">
        <Button className="press" onPress={onClose}>
          Back
        </Button>
        <Button
          className="press filled push-end"
          isDisabled={words.trim() === ""}
          onPress={() => onRecord(words.trim(), done.trim())}
        >
          Record it
        </Button>
      </div>
    </Leaf>
  );
}
