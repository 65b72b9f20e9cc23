import { useEffect, useState } from "react";
import { Button, FileTrigger, Link } from "react-aria-components";
import type { Fault } from "../../contract/faults.ts";
import { ask } from "../computing/ask.ts";
import { addPerson, listPeople, type PersonLine } from "../record/people.ts";
import { goTo, pathOf } from "../shell/route.ts";
import { FaultList } from "./fault-list.tsx";

/** Everybody this device and its record know. */
export function PeopleView() {
  const [lines, setLines] = useState<readonly PersonLine[] | null>(null);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  useEffect(() => {
    let current = true;
    void listPeople().then((found) => current && setLines(found));
    return () => {
      current = false;
    };
  }, []);
  const openFile = async (files: FileList | null) => {
    const file = files?.[0];
    if (file === undefined) return;
    const read = await ask("readCase", await file.text());
    if (!read.ok) return setFaults(read.faults);
    goTo({ view: "plan", person: await addPerson(read.value) });
  };
  return (
    <>
      <h1>My people</h1>
      {lines !== null && lines.length === 0 && (
        <p className="said">
          Nobody yet. Begin with the side that is weak and the day it happened; the rest is what ten minutes show.
        </p>
      )}
      {lines === null ? (
        <p className="small">One moment.</p>
      ) : (
        <ul className="people">
          {lines.map(({ id, label }) => (
            <li key={id}>
              <Link href={pathOf({ view: "plan", person: id })}>{label ?? "No label"}</Link>
              <Link
                className="textlink"
                href={pathOf({ view: "look", person: id })}
                aria-label={`What did you see? ${label ?? ""}`}
              >
                Look
              </Link>
            </li>
          ))}
        </ul>
      )}
      <FaultList faults={faults} title="This file cannot be used as it is." />
      <div className="bar no-print">
        <FileTrigger acceptedFileTypes={["application/json", ".json"]} onSelect={(files) => void openFile(files)}>
          <Button className="press">Open a case file…</Button>
        </FileTrigger>
        <Link className="press filled push" href="/new">
          New person
        </Link>
      </div>
    </>
  );
}
