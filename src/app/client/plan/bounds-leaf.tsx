import { type ReactNode, useId, useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import type { CaseFile } from "../../contract/case-file.ts";
import { Leaf } from "../parts/leaf.tsx";
import type { KeptPerson } from "../record/database.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { HELP_WORDS, type HelpWord, sayHelp } from "../words/dose-words.ts";
import { nameOfRungAlone } from "./plan-words.ts";
import { useCatalogue } from "./use-plan.ts";

type Bounds = NonNullable<CaseFile["bounds"]>[number];

/** The therapist says how far an assistant may go: with one ladder, or with the whole session. */
export function BoundsLeaf({
  person,
  activity,
  onClose,
}: {
  readonly person: KeptPerson;
  /** Null for the whole session. */
  readonly activity: string | null;
  readonly onClose: () => void;
}) {
  const catalogue = useCatalogue(person);
  const all = person.case.bounds ?? [];
  const own = all.find((each) => (each.activity ?? null) === activity);
  const [from, setFrom] = useState(own?.fromRung ?? "");
  const [to, setTo] = useState(own?.toRung ?? "");
  const [help, setHelp] = useState<HelpWord | "">(own?.mostHelp ?? "");
  const [stop, setStop] = useState((own?.stopIf ?? []).join("; "));
  const [by, setBy] = useState(own?.by ?? "");
  const ladder = catalogue?.activities.find(({ id }) => id === activity)?.rungs ?? [];
  const at = (rung: string) => ladder.findIndex(({ id }) => id === rung);
  const crossed = from !== "" && to !== "" && at(from) > at(to);
  const write = async (bounds: Bounds | null) => {
    const others = all.filter((each) => (each.activity ?? null) !== activity);
    const { bounds: _before, ...rest } = person.case;
    const next = [...others, ...(bounds === null ? [] : [bounds])];
    await changePerson(person.id, { case: next.length === 0 ? rest : { ...rest, bounds: next } });
    await writeVersion(person.id);
    onClose();
  };
  const set = () => {
    const stopIf = stop
      .split(";")
      .map((sign) => sign.trim())
      .filter((sign) => sign !== "");
    return write({
      ...(activity === null ? {} : { activity }),
      ...(from === "" ? {} : { fromRung: from }),
      ...(to === "" ? {} : { toRung: to }),
      ...(help === "" ? {} : { mostHelp: help }),
      ...(stopIf.length === 0 ? {} : { stopIf }),
      ...(by.trim() === "" ? {} : { by: by.trim() }),
    });
  };
  const empty = from === "" && to === "" && help === "" && stop.trim() === "";
  return (
    <Leaf open onClose={onClose} label="Bounds for an assistant" className="bounds-leaf">
      <h2>How far may an assistant go?</h2>
      <p>
        {activity === null
          ? "For the whole session; what an item has of its own comes first. "
          : "Inside these no call is needed. "}
        Beyond them the mat screen says to call the therapist, and writes the call down.
      </p>
      <div className="bounds-fields">
        {activity !== null && (
          <>
            <Choose label="From rung" value={from} onChange={setFrom} none="no lowest rung">
              {ladder.map(({ id }) => (
                <option key={id} value={id}>
                  {nameOfRungAlone(catalogue, activity, id)}
                </option>
              ))}
            </Choose>
            <Choose label="To rung" value={to} onChange={setTo} none="no highest rung">
              {ladder.map(({ id }) => (
                <option key={id} value={id}>
                  {nameOfRungAlone(catalogue, activity, id)}
                </option>
              ))}
            </Choose>
          </>
        )}
        <Choose
          label="Most help"
          value={help}
          onChange={(word) => setHelp(HELP_WORDS.find((each) => each === word) ?? "")}
          none="as the item says"
        >
          {HELP_WORDS.filter((word) => word !== "setUp").map((word) => (
            <option key={word} value={word}>
              {sayHelp(word)}
            </option>
          ))}
        </Choose>
        <TextField className="field" value={stop} onChange={setStop}>
          <Label className="label">Stop if (signs, parted by a semicolon)</Label>
          <Input autoComplete="off" maxLength={600} />
        </TextField>
        <TextField className="field" value={by} onChange={setBy}>
          <Label className="label">Set by</Label>
          <Input autoComplete="off" maxLength={80} />
        </TextField>
      </div>
      {crossed && (
        <p className="fault" role="alert">
          The lowest rung lies above the highest.
        </p>
      )}
      <div className="row">
        <Button className="press" onPress={onClose}>
          Back
        </Button>
        {own !== undefined && (
          <Button className="press" onPress={() => void write(null)}>
            Take them away
          </Button>
        )}
        <Button className="press filled push-end" isDisabled={empty || crossed} onPress={() => void set()}>
          Set these bounds
        </Button>
      </div>
    </Leaf>
  );
}

function Choose({
  label,
  value,
  none,
  onChange,
  children,
}: {
  readonly label: string;
  readonly value: string;
  readonly none: string;
  readonly onChange: (value: string) => void;
  readonly children: ReactNode;
}) {
  const id = useId();
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {label}
      </label>
      <select id={id} className="choose" value={value} onChange={({ target }) => onChange(target.value)}>
        <option value="">{none}</option>
        {children}
      </select>
    </div>
  );
}
