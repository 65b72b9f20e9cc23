import { useState } from "react";
import { Button, Input, Label, TextArea, TextField } from "react-aria-components";
import { Leaf } from "./leaf.tsx";

/** What was found and what was done, to be recorded. */
export function IncidentLeaf({
  open,
  onClose,
  what,
  onRecord,
}: {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly what: string;
  readonly onRecord: (what: string, done: string) => void;
}) {
  const [words, setWords] = useState(what);
  const [done, setDone] = useState("");
  return (
    <Leaf open={open} onClose={onClose} label="Who was called">
      <h2>Who was called, and what was said?</h2>
      <TextField className="field" value={words} onChange={setWords}>
        <Label className="label">What was found</Label>
        <Input />
      </TextField>
      <TextField className="field" value={done} onChange={setDone}>
        <Label className="label">What was done</Label>
        <TextArea />
      </TextField>
      <div className="row">
        <Button className="press" onPress={onClose}>
          Back
        </Button>
        <Button
          className="press filled push-end"
          isDisabled={words.trim() === ""}
          onPress={() => onRecord(words.trim(), done.trim())}
        >
          Record it
        </Button>
      </div>
    </Leaf>
  );
}
