import { useEffect, useState } from "react";
import { Button, Link } from "react-aria-components";
import { Strip } from "../parts/strip.tsx";
import { usePlan } from "../plan/use-plan.ts";
import type { KeptPerson } from "../record/database.ts";
import { writeVersion } from "../record/people.ts";
import { sendAll, sending } from "../record/outbox.ts";
import { keepSessionPlan } from "../record/plans.ts";
import { useCell } from "../state/cell.ts";
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
type Ready = "sending" | "there" | "away";

/** The papers of today: shown as they print. */
export function PapersView({ person }: { readonly person: KeptPerson }) {
  const { kept } = usePlan(person);
  const [sheet, setSheet] = useState<Sheet>("home");
  const [form, setForm] = useState<Form>(person.case.communication?.aphasia === undefined || person.case.communication.aphasia === "none" ? "plain" : "aphasia");
  const [ready, setReady] = useState<Ready>("sending");
  const [trouble, setTrouble] = useState<string | null>(null);
  const { waiting } = useCell(sending);
  const address = kept === null ? null : `/api/people/${person.id}/sheets/${sheet}?${new URLSearchParams({ plan: kept.id, picture: form })}`;
  useEffect(() => {
    if (kept === null) return;
    let current = true;
    const prepare = async () => {
      const version = await writeVersion(person.id);
      if (version !== null) await keepSessionPlan(kept, version);
      await sendAll();
      const answer = await fetch(`${address}&form=html`).catch(() => null);
      if (!current) return;
      setReady(answer === null ? "away" : "there");
      setTrouble(answer === null || answer.ok ? null : "This sheet is not made in this version.");
    };
    void prepare();
    return () => {
      current = false;
    };
  }, [kept, person.id, address]);
  const print = () => {
    const frame = document.querySelector<HTMLIFrameElement>("iframe.paper");
    frame?.contentWindow?.print();
  };
  return (
    <div className="papers">
      <h1>Papers</h1>
      <div className="row no-print">
        <div className="papers-strip">
          <Strip label="Which paper" choices={SHEETS} value={sheet} onChange={(next) => next !== null && setSheet(next)} mayBeEmpty={false} />
        </div>
        {sheet === "home" && (
          <div className="papers-strip">
            <Strip label="Form of the home sheet" choices={FORMS} value={form} onChange={(next) => next !== null && setForm(next)} mayBeEmpty={false} />
          </div>
        )}
      </div>
      {kept === null || ready === "sending" ? (
        <p className="said" role="status">
          The sheet is being made.
        </p>
      ) : ready === "away" ? (
        <p className="said" role="status">
          The sheet is made where the record is, and that is out of reach. {waiting > 0 ? "What you wrote is saved here. Not sent yet." : "Try again when it is back."}
        </p>
      ) : trouble !== null ? (
        <p className="said" role="status">
          {trouble}
        </p>
      ) : (
        <iframe className="paper" title={sheet === "home" ? "Home sheet" : "Therapist's sheet"} src={`${address}&form=html`} />
      )}
      <div className="bar no-print">
        <Button className="press" onPress={() => saveCaseFile(person.case)}>
          Save the case file
        </Button>
        {ready === "there" && trouble === null && address !== null && (
          <>
            <Link className="press push" href={`${address}&form=pdf`} target="_blank">
              PDF
            </Link>
            <Button className="press filled" onPress={print}>
              Print
            </Button>
          </>
        )}
      </div>
    </div>
  );
}
