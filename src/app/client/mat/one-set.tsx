import { useCallback, useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { Figure } from "../parts/figure.tsx";
import type { KeptPerson } from "../record/database.ts";
import { LineDrawing } from "../session-line/line-drawing.tsx";
import { type Stretch, stretchesOf } from "../session-line/stretches.ts";
import { useWidth } from "../session-line/use-width.ts";
import { useTicks } from "../plan/ticks.ts";
import type { NextSet } from "./next-set.ts";
import type { CatalogueAnswer } from "../../contract/catalogue-answer.ts";
import type { RungName } from "../../engine/engine.ts";
import { CallLeaf } from "./call-leaf.tsx";
import { useBounds } from "./use-bounds.ts";
import { NotQuite } from "./not-quite.tsx";
import { StopLeaf } from "./stop-leaf.tsx";
import { Timer, useSeconds } from "./timer.tsx";
import type { OpenSession } from "./use-session.ts";

/** How long the last set can be taken back where its button stands [s]. */
const UNDO_SECONDS = 10;

/** One set of one item: its name, one word, the count, the picture and three large answers. */
export function OneSet({
  person,
  session,
  next,
  catalogue,
}: {
  readonly person: KeptPerson;
  readonly session: OpenSession;
  readonly next: NextSet;
  readonly catalogue: CatalogueAnswer | null;
}) {
  const of = { activity: next.activity, rung: next.rung };
  const sheet = shown(useAnswer(person.case, "sheet", [person.case, of]));
  const picture = useAnswer(person.case, "picture", [
    person.case,
    { ...of, kind: "item", theme: "screen", width: 640 },
  ]);
  const { planned } = next;
  const item = session.plan?.items.find(({ activity, rung }) => activity === of.activity && rung === next.plannedRung);
  const [count, setCount] = useState(0);
  const [rest, setRest] = useState<number | null>(null);
  const [undo, setUndo] = useState<readonly string[] | null>(null);
  const [dialog, setDialog] = useState<"notQuite" | "stop" | "call" | null>(null);
  const [ticks, setTicks] = useTicks(person.id, of);
  const { add, state } = session;
  const stopped = state.phase === "stopped";
  const bounds = planned?.bounds ?? null;
  const limits = useBounds({ bounds, catalogue, state, of });

  const { out } = limits;
  const done = useCallback(async () => {
    if (out !== null) return setDialog("call");
    const ids = await add([{ kind: "setDone", activity: next.activity, rung: next.rung, asPlanned: true }]);
    setUndo(ids);
    setCount(0);
    setRest(item?.dose.restSeconds ?? 0);
  }, [add, item, next.activity, next.rung, out]);

  useEffect(() => {
    if (undo === null) return;
    const timer = setTimeout(() => setUndo(null), UNDO_SECONDS * 1000);
    return () => clearTimeout(timer);
  }, [undo]);

  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const busy = dialog !== null || stopped || event.repeat || event.ctrlKey || event.metaKey || event.altKey;
      const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
      if (busy || typing) return;
      if (event.key === "s" || event.key === "S") setDialog("stop");
      // On a focused control the space bar belongs to that control.
      if (
        event.key === " " &&
        (event.target === document.body || (event.target instanceof Element && event.target.id === "main"))
      ) {
        event.preventDefault();
        void done();
      }
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [dialog, stopped, done]);

  const takeBack = async () => {
    if (undo === null) return;
    await add(undo.map((event) => ({ kind: "undone" as const, event })));
    setUndo(null);
    setRest(null);
  };
  const restLeft = useSeconds(rest, () => setRest(null));
  const stretches = session.plan === null ? [] : stretchesOf(session.plan);
  const touched = stretches.findIndex((stretch) => stretch.item !== null && session.plan?.items[stretch.item] === item);
  const hold = planned?.repetitions === undefined ? planned?.holdSeconds : undefined;
  return (
    <div className="mat">
      {stretches.length > 0 && (
        <ThinLine stretches={stretches} minutes={session.plan?.minutes ?? 1} touched={touched} />
      )}
      <div className="mat-words">
        <h1 className={(sheet?.name.length ?? 0) > LONG_NAME ? "mat-name long" : "mat-name"}>{sheet?.name ?? ""}</h1>
        <div className="mat-cue">
          <p className="mat-word">{sheet?.cue ?? ""}</p>
          {hold === undefined ? (
            <Button
              className="mat-count"
              aria-label={`Count one more: ${count} of ${planned?.repetitions ?? 1}`}
              onPress={() => setCount(Math.min(count + 1, planned?.repetitions ?? 99))}
            >
              <span>{count}</span> <small>of {planned?.repetitions ?? 1}</small>
            </Button>
          ) : (
            <Timer key={`${next.activity}/${next.rung}`} seconds={hold} />
          )}
        </div>
        <p className="mat-second" role="status">
          {restLeft !== null ? `rest ${clock(restLeft)}; then ` : ""}set {next.set} of {next.of}
          {restLeft === null && sheet?.yourHands[0] !== undefined
            ? `, ${sheet.yourHands[0].charAt(0).toLowerCase()}${sheet.yourHands[0].slice(1).replace(/\.$/, "")}`
            : ""}
        </p>
      </div>
      {bounds !== null && (
        <p className={out === null ? "mat-bounds" : "mat-bounds stopbox"}>
          {out === null ? limits.words : `Out of bounds: ${out}. Call the therapist before it is done.`}
        </p>
      )}
      <Figure answer={picture} wait="The picture is being drawn" className="mat-picture" />
      <div className="mat-presses">
        <Button className="press filled mat-done" onPress={() => void done()}>
          {out === null ? "Done as planned" : "Call the therapist…"}
        </Button>
        {undo !== null ? (
          <Button className="press mat-other" onPress={() => void takeBack()}>
            Undo
          </Button>
        ) : (
          <Button className="press mat-other" onPress={() => setDialog("notQuite")}>
            Not quite…
          </Button>
        )}
        <Button className="press ink mat-stop" onPress={() => setDialog("stop")}>
          Stop
        </Button>
      </div>
      {dialog === "notQuite" && sheet !== null && (
        <NotQuite
          sheet={sheet}
          planned={planned}
          ticks={ticks}
          outOf={limits.outOf}
          onBack={() => setDialog(null)}
          onNoted={async (events) => {
            setDialog(null);
            setCount(0);
            setTicks([]);
            setUndo(await add(events));
          }}
        />
      )}
      {dialog === "call" && out !== null && (
        <CallLeaf
          about={out}
          onBack={() => setDialog(null)}
          onCalled={(call) => {
            setDialog(null);
            void add([
              { kind: "therapistCalled", ...of, ...call },
              ...(call.allowed
                ? []
                : [{ kind: "itemSkipped" as const, ...itemOf(next), because: "out of the assistant's bounds" }]),
            ]);
          }}
        />
      )}
      {(dialog === "stop" || stopped) && (
        <StopLeaf
          session={session}
          of={of}
          wayOut={sheet?.wayOut.hurry ?? []}
          her={person.case.person.sex === "female" ? "her" : "him"}
          onClose={() => setDialog(null)}
        />
      )}
    </div>
  );
}

/** The planned item a set belongs to, whatever rung it is done at. */
function itemOf({ activity, plannedRung }: NextSet): RungName {
  return { activity, rung: plannedRung };
}

/** The session as a thin line over the set, to see where one is. */
function ThinLine({
  stretches,
  minutes,
  touched,
}: {
  readonly stretches: readonly Stretch[];
  readonly minutes: number;
  readonly touched: number;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 300);
  return (
    <div className="mat-line" ref={frame}>
      <LineDrawing stretches={stretches} minutes={minutes} touched={touched} width={width} floorMat above={THIN} />
    </div>
  );
}
const THIN = 66;
/** Letters of a name that still fit two lines in full size. */
const LONG_NAME = 36;

export function clock(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}
