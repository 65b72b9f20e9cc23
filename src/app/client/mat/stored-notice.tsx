import { useState } from "react";
import { Button } from "react-aria-components";
import { openStoredSession, type StoredElsewhere } from "../record/stored-session.ts";

/** A session that another device began: what there is of it, and going on with it here. */
export function StoredNotice({ person, stored }: { readonly person: string; readonly stored: StoredElsewhere }) {
  const [trouble, setTrouble] = useState(false);
  const time = (at: string) => new Date(at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  return (
    <section className="stopbox stored-notice">
      <h2>A session is open on another device.</h2>
      <p>
        Begun {new Date(stored.startedAt).toLocaleDateString()} at {time(stored.startedAt)},{" "}
        {stored.sets === 0
          ? "no set written yet"
          : stored.sets === 1
            ? "one set written"
            : `${stored.sets} sets written`}
        , last at {time(stored.lastAt)}.
      </p>
      <Button
        className="press"
        onPress={() => void openStoredSession(person, stored.session).then((opened) => setTrouble(!opened))}
      >
        Go on with it here
      </Button>
      {trouble && <p role="alert">The record is out of reach: try again.</p>}
    </section>
  );
}
