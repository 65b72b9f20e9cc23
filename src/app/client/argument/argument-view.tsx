import { useState } from "react";
import { Button, Link, ToggleButton, ToggleButtonGroup } from "react-aria-components";
import type { RungName } from "../../engine/engine.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { Figure } from "../parts/figure.tsx";
import { Legend } from "../parts/legend.tsx";
import type { KeptPerson } from "../record/database.ts";
import { changePerson } from "../record/people.ts";
import { usePlan } from "../plan/use-plan.ts";
import { pathOf } from "../shell/route.ts";
import { ForceLeaf } from "./force-leaf.tsx";
import { Preview } from "./preview.tsx";
import { type Choice, wishesFor } from "./wishes.ts";
import "./argument.css";

/** Why one rung is not in today, what would change it, what serves instead, and what to do about it. */
export function ArgumentView({ person, of }: { readonly person: KeptPerson; readonly of: RungName }) {
  const plan = usePlan(person).kept?.plan ?? null;
  const answer = useAnswer(person.case, "absence", [person.case, person.minutes, person.wishes, of]);
  const absence = shown(answer);
  const [choice, setChoice] = useState<Choice | null>(null);
  const [forcing, setForcing] = useState(false);
  const [why, setWhy] = useState("");
  const [before, setBefore] = useState<Pick<KeptPerson, "wishes" | "putIn"> | null>(null);
  const instead = absence?.instead[0] ?? null;
  const drawn = instead ?? of;
  const picture = useAnswer(person.case, "picture", [
    person.case,
    { activity: drawn.activity, rung: drawn.rung, kind: "body", theme: "screen", width: 340 },
  ]);
  const isIn = plan?.items.some(({ activity, rung }) => activity === of.activity && rung === of.rung) === true;
  const isOpen = plan?.available.some(({ activity, rung }) => activity === of.activity && rung === of.rung) === true;
  const trial = choice === null ? null : wishesFor(choice, person.wishes, of, isOpen ? "" : why);
  const swap = instead === null ? null : wishesFor("putIn", person.wishes, instead);
  const take = (wishes: KeptPerson["wishes"]) => {
    setBefore({ wishes: person.wishes, putIn: person.putIn });
    void changePerson(person.id, {
      wishes,
      ...(choice === "putIn" && why !== "" ? { putIn: [...person.putIn, { ...of, why }] } : {}),
    });
    setChoice(null);
  };
  const choose = (next: Choice | null) => {
    if (next === "putIn" && !isOpen && why === "") return setForcing(true);
    setChoice(next);
  };
  if (answer.state === "failed") return <h1>No such rung is known.</h1>;
  if (absence === null) return <p className="small">One moment.</p>;
  return (
    <div className="argument">
      <div className="argument-head">
        <div className="argument-words">
          <Link className="textlink" href={pathOf({ view: "plan", person: person.id })}>
            Back to the plan
          </Link>
          <p className="label">You ask</p>
          <h1>
            {isIn ? "Why " : "Why no "}
            {absence.name.charAt(0).toLowerCase()}
            {absence.name.slice(1)}?
          </h1>
          <p className="said because">{absence.sentence}</p>
          {absence.because.slice(1).map(({ rule, detail, source }) => (
            <p key={`${rule}-${detail}`}>
              {detail} <span className="least">{source.replaceAll("-", " ")}</span>
            </p>
          ))}
          <p className="small">
            {absence.figure}{" "}
            <Link
              className="textlink"
              href={pathOf({ view: "item", person: person.id, activity: of.activity, rung: of.rung })}
            >
              Basis
            </Link>
          </p>
          <dl className="pairs">
            {absence.wouldChange.length > 0 && (
              <>
                <dt>What would change it</dt>
                <dd className="serif">{absence.wouldChange.join(" ")}</dd>
              </>
            )}
            <dt>What serves instead</dt>
            <dd className="serif">
              {absence.instead.length === 0
                ? "Nothing else is written down for this purpose."
                : absence.instead
                    .map(({ name, eligible }) => `${name}${eligible ? "" : ", out today as well"}`)
                    .join("; ")
                    .replace(/\.?$/, ".")}
            </dd>
          </dl>
        </div>
        <div className="argument-picture">
          <Figure answer={picture} wait="The picture is being drawn" />
          <Legend marks={false} />
          {instead?.eligible === true && swap !== null && (
            <Button className="press" onPress={() => take(swap)}>
              Use {instead.name.charAt(0).toLowerCase() + instead.name.slice(1)}
            </Button>
          )}
        </div>
      </div>
      <ToggleButtonGroup
        className="argument-choices"
        aria-label="What to do about it"
        selectionMode="single"
        selectedKeys={choice === null ? [] : [choice]}
        onSelectionChange={(keys) => choose(CHOICES.find((one) => keys.has(one)) ?? null)}
      >
        <ToggleButton id="keepOut" className="press">
          {isIn ? "Take it out" : "Keep it out"}
        </ToggleButton>
        <ToggleButton id="putIn" className="press" isDisabled={isIn || (!isOpen && !absence.mayForce)}>
          {isOpen ? "Put it in" : "Put it in anyway…"}
        </ToggleButton>
        <ToggleButton id="startStanding" className="press">
          Start standing
        </ToggleButton>
        <ToggleButton id="noFloor" className="press">
          No floor today
        </ToggleButton>
      </ToggleButtonGroup>
      {!isIn && !isOpen && !absence.mayForce && (
        <p className="small">A stop rule holds here: it is not put in by hand.</p>
      )}
      {choice === "putIn" && absence.cost !== null && <p className="small">{absence.cost}</p>}
      {plan !== null && plan.hold === null && (
        <Preview
          person={person}
          plan={plan}
          trial={trial}
          onTake={() => trial !== null && take(trial)}
          onUndo={() => setChoice(null)}
        />
      )}
      {before !== null && choice === null && (
        <p role="status">
          Taken.{" "}
          <Button
            className="textlink"
            onPress={() => {
              void changePerson(person.id, before);
              setBefore(null);
            }}
          >
            Undo
          </Button>
        </p>
      )}
      <ForceLeaf
        open={forcing}
        name={absence.name}
        onClose={() => setForcing(false)}
        onWhy={(words) => {
          setWhy(words);
          setForcing(false);
          setChoice("putIn");
        }}
      />
    </div>
  );
}

const CHOICES: readonly Choice[] = ["keepOut", "putIn", "startStanding", "noFloor"];
