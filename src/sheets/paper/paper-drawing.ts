import {
  boxInset,
  cellWidths,
  headCells,
  headHeight,
  heightOf,
  heightOfAll,
  linesOf,
  POINTS,
  ROW_GAP,
  rowHeight,
  type Setting,
  ticksWidth,
} from "./paper-heights.ts";
import type { Line } from "./line-breaks.ts";
import type { Block, Cell } from "./paper.ts";

export const INK = "#000000";
const PALE = "#333333";
const WHITE = "#FFFFFF";

/** Draws blocks one under the other from a place on the page [points]. */
export function drawAll(blocks: readonly Block[], x: number, y: number, width: number, setting: Setting): void {
  let top = y;
  for (const block of blocks) {
    draw(block, x, top, width, setting);
    top += heightOf(block, width, setting);
  }
}

/** Draws one block, each part as the element of the structure tree it is. */
export function draw(block: Block, x: number, y: number, width: number, setting: Setting): void {
  const { pen } = setting;
  switch (block.kind) {
    case "space":
      break;
    case "rule":
      pen.line(x, y, x + width, y, block.weight * setting.scale * POINTS);
      break;
    case "figure":
      drawFigure(block, x, y, width, setting);
      break;
    case "heading":
      pen.tagged(`H${block.level}`, () => drawLines(linesOf(block, width, setting), x, y, block.size, 1.16, setting));
      break;
    case "words": {
      const inked = block.pale === true ? { ...setting, ink: PALE } : setting;
      pen.tagged("P", () => drawLines(linesOf(block, width, setting), x, y, block.size, block.leading, inked));
      break;
    }
    case "ticks":
      drawTicks(block, x, y, width, setting);
      break;
    case "row":
      drawCells(block.cells, block.gap, x, y, width, setting, (fill) => fill());
      break;
    case "box":
      drawBox(block, x, y, width, setting);
      break;
    case "table":
      drawTable(block, x, y, width, setting);
      break;
  }
}

function drawLines(
  lines: readonly Line[],
  x: number,
  y: number,
  size: number,
  leading: number,
  { pen, scale, ink }: Setting,
): void {
  const points = size * scale * POINTS;
  for (const [index, line] of lines.entries()) {
    const baseline = y + (index + 0.5) * leading * points + 0.34 * points;
    for (const piece of line) pen.text(piece.text, x + piece.at, baseline, piece.font, points, ink);
  }
}

function drawFigure(
  block: Extract<Block, { kind: "figure" }>,
  x: number,
  y: number,
  width: number,
  { pen, scale }: Setting,
): void {
  const paint = () => pen.svg(block.svg, x, y, width, block.height * scale * POINTS);
  if (block.alt === null) paint();
  else pen.tagged("Figure", paint, { alt: block.alt });
}

function drawTicks(
  block: Extract<Block, { kind: "ticks" }>,
  x: number,
  y: number,
  width: number,
  setting: Setting,
): void {
  const unit = setting.scale * POINTS;
  for (let index = 0; index < block.boxes; index++)
    setting.pen.rectangle(x + index * (block.side + 4) * unit, y + 2 * unit, block.side * unit, block.side * unit, {
      stroke: 1.1 * unit,
    });
  if (block.label.length === 0) return;
  const inset = ticksWidth(block, setting);
  setting.pen.tagged("P", () =>
    drawLines(linesOf(block, width - inset, setting), x + inset, y, block.size, 1.25, setting),
  );
}

function drawBox(block: Extract<Block, { kind: "box" }>, x: number, y: number, width: number, setting: Setting): void {
  const unit = setting.scale * POINTS;
  const height = heightOf(block, width, setting);
  setting.pen.rectangle(x, y, width, height, block.border === "filled" ? { fill: INK } : { stroke: 1.4 * unit });
  if (block.border === "heavy") setting.pen.rectangle(x, y, 8 * unit, height, { fill: INK });
  const inset = (block.padding + (block.border === "heavy" ? 8 : 0)) * unit;
  const inner = block.border === "filled" ? { ...setting, ink: WHITE } : setting;
  setting.pen.grouped("Sect", () =>
    drawAll(block.blocks, x + inset, y + block.padding * unit, width - boxInset(block) * unit, inner),
  );
}

function drawCells(
  cells: readonly Cell[],
  gap: number,
  x: number,
  y: number,
  width: number,
  setting: Setting,
  around: (fill: () => void) => void,
): void {
  const widths = cellWidths(cells, gap, width, setting);
  const height = rowHeight(cells, gap, width, setting);
  let left = x;
  for (const [index, cell] of cells.entries()) {
    const inner = widths[index] ?? 0;
    const top = cell.upright === "middle" ? y + (height - heightOfAll(cell.blocks, inner, setting)) / 2 : y;
    const at = left;
    around(() => drawAll(cell.blocks, at, top, inner, setting));
    left += inner + gap * setting.scale * POINTS;
  }
}

function drawTable(
  block: Extract<Block, { kind: "table" }>,
  x: number,
  y: number,
  width: number,
  setting: Setting,
): void {
  const { pen } = setting;
  const unit = setting.scale * POINTS;
  pen.grouped("Table", () => {
    pen.grouped("TR", () =>
      drawCells(headCells(block), block.gap, x, y, width, setting, (fill) =>
        pen.grouped("TH", fill, { scope: "Column" }),
      ),
    );
    let top = y + headHeight(block, width, setting);
    for (const cells of block.rows) {
      pen.line(x, top - 3 * unit, x + width, top - 3 * unit, 0.9 * unit);
      const at = top + 3 * unit;
      pen.grouped("TR", () => drawCells(cells, block.gap, x, at, width, setting, (fill) => pen.grouped("TD", fill)));
      top += rowHeight(cells, block.gap, width, setting) + ROW_GAP * unit;
    }
  });
}
