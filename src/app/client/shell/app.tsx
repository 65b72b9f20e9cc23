import { lazy, type ReactNode, Suspense, useEffect, useState } from "react";
import { RouterProvider } from "react-aria-components";
import type { KeptPerson } from "../record/database.ts";
import { openPerson, people } from "../record/people.ts";
import { useCell } from "../state/cell.ts";
import { goTo, type Place, usePlace } from "./route.ts";
import { TopBar } from "./top-bar.tsx";
import { Trouble } from "./trouble.tsx";
import { UpdateNotice } from "./update-notice.tsx";

const load = {
  people: () => import("../people/people-view.tsx"),
  newPerson: () => import("../people/new-person.tsx"),
  look: () => import("../look/look-view.tsx"),
  measured: () => import("../measured/measured-view.tsx"),
  plan: () => import("../plan/plan-view.tsx"),
  item: () => import("../item/item-view.tsx"),
  why: () => import("../argument/why-list.tsx"),
  argument: () => import("../argument/argument-view.tsx"),
  mat: () => import("../mat/mat-view.tsx"),
  note: () => import("../note/note-view.tsx"),
  papers: () => import("../papers/papers-view.tsx"),
};

const PeopleView = lazy(async () => ({ default: (await load.people()).PeopleView }));
const NewPerson = lazy(async () => ({ default: (await load.newPerson()).NewPerson }));
const LookView = lazy(async () => ({ default: (await load.look()).LookView }));
const MeasuredView = lazy(async () => ({ default: (await load.measured()).MeasuredView }));
const PlanView = lazy(async () => ({ default: (await load.plan()).PlanView }));
const ItemView = lazy(async () => ({ default: (await load.item()).ItemView }));
const WhyList = lazy(async () => ({ default: (await load.why()).WhyList }));
const ArgumentView = lazy(async () => ({ default: (await load.argument()).ArgumentView }));
const MatView = lazy(async () => ({ default: (await load.mat()).MatView }));
const NoteView = lazy(async () => ({ default: (await load.note()).NoteView }));
const PapersView = lazy(async () => ({ default: (await load.papers()).PapersView }));

/** The whole page. */
export function App() {
  const place = usePlace();
  useEffect(() => {
    // The other views are fetched while nothing else happens, so that none waits for the network.
    const timer = setTimeout(() => void Promise.allSettled(Object.values(load).map((fetchView) => fetchView())), 1500);
    return () => clearTimeout(timer);
  }, []);
  return (
    <RouterProvider navigate={goTo}>
      <TopBar place={place} />
      <UpdateNotice />
      <main id="main" tabIndex={-1}>
        <Trouble key={JSON.stringify(place)}>
          <Suspense fallback={<p className="small">One moment.</p>}>{viewOf(place)}</Suspense>
        </Trouble>
      </main>
    </RouterProvider>
  );
}

function viewOf(place: Place): ReactNode {
  if (place.view === "people") return <PeopleView />;
  if (place.view === "newPerson") return <NewPerson />;
  return <WithPerson id={place.person}>{(person) => viewOfPerson(place, person)}</WithPerson>;
}

function viewOfPerson(place: Place, person: KeptPerson): ReactNode {
  switch (place.view) {
    case "look":
      return <LookView person={person} />;
    case "measured":
      return <MeasuredView person={person} />;
    case "why":
      return <WhyList person={person} />;
    case "item":
      return <ItemView person={person} of={{ activity: place.activity, rung: place.rung }} />;
    case "argument":
      return <ArgumentView person={person} of={{ activity: place.activity, rung: place.rung }} />;
    case "mat":
      return <MatView person={person} />;
    case "note":
      return <NoteView person={person} />;
    case "papers":
      return <PapersView person={person} />;
    default:
      return <PlanView person={person} />;
  }
}

function WithPerson({ id, children }: { readonly id: string; readonly children: (person: KeptPerson) => ReactNode }) {
  const person = useCell(people).get(id);
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    let current = true;
    void openPerson(id).then((found) => current && setMissing(!found));
    return () => {
      current = false;
    };
  }, [id]);
  if (person !== undefined) return children(person);
  if (!missing) return <p className="small">One moment.</p>;
  return (
    <>
      <h1>Nobody is known here under this address.</h1>
      <p className="said">The record may be out of reach, or the person was opened on another device.</p>
    </>
  );
}
