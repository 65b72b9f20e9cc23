import type { RungName, Wishes } from "../../engine/engine.ts";

export type Choice = "keepOut" | "putIn" | "startStanding" | "noFloor";

const same = (a: RungName, b: RungName): boolean => a.activity === b.activity && a.rung === b.rung;

/**
 * The wishes with one more of them.
 * @param why the therapist's reason, where what is put in is kept out by the plan: it is then an override, on record
 */
export function wishesFor(choice: Choice, wishes: Wishes, of: RungName, why = ""): Wishes {
  const others = <T extends RungName>(list: readonly T[] | undefined): T[] =>
    (list ?? []).filter((each) => !same(each, of));
  const mustHave = others(wishes.mustHave);
  const leaveOut = others(wishes.leaveOut);
  const overrides = others(wishes.overrides);
  const name: RungName = { activity: of.activity, rung: of.rung };
  const rest = { ...wishes, mustHave, leaveOut, overrides };
  if (choice === "keepOut") return { ...rest, leaveOut: [...leaveOut, name] };
  if (choice === "putIn")
    return why === ""
      ? { ...rest, mustHave: [...mustHave, name] }
      : { ...rest, overrides: [...overrides, { ...name, why }] };
  if (choice === "startStanding") return { ...wishes, startIn: "standing-in-bars" };
  return { ...wishes, noFloor: true };
}
