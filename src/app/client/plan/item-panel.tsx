import { useState } from "react";
import { Checkbox, CheckboxGroup, Label, Link } from "react-aria-components";
import type { PlanAnswer, PlanItemAnswer } from "../../contract/plan-answer.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { Figure } from "../parts/figure.tsx";
import { Legend } from "../parts/legend.tsx";
import type { KeptPerson } from "../record/database.ts";
import { pathOf } from "../shell/route.ts";
import { sayDose } from "../words/dose-words.ts";
import { AboveFigure, type MarkedLine } from "./above-figure.tsx";
import { BoundsLine } from "./bounds-line.tsx";
import { useTicks } from "./ticks.ts";

const ITEM_WIDTH = 420;
const ABOVE = { width: 400, height: 280 } as const;

/** One item as it is done: pictures, places, words, dose, what to see, when to stop. No figure of effort here. */
export function ItemPanel({
  person,
  item,
  ways,
  helperMoves,
}: {
  readonly person: KeptPerson;
  readonly item: PlanItemAnswer;
  readonly ways: readonly PlanAnswer["transitions"][number][];
  readonly helperMoves: PlanAnswer["helperMoves"];
}) {
  const { activity, rung } = item;
  const of = { activity, rung };
  const sheet = shown(useAnswer(person.case, "sheet", [person.case, of]));
  const picture = useAnswer(person.case, "picture", [
    person.case,
    { ...of, kind: "item", theme: "screen", width: ITEM_WIDTH },
  ]);
  const above = useAnswer(person.case, "picture", [
    person.case,
    { ...of, kind: "above", theme: "screen", width: ABOVE.width, height: ABOVE.height },
  ]);
  const [ticks, setTicks] = useTicks(person.id, of);
  const [marked, setMarked] = useState<MarkedLine | null>(null);
  const underlined = (line: MarkedLine) => (marked === line ? "marked" : "");
  const name = sheet !== null && sheet.activity === activity && sheet.rung === rung ? sheet.name : "";
  return (
    <div className="item">
      <Figure answer={picture} wait="The picture is being drawn" className="item-picture" />
      <AboveFigure answer={above} marked={marked} onMark={setMarked} />
      <div className="item-words">
        <div className="item-title">
          <h2>{name}</h2>
          <Link className="textlink" href={pathOf({ view: "item", person: person.id, activity, rung })}>
            All of it
          </Link>
        </div>
        {sheet !== null && <p className="said">{sheet.asks[0]?.sentence ?? sheet.purpose}</p>}
        {sheet !== null && (
          <dl className="pairs">
            <dt>Your place</dt>
            <dd className={underlined("place")}>
              {sheet.yourPlace}
              {sheet.yourKnee === null ? "" : ` ${sheet.yourKnee}`}
            </dd>
            <dt>Your hands</dt>
            <dd className={underlined("hands")}>
              {sheet.yourHands.length === 0 ? "Ready, not touching." : joinHands(sheet.yourHands)}
            </dd>
            <dt>Say</dt>
            <dd className="say">“{sheet.say}”</dd>
            <dt>Good is</dt>
            <dd>{sheet.good}</dd>
            <dt>How much</dt>
            <dd>{sayDose(item.dose)}</dd>
            <dt>Assistant</dt>
            <dd>
              <BoundsLine key={activity} person={person} activity={activity} />
            </dd>
          </dl>
        )}
      </div>
      {sheet !== null && (
        <div className="item-ticks">
          <p className="cue">{sheet.cue}</p>
          <CheckboxGroup value={[...ticks]} onChange={setTicks}>
            <Label className="label">Tick if you see it</Label>
            {sheet.faults.map(({ id, fault, do: mend }) => (
              <div key={id}>
                <Checkbox value={id} className="tick">
                  <span className="box" />
                  {fault}
                </Checkbox>
                {ticks.includes(id) && <p className="mend">{mend}</p>}
              </div>
            ))}
          </CheckboxGroup>
        </div>
      )}
      {sheet !== null && (
        <p className="stopbox item-stop">
          <strong>Stop</strong>{" "}
          {sheet.stopSigns.length === 0
            ? "at pain or a joint that gives way."
            : `${sheet.stopSigns.join("; ").replace(/\.$/, "")}.`}{" "}
          <strong>Way out</strong>{" "}
          <span className={underlined("wayOut")}>{(sheet.wayOut.planned[0] ?? "").replace(/\.?$/, ".")}</span>{" "}
          <strong>In a hurry</strong>{" "}
          <span className={underlined("wayOutHurry")}>{(sheet.wayOut.hurry[0] ?? "").replace(/\.?$/, ".")}</span>
        </p>
      )}
      <div className="item-legend">
        <Legend />
      </div>
      {(ways.length > 0 || helperMoves.length > 0) && (
        <section className="item-moves">
          <h3>Before it</h3>
          {helperMoves.map(({ words }) => (
            <p key={words}>
              <strong>You</strong> {words}
            </p>
          ))}
          {ways.map(({ id, steps, minutes }) => (
            <div key={id}>
              <p className="label">
                {minutes} {minutes === 1 ? "minute" : "minutes"}
              </p>
              <ol>
                {steps.map((step) => (
                  <li key={step}>{step}</li>
                ))}
              </ol>
            </div>
          ))}
        </section>
      )}
    </div>
  );
}

/** Each hand with its words, in one sentence. */
function joinHands(hands: readonly string[]): string {
  const plain = hands.map((hand, index) =>
    (index === 0 ? hand : hand.charAt(0).toLowerCase() + hand.slice(1)).replace(/\.$/, ""),
  );
  return `${plain.join("; ")}.`;
}
