import { Button } from "react-aria-components";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import type { KeptPerson } from "../record/database.ts";
import { changePerson } from "../record/people.ts";
import { BoundsLine } from "./bounds-line.tsx";
import { OwnList } from "../own/own-list.tsx";
import { sayPath } from "../words/person-words.ts";

/** What the plan rests on: cautions once, findings that contradict each other, what is assumed, what to find out next. */
export function Belief({ person, plan }: { readonly person: KeptPerson; readonly plan: PlanAnswer }) {
  const { wishes } = person;
  const byHand =
    [...(wishes.mustHave ?? []), ...(wishes.leaveOut ?? []), ...(wishes.overrides ?? [])].length +
    (wishes.noFloor === true ? 1 : 0) +
    (wishes.startIn === undefined || wishes.startIn === null ? 0 : 1);
  return (
    <div className="belief">
      {plan.cautions.length > 0 && (
        <section>
          <h3>Care today</h3>
          <ul>
            {plan.cautions.map(({ text }) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h3>An assistant, the whole session</h3>
        <p>
          <BoundsLine person={person} activity={null} />
        </p>
      </section>
      <OwnList person={person} plan={plan} />
      {plan.contradictions.map(({ findings, believed, because }) => (
        <section key={findings.join()} className="stopbox">
          <h3>Two findings disagree</h3>
          <p>{findings.join(" / ")}</p>
          <p>
            <strong>Believed:</strong> {believed}. {because}
          </p>
        </section>
      ))}
      {plan.takeNext.length > 0 && (
        <section>
          <h3>Worth finding out next</h3>
          <ul>
            {plan.takeNext.map(({ finding, wouldChange }) => (
              <li key={finding}>
                {finding} <span className="small">{wouldChange}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {plan.assumed.length > 0 && (
        <section>
          <h3>Assumed</h3>
          <p>
            {plan.assumed.map((path, index) => (
              <span key={path}>
                {index > 0 && ", "}
                <span className="assumed">{sayPath(path)}</span>
              </span>
            ))}
            . No rung without a guard rests on it.
          </p>
        </section>
      )}
      {(plan.solver.traded ?? []).length > 0 && (
        <details>
          <summary>What was traded against what</summary>
          <ul>
            {plan.solver.traded?.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p className="small">
            Points are the planner's own weights. They compare sessions of one day and measure nothing in the person.
          </p>
        </details>
      )}
      {byHand > 0 && (
        <p>
          Changed by hand: {byHand}.{" "}
          <Button className="textlink" onPress={() => void changePerson(person.id, { wishes: {}, putIn: [] })}>
            Undo all of it
          </Button>
        </p>
      )}
    </div>
  );
}
