import { Button, Group, Input, Label, NumberField } from "react-aria-components";

/** A number with a large minus and plus. */
export function Stepper({
  label,
  value,
  step = 1,
  min,
  max,
  hideLabel = false,
  onChange,
}: {
  readonly label: string;
  readonly value: number;
  readonly step?: number;
  readonly min: number;
  readonly max: number;
  readonly hideLabel?: boolean;
  readonly onChange: (value: number) => void;
}) {
  return (
    <NumberField
      className="stepper"
      value={value}
      minValue={min}
      maxValue={max}
      step={step}
      onChange={(next) => Number.isFinite(next) && onChange(next)}
    >
      <Label className={hideLabel ? "unseen" : "label"}>{label}</Label>
      <Group>
        <Button slot="decrement">−</Button>
        <Input />
        <Button slot="increment">+</Button>
      </Group>
    </NumberField>
  );
}
