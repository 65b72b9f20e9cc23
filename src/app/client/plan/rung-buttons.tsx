import { Button } from "react-aria-components";
import type { PlanItemAnswer } from "../../contract/plan-answer.ts";
import type { RungName } from "../../engine/engine.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import type { KeptPerson } from "../record/database.ts";
import { changePerson } from "../record/people.ts";
import { planOf, plans } from "../record/plans.ts";
import { goTo } from "../shell/route.ts";
import { useCell } from "../state/cell.ts";

/** One rung down or up in today's plan; a rung that is out says why instead. */
export function RungButtons({ person, item }: { readonly person: KeptPerson; readonly item: PlanItemAnswer }) {
  const sheet = shown(useAnswer(person.case, "sheet", [person.case, { activity: item.activity, rung: item.rung }]));
  const plan = planOf(useCell(plans), person.id).kept?.plan;
  const take = (to: RungName) => {
    const open = plan?.available.some(({ activity, rung }) => activity === to.activity && rung === to.rung) === true;
    if (!open) return goTo({ view: "argument", person: person.id, activity: to.activity, rung: to.rung });
    const others = (names: readonly RungName[] | undefined) =>
      (names ?? []).filter(({ activity }) => activity !== to.activity);
    const wishes = {
      ...person.wishes,
      mustHave: [...others(person.wishes.mustHave), { activity: to.activity, rung: to.rung }],
    };
    return void changePerson(person.id, { wishes });
  };
  const down = sheet?.rungDown ?? null;
  const up = sheet?.rungUp ?? null;
  return (
    <>
      <Button className="press" isDisabled={down === null} onPress={() => down !== null && take(down)}>
        One rung down
      </Button>
      <Button className="press" isDisabled={up === null} onPress={() => up !== null && take(up)}>
        One rung up
      </Button>
    </>
  );
}
