import { useState } from "react";
import { Button, Label, TextArea, TextField } from "react-aria-components";
import { Leaf } from "../parts/leaf.tsx";

/** Putting in what the plan keeps out asks for the reason; it goes into the note. */
export function ForceLeaf({
  open,
  name,
  onClose,
  onWhy,
}: {
  readonly open: boolean;
  readonly name: string;
  readonly onClose: () => void;
  readonly onWhy: (why: string) => void;
}) {
  const [words, setWords] = useState("");
  return (
    <Leaf open={open} onClose={onClose} label={`Why put in ${name}?`}>
      <h2>You decide. Why put it in?</h2>
      <p className="said">{name}. Your reason goes into the note of the session.</p>
      <TextField className="field" value={words} onChange={setWords} autoFocus>
        <Label className="label">Your reason</Label>
        <TextArea />
      </TextField>
      <div className="row">
        <Button className="press" onPress={onClose}>
          Keep it out
        </Button>
        <Button className="press filled push-end" isDisabled={words.trim() === ""} onPress={() => onWhy(words.trim())}>
          See what follows
        </Button>
      </div>
    </Leaf>
  );
}
