import { useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import { Leaf } from "../parts/leaf.tsx";

/** A call from the mat: about what, whether it may go on so, and what was said. */
export interface Called {
  readonly about: string;
  readonly allowed: boolean;
  readonly said?: string;
}

/** The therapist is called, and what they say is written down with it. Without them nothing goes beyond the bounds. */
export function CallLeaf({
  about,
  onBack,
  onCalled,
}: {
  readonly about: string;
  readonly onBack: () => void;
  readonly onCalled: (call: Called) => void;
}) {
  const [said, setSaid] = useState("");
  const call = (allowed: boolean) => onCalled({ about, allowed, ...(said.trim() === "" ? {} : { said: said.trim() }) });
  return (
    <Leaf open onClose={onBack} label="Call the therapist" className="call-leaf">
      <h2>Call the therapist.</h2>
      <p className="said">
        {about.charAt(0).toUpperCase()}
        {about.slice(1)}. Stay with the person; do not go on until somebody has come or answered.
      </p>
      <TextField className="field" value={said} onChange={setSaid}>
        <Label className="label">Who came, and what was said</Label>
        <Input autoComplete="off" maxLength={500} />
      </TextField>
      <div className="quite-foot">
        <Button className="press mat-other" onPress={onBack}>
          Back
        </Button>
        <Button className="press mat-other" onPress={() => call(false)}>
          Nobody came, or no: leave it
        </Button>
        <Button className="press filled mat-done" isDisabled={said.trim() === ""} onPress={() => call(true)}>
          It may go on
        </Button>
      </div>
    </Leaf>
  );
}
