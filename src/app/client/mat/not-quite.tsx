import { type ReactNode, useState } from "react";
import { Button } from "react-aria-components";
import type { RungSheet } from "../../engine/engine.ts";
import type { PlannedItem } from "../../../session/events.ts";
import { Leaf } from "../parts/leaf.tsx";
import type { NewEvent } from "../record/sessions.ts";
import { type Called, CallLeaf } from "./call-leaf.tsx";
import { HELP_WORDS, type HelpWord, sayHelp } from "../words/dose-words.ts";

type What = "fault" | "help" | "fewer" | "gaveWay" | "pain" | "refused" | "easy" | "other";
const WHAT: readonly { readonly id: What; readonly name: string }[] = [
  { id: "fault", name: "a fault" },
  { id: "help", name: "more help" },
  { id: "fewer", name: "fewer" },
  { id: "gaveWay", name: "a joint gave way" },
  { id: "pain", name: "pain" },
  { id: "refused", name: "did not want to" },
  { id: "easy", name: "it was easy" },
  { id: "other", name: "another" },
];
const OFTEN = [
  { name: "once", times: 1 },
  { name: "a few times", times: 3 },
  { name: "every time", times: 0 },
] as const;
const NEXT = [
  { id: "goOn", name: "Go on" },
  { id: "rest", name: "Rest longer" },
  { id: "rungDown", name: "One rung down" },
  { id: "rungUp", name: "One rung up" },
  { id: "leaveItem", name: "Leave this item" },
  { id: "callTherapist", name: "Call the therapist" },
] as const;
export type Next = (typeof NEXT)[number]["id"];
const GAVE: readonly ("shoulder" | "elbow" | "wrist" | "trunk" | "hip" | "knee" | "ankle")[] = [
  "shoulder",
  "elbow",
  "wrist",
  "trunk",
  "hip",
  "knee",
  "ankle",
];

