import { createCell, useCell } from "../state/cell.ts";

/** Where one is in the page. */
export type Place =
  | { readonly view: "people" }
  | { readonly view: "newPerson" }
  | { readonly view: "look" | "measured" | "plan" | "why" | "mat" | "note" | "papers"; readonly person: string }
  | { readonly view: "item" | "argument"; readonly person: string; readonly activity: string; readonly rung: string };

const VIEWS = ["look", "measured", "plan", "why", "mat", "note", "papers"] as const;

export function readPlace(path: string): Place {
  const [first, person, view, activity, rung] = path
    .split("/")
    .filter((part) => part !== "")
    .map(decodeURIComponent);
  if (first === "new") return { view: "newPerson" };
  if (first !== "person" || person === undefined) return { view: "people" };
  if ((view === "item" || view === "why") && activity !== undefined && rung !== undefined)
    return { view: view === "item" ? "item" : "argument", person, activity, rung };
  return { view: VIEWS.find((one) => one === view) ?? "plan", person };
}

export function pathOf(place: Place): string {
  if (place.view === "people") return "/";
  if (place.view === "newPerson") return "/new";
  const person = `/person/${encodeURIComponent(place.person)}`;
  if (place.view === "item" || place.view === "argument")
    return `${person}/${place.view === "item" ? "item" : "why"}/${encodeURIComponent(place.activity)}/${encodeURIComponent(place.rung)}`;
  return `${person}/${place.view}`;
}

const path = createCell(location.pathname);
addEventListener("popstate", () => path.set(location.pathname));

export function usePlace(): Place {
  return readPlace(useCell(path));
}

/** Goes to another place of the page and starts at its top. */
export function goTo(to: Place | string): void {
  const address = typeof to === "string" ? to : pathOf(to);
  if (address !== location.pathname + location.hash) history.pushState(null, "", address);
  path.set(location.pathname);
  scrollTo(0, 0);
}
