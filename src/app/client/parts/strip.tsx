import { ToggleButton, ToggleButtonGroup } from "react-aria-components";

export interface StripChoice<T extends string> {
  readonly id: T;
  readonly name: string;
}

/** One choice of a few, side by side; touched again it is taken back where nothing may be chosen. */
export function Strip<T extends string>({
  label,
  choices,
  value,
  onChange,
  mayBeEmpty = true,
}: {
  readonly label: string;
  readonly choices: readonly StripChoice<T>[];
  readonly value: T | null;
  readonly onChange: (value: T | null) => void;
  readonly mayBeEmpty?: boolean;
}) {
  return (
    <ToggleButtonGroup
      className="strip"
      aria-label={label}
      selectionMode="single"
      disallowEmptySelection={!mayBeEmpty}
      selectedKeys={value === null ? [] : [value]}
      onSelectionChange={(keys) => {
        const [key] = [...keys];
        onChange(choices.find(({ id }) => id === key)?.id ?? null);
      }}
    >
      {choices.map(({ id, name }) => (
        <ToggleButton key={id} id={id}>
          {name}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
