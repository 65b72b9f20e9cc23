import type { FontName } from "./fonts.data.ts";
import { breakLines, type Line } from "./line-breaks.ts";
import type { Block, Cell } from "./paper.ts";
import type { PdfPen } from "./pdf-pen.ts";

/** Points in a CSS pixel. */
export const POINTS = 0.75;
/** Room a row of a table takes besides its cells [CSS pixels]. */
export const ROW_GAP = 11;

/** One way of setting blocks: the pen, the scale of the page, the ink. */
export interface Setting {
  readonly pen: PdfPen;
  readonly scale: number;
  readonly ink: string;
}

/** Height of blocks set one under the other [points]. */
export function heightOfAll(blocks: readonly Block[], width: number, setting: Setting): number {
  return blocks.reduce((sum, block) => sum + heightOf(block, width, setting), 0);
}

/** Height of a block set in a width [points]. */
export function heightOf(block: Block, width: number, setting: Setting): number {
  const unit = setting.scale * POINTS;
  if (block.kind === "space") return block.height * unit;
  if (block.kind === "rule") return block.weight * unit;
  if (block.kind === "figure") return block.height * unit;
  if (block.kind === "heading") return linesOf(block, width, setting).length * block.size * 1.16 * unit;
  if (block.kind === "words") return linesOf(block, width, setting).length * block.size * block.leading * unit;
  if (block.kind === "ticks")
    return (
      Math.max(linesOf(block, width - ticksWidth(block, setting), setting).length * block.size * 1.25, block.side + 3) *
      unit
    );
  if (block.kind === "row") return rowHeight(block.cells, block.gap, width, setting);
  if (block.kind === "box")
    return heightOfAll(block.blocks, width - boxInset(block) * unit, setting) + 2 * block.padding * unit;
  const rows = block.rows.reduce((sum, cells) => sum + rowHeight(cells, block.gap, width, setting) + ROW_GAP * unit, 0);
  return rows + headHeight(block, width, setting);
}

/** What a box takes from the width of what is in it [CSS pixels]. */
export const boxInset = (block: Extract<Block, { kind: "box" }>): number =>
  2 * block.padding + (block.border === "heavy" ? 8 : 0);

/** Width of the boxes to tick and the gap after them [points]. */
export function ticksWidth(block: Extract<Block, { kind: "ticks" }>, setting: Setting): number {
  return (block.boxes * (block.side + 4) + (block.label.length === 0 ? 0 : 4)) * setting.scale * POINTS;
}

export function cellWidths(cells: readonly Cell[], gap: number, width: number, setting: Setting): readonly number[] {
  const inner = width - gap * (cells.length - 1) * setting.scale * POINTS;
  return cells.map(({ share }) => share * inner);
}

/** Height of the tallest cell [points]. */
export function rowHeight(cells: readonly Cell[], gap: number, width: number, setting: Setting): number {
  const widths = cellWidths(cells, gap, width, setting);
  return Math.max(...cells.map((cell, index) => heightOfAll(cell.blocks, widths[index] ?? 0, setting)));
}

/** Height of a table's head with the gap under it [points]. */
export function headHeight(block: Extract<Block, { kind: "table" }>, width: number, setting: Setting): number {
  return rowHeight(headCells(block), block.gap, width, setting) + 7 * setting.scale * POINTS;
}

export function headCells(block: Extract<Block, { kind: "table" }>): readonly Cell[] {
  return block.head.map((text, index) => ({
    share: block.shares[index] ?? 0,
    blocks: [{ kind: "words", runs: [{ text, font: "sansBold" }], size: block.size, leading: 1.2 }],
  }));
}

export function linesOf(
  block: Extract<Block, { kind: "heading" | "words" | "ticks" }>,
  width: number,
  { pen, scale }: Setting,
): readonly Line[] {
  const runs =
    block.kind === "heading"
      ? [{ text: block.text, font: block.font }]
      : block.kind === "words"
        ? block.runs
        : block.label;
  const size = block.size * scale * POINTS;
  return breakLines(runs, width, (text: string, font: FontName) => pen.widthOf(text, font, size));
}
