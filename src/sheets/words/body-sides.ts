import { bodySideOf, type Laterality, type Side } from "../../quantity/sides.ts";

/** Without a weaker side a home text still has to tell two limbs apart. */
const NO_SIDE: Readonly<Record<Side, string>> = { weak: "one", strong: "other" };

/** Fills {weak} and {strong} of a text with this person's sides. */
export function fillSides(text: string, person: Laterality): string {
  return text.replace(/\{(weak|strong)\}/g, (_all, side: Side) => sideName(side, person) ?? NO_SIDE[side]);
}

/**
 * A sentence of the trade, written weak and strong, said of this person: "the weak knee" becomes a knee with its side.
 * Where neither side is weaker the words stay.
 */
export function sayOfPerson(text: string, person: Laterality): string {
  if (person.weak === null) return fillSides(text, person);
  return fillSides(text, person)
    .replace(/\b([Ww])eak(er)?\b/g, (_all, first: string) => matchCase(bodySideOf("weak", person), first))
    .replace(/\b([Ss])trong(er)?\b/g, (_all, first: string) => matchCase(bodySideOf("strong", person), first));
}

function sideName(side: Side, person: Laterality): string | null {
  const name = bodySideOf(side, person);
  return name === "either" ? null : name;
}

/** A sentence begins with a capital, a side in it never is one. */
function matchCase(word: string, first: string): string {
  return first === first.toUpperCase() ? `${word.charAt(0).toUpperCase()}${word.slice(1)}` : word;
}
