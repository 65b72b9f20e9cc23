import { useState } from "react";
import { Button, Link } from "react-aria-components";
import { Stepper } from "../parts/stepper.tsx";
import type { KeptPerson, KeptPlan } from "../record/database.ts";
import { changePerson } from "../record/people.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { SessionLine } from "../session-line/session-line.tsx";
import { stretchesOf } from "../session-line/stretches.ts";
import { goTo, pathOf } from "../shell/route.ts";
import { minutesOf } from "../words/person-words.ts";
import { Hold } from "./hold.tsx";
import { ItemPanel } from "./item-panel.tsx";
import { RungButtons } from "./rung-buttons.tsx";
import { ArrivePanel, BackPanel } from "./end-panels.tsx";
import { Belief } from "./belief.tsx";
import { sayLine, sayToday, wordsOfStretches } from "./plan-words.ts";
import { useCatalogue, usePlan } from "./use-plan.ts";
import "./plan.css";

/** Today's session: what is the same, what has changed and why, the line, and the touched stretch of it. */
export function PlanView({ person }: { readonly person: KeptPerson }) {
  const { kept, computing, trouble } = usePlan(person);
  if (kept === null)
    return (
      <div role="status">
        <h1>{trouble === null ? "Working out today's session." : "Today's session could not be worked out."}</h1>
        <p className="said">{trouble ?? "Each rung is computed for this body. A few seconds."}</p>
      </div>
    );
  return (
    <>
      <p className="least" role="status">
        {computing ? "The last plan. A new one is being worked out." : (trouble ?? "")}
      </p>
      {kept.plan.hold === null ? (
        kept.plan.items.length === 0 ? (
          <NothingFits person={person} kept={kept} />
        ) : (
          <Today person={person} kept={kept} />
        )
      ) : (
        <Hold person={person} plan={kept.plan} />
      )}
    </>
  );
}

function Today({ person, kept }: { readonly person: KeptPerson; readonly kept: KeptPlan }) {
  const { plan } = kept;
  const catalogue = useCatalogue(person);
  const stretches = stretchesOf(plan);
  const [touched, setTouched] = useState(1);
  const at = Math.min(touched, stretches.length - 1);
  const stretch = stretches[at];
  const item = stretch?.item === null || stretch === undefined ? null : (plan.items[stretch.item] ?? null);
  const first = plan.items[0];
  const rung = item ?? (at === 0 ? first : plan.items.at(-1));
  const body = shown(
    useAnswer(
      person.case,
      "picture",
      rung === undefined || item === null
        ? null
        : [person.case, { activity: rung.activity, rung: rung.rung, kind: "line", theme: "screen", width: 300 }],
    ),
  );
  const words = wordsOfStretches(stretches, plan, catalogue);
  const isFirst = (person.case.previous ?? []).length === 0;
  return (
    <>
      <div className="plan-head">
        <div>
          {isFirst && <p className="label">First day</p>}
          <h1>{sayToday(person, plan)}</h1>
          <div className="row plan-minutes">
            <p className="small">{minutesOf(plan.workingMinutes)} working minutes of</p>
            <Stepper
              label="Whole slot in minutes"
              hideLabel
              value={person.minutes}
              min={15}
              max={120}
              step={5}
              onChange={(minutes) => void changePerson(person.id, { minutes })}
            />
          </div>
          {plan.changesSinceLast.length > SHOWN_CHANGES && (
            <details className="more-changes">
              <summary>{plan.changesSinceLast.length - SHOWN_CHANGES} more changed</summary>
              <ul>
                {plan.changesSinceLast.slice(SHOWN_CHANGES).map(({ change, because }) => (
                  <li key={change}>
                    {change} {because}
                  </li>
                ))}
              </ul>
            </details>
          )}
        </div>
        {plan.changesSinceLast.slice(0, SHOWN_CHANGES).map(({ change, because }) => (
          <section key={change} className="change">
            <p className="change-word">changed</p>
            <p className="said">
              {change} {firstSentence(because)}
            </p>
          </section>
        ))}
        <SignLeads person={person} />
      </div>
      <SessionLine
        stretches={stretches}
        words={words}
        minutes={Math.max(person.minutes, plan.minutes)}
        summary={sayLine(plan, catalogue)}
        touched={at}
        onTouch={setTouched}
        body={item === null ? null : body}
        floorMat={person.case.place === "floorMat"}
      >
        {item !== null && stretch !== undefined ? (
          <ItemPanel
            person={person}
            item={item}
            ways={stretch.ways}
            helperMoves={plan.helperMoves.filter(({ beforeItem }) => beforeItem === stretch.item)}
          />
        ) : at === 0 ? (
          <ArrivePanel person={person} plan={plan} />
        ) : (
          <BackPanel plan={plan} ways={stretch?.ways ?? []} />
        )}
      </SessionLine>
      <Belief person={person} plan={plan} />
      <div className="bar no-print">
        {item !== null && <RungButtons person={person} item={item} />}
        <Link className="press" href={pathOf({ view: "why", person: person.id })}>
          Why not…
        </Link>
        <Button
          className="press push"
          onPress={() => goTo(`${pathOf({ view: "papers", person: person.id })}#therapist`)}
        >
          Print the sheet
        </Button>
        <Link className="press filled" href={pathOf({ view: "mat", person: person.id })}>
          Start at the mat
        </Link>
      </div>
    </>
  );
}

/** Changes that stand beside the day's sentence; the others unfold. */
const SHOWN_CHANGES = 2;

function firstSentence(text: string): string {
  return /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text;
}

/** Where a sign decides how one guards, it comes first. */
function SignLeads({ person }: { readonly person: KeptPerson }) {
  const { signs, person: body, weakSide } = person.case;
  const she = body.sex === "female" ? "She" : "He";
  const her = body.sex === "female" ? "her" : "him";
  const side = weakSide === "left" || weakSide === "right" ? weakSide : null;
  const lines = [
    ...(signs?.pushing === "mild" || signs?.pushing === "marked"
      ? [
          `${she} pushes. Stay at ${side === null ? "the weak side" : `the ${side}`}. Do not push back: show ${her} what is upright.`,
        ]
      : []),
    ...(signs?.neglect === "mild" || signs?.neglect === "marked"
      ? [`${she} misses the ${side ?? "weak"} side. Look for the weak arm before every move.`]
      : []),
    ...(signs?.impulsive === true ? [`${she} moves before the word. A hand on before you speak.`] : []),
    ...(signs?.faints === true ? [`${she} may faint. Up in stages, and measure.`] : []),
  ];
  if (lines.length === 0) return null;
  return (
    <section className="stopbox sign-leads">
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}

function NothingFits({ person, kept }: { readonly person: KeptPerson; readonly kept: KeptPlan }) {
  return (
    <>
      <h1>Nothing fits today.</h1>
      <p className="said">
        No rung passes in {person.minutes} minutes with what is known. Each one says why it is out.
      </p>
      <Belief person={person} plan={kept.plan} />
      <div className="bar no-print">
        <Stepper
          label="Whole slot in minutes"
          value={person.minutes}
          min={15}
          max={120}
          step={5}
          onChange={(minutes) => void changePerson(person.id, { minutes })}
        />
        <Link className="press filled push" href={pathOf({ view: "why", person: person.id })}>
          Why not…
        </Link>
      </div>
    </>
  );
}
