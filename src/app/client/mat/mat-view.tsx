import { useState } from "react";
import { Button, Link } from "react-aria-components";
import type { KeptPerson } from "../record/database.ts";
import { IncidentLeaf } from "../parts/incident-leaf.tsx";
import { useCatalogue, usePlan } from "../plan/use-plan.ts";
import { today } from "../record/identifiers.ts";
import { goTo, pathOf } from "../shell/route.ts";
import { CallLeaf } from "./call-leaf.tsx";
import { AfterLast } from "./after-last.tsx";
import { Memory } from "./memory.tsx";
import { nextSetOf } from "./next-set.ts";
import { OneSet } from "./one-set.tsx";
import { StoredNotice } from "./stored-notice.tsx";
import { startSession, useOthersEvents, useSession, useStoredElsewhere } from "./use-session.ts";
import { VitalsLeaf } from "./vitals-leaf.tsx";
import "./mat.css";

/** The session as it runs: one set at a time, to be read from two metres. */
export function MatView({ person }: { readonly person: KeptPerson }) {
  const session = useSession(person);
  const { kept } = usePlan(person);
  const elsewhere = useStoredElsewhere(person);
  useOthersEvents(person);
  const [fromMemory, setFromMemory] = useState(false);
  const [measuring, setMeasuring] = useState(false);
  const [telling, setTelling] = useState(false);
  const [calling, setCalling] = useState(false);
  const catalogue = useCatalogue(person);
  if (session === undefined) return <p className="small">One moment.</p>;
  const start = async (memory: boolean) => {
    if (kept === null) return;
    await startSession(person, kept);
    setFromMemory(memory);
  };
  if (session === null || session.state.phase === "signed" || session.state.items.length === 0) {
    const ready = kept !== null && kept.plan.hold === null && kept.plan.items.length > 0;
    return (
      <div className="mat-start">
        {elsewhere !== null && <StoredNotice person={person.id} stored={elsewhere} />}
        <h1>{session === null ? "Ready when both of you are." : "That session is closed."}</h1>
        <p className="said">
          {ready
            ? `${kept.plan.items.length} items, ${Math.round(kept.plan.workingMinutes)} working minutes. One touch writes a set; nothing is lost when the screen goes dark.`
            : kept?.plan.hold === null || kept === null
              ? "There is no session to start yet: see the plan."
              : "Nothing at the mat today: see the plan."}
        </p>
        <div className="row">
          <Button className="press filled large" isDisabled={!ready} onPress={() => void start(false)}>
            Start
          </Button>
          <Button className="press large" isDisabled={!ready} onPress={() => void start(true)}>
            Write it down from memory
          </Button>
          <Link className="textlink" href={pathOf({ view: "plan", person: person.id })}>
            See the plan
          </Link>
        </div>
      </div>
    );
  }
  const next = nextSetOf(session.state, catalogue);
  const begun = session.state.startedAt?.slice(0, 10) ?? null;
  return (
    <>
      {fromMemory ? (
        <Memory
          person={person}
          session={session}
          onBack={() => setFromMemory(false)}
          onDone={() => goTo({ view: "note", person: person.id })}
        />
      ) : next === null ? (
        <AfterLast person={person} session={session} />
      ) : (
        <OneSet person={person} session={session} next={next} catalogue={catalogue} />
      )}
      <div className="mat-tools no-print">
        <Button className="textlink" onPress={() => setMeasuring(true)}>
          Pressure and pulse
        </Button>
        <Button className="textlink" onPress={() => setCalling(true)}>
          Ask the therapist…
        </Button>
        <Button className="textlink" onPress={() => setTelling(true)}>
          Incident…
        </Button>
        <Button className="textlink" onPress={() => setFromMemory(!fromMemory)}>
          {fromMemory ? "One set at a time" : "All of it from memory"}
        </Button>
        {begun !== null && begun !== today() && (
          <Button className="textlink" onPress={() => void start(false)}>
            This one was begun on {begun}: begin a new one
          </Button>
        )}
      </div>
      <IncidentLeaf
        open={telling}
        onClose={() => setTelling(false)}
        what=""
        onRecord={(what, done) => {
          void session.add([{ kind: "incident", what, ...(done === "" ? {} : { done }) }]);
          setTelling(false);
        }}
      />
      {calling && (
        <CallLeaf
          about="a question from the mat"
          onBack={() => setCalling(false)}
          onCalled={(call) => {
            setCalling(false);
            void session.add([{ kind: "therapistCalled", ...call }]);
          }}
        />
      )}
      <VitalsLeaf open={measuring} session={session} onClose={() => setMeasuring(false)} />
    </>
  );
}
