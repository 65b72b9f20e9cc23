import { type KeyboardEvent, useEffect, useState } from "react";
import { Button, Link } from "react-aria-components";
import type { KeptPerson } from "../record/database.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { planOf, plans, refreshPlan } from "../record/plans.ts";
import { useCell } from "../state/cell.ts";
import { goTo, pathOf } from "../shell/route.ts";
import { Legend } from "../parts/legend.tsx";
import { type LookEntry, RESULTS, TASKS, type Task } from "../words/look-words.ts";
import { sayNumber, upper } from "../words/person-words.ts";
import { GaveWayLeaf } from "./gave-way.tsx";
import { TaskCell } from "./task-cell.tsx";
import "./look.css";

/** Quiet time before the plan is thought about again while one still taps. */
const PAUSE = 900;

/** What ten minutes with the person showed. */
export function LookView({ person }: { readonly person: KeptPerson }) {
  const [asking, setAsking] = useState<Task | null>(null);
  const entries = person.case.look ?? [];
  const entryOf = (task: Task) => entries.find((entry) => entry.task === task);
  const seen = entries.filter(({ result }) => result !== "notTried").length;

  const write = (task: Task, entry: LookEntry | null) => {
    const look = TASKS.flatMap(({ id }) => (id === task ? (entry === null ? [] : [entry]) : (entryOf(id) ?? [])));
    void changePerson(person.id, { case: { ...person.case, look } });
  };
  const setResult = (task: Task, result: LookEntry["result"] | null) => {
    const { gaveWay: _gaveWay, stoppedBy: _stoppedBy, ...rest } = entryOf(task) ?? { task };
    if (result === null) return write(task, null);
    const before = entryOf(task);
    write(task, result === "aloneWell" || before === undefined ? { ...rest, result } : { ...before, result });
  };
  const byKey = (event: KeyboardEvent<HTMLElement>) => {
    const cell = event.target instanceof Element ? event.target.closest("[data-task]") : null;
    const task = TASKS.find(({ id }) => id === cell?.getAttribute("data-task"))?.id;
    if (
      task === undefined ||
      event.target instanceof HTMLInputElement ||
      event.ctrlKey ||
      event.metaKey ||
      event.altKey
    )
      return;
    if (event.key === "0") return setResult(task, null);
    const result = RESULTS[Number(event.key) - 1];
    if (result !== undefined) setResult(task, result.id);
  };

  useEffect(() => {
    const timer = setTimeout(() => void refreshPlan(person), PAUSE);
    return () => clearTimeout(timer);
  }, [person]);
  const { kept } = planOf(useCell(plans), person.id);
  const next = kept?.plan.takeNext[0];

  const showPlan = async () => {
    await writeVersion(person.id);
    goTo({ view: "plan", person: person.id });
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are a short cut; every choice has its own button
    <div onKeyDown={byKey}>
      <div className="look-head">
        <h1>What did you see?</h1>
        <p className="said" aria-live="polite">
          {seen === 0
            ? "Nothing seen yet: a plan would start low. "
            : seen === TASKS.length
              ? "All twelve seen. "
              : `${upper(sayNumber(seen))} seen, ${sayNumber(TASKS.length - seen)} not tried. Enough for a plan. `}
          {next !== undefined && (
            <>
              Worth most next:{" "}
              <strong>{next.finding.replace(/\.$/, "").replace(/^./, (letter) => letter.toLowerCase())}</strong>.
            </>
          )}
        </p>
      </div>
      <ul className="look-grid" aria-label="The twelve of the look">
        {TASKS.map(({ id, name }) => (
          <TaskCell
            key={id}
            task={id}
            name={name}
            caseFile={person.case}
            entry={entryOf(id)}
            onResult={(result) => setResult(id, result)}
            onSeat={(seatHeightCm) => write(id, { ...(entryOf(id) ?? { task: id, result: "notTried" }), seatHeightCm })}
            onAsk={() => setAsking(id)}
          />
        ))}
      </ul>
      <div className="look-foot">
        <Legend marks={false} />
        <p className="least">Keys 1 to 5 answer, 0 clears.</p>
      </div>
      {asking !== null && (
        <GaveWayLeaf
          task={asking}
          caseFile={person.case}
          entry={entryOf(asking) ?? { task: asking, result: "cannot" }}
          onClose={() => setAsking(null)}
          onWrite={(entry) => write(asking, entry)}
        />
      )}
      <div className="bar no-print">
        <Link className="press" href={pathOf({ view: "measured", person: person.id })}>
          Add what you measured
        </Link>
        <Button className="press filled push" onPress={() => void showPlan()}>
          Show the plan
        </Button>
      </div>
    </div>
  );
}
