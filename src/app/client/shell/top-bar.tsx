import { Button, Link } from "react-aria-components";
import { useCell } from "../state/cell.ts";
import { people } from "../record/people.ts";
import { sending } from "../record/outbox.ts";
import { sayDay, saySide } from "../words/person-words.ts";
import { pathOf, type Place } from "./route.ts";
import { switchTheme, theme } from "./theme.ts";

const STATIONS = [
  { view: "look", name: "Look", of: ["look", "measured"] },
  { view: "plan", name: "Plan", of: ["plan", "item", "why", "argument"] },
  { view: "mat", name: "At the mat", of: ["mat"] },
  { view: "note", name: "Note", of: ["note"] },
  { view: "papers", name: "Papers", of: ["papers"] },
] as const;

/** Who it is about, and the stations of the day. */
export function TopBar({ place }: { readonly place: Place }) {
  const known = useCell(people);
  const person = "person" in place ? known.get(place.person) : undefined;
  const dark = useCell(theme) === "dark";
  return (
    <header className="no-print">
      <a className="press skip" href="#main">
        Skip to the page
      </a>
      <div className="top">
        <Link className="who" href="/">
          {person === undefined ? "Matside" : (person.case.label ?? "No label")}
        </Link>
        {person !== undefined && (
          <span className="small">
            {saySide(person.case)}
            {sayDay(person.case)}
          </span>
        )}
        {person !== undefined && (
          <nav aria-label="Day">
            {STATIONS.map(({ view, name, of }) => (
              <Link
                key={view}
                href={pathOf({ view, person: person.id })}
                {...(of.some((one) => one === place.view) ? { "aria-current": "page" as const } : {})}
              >
                {name}
              </Link>
            ))}
          </nav>
        )}
        <Button className="theme" onPress={switchTheme}>
          {dark ? "Light" : "Dark"}
        </Button>
      </div>
      <SendLine />
    </header>
  );
}

/** Says where the writing is; nothing when all of it is in the record. */
function SendLine() {
  const { waiting, reached, refused } = useCell(sending);
  if (refused !== null)
    return (
      <p className="sendline refused" role="alert">
        The record did not take an entry: {refused}{" "}
        <Button className="textlink" onPress={() => sending.set({ ...sending.get(), refused: null })}>
          Seen
        </Button>
      </p>
    );
  return (
    <p className="sendline" role="status" hidden={waiting === 0 || reached}>
      {waiting > 0 && !reached ? "Saved here. Not sent yet." : ""}
    </p>
  );
}
