import type { FontName } from "./fonts.data.ts";
import { breakLines, type Line } from "./line-breaks.ts";
import { type Block, type Cell, PAGE, type Paper, type PaperPage } from "./paper.ts";
import { openPdf, type PaperFonts, type PdfPen } from "./pdf-pen.ts";

const POINTS = 0.75;
const INK = "#000000";
const PALE = "#333333";
const SHRINK_STEP = 0.02;

/** One way of setting blocks: the pen, the scale of the page, the ink. */
interface Setting {
  readonly pen: PdfPen;
  readonly scale: number;
  readonly ink: string;
}

/**
 * The paper as a tagged PDF: headings, paragraphs, tables and pictures with their words, for ears as for eyes.
 * A page shrinks by small steps as far as it allows, and what still does not fit goes on to a further page.
 */
export async function writePaperPdf(paper: Paper, fonts: PaperFonts): Promise<Uint8Array> {
  const pen = openPdf({ title: paper.title, language: paper.language, date: paper.date, fonts });
  for (const [index, page] of paper.pages.entries()) {
    if (index > 0) pen.newPage();
    writePage(pen, page);
  }
  return pen.finish();
}

function writePage(pen: PdfPen, page: PaperPage): void {
  const left = PAGE.margin * POINTS;
  const width = (PAGE.width - 2 * PAGE.margin) * POINTS;
  const bottom = (PAGE.height - PAGE.margin) * POINTS;
  const room = bottom - left;
  const needed = (scale: number) => heightOfAll([...page.blocks, ...page.foot], width, { pen, scale, ink: INK });
  let scale = 1;
  while (scale - SHRINK_STEP >= page.shrinkTo && needed(scale) > room) scale -= SHRINK_STEP;
  const setting = { pen, scale, ink: INK };
  const footHeight = heightOfAll(page.foot, width, setting);
  let y = left;
  for (const block of page.blocks) {
    const height = heightOf(block, width, setting);
    if (y + height > bottom - footHeight && y > left && block.kind !== "space" && block.kind !== "rule") {
      drawAll(page.foot, left, bottom - footHeight, width, setting);
      return writeRest(pen, { ...page, blocks: page.blocks.slice(page.blocks.indexOf(block)), foot: [] });
    }
    draw(block, left, y, width, setting);
    y += height;
  }
  drawAll(page.foot, left, bottom - footHeight, width, setting);
}

function writeRest(pen: PdfPen, page: PaperPage): void {
  pen.newPage();
  writePage(pen, page);
}

function heightOfAll(blocks: readonly Block[], width: number, setting: Setting): number {
  return blocks.reduce((sum, block) => sum + heightOf(block, width, setting), 0);
}

/** Height of a block set in a width [points]. */
function heightOf(block: Block, width: number, setting: Setting): number {
  const unit = setting.scale * POINTS;
  if (block.kind === "space") return block.height * unit;
  if (block.kind === "rule") return block.weight * unit;
  if (block.kind === "figure") return block.height * unit;
  if (block.kind === "heading") return linesOf(block, width, setting).length * block.size * 1.16 * unit;
  if (block.kind === "words") return linesOf(block, width, setting).length * block.size * block.leading * unit;
  if (block.kind === "ticks") return Math.max(linesOf(block, width - ticksWidth(block, setting), setting).length * block.size * 1.25, block.side + 3) * unit;
  if (block.kind === "row") return rowHeight(block.cells, block.gap, width, setting);
  if (block.kind === "box") return heightOfAll(block.blocks, width - boxInset(block) * unit, setting) + 2 * block.padding * unit;
  const rows = block.rows.reduce((sum, cells) => sum + rowHeight(cells, block.gap, width, setting) + 11 * unit, 0);
  return rows + headHeight(block, width, setting);
}

const boxInset = (block: Extract<Block, { kind: "box" }>): number => 2 * block.padding + (block.border === "heavy" ? 8 : 0);

function ticksWidth(block: Extract<Block, { kind: "ticks" }>, setting: Setting): number {
  return (block.boxes * (block.side + 4) + (block.label.length === 0 ? 0 : 4)) * setting.scale * POINTS;
}

function cellWidths(cells: readonly Cell[], gap: number, width: number, setting: Setting): readonly number[] {
  const inner = width - gap * (cells.length - 1) * setting.scale * POINTS;
  return cells.map(({ share }) => share * inner);
}

function rowHeight(cells: readonly Cell[], gap: number, width: number, setting: Setting): number {
  const widths = cellWidths(cells, gap, width, setting);
  return Math.max(...cells.map((cell, index) => heightOfAll(cell.blocks, widths[index] ?? 0, setting)));
}

function headHeight(block: Extract<Block, { kind: "table" }>, width: number, setting: Setting): number {
  return rowHeight(headCells(block), block.gap, width, setting) + 7 * setting.scale * POINTS;
}

