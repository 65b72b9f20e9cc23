import { type Block, type Cell, PAGE, type PaperPage } from "./paper.ts";

/** Mean width of a letter, as a part of its size; a little wide, so that an estimate is rather too high. */
const LETTER = 0.5;
const CONTENT = PAGE.width - 2 * PAGE.margin;
const SHRINK_STEP = 0.02;

/** About how high blocks come out, without a font at hand [CSS pixels]. */
export function estimateAll(blocks: readonly Block[], width: number = CONTENT): number {
  return blocks.reduce((sum, block) => sum + estimate(block, width), 0);
}

/** How far a page's sizes have to shrink to stay one page, by estimate; never further than the page allows. */
export function estimateScale(page: PaperPage): number {
  const room = PAGE.height - 2 * PAGE.margin;
  let scale = 1;
  while (
    scale - SHRINK_STEP >= page.shrinkTo &&
    estimateAll([...page.blocks, ...page.foot], CONTENT / scale) * scale > room
  )
    scale -= SHRINK_STEP;
  return Math.round(scale * 100) / 100;
}

function estimate(block: Block, width: number): number {
  const linesOf = (text: string, size: number): number =>
    text.split("\n").reduce((sum, line) => sum + Math.ceil((lengthOf(line) * size * LETTER) / width), 0);
  if (block.kind === "space" || block.kind === "figure") return block.height;
  if (block.kind === "rule") return block.weight;
  if (block.kind === "heading") return linesOf(block.text, block.size) * block.size * 1.16;
  if (block.kind === "words") return linesOf(textOf(block.runs), block.size) * block.size * block.leading;
  if (block.kind === "ticks")
    return Math.max(linesOf(textOf(block.label), block.size) * block.size * 1.25, block.side + 6);
  if (block.kind === "row") return estimateRow(block.cells, block.gap, width);
  if (block.kind === "box") return estimateAll(block.blocks, width - 2 * block.padding - 10) + 2 * block.padding + 4;
  return block.size * 1.2 + 7 + block.rows.reduce((sum, cells) => sum + estimateRow(cells, block.gap, width) + 12, 0);
}

/** Letters of a line, both side words counted as long as the longer: a page breaks at one place for either side. */
const lengthOf = (line: string): number => line.replace(/\bleft\b/gi, "right").length;

const textOf = (runs: readonly { readonly text: string }[]): string => runs.map(({ text }) => text).join("");

function estimateRow(cells: readonly Cell[], gap: number, width: number): number {
  const inner = width - gap * (cells.length - 1);
  return Math.max(0, ...cells.map(({ share, blocks }) => estimateAll(blocks, share * inner)));
}
