import { ToggleButton } from "react-aria-components";
import type { Picture } from "../../engine/engine.ts";
import type { Answer } from "../computing/use-answer.ts";
import { Figure } from "../parts/figure.tsx";

/** The lines of the item's words that a mark on the mat belongs to. */
export type MarkedLine = "place" | "hands" | "wayOut" | "wayOutHurry";

const LINES: Readonly<Record<string, MarkedLine>> = {
  hands: "hands",
  knees: "place",
  feet: "place",
  facing: "place",
  wayOut: "wayOut",
  wayOutHurry: "wayOutHurry",
};
const NAMES: Readonly<Record<MarkedLine, string>> = {
  place: "Your place",
  hands: "Your hands",
  wayOut: "Way out",
  wayOutHurry: "Way out in a hurry",
};

/** The mat from above; each of the helper's marks can be pressed and underlines its line in the words. */
export function AboveFigure({
  answer,
  marked,
  onMark,
}: {
  readonly answer: Answer<Picture>;
  readonly marked: MarkedLine | null;
  readonly onMark: (line: MarkedLine | null) => void;
}) {
  const picture = answer.state === "there" ? answer.value : answer.state === "waiting" ? answer.last : null;
  const box = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(picture?.svg ?? "");
  const [width, height] = [Number(box?.[1] ?? 1), Number(box?.[2] ?? 1)];
  return (
    <div className="item-above" dir="ltr" style={{ aspectRatio: box === null ? "3 / 2" : `${width} / ${height}` }}>
      <Figure answer={answer} wait="The mat from above is being drawn" />
      {middles(picture).map(({ line, x, y }) => (
        <ToggleButton
          key={line}
          className="above-mark"
          aria-label={NAMES[line]}
          isSelected={marked === line}
          onChange={(selected) => onMark(selected ? line : null)}
          style={{ insetInlineStart: `${(100 * x) / width}%`, insetBlockStart: `${(100 * y) / height}%` }}
        />
      ))}
    </div>
  );
}

/** One press for each line, in the middle of its marks. */
function middles(
  picture: Picture | null,
): readonly { readonly line: MarkedLine; readonly x: number; readonly y: number }[] {
  const marks = picture?.marks ?? [];
  const lines: readonly MarkedLine[] = ["place", "hands", "wayOut", "wayOutHurry"];
  return lines.flatMap((line) => {
    const own = marks.filter(({ id }) => LINES[id] === line);
    if (own.length === 0) return [];
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    return [{ line, x: mean(own.map(({ x }) => x)), y: mean(own.map(({ y }) => y)) }];
  });
}
