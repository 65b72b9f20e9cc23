import { useEffect, useId, useRef, useState } from "react";
import { Button, Checkbox, Input, Label, TextField } from "react-aria-components";
import type { RungName, RungSheet } from "../../engine/engine.ts";
import type { OwnStart, OwnTrial } from "../../engine/own-rung.ts";
import { ask, askBeside, askNewest, endBeside } from "../computing/ask.ts";
import { DrawnFigure } from "../parts/figure.tsx";
import { Leaf } from "../parts/leaf.tsx";
import { Stepper } from "../parts/stepper.tsx";
import type { KeptPerson } from "../record/database.ts";
import { ladderOf } from "../mat/next-set.ts";
import { useCatalogue } from "../plan/use-plan.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { goTo } from "../shell/route.ts";
import { HOW, LIMBS, missing, type OwnDraft, ownRungOf, sayChanges, startDraft } from "./own-draft.ts";
import "./own.css";

const WIDTH = 420;

/** A therapist's own rung made from this one: what changes, its words and dose; posed and weighed while it is written. */
export function OwnLeaf({
  person,
  of,
  sheet,
  onClose,
}: {
  readonly person: KeptPerson;
  readonly of: RungName;
  readonly sheet: RungSheet;
  readonly onClose: () => void;
}) {
  const [start, setStart] = useState<OwnStart | null>(null);
  const [draft, setDraft] = useState<OwnDraft | null>(null);
  const [trial, setTrial] = useState<OwnTrial | null>(null);
  const [instead, setInstead] = useState(true);
  const asked = useRef(0);
  const catalogue = useCatalogue(person);
  const { case: file } = person;
  const { activity, rung } = of;
  useEffect(() => {
    let current = true;
    void askBeside("ownStart", file, { activity, rung }).then((found) => {
      if (!current || found === null) return;
      setStart(found);
      setDraft(startDraft(found, sheet));
    });
    return () => {
      current = false;
    };
  }, [file, activity, rung, sheet]);
  useEffect(() => endBeside, []);
  const id = nextId(person);
  const posed = draft === null || start === null ? null : JSON.stringify(poseOnly(draft, start));
  // biome-ignore lint/correctness/useExhaustiveDependencies: tried again only when the pose changes, not with each letter typed
  useEffect(() => {
    if (draft === null || start === null) return;
    asked.current += 1;
    const own = asked.current;
    void askNewest("tryOwnRung", file, ownRungOf({ ...draft, words: "Now", cue: "now" }, start, of, id), WIDTH).then(
      (answer) => {
        if (answer !== null && own === asked.current) setTrial(answer);
      },
    );
  }, [posed]);

  const write = async () => {
    if (draft === null || start === null) return;
    const own = ownRungOf(draft, start, of, id);
    const answer = await ask("tryOwnRung", file, own, WIDTH);
    if (!answer.posed) return setTrial(answer);
    const name = { activity: id, rung: id };
    const { wishes } = person;
    await changePerson(person.id, {
      case: { ...file, ownRungs: [...(file.ownRungs ?? []), own] },
      ...(instead
        ? {
            wishes: {
              ...wishes,
              mustHave: [...(wishes.mustHave ?? []).filter((each) => each.activity !== activity), name],
              leaveOut: [
                ...(wishes.leaveOut ?? []).filter((each) => each.activity !== activity),
                ...ladderOf(catalogue, activity).map((each) => ({ activity, rung: each })),
              ],
            },
          }
        : {}),
    });
    await writeVersion(person.id);
    onClose();
    goTo({ view: instead ? "plan" : "item", person: person.id, ...name });
  };
  return (
    <Leaf open onClose={onClose} label="A rung of your own" className="own-leaf">
      <h2>A rung of your own, from “{sheet.name}”</h2>
      {draft === null || start === null ? (
        <p className="small">The rung is being made ready. A few seconds.</p>
      ) : (
        <div className="own">
          <div className="own-seen">
            <Seen trial={trial} />
          </div>
          <div className="own-fields">
            <Pose draft={draft} start={start} onChange={setDraft} />
            <p className="small" role="status">
              {sayChanges(draft, start)}
            </p>
            <Words draft={draft} start={start} onChange={setDraft} />
          </div>
        </div>
      )}
      <div className="row">
        <Button className="press" onPress={onClose}>
          Back
        </Button>
        <Checkbox className="tick" isSelected={instead} onChange={setInstead}>
          <span className="box" />
          Today, in place of this ladder
        </Checkbox>
        <Button
          className="press filled push-end"
          isDisabled={draft === null || start === null || missing(draft, start) !== null || trial?.posed !== true}
          onPress={() => void write()}
        >
          Keep it for this person
        </Button>
      </div>
      {draft !== null && start !== null && <p className="small">{missing(draft, start)}</p>}
    </Leaf>
  );
}

/** The picture and the verdict, or why it cannot be posed. */
function Seen({ trial }: { readonly trial: OwnTrial | null }) {
  if (trial === null) return <p className="small">It is being posed.</p>;
  if (!trial.posed)
    return (
      <div className="stopbox" role="status">
        <h3>It cannot be posed so.</h3>
        <p className="said">{trial.because}</p>
      </div>
    );
  const { weighed, picture, mind } = trial;
  return (
    <>
      <DrawnFigure picture={picture} />
      <p className="said" role="status">
        {weighed.effort?.sentence ?? ""} {weighed.verdict}
      </p>
      <p className="least">
        {weighed.effort?.figure} {weighed.help} {weighed.least}
      </p>
      {mind.map((line) => (
        <p key={line} className="small">
          {line}
        </p>
      ))}
    </>
  );
}