function headCells(block: Extract<Block, { kind: "table" }>): readonly Cell[] {
  return block.head.map((text, index) => ({
    share: block.shares[index] ?? 0,
    blocks: [{ kind: "words", runs: [{ text, font: "sansBold" }], size: block.size, leading: 1.2 }],
  }));
}

function linesOf(block: Extract<Block, { kind: "heading" | "words" | "ticks" }>, width: number, { pen, scale }: Setting): readonly Line[] {
  const runs = block.kind === "heading" ? [{ text: block.text, font: block.font }] : block.kind === "words" ? block.runs : block.label;
  const size = block.size * scale * POINTS;
  return breakLines(runs, width, (text: string, font: FontName) => pen.widthOf(text, font, size));
}

function drawAll(blocks: readonly Block[], x: number, y: number, width: number, setting: Setting): void {
  let top = y;
  for (const block of blocks) {
    draw(block, x, top, width, setting);
    top += heightOf(block, width, setting);
  }
}

function draw(block: Block, x: number, y: number, width: number, setting: Setting): void {
  const { pen } = setting;
  const unit = setting.scale * POINTS;
  if (block.kind === "rule") return pen.line(x, y, x + width, y, block.weight * unit);
  if (block.kind === "figure") return drawFigure(block, x, y, width, setting);
  if (block.kind === "heading") return pen.tagged(`H${block.level}`, () => drawLines(linesOf(block, width, setting), x, y, block.size, 1.16, setting));
  if (block.kind === "words") return pen.tagged("P", () => drawLines(linesOf(block, width, setting), x, y, block.size, block.leading, block.pale === true ? { ...setting, ink: PALE } : setting));
  if (block.kind === "ticks") return drawTicks(block, x, y, width, setting);
  if (block.kind === "row") return drawCells(block.cells, block.gap, x, y, width, setting, (fill) => fill());
  if (block.kind === "box") return drawBox(block, x, y, width, setting);
  if (block.kind === "table") drawTable(block, x, y, width, setting);
}

function drawLines(lines: readonly Line[], x: number, y: number, size: number, leading: number, { pen, scale, ink }: Setting): void {
  const points = size * scale * POINTS;
  for (const [index, line] of lines.entries()) {
    const baseline = y + (index + 0.5) * leading * points + 0.34 * points;
    for (const piece of line) pen.text(piece.text, x + piece.at, baseline, piece.font, points, ink);
  }
}

function drawFigure(block: Extract<Block, { kind: "figure" }>, x: number, y: number, width: number, { pen, scale }: Setting): void {
  const paint = () => pen.svg(block.svg, x, y, width, block.height * scale * POINTS);
  if (block.alt === null) paint();
  else pen.tagged("Figure", paint, { alt: block.alt });
}

function drawTicks(block: Extract<Block, { kind: "ticks" }>, x: number, y: number, width: number, setting: Setting): void {
  const unit = setting.scale * POINTS;
  for (let index = 0; index < block.boxes; index++)
    setting.pen.rectangle(x + index * (block.side + 4) * unit, y + 2 * unit, block.side * unit, block.side * unit, { stroke: 1.1 * unit });
  if (block.label.length === 0) return;
  const inset = ticksWidth(block, setting);
  setting.pen.tagged("P", () => drawLines(linesOf(block, width - inset, setting), x + inset, y, block.size, 1.25, setting));
}

function drawBox(block: Extract<Block, { kind: "box" }>, x: number, y: number, width: number, setting: Setting): void {
  const unit = setting.scale * POINTS;
  const height = heightOf(block, width, setting);
  setting.pen.rectangle(x, y, width, height, block.border === "filled" ? { fill: INK } : { stroke: 1.4 * unit });
  if (block.border === "heavy") setting.pen.rectangle(x, y, 8 * unit, height, { fill: INK });
  const inset = (block.padding + (block.border === "heavy" ? 8 : 0)) * unit;
  const inner = block.border === "filled" ? { ...setting, ink: "#FFFFFF" } : setting;
  setting.pen.grouped("Sect", () => drawAll(block.blocks, x + inset, y + block.padding * unit, width - boxInset(block) * unit, inner));
}

function drawCells(cells: readonly Cell[], gap: number, x: number, y: number, width: number, setting: Setting, around: (fill: () => void) => void): void {
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

function drawTable(block: Extract<Block, { kind: "table" }>, x: number, y: number, width: number, setting: Setting): void {
  const { pen } = setting;
  const unit = setting.scale * POINTS;
  pen.grouped("Table", () => {
    pen.grouped("TR", () => drawCells(headCells(block), block.gap, x, y, width, setting, (fill) => pen.grouped("TH", fill, { scope: "Column" })));
    let top = y + headHeight(block, width, setting);
    for (const cells of block.rows) {
      pen.line(x, top - 3 * unit, x + width, top - 3 * unit, 0.9 * unit);
      const at = top + 3 * unit;
      pen.grouped("TR", () => drawCells(cells, block.gap, x, at, width, setting, (fill) => pen.grouped("TD", fill)));
      top += rowHeight(cells, block.gap, width, setting) + 11 * unit;
    }
  });
}
