import { useState } from "react";
import { Button, Radio, RadioGroup } from "react-aria-components";
import type { CaseFile } from "../../contract/case-file.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { DrawnFigure } from "../parts/figure.tsx";
import { Leaf } from "../parts/leaf.tsx";
import { Strip } from "../parts/strip.tsx";
import { type GaveWay, HOW, JOINTS, type LookEntry, STOPPED, type Task, TASKS } from "../words/look-words.ts";
import { bodyOnly } from "./body-case.ts";

const WIDTH = 760;
const WHICH = [
  { id: "weak", name: "weak side" },
  { id: "strong", name: "strong side" },
] as const;

/** The figure large, its seven joints to be touched: where it gave way and how. */
export function GaveWayLeaf({
  task,
  caseFile,
  entry,
  onWrite,
  onClose,
}: {
  readonly task: Task;
  readonly caseFile: CaseFile;
  readonly entry: LookEntry;
  readonly onWrite: (entry: LookEntry) => void;
  readonly onClose: () => void;
}) {
  const [other, setOther] = useState(entry.stoppedBy !== undefined);
  const body = bodyOnly(caseFile);
  const picture = shown(useAnswer(body, "lookPicture", [body, task, WIDTH]));
  const asked = TASKS.find(({ id }) => id === task)?.asked ?? task;
  const { gaveWay } = entry;
  const writeGaveWay = (change: Partial<GaveWay>) => {
    const { stoppedBy: _stoppedBy, ...rest } = entry;
    const joint = change.joint ?? gaveWay?.joint;
    if (joint !== undefined) onWrite({ ...rest, gaveWay: { side: "weak", ...gaveWay, ...change, joint } });
  };
  const clear = () => {
    const { stoppedBy: _stoppedBy, gaveWay: _gaveWay, ...rest } = entry;
    onWrite(rest);
    onClose();
  };
  return (
    <Leaf open onClose={onClose} label={`Where did ${asked} give way?`} className="gave-way">
      <div>
        <h2>Where did {asked} give way?</h2>
        <p className="small">Touch the place. Then how it went.</p>
      </div>
      {other ? (
        <div className="field">
          <span className="label">What stopped it?</span>
          <div className="row">
            {STOPPED.map(({ id, name }) => (
              <Button
                key={id}
                className={`press ${entry.stoppedBy === id ? "chosen" : ""}`}
                onPress={() => {
                  const { gaveWay: _gaveWay, ...rest } = entry;
                  onWrite({ ...rest, stoppedBy: id });
                  onClose();
                }}
              >
                {name}
              </Button>
            ))}
          </div>
        </div>
      ) : (
        <>
          <RadioGroup
            className={picture?.joints === undefined ? "joints listed" : "joints"}
            aria-label="Joint"
            value={gaveWay?.joint ?? null}
            onChange={(value) => writeGaveWay({ joint: JOINTS.find((joint) => joint === value) ?? "trunk" })}
          >
            {picture !== null && <DrawnFigure picture={picture} className="joints-figure" />}
            <Joints picture={picture} />
          </RadioGroup>
          <div className="gave-how">
            <Strip
              label="Which side"
              choices={WHICH}
              value={gaveWay?.side ?? "weak"}
              onChange={(side) => side !== null && writeGaveWay({ side })}
              mayBeEmpty={false}
            />
            <Strip
              label="How"
              choices={HOW}
              value={gaveWay?.how ?? null}
              onChange={(how) => how !== null && writeGaveWay({ how })}
            />
          </div>
        </>
      )}
      <div className="row">
        <Button className="press" onPress={() => setOther(!other)}>
          {other ? "It was a joint" : "It was something else"}
        </Button>
        <Button className="press" onPress={clear}>
          I did not see where
        </Button>
        <Button className="press filled push-end" onPress={onClose}>
          Done
        </Button>
      </div>
    </Leaf>
  );
}

function Joints({
  picture,
}: {
  readonly picture: {
    readonly svg: string;
    readonly joints?: readonly { readonly joint: string; readonly x: number; readonly y: number }[];
  } | null;
}) {
  const box = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(picture?.svg ?? "");
  const [width, height] = [Number(box?.[1] ?? 1), Number(box?.[2] ?? 1)];
  return JOINTS.map((joint) => {
    const at = picture?.joints?.find((each) => each.joint === joint);
    const style =
      at === undefined
        ? {}
        : { insetInlineStart: `${(100 * at.x) / width}%`, insetBlockStart: `${(100 * at.y) / height}%` };
    return (
      <Radio key={joint} value={joint} className={at === undefined ? "joint off-body" : "joint"} style={style}>
        <span className="joint-ring" />
        <span className="joint-name">{joint}</span>
      </Radio>
    );
  });
}
