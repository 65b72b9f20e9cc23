import type { RungName, Wishes } from "../../engine/engine.ts";

export type Choice = "keepOut" | "putIn" | "startStanding" | "noFloor";

const same = (a: RungName, b: RungName): boolean => a.activity === b.activity && a.rung === b.rung;

/** The wishes with one more of them. */
export function wishesFor(choice: Choice, wishes: Wishes, of: RungName): Wishes {
  const mustHave = (wishes.mustHave ?? []).filter((each) => !same(each, of));
  const leaveOut = (wishes.leaveOut ?? []).filter((each) => !same(each, of));
  const name: RungName = { activity: of.activity, rung: of.rung };
  if (choice === "keepOut") return { ...wishes, mustHave, leaveOut: [...leaveOut, name] };
  if (choice === "putIn") return { ...wishes, leaveOut, mustHave: [...mustHave, name] };
  if (choice === "startStanding") return { ...wishes, startIn: "standing-in-bars" };
  return { ...wishes, noFloor: true };
}
