import { useMemo } from "react";
import type { LearnedStrength } from "../../engine/learned.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { usePlan } from "../plan/use-plan.ts";
import type { KeptPerson } from "../record/database.ts";

/** What the session taught: the strengths its evidence moved, then what the next plan makes of it. */
export function Learned({ person }: { readonly person: KeptPerson }) {
  const { kept, computing } = usePlan(person);
  const before = useMemo(
    () => ({ ...person.case, previous: (person.case.previous ?? []).slice(0, -1) }),
    [person.case],
  );
  const answer = useAnswer(person.case, "learned", [before, person.case]);
  const learned = shown(answer);
  const changes = kept?.plan.changesSinceLast ?? [];
  return (
    <section className="change learned" aria-labelledby="learned-word">
      <h2 className="change-word" id="learned-word">
        learned today
      </h2>
      {learned === null ? (
        <p className="small">
          {answer.state === "failed"
            ? "What the day taught could not be worked out."
            : "What the day taught is being worked out."}
        </p>
      ) : learned.strengths.length === 0 ? (
        <p className="said">Nothing moved: the body is as strong as it was believed.</p>
      ) : (
        <ul className="moved">
          {learned.strengths.map((strength) => (
            <Moved key={strength.name} strength={strength} />
          ))}
        </ul>
      )}
      {learned !== null && learned.from.length > 0 && (
        <details>
          <summary className="textlink">From what was seen today</summary>
          <ul>
            {learned.from.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </details>
      )}
      <h3>Next time</h3>
      {computing ? (
        <p className="small">The next session is being worked out.</p>
      ) : changes.length === 0 ? (
        <p className="said">Nothing changes: the next session is the same.</p>
      ) : (
        changes.map(({ change, because }) => (
          <p key={change} className="said">
            {change} {because}
          </p>
        ))
      )}
    </section>
  );
}

/** One strength in words, then its range before and now over one scale. */
function Moved({ strength: { sentence, figure, before, after } }: { readonly strength: LearnedStrength }) {
  const end = Math.max(1, before.high, after.high);
  const across = ({ low, high }: LearnedStrength["before"]) => ({
    insetInlineStart: `${(100 * low) / end}%`,
    inlineSize: `${Math.max(1, (100 * (high - low)) / end)}%`,
  });
  return (
    <li>
      <p className="said">{sentence}</p>
      <p className="least">{figure}</p>
      <div className="moved-scale" aria-hidden="true">
        <span className="moved-before" style={across(before)} />
        <span className="moved-after" style={across(after)} />
        <span className="moved-dot" style={{ insetInlineStart: `${(100 * after.middle) / end}%` }} />
      </div>
    </li>
  );
}
