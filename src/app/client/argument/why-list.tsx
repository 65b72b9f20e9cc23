import { useState } from "react";
import { Input, Label, Link, TextField } from "react-aria-components";
import type { KeptPerson } from "../record/database.ts";
import { useCatalogue, usePlan } from "../plan/use-plan.ts";
import { pathOf } from "../shell/route.ts";
import "./argument.css";

/** Everything that is not in today's plan, by position, each to be asked about. */
export function WhyList({ person }: { readonly person: KeptPerson }) {
  const plan = usePlan(person).kept?.plan ?? null;
  const catalogue = useCatalogue(person);
  const [typed, setTyped] = useState("");
  if (plan === null || catalogue === null) return <p className="small">One moment.</p>;
  const isIn = (activity: string, rung: string) =>
    plan.items.some((item) => item.activity === activity && item.rung === rung);
  const outOf = new Map(plan.excluded.map((each) => [`${each.activity}/${each.rung}`, each.because[0]?.detail ?? ""]));
  const wanted = typed.trim().toLowerCase();
  const positions = catalogue.positions.map((position) => ({
    position,
    activities: catalogue.activities.filter(
      (activity) =>
        activity.position === position.id &&
        `${activity.name} ${activity.rungs.map(({ name }) => name).join(" ")} ${position.name}`
          .toLowerCase()
          .includes(wanted),
    ),
  }));
  return (
    <>
      <Link className="textlink" href={pathOf({ view: "plan", person: person.id })}>
        Back to the plan
      </Link>
      <h1>Why not…</h1>
      <TextField className="field why-field" value={typed} onChange={setTyped}>
        <Label className="label">Which one?</Label>
        <Input placeholder="hands and knees" autoComplete="off" />
      </TextField>
      <div className="why-columns">
        {positions
          .filter(({ activities }) => activities.length > 0)
          .map(({ position, activities }) => (
            <section key={position.id}>
              <h2>{position.name}</h2>
              {activities.map((activity) => (
                <div key={activity.id}>
                  <h3>{activity.name}</h3>
                  <ul>
                    {activity.rungs.map(({ id, name }) => (
                      <li key={id}>
                        <Link
                          className="textlink"
                          href={pathOf({
                            view: isIn(activity.id, id) ? "item" : "argument",
                            person: person.id,
                            activity: activity.id,
                            rung: id,
                          })}
                        >
                          {name}
                        </Link>{" "}
                        <span className="least">
                          {isIn(activity.id, id) ? "in the plan" : (outOf.get(`${activity.id}/${id}`) ?? "open today")}
                        </span>
                      </li>
                    ))}
                  </ul>
                </div>
              ))}
            </section>
          ))}
      </div>
    </>
  );
}
