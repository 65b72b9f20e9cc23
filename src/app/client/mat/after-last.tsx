import { useState } from "react";
import { Button, Label, Link, TextArea, TextField } from "react-aria-components";
import type { KeptPerson } from "../record/database.ts";
import { pathOf } from "../shell/route.ts";
import { StopLeaf } from "./stop-leaf.tsx";
import type { OpenSession } from "./use-session.ts";

/** After the last set: the way back, what the person said, and on to the note. */
export function AfterLast({ person, session }: { readonly person: KeptPerson; readonly session: OpenSession }) {
  const [words, setWords] = useState("");
  const [said, setSaid] = useState(0);
  const wayBack = session.plan?.wayBack ?? null;
  const last = session.plan?.items.at(-1);
  const say = () => {
    void session.add([{ kind: "said", words: words.trim() }]);
    setWords("");
    setSaid(said + 1);
  };
  return (
    <div className="after-last">
      <h1>That was the last set. Now the way back.</h1>
      {wayBack !== null && (
        <ol className="said">
          {wayBack.planned.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      )}
      <TextField className="field" value={words} onChange={setWords}>
        <Label className="label">What did {person.case.person.sex === "female" ? "she" : "he"} say?</Label>
        <TextArea />
      </TextField>
      <div className="row">
        <Button className="press" isDisabled={words.trim() === ""} onPress={say}>
          Write it down
        </Button>
        <span className="small" role="status">
          {said > 0 ? "Written." : ""}
        </span>
        <Link className="press filled push-end" href={pathOf({ view: "note", person: person.id })}>
          To the note
        </Link>
      </div>
      {session.state.phase === "stopped" && last !== undefined && (
        <StopLeaf
          session={session}
          of={{ activity: last.activity, rung: last.rung }}
          wayOut={wayBack?.hurry ?? []}
          her={person.case.person.sex === "female" ? "her" : "him"}
          onClose={() => undefined}
        />
      )}
    </div>
  );
}
