import { useState } from "react";
import { Button, Dialog, DialogTrigger, Input, Label, Link, Popover, TextArea, TextField } from "react-aria-components";
import { previousEntry } from "../../../session/previous-entry.ts";
import type { NoteLine, NoteSentence } from "../../../sheets/note/note.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { StoredNotice } from "../mat/stored-notice.tsx";
import { type OpenSession, useOthersEvents, useSession, useStoredElsewhere } from "../mat/use-session.ts";
import type { KeptPerson } from "../record/database.ts";
import { today } from "../record/identifiers.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { sending } from "../record/outbox.ts";
import { pathOf } from "../shell/route.ts";
import { useCell } from "../state/cell.ts";
import { sayLastDay } from "../words/person-words.ts";
import { Learned } from "./learned.tsx";
import { sayTrace } from "./traces.ts";
import "./note.css";

/** The note that has written itself; only the judgement and the name under it are missing. */
export function NoteView({ person }: { readonly person: KeptPerson }) {
  const session = useSession(person);
  const elsewhere = useStoredElsewhere(person);
  useOthersEvents(person);
  if (session === undefined) return <p className="small">One moment.</p>;
  if (session === null)
    return (
      <>
        <h1>Nothing has happened yet to write about.</h1>
        <p className="said">The note writes itself from what is done at the mat.</p>
        {elsewhere !== null && <StoredNotice person={person.id} stored={elsewhere} />}
        <Link className="press" href={pathOf({ view: "mat", person: person.id })}>
          At the mat
        </Link>
      </>
    );
  return <WrittenNote person={person} session={session} />;
}

function WrittenNote({ person, session }: { readonly person: KeptPerson; readonly session: OpenSession }) {
  const { events, state } = session;
  // A signed session has become the last entry of the case; the one before it is what the note compares with.
  const before = state.signed === null ? person.case.previous?.at(-1) : person.case.previous?.at(-2);
  const lastDay = before === undefined ? null : sayLastDay(before.date, state.startedAt?.slice(0, 10) ?? today());
  const answer = useAnswer(session.events, "writeNote", [
    {
      caseFile: person.case,
      events,
      changes: session.plan?.changesSinceLast ?? [],
      previous: before === undefined ? null : { ...before, items: before.items ?? [] },
      lastDay: lastDay === "last time" ? null : lastDay,
    },
  ]);
  const written = shown(answer);
  const [words, setWords] = useState("");
  const [name, setName] = useState("");
  const [copied, setCopied] = useState(false);
  const { waiting, reached } = useCell(sending);
  if (written === null)
    return (
      <p className="small">
        {answer.state === "failed" ? `The note could not be written: ${answer.because}` : "One moment."}
      </p>
    );
  const { note, text, refusal } = written;
  const put = async () => {
    await session.add([{ kind: "judgement", words: words.trim() }]);
    setWords("");
  };
  const sign = async () => {
    await session.add([{ kind: "signed", by: name.trim() }]);
    const entry = previousEntry(state);
    await changePerson(person.id, {
      case: { ...person.case, previous: [...(person.case.previous ?? []), entry] },
      wishes: {},
      putIn: [],
    });
    await writeVersion(person.id);
  };
  const copy = async () => {
    await navigator.clipboard.writeText(text);
    setCopied(true);
  };
  return (
    <div className="note">
      <h1>
        {note.signed !== null
          ? `Signed by ${note.signed.by}.`
          : note.judgement.length === 0
            ? "It is written. Your judgement is missing."
            : "It is written. Only your name is missing."}
      </h1>
      <p className="said">Six lines from what happened at the mat. Every line shows where it came from.</p>
      <dl className="note-lines">
        {note.lines.map((line) => (
          <LineOfNote key={line.id} line={line} session={session} />
        ))}
      </dl>
      <section className="judgement">
        <h2>Your judgement</h2>
        {note.judgement.map((sentence) => (
          <p key={sentence.text} className="said">
            {sentence.text}
          </p>
        ))}
        <TextField className="field" value={words} onChange={setWords}>
          <Label className="label">
            {note.judgement.length === 0 ? "What do you make of it, and what next?" : "Something to add?"}
          </Label>
          <TextArea />
        </TextField>
        {note.suggestions.length > 0 && (
          <div className="row">
            {note.suggestions.map(({ text: suggestion }) => (
              <Button
                key={suggestion}
                className="press suggestion"
                onPress={() => setWords(words === "" ? suggestion : `${words.trim()} ${suggestion}`)}
              >
                {suggestion}
              </Button>
            ))}
          </div>
        )}
        <div className="row">
          <Button className="press" isDisabled={words.trim() === ""} onPress={() => void put()}>
            Put it in the note
          </Button>
        </div>
      </section>
      {note.signed !== null && <Learned person={person} />}
      {note.signed === null && (
        <TextField className="field signer" value={name} onChange={setName}>
          <Label className="label">Signed by</Label>
          <Input autoComplete="off" />
          <span className="least">Initials or staff number, as your record asks.</span>
        </TextField>
      )}
      <div className="bar no-print">
        <p className="small" role="status">
          {waiting === 0 ? "In the record." : reached ? "Being sent." : "Saved here. Not sent yet."}
        </p>
        <Button className="press push" onPress={() => void copy()}>
          {copied ? "Copied" : "Copy as text"}
        </Button>
        {note.signed === null ? (
          <Button
            className="press filled"
            isDisabled={refusal !== null || name.trim() === ""}
            onPress={() => void sign()}
          >
            Sign
          </Button>
        ) : (
          <Link className="press filled" href={pathOf({ view: "papers", person: person.id })}>
            To the papers
          </Link>
        )}
      </div>
      {note.signed === null && refusal !== null && <p className="small">{refusal}</p>}
    </div>
  );
}

function LineOfNote({ line, session }: { readonly line: NoteLine; readonly session: OpenSession }) {
  return (
    <div className="note-line">
      <dt>{line.label}</dt>
      <dd className="said">
        {line.sentences.length === 0 ? (
          <span className="nothing">Nothing noted.</span>
        ) : (
          line.sentences.map(({ text }) => text).join(" ")
        )}
      </dd>
      <dd className="trace">
        {line.sentences.length > 0 && (
          <DialogTrigger>
            <Button className="textlink" aria-label={`Where “${line.label}” comes from`}>
              {sayTrace(
                line.sentences.flatMap(({ from }) => from),
                session.events,
              )}
            </Button>
            <Popover className="note-pop">
              <Dialog aria-label={`Where “${line.label}” comes from`}>
                {line.sentences.map((sentence) => (
                  <TraceOf key={sentence.text} sentence={sentence} session={session} />
                ))}
              </Dialog>
            </Popover>
          </DialogTrigger>
        )}
      </dd>
    </div>
  );
}

function TraceOf({ sentence, session }: { readonly sentence: NoteSentence; readonly session: OpenSession }) {
  return (
    <>
      <p className="said">{sentence.text}</p>
      <p className="least">{sayTrace(sentence.from, session.events)}</p>
    </>
  );
}
