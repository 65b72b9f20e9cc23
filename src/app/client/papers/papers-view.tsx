import { useEffect, useState } from "react";
import { Button, Checkbox, CheckboxGroup, Label, Link } from "react-aria-components";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { Strip } from "../parts/strip.tsx";
import { nameOfRung } from "../plan/plan-words.ts";
import { useCatalogue, usePlan } from "../plan/use-plan.ts";
import type { KeptPerson } from "../record/database.ts";
import { changePerson, writeVersion } from "../record/people.ts";
import { sendAll, sending } from "../record/outbox.ts";
import { keepSessionPlan } from "../record/plans.ts";
import { pathOf } from "../shell/route.ts";
import { useCell } from "../state/cell.ts";
import { PaperSheet } from "./paper-sheet.tsx";
import { saveCaseFile } from "./save-file.ts";
import "./papers.css";

const SHEETS = [
  { id: "home", name: "Home sheet" },
  { id: "therapist", name: "Therapist's sheet" },
] as const;
const FORMS = [
  { id: "plain", name: "plain" },
  { id: "aphasia", name: "larger pictures, fewer words" },
] as const;
type Sheet = (typeof SHEETS)[number]["id"];
type Form = (typeof FORMS)[number]["id"];

/** The papers of today, shown as they print; made on this device, so that they print without a network. */
export function PapersView({ person }: { readonly person: KeptPerson }) {
  const kept = usePlan(person).kept;
  const catalogue = useCatalogue(person);
  const plan = kept?.plan ?? null;
  const [sheet, setSheet] = useState<Sheet>(location.hash === "#therapist" ? "therapist" : "home");
  const aphasia = person.case.communication?.aphasia ?? "none";
  const [form, setForm] = useState<Form>(aphasia === "none" ? "plain" : "aphasia");
  const shownTwice = person.case.helpers?.family?.shownTwice ?? person.shown ?? null;
  const { reached } = useCell(sending);
  const home = useAnswer(
    plan,
    "homeSheet",
    plan === null || sheet !== "home" ? null : [person.case, plan, form, shownTwice],
  );
  const therapist = useAnswer(
    plan,
    "therapistSheet",
    plan === null || sheet !== "therapist" ? null : [person.case, plan],
  );
  const answer = sheet === "home" ? home : therapist;
  const made = shown(answer);
  const markShown = (next: readonly string[]) => {
    const { helpers } = person.case;
    return changePerson(person.id, {
      case: { ...person.case, helpers: { ...helpers, family: { ...helpers?.family, shownTwice: [...next] } } },
      shown: next,
    });
  };
  const mayGoHome =
    plan?.items.filter(
      ({ activity, rung }) =>
        catalogue?.activities.find(({ id }) => id === activity)?.rungs.find(({ id }) => id === rung)?.notAtHome ===
        null,
    ) ?? [];
  const address =
    kept === null
      ? ""
      : `/api/people/${person.id}/sheets/${sheet}?${new URLSearchParams({ form: "pdf", plan: kept.id, picture: form, ...(shownTwice === null ? {} : { shown: shownTwice.join(",") }) })}`;

  useEffect(() => {
    if (kept === null) return;
    // The PDF is written by the record's side, which has to know the plan first.
    void writeVersion(person.id)
      .then(async (version) => version !== null && (await keepSessionPlan(kept, version)))
      .then(sendAll);
  }, [kept, person.id]);

  return (
    <div className="papers">
      <div className="no-print papers-head">
        <h1>Papers</h1>
        <div className="row">
          <Strip
            label="Which paper"
            choices={SHEETS}
            value={sheet}
            onChange={(next) => next !== null && setSheet(next)}
            mayBeEmpty={false}
          />
          {sheet === "home" && (
            <Strip
              label="Form of the home sheet"
              choices={FORMS}
              value={form}
              onChange={(next) => next !== null && setForm(next)}
              mayBeEmpty={false}
            />
          )}
        </div>
        {sheet === "home" && mayGoHome.length > 0 && (
          <CheckboxGroup value={[...(shownTwice ?? [])]} onChange={(next) => void markShown(next)}>
            <Label className="label">Shown back to you twice, safely, by the one who helps at home</Label>
            {mayGoHome.map(({ activity, rung }) => (
              <Checkbox key={`${activity}/${rung}`} value={`${activity}/${rung}`} className="tick">
                <span className="box" />
                {nameOfRung(catalogue, activity, rung)}
              </Checkbox>
            ))}
          </CheckboxGroup>
        )}
      </div>
      {answer.state === "failed" ? (
        <p className="said">The sheet could not be made: {answer.because}</p>
      ) : made === null ? (
        <p className="said" role="status">
          The sheet is being made.
        </p>
      ) : "because" in made ? (
        <p className="said">
          No sheet for home today. {made.because}{" "}
          <Link className="textlink" href={pathOf({ view: "measured", person: person.id })}>
            Who helps at home?
          </Link>
        </p>
      ) : (
        <PaperSheet title={made.title} fragment={made.fragment} />
      )}
      <div className="bar no-print">
        <Button className="press" onPress={() => saveCaseFile(person.case)}>
          Save the case file
        </Button>
        {made !== null && "fragment" in made && (
          <>
            {reached ? (
              <Link className="press push" href={address} target="_blank">
                PDF
              </Link>
            ) : (
              <span className="small push">The PDF needs the record, which is out of reach.</span>
            )}
            <Button className="press filled" onPress={() => print()}>
              Print
            </Button>
          </>
        )}
      </div>
    </div>
  );
}
