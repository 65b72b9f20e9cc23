import { HELP_WORDS } from "./case-look.ts";
import { codes, group, listOf, maybe, words } from "./fields.ts";

/** How far an assistant may go without calling: for one ladder, or for the whole plan where no ladder is named. */
export const BOUNDS = group("bounds for an assistant", {
  activity: maybe(words("activity", 80)),
  fromRung: maybe(words("lowest rung", 80)),
  toRung: maybe(words("highest rung", 80)),
  mostHelp: maybe(codes("most help", HELP_WORDS)),
  stopIf: maybe(listOf("stop signs", words("stop sign", 200), 20)),
  by: maybe(words("who set them", 80)),
});
