import { useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import { Leaf } from "../parts/leaf.tsx";
import { Strip } from "../parts/strip.tsx";
import type { NewEvent } from "../record/sessions.ts";
import type { OpenSession } from "./use-session.ts";

const FIELDS = [
  { id: "systolic", name: "Pressure, upper", min: 40, max: 300 },
  { id: "diastolic", name: "Pressure, lower", min: 20, max: 200 },
  { id: "heartRate", name: "Pulse", min: 20, max: 250 },
  { id: "oxygenSaturation", name: "Oxygen, percent", min: 40, max: 100 },
  { id: "painNow", name: "Pain, 0 to 10", min: 0, max: 10 },
] as const;
type Field = (typeof FIELDS)[number]["id"];
const WHEN = [
  { id: "before", name: "before" },
  { id: "during", name: "during" },
  { id: "after", name: "after" },
] as const;

/** Pressure, pulse and oxygen of this session. */
export function VitalsLeaf({
  open,
  session,
  onClose,
}: {
  readonly open: boolean;
  readonly session: OpenSession;
  readonly onClose: () => void;
}) {
  const [when, setWhen] = useState<"before" | "during" | "after">(
    session.state.vitals.length === 0 ? "before" : "after",
  );
  const [typed, setTyped] = useState<Readonly<Partial<Record<Field, string>>>>({});
  const values = FIELDS.flatMap(({ id, min, max }) => {
    const text = typed[id]?.trim() ?? "";
    const value = Number(text.replace(",", "."));
    return text === "" ? [] : [{ id, value, fits: Number.isFinite(value) && value >= min && value <= max }];
  });
  const wrong = values.filter(({ fits }) => !fits).map(({ id }) => id);
  const write = () => {
    const event: NewEvent = {
      kind: "vitalSigns",
      when,
      ...Object.fromEntries(values.map(({ id, value }) => [id, value])),
    };
    void session.add([event]);
    setTyped({});
    onClose();
  };
  return (
    <Leaf open={open} onClose={onClose} label="Pressure and pulse">
      <h2>Pressure and pulse</h2>
      <Strip
        label="When"
        choices={WHEN}
        value={when}
        onChange={(next) => next !== null && setWhen(next)}
        mayBeEmpty={false}
      />
      <div className="vitals">
        {FIELDS.map(({ id, name, min, max }) => (
          <TextField
            key={id}
            className="field"
            value={typed[id] ?? ""}
            isInvalid={wrong.includes(id)}
            onChange={(text) => setTyped({ ...typed, [id]: text })}
          >
            <Label className="label">{name}</Label>
            <Input inputMode="numeric" autoComplete="off" />
            {wrong.includes(id) && (
              <p className="fault">
                From {min} to {max}.
              </p>
            )}
          </TextField>
        ))}
      </div>
      <div className="row">
        <Button className="press" onPress={onClose}>
          Back
        </Button>
        <Button className="press filled push-end" isDisabled={values.length === 0 || wrong.length > 0} onPress={write}>
          Write it down
        </Button>
      </div>
    </Leaf>
  );
}
