import { useState } from "react";
import { Button } from "react-aria-components";
import type { RungName } from "../../engine/engine.ts";
import type { StopReason } from "../../../session/codes.ts";
import { shown, useAnswer } from "../computing/use-answer.ts";
import { Leaf } from "../parts/leaf.tsx";
import type { OpenSession } from "./use-session.ts";

const REASONS: readonly { readonly id: StopReason; readonly name: string }[] = [
  { id: "dizziness", name: "dizzy or pale" },
  { id: "pain", name: "pain" },
  { id: "breath", name: "breath" },
  { id: "tired", name: "tired" },
  { id: "tone", name: "arm or leg stiffens" },
  { id: "fear", name: "frightened" },
  { id: "understanding", name: "did not follow" },
  { id: "other", name: "something else" },
];

/** What to do now, why it was stopped, and the emergency card. It is answered, not dismissed. */
export function StopLeaf({
  session,
  of,
  wayOut,
  her,
  onClose,
}: {
  readonly session: OpenSession;
  readonly of: RungName;
  readonly wayOut: readonly string[];
  readonly her: string;
  readonly onClose: () => void;
}) {
  const [card, setCard] = useState<string | null>(null);
  const cards = shown(useAnswer(null, "emergencyCards", []));
  const standing = session.state.stops.at(-1);
  const because = standing !== undefined && standing.settledBy === null ? standing.because : null;
  const stop = (reason: StopReason) => {
    if (because !== null) return;
    void session.add([{ kind: "stopped", because: reason, activity: of.activity, rung: of.rung }]);
  };
  const settle = async () => {
    if (because !== null) await session.add([{ kind: "settled" }]);
    onClose();
  };
  const shownCard = card === null ? undefined : cards?.find(({ id }) => id === card);
  return (
    <Leaf open onClose={onClose} label="Stopped" alert className="stop-leaf">
      {shownCard === undefined ? (
        <>
          <h2 className="stop-title">
            {because === null ? `Stop. Bring ${her} down and stay.` : "Stopped. Stay close."}
          </h2>
          <p className="stop-do">
            {wayOut.slice(0, 2).join(" ") || "Down by the way out, to the side that is safe."} Pressure and pulse before
            anything else.
          </p>
          <p className="label">because</p>
          <div className="stop-reasons">
            {REASONS.map(({ id, name }) => (
              <Button
                key={id}
                className={`press mat-other ${because === id ? "chosen" : ""}`}
                aria-pressed={because === id}
                isDisabled={because !== null && because !== id}
                onPress={() => stop(id)}
              >
                {name}
              </Button>
            ))}
          </div>
          <Button
            className="press ink stop-card"
            onPress={() => {
              stop("newSign");
              setCard("newSign");
            }}
          >
            New face droop, speech, headache, chest pain: emergency card
          </Button>
          <Button className="press mat-other" onPress={() => void settle()}>
            {because === null ? "Nothing happened, go on" : "Settled, go on"}
          </Button>
        </>
      ) : (
        <>
          <h2 className="stop-title">{shownCard.title}</h2>
          <p className="stop-do">
            <strong>Call:</strong> {shownCard.callWhen}
          </p>
          <ol className="stop-steps">
            {shownCard.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <p>{shownCard.note} Your own emergency protocol comes first.</p>
          <div className="row">
            {cards?.map(({ id, title }) => (
              <Button key={id} className={`press ${card === id ? "chosen" : ""}`} onPress={() => setCard(id)}>
                {title}
              </Button>
            ))}
            <Button className="press push-end" onPress={() => setCard(null)}>
              Back
            </Button>
          </div>
        </>
      )}
    </Leaf>
  );
}
