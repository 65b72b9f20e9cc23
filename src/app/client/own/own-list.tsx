import { Button, Link } from "react-aria-components";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import type { KeptPerson } from "../record/database.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { pathOf } from "../shell/route.ts";

/** The rungs written for this person: each in today's plan, to be put in, or out with its reason a touch away. */
export function OwnList({ person, plan }: { readonly person: KeptPerson; readonly plan: PlanAnswer }) {
  const own = person.case.ownRungs ?? [];
  if (own.length === 0) return null;
  const { wishes } = person;
  const putIn = (id: string) =>
    changePerson(person.id, {
      wishes: { ...wishes, mustHave: [...(wishes.mustHave ?? []), { activity: id, rung: id }] },
    });
  const takeAway = async (id: string) => {
    const { ownRungs: _all, ...rest } = person.case;
    const others = own.filter((each) => each.id !== id);
    await changePerson(person.id, {
      case: others.length === 0 ? rest : { ...rest, ownRungs: others },
      wishes: { ...wishes, mustHave: (wishes.mustHave ?? []).filter(({ activity }) => activity !== id) },
    });
    await writeVersion(person.id);
  };
  return (
    <section>
      <h3>Own rungs of this person</h3>
      <ul>
        {own.map(({ id, name, changes, by, at }) => {
          const planned = plan.items.some(({ activity }) => activity === id);
          const open = plan.available.some(({ activity }) => activity === id);
          return (
            <li key={id}>
              <Link className="textlink" href={pathOf({ view: "item", person: person.id, activity: id, rung: id })}>
                {name}
              </Link>{" "}
              <span className="small">
                {changes} Written by {by}, {at.slice(0, 10)}. {planned ? "In today's plan." : open ? "" : "Not today. "}
              </span>
              {open && (
                <Button className="textlink" onPress={() => void putIn(id)}>
                  Put it in<span className="unseen">: {name}</span>
                </Button>
              )}
              {!planned && !open && (
                <Link
                  className="textlink"
                  href={pathOf({ view: "argument", person: person.id, activity: id, rung: id })}
                >
                  Why not?
                </Link>
              )}{" "}
              <Button className="textlink" onPress={() => void takeAway(id)}>
                Take it away<span className="unseen">: {name}</span>
              </Button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
