import type { RungToday } from "../../plan/assess/rung-today.ts";
import { mayOverrule } from "./answer-absence.ts";
import type { Wishes } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";
import { planSession, type SolvedSession } from "./plan-session.ts";
import { lowerFirst } from "./words.ts";

/** What leaves the plan if a rung is put in by hand, in words; null where it cannot be put in. */
export function costOfForcing(
  person: PersonToday,
  today: RungToday,
  now: SolvedSession,
  minutes: number,
  wishes: Wishes,
): string | null {
  if (now.session === null || !today.out.every(mayOverrule)) return null;
  const name = { activity: today.activity.id, rung: today.rung.id };
  // What is out is tried as if a reason had been given, to say what it would cost.
  const forced = planSession(
    person,
    minutes,
    today.eligible
      ? { ...wishes, mustHave: [...(wishes.mustHave ?? []), name] }
      : { ...wishes, overrides: [...(wishes.overrides ?? []), { ...name, why: "tried" }] },
  );
  const has = (session: SolvedSession["session"], each: RungToday): boolean =>
    session?.items.some((item) => item.today.rung === each.rung) ?? false;
  if (!has(forced.session, today)) return "It does not fit into the minutes and the strength of today.";
  const leaving = now.session.items
    .filter((item) => !has(forced.session, item.today))
    .map((item) => `${item.today.activity.name}, ${lowerFirst(item.today.rung.name)}`);
  const moved = (forced.session?.moves.length ?? 0) - now.session.moves.length;
  const moves = moved > 0 ? ` ${moved} more ${moved === 1 ? "move" : "moves"} between positions.` : "";
  return `${leaving.length === 0 ? "Nothing leaves." : `Leaves: ${leaving.join("; ")}.`}${moves}`;
}