/** What was other than planned, in three touches, and what follows from it. */
export function NotQuite({
  sheet,
  planned,
  ticks,
  outOf,
  onBack,
  onNoted,
}: {
  readonly sheet: RungSheet;
  readonly planned: PlannedItem | null;
  readonly ticks: readonly string[];
  /** Why this may not be done without calling the therapist; null where it may. */
  readonly outOf: (wish: { readonly next: Next; readonly help: HelpWord | null }) => string | null;
  readonly onBack: () => void;
  readonly onNoted: (events: readonly NewEvent[]) => void;
}) {
  const [what, setWhat] = useState<What>("fault");
  const [which, setWhich] = useState<string | null>(ticks[0] ?? null);
  const [often, setOften] = useState<number>(0);
  const [wanted, setNext] = useState<Next>("goOn");
  const [calling, setCalling] = useState(false);
  const next = wanted;
  const choices = choicesFor(what, sheet, planned);
  const chosen = choices.find(({ id }) => id === which) ?? null;
  const mend =
    what === "fault"
      ? (sheet.faults.find(({ id }) => id === which)?.do ?? null)
      : what === "gaveWay"
        ? "Down by the way out, then one rung down."
        : null;
  const turnTo = (to: What) => {
    setWhat(to);
    setWhich(null);
    setNext(
      to === "gaveWay"
        ? "rungDown"
        : to === "pain" || to === "refused"
          ? "leaveItem"
          : to === "easy"
            ? "rungUp"
            : "goOn",
    );
  };
  const help = what === "help" ? (HELP_WORDS.find((word) => word === which) ?? null) : null;
  const out = outOf({ next, help });
  const calls = out ?? (next === "callTherapist" ? "a question" : null);
  const noted = (call: Called | null) => {
    const { activity, rung } = sheet;
    const next = call === null || call.allowed ? wanted : "leaveItem";
    const times = OFTEN[often]?.times === 0 ? (planned?.repetitions ?? 3) : (OFTEN[often]?.times ?? 1);
    const joint = what === "gaveWay" ? GAVE.find((each) => each === which) : undefined;
    const value = what === "fewer" || what === "pain" ? Number(which) : Number.NaN;
    const counted = what === "fault" || what === "gaveWay";
    const leaves = next === "leaveItem" && (what === "refused" || what === "pain");
    onNoted([
      ...(call === null ? [] : [{ kind: "therapistCalled" as const, activity, rung, ...call }]),
      {
        kind: "setException",
        activity,
        rung,
        what: what === "easy" ? "other" : what,
        ...(what === "easy" ? { which: "it was easy" } : {}),
        ...(chosen === null || joint !== undefined || Number.isFinite(value) ? {} : { which: chosen.id }),
        ...(counted ? { howOften: Math.max(1, Math.min(100, times)) } : {}),
        ...(Number.isFinite(value) ? { value } : {}),
        ...(joint === undefined ? {} : { gaveWay: { joint, side: "weak" as const } }),
        next,
      },
      ...(leaves
        ? []
        : [
            {
              kind: "setDone" as const,
              activity,
              rung,
              asPlanned: false,
              ...(what === "fewer" && Number.isFinite(value) ? { repetitions: value } : {}),
              ...(help === null ? {} : { help }),
            },
          ]),
    ]);
  };
  if (calling && calls !== null)
    return <CallLeaf about={calls} onBack={() => setCalling(false)} onCalled={(call) => noted(call)} />;
  return (
    <Leaf open onClose={onBack} label="What was other than planned" className="not-quite">
      <div className="quite-columns">
        <Column title="what" pairs>
          {WHAT.map(({ id, name }) => (
            <Choice key={id} chosen={what === id} name={name} onPress={() => turnTo(id)} />
          ))}
        </Column>
        <Column title="which">
          {choices.map(({ id, name }) => (
            <Choice key={id} chosen={which === id} name={name} onPress={() => setWhich(id)} />
          ))}
        </Column>
        <div>
          {(what === "fault" || what === "gaveWay") && (
            <Column title="how often">
              {OFTEN.map(({ name }, index) => (
                <Choice key={name} chosen={often === index} name={name} onPress={() => setOften(index)} />
              ))}
            </Column>
          )}
          {mend !== null && <p className="mat-mend">Next set: {mend}</p>}
        </div>
      </div>
      <div className="quite-next">
        {NEXT.map(({ id, name }) => (
          <Choice key={id} chosen={next === id} name={name} onPress={() => setNext(id)} />
        ))}
      </div>
      {out !== null && (
        <p className="stopbox quite-out" role="status">
          Out of bounds: {out}. Call the therapist.
        </p>
      )}
      <div className="quite-foot">
        <Button className="press mat-other" onPress={onBack}>
          Back
        </Button>
        <Button
          className="press filled mat-done"
          isDisabled={choices.length > 0 && which === null}
          onPress={() => (calls === null ? noted(null) : setCalling(true))}
        >
          {calls === null ? "Noted, go on" : "Call the therapist…"}
        </Button>
      </div>
    </Leaf>
  );
}

function choicesFor(
  what: What,
  sheet: RungSheet,
  planned: PlannedItem | null,
): readonly { readonly id: string; readonly name: string }[] {
  if (what === "fault") return sheet.faults.map(({ id, fault }) => ({ id, name: fault }));
  if (what === "help")
    return (["touching", "minimal", "moderate", "maximal", "dependent"] satisfies HelpWord[]).map((id) => ({
      id,
      name: sayHelp(id),
    }));
  if (what === "gaveWay") return GAVE.map((id) => ({ id, name: `weak ${id}`.replace("weak trunk", "trunk") }));
  if (what === "pain") return [2, 4, 6, 8, 10].map((value) => ({ id: String(value), name: `${value} of 10` }));
  if (what === "fewer") {
    const full = planned?.repetitions ?? 4;
    return [...new Set([0.75, 0.5, 0.25, 0].map((share) => Math.floor(full * share)))].map((value) => ({
      id: String(value),
      name: value === 0 ? "none" : `${value} done`,
    }));
  }
  return [];
}

function Column({
  title,
  pairs = false,
  children,
}: {
  readonly title: string;
  readonly pairs?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <fieldset className={pairs ? "quite-column pairs" : "quite-column"}>
      <legend className="label">{title}</legend>
      {children}
    </fieldset>
  );
}

function Choice({
  chosen,
  name,
  onPress,
}: {
  readonly chosen: boolean;
  readonly name: string;
  readonly onPress: () => void;
}) {
  return (
    <Button className={`press quite-choice ${chosen ? "filled" : ""}`} aria-pressed={chosen} onPress={onPress}>
      {name}
    </Button>
  );
}
