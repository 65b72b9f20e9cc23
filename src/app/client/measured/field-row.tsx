import { useId, useState } from "react";
import type { Fault } from "../../contract/faults.ts";
import type { FieldRow } from "./fields.data.ts";
import { type Draft, readAt, readNumber } from "./draft.ts";

const CHOICE_WORDS: Readonly<Record<string, string>> = {
  true: "yes",
  false: "no",
  female: "woman",
  male: "man",
  spare: "spare it",
  lend: "lend it",
  train: "train it",
  oneStep: "one step at a time",
  backAndWeak: "back and weak side",
  forwardAndWeak: "forward and weak side",
  raisedMat: "raised mat",
  floorMat: "floor mat",
  spinalCord: "spinal cord",
  none: "none",
};
const sayChoice = (code: string): string => CHOICE_WORDS[code] ?? code;

export interface FormState {
  readonly draft: Draft;
  readonly faults: readonly Fault[];
  readonly write: (path: readonly string[], value: unknown) => void;
}

/** One field with its label, and under it what was refused. */
export function Field({ row, form }: { readonly row: FieldRow; readonly form: FormState }) {
  const id = useId();
  const path = row.path.split(".");
  const value = readAt(form.draft, path);
  const fault = form.faults.find((each) => each.path === row.path || each.path.startsWith(`${row.path}.`));
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {row.name} {row.kind === "number" && row.unit !== undefined && <span className="unit">({row.unit})</span>}
      </label>
      {row.kind === "choice" || row.kind === "yesNo" ? (
        <select
          id={id}
          value={value === undefined || value === null ? "" : String(value)}
          aria-invalid={fault !== undefined}
          onChange={({ target }) =>
            form.write(
              path,
              target.value === "" ? undefined : row.kind === "yesNo" ? target.value === "true" : target.value,
            )
          }
        >
          <option value="">not known</option>
          {(row.kind === "yesNo" ? ["true", "false"] : row.codes).map((code) => (
            <option key={code} value={code}>
              {sayChoice(code)}
            </option>
          ))}
        </select>
      ) : (
        <TypedInput
          id={id}
          value={value}
          invalid={fault !== undefined}
          numeric={row.kind === "number"}
          onWrite={(text) =>
            form.write(path, row.kind === "number" ? readNumber(text) : text.trim() === "" ? undefined : text.trim())
          }
        />
      )}
      {fault !== undefined && (
        <p className="fault" role="alert">
          Found {fault.found}. It may be: {fault.expected}.
        </p>
      )}
    </div>
  );
}

/** Writes what was typed when one leaves the field or presses Enter. */
export function TypedInput({
  id,
  value,
  invalid,
  numeric = false,
  label,
  list,
  onWrite,
}: {
  readonly id?: string;
  readonly value: unknown;
  readonly invalid: boolean;
  readonly numeric?: boolean;
  readonly label?: string;
  readonly list?: string;
  readonly onWrite: (text: string) => void;
}) {
  const shown = value === undefined || value === null ? "" : String(value);
  const [typed, setTyped] = useState<string | null>(null);
  const write = () => {
    if (typed !== null && typed !== shown) onWrite(typed);
    setTyped(null);
  };
  return (
    <input
      {...(id === undefined ? {} : { id })}
      {...(label === undefined ? {} : { "aria-label": label })}
      {...(list === undefined ? {} : { list })}
      value={typed ?? shown}
      inputMode={numeric ? "decimal" : "text"}
      autoComplete="off"
      aria-invalid={invalid}
      onChange={({ target }) => setTyped(target.value)}
      onBlur={write}
      onKeyDown={({ key }) => key === "Enter" && write()}
    />
  );
}
