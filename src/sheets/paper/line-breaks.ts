import type { FontName } from "./fonts.data.ts";
import type { Run } from "./paper.ts";

/** A piece of a line in one font, and how far from the line's start it begins. */
export interface Piece {
  readonly text: string;
  readonly font: FontName;
  readonly at: number;
}
export type Line = readonly Piece[];

/**
 * Breaks words into lines that fit a width; a word that is wider than the line stands alone. A line feed ends a line.
 * Spaces stay in the text, at the end of a line too, so that what is read aloud or copied keeps its words apart.
 *
 * @param widthOf width of a text in a font, in the unit of `width`
 */
export function breakLines(
  runs: readonly Run[],
  width: number,
  widthOf: (text: string, font: FontName) => number,
): readonly Line[] {
  const lines: { text: string; font: FontName; at: number }[][] = [[]];
  let end = 0;
  for (const { text, font } of runs) {
    for (const part of text.split(/(\s+)/)) {
      const line = lines.at(-1);
      const last = line?.at(-1);
      if (part === "" || line === undefined) continue;
      if (part.trim() === "") {
        if (last !== undefined) last.text += " ";
        if (last !== undefined) end += widthOf(" ", last.font);
        if (!part.includes("\n")) continue;
        lines.push([]);
        end = 0;
        continue;
      }
      const wide = widthOf(part, font);
      const breaks = last?.text.endsWith(" ") === true && end + wide > width;
      if (breaks) {
        lines.push([{ text: part, font, at: 0 }]);
        end = wide;
        continue;
      }
      if (last !== undefined && last.font === font) last.text += part;
      else line.push({ text: part, font, at: end });
      end += wide;
    }
  }
  return lines.filter((line) => line.length > 0);
}
