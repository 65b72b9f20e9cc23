import type { FormState } from "./field-row.tsx";
import { TypedInput } from "./field-row.tsx";
import { readAt, readNumber, readStrength, sayStrength } from "./draft.ts";

const SIDES = ["left", "right"] as const;
export type CellKind =
  | { readonly kind: "strength" }
  | { readonly kind: "degrees" }
  | { readonly kind: "choice"; readonly codes: readonly string[] };

/** A finding for either side of the body, row by row. */
export function SideTable({
  title,
  group,
  rows,
  trunk = [],
  cell,
  form,
}: {
  readonly title: string;
  readonly group: string;
  readonly rows: readonly { readonly key: string; readonly name: string }[];
  readonly trunk?: readonly { readonly key: string; readonly name: string }[];
  readonly cell: CellKind;
  readonly form: FormState;
}) {
  return (
    <table className="sides">
      <caption className="unseen">{title}</caption>
      <thead>
        <tr>
          <th scope="col">{title}</th>
          {SIDES.map((side) => (
            <th key={side} scope="col">
              {side}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, name }) => (
          <tr key={key}>
            <th scope="row">{name}</th>
            {SIDES.map((side) => (
              <td key={side}>
                <Cell label={`${name}, ${side}`} path={[group, side, key]} cell={cell} form={form} />
              </td>
            ))}
          </tr>
        ))}
        {trunk.map(({ key, name }) => (
          <tr key={key}>
            <th scope="row">{name}</th>
            <td colSpan={2}>
              <Cell label={name} path={[group, "trunk", key]} cell={cell} form={form} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Cell({
  label,
  path,
  cell,
  form,
}: {
  readonly label: string;
  readonly path: readonly string[];
  readonly cell: CellKind;
  readonly form: FormState;
}) {
  const value = readAt(form.draft, path);
  const fault = form.faults.find((each) => each.path === path.join(".") || each.path.startsWith(`${path.join(".")}.`));
  return (
    <div className="field">
      {cell.kind === "choice" ? (
        <select
          aria-label={label}
          value={typeof value === "string" ? value : ""}
          onChange={({ target }) => form.write(path, target.value === "" ? undefined : target.value)}
        >
          <option value="">not known</option>
          {cell.codes.map((code) => (
            <option key={code}>{code}</option>
          ))}
        </select>
      ) : (
        <TypedInput
          label={label}
          value={cell.kind === "strength" ? sayStrength(value) : value}
          invalid={fault !== undefined}
          {...(cell.kind === "strength" ? { list: "grades" } : { numeric: true })}
          onWrite={(text) => form.write(path, cell.kind === "strength" ? readStrength(text) : readNumber(text))}
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
