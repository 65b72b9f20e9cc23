import { useState } from "react";
import { Button } from "react-aria-components";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import type { Wishes } from "../../engine/engine.ts";
import { useAnswer } from "../computing/use-answer.ts";
import { nameOfActivity, sayLine, wordsOfStretches } from "../plan/plan-words.ts";
import { useCatalogue } from "../plan/use-plan.ts";
import type { KeptPerson } from "../record/database.ts";
import { SessionLine } from "../session-line/session-line.tsx";
import { stretchesOf } from "../session-line/stretches.ts";
import { sayDifference } from "./difference.ts";

/** The order that would follow, over the old one dashed; taken only by hand. */
export function Preview({
  person,
  plan,
  trial,
  onTake,
  onUndo,
}: {
  readonly person: KeptPerson;
  readonly plan: PlanAnswer;
  readonly trial: Wishes | null;
  readonly onTake: () => void;
  readonly onUndo: () => void;
}) {
  const catalogue = useCatalogue(person);
  const answer = useAnswer(person.case, "plan", trial === null ? null : [person.case, person.minutes, trial]);
  const [touched, setTouched] = useState(1);
  const next = trial === null ? plan : answer.state === "there" ? answer.value : null;
  const shownPlan = next ?? plan;
  const stretches = stretchesOf(shownPlan);
  const at = Math.min(touched, stretches.length - 1);
  const stretch = stretches[at];
  const item = stretch?.item === null || stretch === undefined ? undefined : shownPlan.items[stretch.item];
  const old = new Set(plan.items.map(({ activity, rung }) => `${activity}/${rung}`));
  const words = wordsOfStretches(stretches, shownPlan, catalogue).map((each, index) => {
    const number = stretches[index]?.item;
    const planned = number === null || number === undefined ? undefined : shownPlan.items[number];
    return {
      ...each,
      changed: trial !== null && planned !== undefined && !old.has(`${planned.activity}/${planned.rung}`),
    };
  });
  const name = (activity: string) => nameOfActivity(catalogue, activity);
  const impossible = next !== null && next.items.length === 0;
  return (
    <>
      {stretches.length > 0 && (
        <SessionLine
          stretches={stretches}
          words={words}
          minutes={Math.max(person.minutes, shownPlan.minutes)}
          summary={sayLine(shownPlan, catalogue)}
          touched={at}
          onTouch={setTouched}
          body={null}
          before={trial === null ? null : stretchesOf(plan)}
          floorMat={person.case.place === "floorMat"}
        >
          <p className="small">
            {item === undefined ? words[at]?.name : `${name(item.activity)}: ${item.because[0] ?? item.purpose}`}
          </p>
        </SessionLine>
      )}
      <div className={trial === null ? "argument-foot" : "argument-foot bar"}>
        <p className="said" aria-live="polite">
          {trial === null
            ? ""
            : next === null
              ? answer.state === "failed"
                ? "This order could not be worked out."
                : "Working out the order that follows."
              : impossible
                ? "No session keeps to that today."
                : sayDifference(plan, next, name)}
          {trial !== null && next !== null && !impossible && <span className="least"> Dashed: the order before.</span>}
        </p>
        {trial !== null && (
          <div className="row push">
            <Button className="press" onPress={onUndo}>
              Undo
            </Button>
            <Button className="press filled" isDisabled={next === null || impossible} onPress={onTake}>
              Take this order
            </Button>
          </div>
        )}
      </div>
    </>
  );
}
