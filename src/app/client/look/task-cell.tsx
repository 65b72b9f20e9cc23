import { Button } from "react-aria-components";
import type { CaseFile } from "../../contract/case-file.ts";
import { useAnswer } from "../computing/use-answer.ts";
import { Figure } from "../parts/figure.tsx";
import { Stepper } from "../parts/stepper.tsx";
import { Strip } from "../parts/strip.tsx";
import { type LookEntry, RESULTS, sayWhat, type Task } from "../words/look-words.ts";
import { bodyOnly } from "./body-case.ts";

const USUAL_SEAT = 50;
const FIGURE_WIDTH = 300;

/** One task of the look: its figure, its five answers, and what became of it. */
export function TaskCell({
  task,
  name,
  caseFile,
  entry,
  onResult,
  onSeat,
  onAsk,
}: {
  readonly task: Task;
  readonly name: string;
  readonly caseFile: CaseFile;
  readonly entry: LookEntry | undefined;
  readonly onResult: (result: LookEntry["result"] | null) => void;
  readonly onSeat: (centimetres: number) => void;
  readonly onAsk: () => void;
}) {
  const body = bodyOnly(caseFile);
  const picture = useAnswer(body, "lookPicture", [body, task, FIGURE_WIDTH]);
  const result = RESULTS.find(({ id }) => id === entry?.result)?.id ?? null;
  const what = entry === undefined ? null : sayWhat(entry);
  return (
    <li className="look-cell" data-task={task}>
      <Figure answer={picture} wait={name} className="look-figure" />
      <div className="look-name">
        <h2>{name}</h2>
        {task === "standUp" && (
          <Stepper
            label="Seat height in centimetres"
            hideLabel
            value={entry?.seatHeightCm ?? USUAL_SEAT}
            min={20}
            max={110}
            step={5}
            onChange={onSeat}
          />
        )}
      </div>
      <Strip label={name} choices={RESULTS} value={result} onChange={onResult} />
      {result === null ? (
        <p className="look-what">not tried</p>
      ) : result === "aloneWell" ? (
        <p className="look-what"> </p>
      ) : (
        <Button className="textlink look-what" onPress={onAsk}>
          {what ?? "where did it give way?"}
          <span className="unseen">, {name}</span>
        </Button>
      )}
    </li>
  );
}
