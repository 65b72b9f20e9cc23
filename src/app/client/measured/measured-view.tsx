import { type ReactNode, useState } from "react";
import { Button, Disclosure, DisclosurePanel, Heading, Link } from "react-aria-components";
import type { Fault } from "../../contract/faults.ts";
import { ask } from "../computing/ask.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import type { KeptPerson } from "../record/database.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { goTo, pathOf } from "../shell/route.ts";
import { CodeList } from "./code-list.tsx";
import { type Draft, writeAt } from "./draft.ts";
import { Field, type FormState } from "./field-row.tsx";
import {
  APPROACHES,
  EQUIPMENT,
  type FieldRow,
  HOME,
  PERSON,
  RANGE_ROWS,
  ROOM,
  SENSE_CODES,
  SENSE_ROWS,
  SIGNS,
  STRENGTH_ROWS,
  TONE_CODES,
  TONE_ROWS,
  TRUNK_ROWS,
  VITALS,
} from "./fields.data.ts";
import { SideTable } from "./side-table.tsx";
import "./measured.css";

const GRADES = ["0", "1", "1+", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"] as const;

/** Whatever else was measured; every field is optional but the six of the person. */
export function MeasuredView({ person }: { readonly person: KeptPerson }) {
  const [draft, setDraft] = useState<Draft>(person.case);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const words = shown(useAnswer(null, "findingWords", []));
  const write = (path: readonly string[], value: unknown) => {
    const next = writeAt(draft, path, value);
    setDraft(next);
    void ask("readCase", JSON.stringify(next)).then((read) => {
      setFaults(read.ok ? [] : read.faults);
      if (read.ok) void changePerson(person.id, { case: read.value });
    });
  };
  const form: FormState = { draft, faults, write };
  const done = async () => {
    await writeVersion(person.id);
    goTo({ view: "plan", person: person.id });
  };
  return (
    <div className="measured">
      <Link className="textlink" href={pathOf({ view: "look", person: person.id })}>
        Back to the look
      </Link>
      <h1>What did you measure?</h1>
      <p className="said">Whatever you have. What stays empty is not known, and the plan says what it assumes.</p>
      <datalist id="grades">
        {GRADES.map((grade) => (
          <option key={grade} value={grade} />
        ))}
      </datalist>
      <Part title="Pressure, pulse, oxygen" open>
        <Fields rows={VITALS} form={form} />
      </Part>
      <Part title="Precautions">
        <CodeList title="Precautions" path="precautions" codes={words?.precautions ?? []} form={form} />
      </Part>
      <Part title="Medicines">
        <CodeList title="Medicines" path="medicines" codes={words?.medicines ?? []} form={form} />
      </Part>
      <Part title="Balance, signs, speaking, shoulder">
        <Fields rows={SIGNS} form={form} />
      </Part>
      <Part title="Spare it, lend it, train it">
        <p>
          Guidelines favour practice of the task itself with the weak side in it. Sparing a limb is for today, not for
          the whole of treatment.
        </p>
        <Fields rows={APPROACHES} form={form} />
      </Part>
      <Part title="Strength">
        <p>A grade, 0 to 5 with + or −; or a dynamometer: 38 Nm, or 120 N at 30 cm.</p>
        <SideTable
          title="Strength"
          group="strength"
          rows={STRENGTH_ROWS}
          trunk={TRUNK_ROWS}
          cell={{ kind: "strength" }}
          form={form}
        />
      </Part>
      <Part title="Range">
        <SideTable title="Range, degrees" group="rangeDeg" rows={RANGE_ROWS} cell={{ kind: "degrees" }} form={form} />
      </Part>
      <Part title="Tone">
        <SideTable
          title="Modified Ashworth grade"
          group="tone"
          rows={TONE_ROWS}
          cell={{ kind: "choice", codes: TONE_CODES }}
          form={form}
        />
      </Part>
      <Part title="Feeling">
        <SideTable
          title="Feeling"
          group="sensation"
          rows={SENSE_ROWS}
          cell={{ kind: "choice", codes: SENSE_CODES }}
          form={form}
        />
      </Part>
      <Part title="Place, people, things">
        <Fields rows={ROOM} form={form} />
        <CodeList title="Things at hand" path="equipment" codes={EQUIPMENT} form={form} />
      </Part>
      <Part title="Home">
        <Fields rows={HOME} form={form} />
      </Part>
      <Part title="Who it is">
        <Fields rows={PERSON} form={form} />
      </Part>
      <div className="bar">
        <p className="small" role="status">
          {faults.length === 0
            ? ""
            : `${faults.length === 1 ? "One field is" : `${faults.length} fields are`} refused and not kept.`}
        </p>
        <Button className="press filled push" isDisabled={faults.length > 0} onPress={() => void done()}>
          Show the plan
        </Button>
      </div>
    </div>
  );
}

function Fields({ rows, form }: { readonly rows: readonly FieldRow[]; readonly form: FormState }) {
  return (
    <div className="measured-fields">
      {rows.map((row) => (
        <Field key={row.path} row={row} form={form} />
      ))}
    </div>
  );
}

function Part({
  title,
  open = false,
  children,
}: {
  readonly title: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <Disclosure className="part" defaultExpanded={open}>
      {({ isExpanded }) => (
        <>
          <Heading level={2}>
            <Button slot="trigger" className="part-press">
              {title}
              <span aria-hidden="true">{isExpanded ? "−" : "+"}</span>
            </Button>
          </Heading>
          <DisclosurePanel className="part-panel">{isExpanded ? children : null}</DisclosurePanel>
        </>
      )}
    </Disclosure>
  );
}
