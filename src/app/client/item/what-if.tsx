import { useEffect, useId, useRef, useState } from "react";
import { Button } from "react-aria-components";
import type { RungName } from "../../engine/engine.ts";
import type { WeighedRung, WhatIfChoice } from "../../engine/what-if.ts";
import { askBeside, askNewest, endBeside } from "../computing/ask.ts";
import type { KeptPerson } from "../record/database.ts";
import { changePerson } from "../record/people.ts";
import { EffortBar } from "./effort-bar.tsx";
import { OutlineSketch } from "./outline-sketch.tsx";
import { linesOf, sayFollows } from "./what-if-words.ts";
import "./what-if.css";

/** Quiet time before what followed is read out. */
const PAUSE = 700;

/** One finding moved by hand, and what follows of this rung as it moves. The findings themselves stay as they are. */
export function WhatIf({ person, of }: { readonly person: KeptPerson; readonly of: RungName }) {
  const { case: file } = person;
  const { activity, rung } = of;
  const [choices, setChoices] = useState<readonly WhatIfChoice[] | null>(null);
  const [found, setFound] = useState<WeighedRung | null>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  const [value, setValue] = useState<string | null>(null);
  const [now, setNow] = useState<WeighedRung | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [kept, setKept] = useState<string | null>(null);
  const [heard, setHeard] = useState("");
  const asked = useRef(0);
  const ids = { finding: useId(), slider: useId() };

  useEffect(() => {
    let current = true;
    const fail = (error: unknown) => current && setTrouble(error instanceof Error ? error.message : "unknown");
    setValue(null);
    setNow(null);
    askBeside("whatIfChoices", file, { activity, rung }).then((list) => {
      if (!current) return;
      setChoices(list);
      setChosen((before) => list.find(({ id }) => id === before)?.id ?? list[0]?.id ?? null);
    }, fail);
    askBeside("weigh", file, { activity, rung }, null).then((weighed) => current && setFound(weighed), fail);
    return () => {
      current = false;
    };
  }, [file, activity, rung]);
  useEffect(() => endBeside, []);

  const choice = choices?.find(({ id }) => id === chosen);
  const move = (to: string) => {
    if (choice === undefined) return;
    setValue(to);
    setKept(null);
    asked.current += 1;
    const own = asked.current;
    askNewest("weigh", file, of, { finding: choice.id, value: to }).then(
      (weighed) => {
        if (weighed !== null && own === asked.current) setNow(weighed);
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : "unknown"),
    );
  };
  const back = () => {
    asked.current += 1;
    setValue(null);
    setNow(null);
    setHeard("Back to what was found.");
  };
  const keep = async () => {
    if (choice === undefined || value === null) return;
    const words = choice.values.find(({ id }) => id === value)?.words ?? value;
    const moved = await askBeside("moveFinding", file, { finding: choice.id, value });
    setKept(`${choice.name}: ${words}. Written as a finding; the plan is worked out again from it.`);
    await changePerson(person.id, { case: moved });
  };
  const shownRung = now ?? found;
  const lines = found === null || shownRung === null ? [] : linesOf(found, shownRung);
  const follows = choice === undefined || value === null || now === null ? "" : sayFollows(choice, value, lines, now);
  useEffect(() => {
    if (follows === "") return;
    const timer = setTimeout(() => setHeard(follows), PAUSE);
    return () => clearTimeout(timer);
  }, [follows]);

  if (trouble !== null) return <p className="small">What follows could not be worked out: {trouble}</p>;
  if (choices === null || found === null || shownRung === null)
    return <p className="small">The body is being made ready to move a finding. A few seconds.</p>;
  if (choice === undefined) return <p className="said">No finding that could be moved bears on this rung.</p>;
  const at = choice.values.findIndex(({ id }) => id === (value ?? choice.found));
  const words =
    value === null ? choice.foundWords : (choice.values.find(({ id }) => id === value)?.words ?? choice.foundWords);
  return (
    <div className="what-if">
      <div className="what-if-hand">
        <label className="label" htmlFor={ids.finding}>
          Move one finding
        </label>
        <select
          id={ids.finding}
          value={choice.id}
          onChange={(event) => {
            setChosen(event.target.value);
            back();
            setHeard("");
          }}
        >
          {choices.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
        <label className="label" htmlFor={ids.slider}>
          {choice.name}
        </label>
        <input
          id={ids.slider}
          type="range"
          min={0}
          max={choice.values.length - 1}
          step={1}
          value={at < 0 ? Math.floor(choice.values.length / 2) : at}
          aria-valuetext={value === null ? choice.foundWords : `${words}, ${choice.foundWords}`}
          data-unset={at < 0 || undefined}
          onChange={(event) => {
            const to = choice.values[Number(event.target.value)];
            if (to !== undefined) move(to.id);
          }}
        />
        <p className="what-if-value">
          <strong>{words}</strong>
          {value !== null && <span className="small">, {choice.foundWords}</span>}
        </p>
      </div>
      {now !== null && now.setAside !== null && <p className="said">{now.setAside}</p>}
      <div className="what-if-follows">
        <dl>
          {lines.map(({ id, name, now: said, figure, before }) => (
            <div key={id} className={before === null ? "what-if-line" : "what-if-line other"}>
              <dt>{name}</dt>
              <dd>
                <span className="said">{said}</span>
                {figure !== null && <span className="least">{figure}</span>}
                {id === "effort" && shownRung.effort !== null && shownRung.effort.peak.high > 0 && (
                  <EffortBar peak={shownRung.effort.peak} sentence={shownRung.effort.sentence} />
                )}
                {before !== null && (
                  <span className="small">
                    <span className="change-word">other</span> As found: {before}
                  </span>
                )}
              </dd>
            </div>
          ))}
        </dl>
        <OutlineSketch found={found.outline} now={shownRung.outline} />
      </div>
      <p className="unseen" role="status">
        {kept ?? heard}
      </p>
      <div className="row">
        <Button className="press" isDisabled={value === null} onPress={back}>
          Back to what was found
        </Button>
        <Button
          className="press"
          isDisabled={value === null || value === choice.found || now === null}
          onPress={() => void keep()}
        >
          I found this: write it down
        </Button>
      </div>
      <p className="small">
        {kept ?? "Moved only here, to see what follows. Nothing is written until you say you found it."}
      </p>
    </div>
  );
}