interface Part {
  readonly draft: OwnDraft;
  readonly start: OwnStart;
  readonly onChange: (draft: OwnDraft) => void;
}

/** The four things that may change: an angle, a free limb, a support, where the weight is. */
function Pose({ draft, start, onChange }: Part) {
  const ids = { angle: useId(), degrees: useId(), limb: useId(), part: useId(), how: useId(), weight: useId() };
  const angle = draft.angle === null ? undefined : start.angles[draft.angle];
  return (
    <>
      <div className="field">
        <label className="label" htmlFor={ids.angle}>
          A joint is set
        </label>
        <select
          id={ids.angle}
          className="choose"
          value={draft.angle ?? ""}
          onChange={({ target }) => {
            const at = target.value === "" ? null : Number(target.value);
            onChange({ ...draft, angle: at, degrees: at === null ? 0 : (start.angles[at]?.degrees ?? 0) });
          }}
        >
          <option value="">all as they are</option>
          {start.angles.map(({ name, degrees }, index) => (
            <option key={name} value={index}>
              {name}: {degrees}
            </option>
          ))}
        </select>
      </div>
      {angle !== undefined && (
        <div className="field">
          <label className="label" htmlFor={ids.degrees}>
            {angle.name}: {draft.degrees} degrees, was {angle.degrees}
          </label>
          <input
            id={ids.degrees}
            type="range"
            min={angle.least}
            max={angle.most}
            step={1}
            value={draft.degrees}
            aria-valuetext={`${draft.degrees} degrees`}
            onChange={({ target }) => onChange({ ...draft, degrees: Number(target.value) })}
          />
        </div>
      )}
      <div className="field">
        <label className="label" htmlFor={ids.limb}>
          A limb is free
        </label>
        <select
          id={ids.limb}
          className="choose"
          value={draft.limbFree ?? ""}
          onChange={({ target }) =>
            onChange({ ...draft, limbFree: LIMBS.find(({ id }) => id === target.value)?.id ?? null })
          }
        >
          <option value="">none more</option>
          {LIMBS.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label className="label" htmlFor={ids.part}>
          A support changes
        </label>
        <select
          id={ids.part}
          className="choose"
          value={draft.part ?? ""}
          onChange={({ target }) => onChange({ ...draft, part: target.value === "" ? null : target.value })}
        >
          <option value="">all as they are</option>
          {start.supports.map(({ part, name, how }) => (
            <option key={part} value={part}>
              {name}, {HOW.find(({ id }) => id === how)?.name}
            </option>
          ))}
        </select>
      </div>
      {draft.part !== null && (
        <div className="field">
          <label className="label" htmlFor={ids.how}>
            It
          </label>
          <select
            id={ids.how}
            className="choose"
            value={draft.how}
            onChange={({ target }) =>
              onChange({ ...draft, how: HOW.find(({ id }) => id === target.value)?.id ?? "rest" })
            }
          >
            {HOW.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
      )}
      <div className="field">
        <label className="label" htmlFor={ids.weight}>
          Weight:{" "}
          {draft.weightToWeakCm === 0
            ? "in the middle"
            : `${Math.abs(draft.weightToWeakCm)} cm to the ${draft.weightToWeakCm < 0 ? "strong" : "weak"} side`}
        </label>
        <input
          id={ids.weight}
          type="range"
          min={-12}
          max={12}
          step={1}
          value={draft.weightToWeakCm}
          aria-valuetext={`${draft.weightToWeakCm} centimetres toward the weak side`}
          onChange={({ target }) => onChange({ ...draft, weightToWeakCm: Number(target.value) })}
        />
      </div>
    </>
  );
}

function Words({ draft, start, onChange }: Part) {
  const text = (label: string, key: "name" | "words" | "cue" | "by", most: number) => (
    <TextField className="field" value={draft[key]} onChange={(value) => onChange({ ...draft, [key]: value })}>
      <Label className="label">{label}</Label>
      <Input autoComplete="off" maxLength={most} />
    </TextField>
  );
  return (
    <>
      {text("Name", "name", 80)}
      {text("Say, at most six words", "words", 60)}
      {text("Cue, one word", "cue", 20)}
      {text("Written by", "by", 80)}
      <Stepper label="Sets" value={draft.sets} min={1} max={10} onChange={(sets) => onChange({ ...draft, sets })} />
      <Stepper
        label={start.dose.repetitions === null ? "Seconds held" : "Repetitions"}
        value={draft.count}
        min={1}
        max={start.dose.repetitions === null ? 120 : 50}
        onChange={(count) => onChange({ ...draft, count })}
      />
    </>
  );
}

const poseOnly = ({ angle, degrees, limbFree, part, how, weightToWeakCm, sets, count }: OwnDraft, start: OwnStart) => [
  angle === null || start.angles[angle]?.degrees === degrees ? null : [angle, degrees],
  limbFree,
  part === null ? null : [part, how],
  weightToWeakCm,
  sets,
  count,
];

/** The next unused identifier of an own rung. */
function nextId({ case: file }: KeptPerson): string {
  const used = new Set((file.ownRungs ?? []).map(({ id }) => id));
  let number = used.size + 1;
  while (used.has(`own-${number}`)) number += 1;
  return `own-${number}`;
}
