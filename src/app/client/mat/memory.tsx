import { useState } from "react";
import { Button, Checkbox, CheckboxGroup, Label } from "react-aria-components";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { Stepper } from "../parts/stepper.tsx";
import type { KeptPerson } from "../record/database.ts";
import type { NewEvent } from "../record/sessions.ts";
import type { ItemRecord } from "../../../session/state.ts";
import type { OpenSession } from "./use-session.ts";

interface Remembered {
  readonly sets: number;
  readonly faults: readonly string[];
}
const keyOf = ({ activity, rung }: ItemRecord): string => `${activity}/${rung}`;

/** The whole session from memory: sets as planned unless changed, faults ticked, one press for all of it. */
export function Memory({
  person,
  session,
  onBack,
  onDone,
}: {
  readonly person: KeptPerson;
  readonly session: OpenSession;
  readonly onBack: () => void;
  readonly onDone: () => void;
}) {
  const open = session.state.items.filter(
    ({ planned, sets, skipped }) => planned !== null && skipped === null && sets.length < planned.sets,
  );
  const [remembered, setRemembered] = useState<Readonly<Record<string, Remembered>>>({});
  const of = (item: ItemRecord): Remembered =>
    remembered[keyOf(item)] ?? { sets: (item.planned?.sets ?? 0) - item.sets.length, faults: [] };
  const write = async () => {
    await session.add(open.flatMap((item) => eventsOf(item, of(item))));
    onDone();
  };
  return (
    <div className="memory">
      <h1>What was done?</h1>
      <p className="said">
        {open.length === 0
          ? "Every set is written down already."
          : "As planned unless you change it. One press at the end writes all of it."}
      </p>
      <ul>
        {open.map((item) => (
          <MemoryRow
            key={keyOf(item)}
            person={person}
            item={item}
            value={of(item)}
            onChange={(value) => setRemembered({ ...remembered, [keyOf(item)]: value })}
          />
        ))}
      </ul>
      <div className="row">
        <Button className="press large" onPress={onBack}>
          One set at a time
        </Button>
        <Button className="press filled large push-end" onPress={() => void write()}>
          {open.length === 0 ? "To the note" : "Write all of it down"}
        </Button>
      </div>
    </div>
  );
}

function MemoryRow({
  person,
  item,
  value,
  onChange,
}: {
  readonly person: KeptPerson;
  readonly item: ItemRecord;
  readonly value: Remembered;
  readonly onChange: (value: Remembered) => void;
}) {
  const sheet = shown(useAnswer(person.case, "sheet", [person.case, { activity: item.activity, rung: item.rung }]));
  const most = (item.planned?.sets ?? 0) - item.sets.length;
  return (
    <li className="memory-row">
      <h2>{sheet?.name ?? ""}</h2>
      <Stepper label="Sets" value={value.sets} min={0} max={most} onChange={(sets) => onChange({ ...value, sets })} />
      <CheckboxGroup
        className="memory-faults"
        value={[...value.faults]}
        onChange={(faults) => onChange({ ...value, faults })}
      >
        <Label className="unseen">Seen in {sheet?.name ?? "this item"}</Label>
        {sheet?.faults.map(({ id, fault }) => (
          <Checkbox key={id} value={id} className="tick">
            <span className="box" />
            {fault}
          </Checkbox>
        ))}
      </CheckboxGroup>
    </li>
  );
}

function eventsOf({ activity, rung, planned, sets: done }: ItemRecord, { sets, faults }: Remembered): NewEvent[] {
  const all = (planned?.sets ?? 0) - done.length;
  const exceptions = faults.map(
    (which): NewEvent => ({ kind: "setException", activity, rung, what: "fault", which, howOften: 1 }),
  );
  const asPlanned = faults.length === 0;
  const written = Array.from({ length: sets }, (): NewEvent => ({ kind: "setDone", activity, rung, asPlanned }));
  return [
    ...exceptions,
    ...written,
    ...(sets < all
      ? [
          {
            kind: "itemSkipped" as const,
            activity,
            rung,
            because: sets === 0 && done.length === 0 ? "not done" : `${all - sets} of the sets not done`,
          },
        ]
      : []),
  ];
}
