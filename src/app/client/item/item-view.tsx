import { lazy, Suspense, useState } from "react";
import { Button, Disclosure, DisclosurePanel, Heading, Link } from "react-aria-components";
import type { Ask, RungName } from "../../engine/engine.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { Figure } from "../parts/figure.tsx";
import { Legend } from "../parts/legend.tsx";
import type { KeptPerson } from "../record/database.ts";
import { usePlan } from "../plan/use-plan.ts";
import { pathOf } from "../shell/route.ts";
import { pronounsOf } from "../words/person-words.ts";
import { BasisView } from "./basis-view.tsx";
import { EffortBar } from "./effort-bar.tsx";
import { useWide } from "./use-wide.ts";
import "./item.css";

const WhatIf = lazy(async () => ({ default: (await import("./what-if.tsx")).WhatIf }));
const OwnLeaf = lazy(async () => ({ default: (await import("../own/own-leaf.tsx")).OwnLeaf }));

const WIDTH = 520;
const ABOVE = { width: 400, height: 280 } as const;

/** One item in full: what it is for, what it asks of this body, and what every figure rests on. */
export function ItemView({ person, of }: { readonly person: KeptPerson; readonly of: RungName }) {
  const answer = useAnswer(person.case, "sheet", [person.case, of]);
  const sheet = shown(answer);
  const picture = useAnswer(person.case, "picture", [
    person.case,
    { ...of, kind: "item", theme: "screen", width: WIDTH },
  ]);
  const above = useAnswer(person.case, "picture", [
    person.case,
    { ...of, kind: "above", theme: "screen", width: ABOVE.width, height: ABOVE.height },
  ]);
  const hands = useAnswer(person.case, "picture", [
    person.case,
    { ...of, kind: "hands", theme: "screen", width: WIDTH },
  ]);
  const planned = usePlan(person).kept?.plan.items.find(
    ({ activity, rung }) => activity === of.activity && rung === of.rung,
  );
  const [open, setOpen] = useState<number | null>(0);
  const [writing, setWriting] = useState(false);
  const [moving, setMoving] = useState(false);
  const wide = useWide();
  const asks = sheet?.asks ?? [];
  const opened = open === null ? undefined : asks[open];
  const { her } = pronounsOf(person.case);
  if (answer.state === "failed") return <h1>No such rung is known.</h1>;
  return (
    <div className={opened !== undefined && wide ? "full with-basis" : "full"}>
      <div className="full-pictures">
        <Link className="textlink" href={pathOf({ view: "plan", person: person.id })}>
          Back to the plan
        </Link>
        <h1>{sheet?.name ?? ""}</h1>
        <p className="said">{sheet?.purpose ?? ""}</p>
        <Figure answer={picture} wait="The picture is being drawn" />
        <Figure answer={above} wait="The mat from above is being drawn" className="item-above" />
        <Legend />
      </div>
      <div className="full-asks">
        <h2>What it asks of {her}</h2>
        {asks.map((ask, index) => (
          <AskView
            key={ask.sentence}
            ask={ask}
            peak={index === 0 ? (planned?.effort.peak ?? null) : null}
            wide={wide}
            open={open === index}
            onOpen={() => setOpen(open === index ? null : index)}
          />
        ))}
        {sheet !== null && asks.length === 0 && (
          <p className="said">This body could not be brought into the position, so nothing is computed of it.</p>
        )}
        {sheet !== null && !(person.case.ownRungs ?? []).some(({ id }) => id === of.activity) && (
          <section>
            <h3>Not quite what you want?</h3>
            <Button className="press" onPress={() => setWriting(true)}>
              Make a rung of your own from it
            </Button>
            {writing && (
              <Suspense>
                <OwnLeaf person={person} of={of} sheet={sheet} onClose={() => setWriting(false)} />
              </Suspense>
            )}
          </section>
        )}
        {sheet !== null && (
          <section>
            <h3>What if it were otherwise?</h3>
            {moving ? (
              <Suspense fallback={<p className="small">One moment.</p>}>
                <WhatIf key={`${of.activity}/${of.rung}`} person={person} of={of} />
              </Suspense>
            ) : (
              <Button
                className="press"
                onPress={() => {
                  setOpen(null);
                  setMoving(true);
                }}
              >
                Move a finding and see
              </Button>
            )}
          </section>
        )}
        {sheet !== null && (
          <>
            {planned !== undefined && (
              <section>
                <h3>Why it is in</h3>
                <ul>
                  {planned.because.map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              </section>
            )}
            <section>
              <h3>Your hands, close up</h3>
              <Figure answer={hands} wait="The close-up is being drawn" className="close-up" />
            </section>
            <section>
              <h3>How it goes</h3>
              <dl className="pairs">
                <dt>From below</dt>
                <dd>{sheet.changes}</dd>
                <dt>Moves first</dt>
                <dd>{sheet.movesFirst}</dd>
                <dt>Guard</dt>
                <dd>
                  {planned?.guard === undefined || planned.guard === null
                    ? "Nobody can fall here."
                    : planned.guard.because}
                </dd>
                <dt>Way out</dt>
                <dd>{sheet.wayOut.planned.join(" ")}</dd>
                <dt>In a hurry</dt>
                <dd>{sheet.wayOut.hurry.join(" ")}</dd>
                <dt>At home</dt>
                <dd>{sheet.notAtHome ?? "May go home after it was shown back twice."}</dd>
              </dl>
            </section>
            <section>
              <h3>Same purpose, other position</h3>
              {sheet.substitutes.length === 0 ? (
                <p className="small">None is written down for this rung.</p>
              ) : (
                <ul className="others">
                  {sheet.substitutes.map(({ activity, rung, name, position }) => (
                    <li key={`${activity}/${rung}`}>
                      <Link className="textlink" href={pathOf({ view: "argument", person: person.id, activity, rung })}>
                        {name}
                      </Link>{" "}
                      <span className="small">{position}</span>
                    </li>
                  ))}
                </ul>
              )}
            </section>
          </>
        )}
      </div>
      {opened !== undefined && wide && (
        <aside className="full-basis" aria-label="Basis">
          <div className="spread">
            <h2>Basis</h2>
            <Button className="textlink" onPress={() => setOpen(null)}>
              Close
            </Button>
          </div>
          <p className="said">{opened.sentence}</p>
          <BasisView basis={opened.basis} />
        </aside>
      )}
    </div>
  );
}

function AskView({
  ask,
  peak,
  wide,
  open,
  onOpen,
}: {
  readonly ask: Ask;
  readonly peak: { readonly low: number; readonly middle: number; readonly high: number } | null;
  readonly wide: boolean;
  readonly open: boolean;
  readonly onOpen: () => void;
}) {
  const words = (
    <>
      <p className="said">{ask.sentence}</p>
      <p className="least">{ask.figure}</p>
      {peak !== null && peak.high > 0 && <EffortBar peak={peak} sentence={ask.sentence} />}
    </>
  );
  if (wide)
    return (
      <section className="ask">
        {words}
        <Button className="textlink" aria-expanded={open} onPress={onOpen}>
          Basis<span className="unseen">: {ask.sentence}</span>
        </Button>
      </section>
    );
  return (
    <section className="ask">
      {words}
      <Disclosure isExpanded={open} onExpandedChange={onOpen}>
        <Heading className="plain">
          <Button slot="trigger" className="textlink">
            {open ? "Basis, close" : "Basis"}
            <span className="unseen">: {ask.sentence}</span>
          </Button>
        </Heading>
        <DisclosurePanel className="basis-under">{open ? <BasisView basis={ask.basis} /> : null}</DisclosurePanel>
      </Disclosure>
    </section>
  );
}
