import { Checkbox, CheckboxGroup, Label } from "react-aria-components";
import { isDraft, readAt } from "./draft.ts";
import type { FormState } from "./field-row.tsx";

/** A list of codes to be ticked; an entry that carries more than its code keeps it. */
export function CodeList({
  title,
  path,
  codes,
  form,
}: {
  readonly title: string;
  readonly path: string;
  readonly codes: readonly { readonly id: string; readonly title: string }[];
  readonly form: FormState;
}) {
  const value = readAt(form.draft, [path]);
  const entries: readonly unknown[] = Array.isArray(value) ? value : [];
  const codeOf = (entry: unknown): string =>
    typeof entry === "string" ? entry : isDraft(entry) ? String(entry.code) : "";
  return (
    <CheckboxGroup
      className="codes"
      value={entries.map(codeOf)}
      onChange={(chosen) => {
        const next = chosen.map((code) => entries.find((entry) => codeOf(entry) === code) ?? code);
        form.write([path], next.length === 0 ? undefined : next);
      }}
    >
      <Label className="unseen">{title}</Label>
      {codes.map(({ id, title: words }) => (
        <Checkbox key={id} value={id} className="tick">
          <span className="box" />
          {words}
        </Checkbox>
      ))}
    </CheckboxGroup>
  );
}
