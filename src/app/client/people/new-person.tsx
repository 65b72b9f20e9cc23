import { useState } from "react";
import { Button, FieldError, Form, Input, Label, TextField } from "react-aria-components";
import type { Fault } from "../../contract/faults.ts";
import { ask } from "../computing/ask.ts";
import { Strip } from "../parts/strip.tsx";
import { today } from "../record/identifiers.ts";
import { addPerson } from "../record/people.ts";
import { goTo } from "../shell/route.ts";
import { FaultList } from "./fault-list.tsx";
import "./people.css";

const SIDES = [
  { id: "left", name: "left" },
  { id: "right", name: "right" },
  { id: "both", name: "both" },
  { id: "neither", name: "neither" },
] as const;
const SEXES = [
  { id: "female", name: "woman" },
  { id: "male", name: "man" },
] as const;
const NUMBERS = [
  { id: "days", name: "Days since it happened", path: "daysSinceOnset", unit: "0 for today" },
  { id: "age", name: "Age", path: "person.ageYears", unit: "years" },
  { id: "height", name: "Height", path: "person.heightCm", unit: "centimetres" },
  { id: "mass", name: "Mass", path: "person.massKg", unit: "kilograms" },
] as const;
type NumberId = (typeof NUMBERS)[number]["id"];

/** The six things that are required; nothing else is. */
export function NewPerson() {
  const [label, setLabel] = useState("");
  const [side, setSide] = useState<(typeof SIDES)[number]["id"] | null>(null);
  const [sex, setSex] = useState<(typeof SEXES)[number]["id"] | null>(null);
  const [typed, setTyped] = useState<Readonly<Record<NumberId, string>>>({ days: "", age: "", height: "", mass: "" });
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const faultAt = (path: string) => faults.find((fault) => fault.path === path);

  const begin = async () => {
    const value = (text: string) =>
      text.trim() === "" || !Number.isFinite(Number(text.replace(",", "."))) ? text : Number(text.replace(",", "."));
    const file = {
      ...(label.trim() === "" ? {} : { label: label.trim() }),
      date: today(),
      person: { sex, ageYears: value(typed.age), heightCm: value(typed.height), massKg: value(typed.mass) },
      weakSide: side,
      daysSinceOnset: value(typed.days),
    };
    const read = await ask("readCase", JSON.stringify(file));
    if (!read.ok) return setFaults(read.faults);
    goTo({ view: "look", person: await addPerson(read.value) });
  };

  return (
    <Form
      className="newperson"
      validationBehavior="aria"
      onSubmit={(event) => {
        event.preventDefault();
        void begin();
      }}
    >
      <h1>Who is it?</h1>
      <p className="said">Six answers are needed. Whatever else you know comes after, and nothing else has to.</p>
      <TextField className="field" value={label} onChange={setLabel}>
        <Label className="label">What you call them here</Label>
        <Input placeholder="Case 5, woman, 71" autoComplete="off" />
        <span className="least">A label of your own. No name is needed.</span>
      </TextField>
      <div className="field">
        <span className="label">Weak side</span>
        <Strip label="Weak side" choices={SIDES} value={side} onChange={setSide} mayBeEmpty={false} />
        {faultAt("weakSide") !== undefined && <p className="fault">Choose the weak side.</p>}
      </div>
      <div className="field">
        <span className="label">Sex</span>
        <Strip label="Sex" choices={SEXES} value={sex} onChange={setSex} mayBeEmpty={false} />
        {faultAt("person.sex") !== undefined && <p className="fault">Choose one: body measures differ.</p>}
      </div>
      <div className="numbers">
        {NUMBERS.map(({ id, name, path, unit }) => {
          const fault = faultAt(path);
          return (
            <TextField
              key={id}
              className="field"
              value={typed[id]}
              isInvalid={fault !== undefined}
              onChange={(text) => setTyped({ ...typed, [id]: text })}
            >
              <Label className="label">
                {name} <span className="unit">({unit})</span>
              </Label>
              <Input inputMode="decimal" autoComplete="off" />
              <FieldError className="fault">
                {fault === undefined ? "" : `Found ${fault.found}. It may be: ${fault.expected}.`}
              </FieldError>
            </TextField>
          );
        })}
      </div>
      <FaultList
        faults={faults.filter(
          ({ path }) => !["weakSide", "person.sex", ...NUMBERS.map((each): string => each.path)].includes(path),
        )}
        title="Not yet."
      />
      <div className="bar">
        <Button className="press" onPress={() => goTo({ view: "people" })}>
          Back
        </Button>
        <Button className="press filled push" type="submit">
          On to the look
        </Button>
      </div>
    </Form>
  );
}
