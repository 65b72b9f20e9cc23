import { type ReactNode, useState } from "react";
import { Button } from "react-aria-components";
import type { RungSheet } from "../../engine/engine.ts";
import type { PlannedItem } from "../../../session/events.ts";
import { Leaf } from "../parts/leaf.tsx";
import type { NewEvent } from "../record/sessions.ts";
import { HELP_WORDS, type HelpWord, sayHelp } from "../words/dose-words.ts";

type What = "fault" | "help" | "fewer" | "gaveWay" | "pain" | "refused" | "other";
const WHAT: readonly { readonly id: What; readonly name: string }[] = [
  { id: "fault", name: "a fault" },
  { id: "help", name: "more help" },
  { id: "fewer", name: "fewer" },
  { id: "gaveWay", name: "a joint gave way" },
  { id: "pain", name: "pain" },
  { id: "refused", name: "did not want to" },
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
  { id: "leaveItem", name: "Leave this item" },
  { id: "callTherapist", name: "Call the therapist" },
] as const;
type Next = (typeof NEXT)[number]["id"];
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
  onBack,
  onNoted,
}: {
  readonly sheet: RungSheet;
  readonly planned: PlannedItem | null;
  readonly ticks: readonly string[];
  readonly onBack: () => void;
  readonly onNoted: (events: readonly NewEvent[]) => void;
}) {
  const [what, setWhat] = useState<What>("fault");
  const [which, setWhich] = useState<string | null>(ticks[0] ?? null);
  const [often, setOften] = useState<number>(0);
  const [next, setNext] = useState<Next>("goOn");
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
    setNext(to === "gaveWay" ? "rungDown" : to === "pain" || to === "refused" ? "leaveItem" : "goOn");
  };
  const noted = () => {
    const { activity, rung } = sheet;
    const times = OFTEN[often]?.times === 0 ? (planned?.repetitions ?? 3) : (OFTEN[often]?.times ?? 1);
    const joint = what === "gaveWay" ? GAVE.find((each) => each === which) : undefined;
    const help = what === "help" ? HELP_WORDS.find((word) => word === which) : undefined;
    const value = what === "fewer" || what === "pain" ? Number(which) : Number.NaN;
    const counted = what === "fault" || what === "gaveWay";
    const leaves = next === "leaveItem" && (what === "refused" || what === "pain");
    onNoted([
      {
        kind: "setException",
        activity,
        rung,
        what,
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
              ...(help === undefined ? {} : { help }),
            },
          ]),
    ]);
  };
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
      <div className="quite-foot">
        <Button className="press mat-other" onPress={onBack}>
          Back
        </Button>
        <Button className="press filled mat-done" isDisabled={choices.length > 0 && which === null} onPress={noted}>
          Noted, go on
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
