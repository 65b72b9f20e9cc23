import { type Block, PAGE, type Paper, type PaperPage } from "./paper.ts";
import { draw, drawAll, INK } from "./paper-drawing.ts";
import { headHeight, heightOf, heightOfAll, POINTS, ROW_GAP, rowHeight, type Setting } from "./paper-heights.ts";
import { openPdf, type PaperFonts, type PdfPen } from "./pdf-pen.ts";

export type { PaperFonts } from "./pdf-pen.ts";

const SHRINK_STEP = 0.02;
const EDGE = PAGE.margin * POINTS;
const WIDTH = (PAGE.width - 2 * PAGE.margin) * POINTS;
const BOTTOM = (PAGE.height - PAGE.margin) * POINTS;

/**
 * The paper as a tagged PDF: headings, paragraphs, tables and pictures with their words, for ears as for eyes.
 * A page shrinks by small steps as far as it allows, and what still does not fit goes on to a further page.
 */
export async function writePaperPdf(paper: Paper, fonts: PaperFonts): Promise<Uint8Array> {
  const pen = await openPdf({ title: paper.title, language: paper.language, date: paper.date, fonts });
  for (const [index, page] of paper.pages.entries()) {
    if (index > 0) pen.newPage();
    writePage(pen, page);
  }
  return pen.finish();
}

function writePage(pen: PdfPen, page: PaperPage): void {
  const setting = { pen, scale: scaleOf(pen, page), ink: INK };
  let footTop = BOTTOM - heightOfAll(page.foot, WIDTH, setting);
  // The foot is drawn when its page is full, so that it is read after what stands above it.
  const closeFirst = (): void => {
    if (footTop < BOTTOM) drawAll(page.foot, EDGE, footTop, WIDTH, setting);
    footTop = BOTTOM;
  };
  let y = EDGE;
  const waiting = [...page.blocks];
  for (let block = waiting.shift(); block !== undefined; block = waiting.shift()) {
    const [fitting, rest] = cutTable(block, footTop - y, setting);
    if (rest !== null) waiting.unshift(rest);
    const height = heightOf(fitting, WIDTH, setting);
    if (y + height > footTop && y > EDGE && fitting.kind !== "space" && fitting.kind !== "rule") {
      closeFirst();
      pen.newPage();
      y = EDGE;
    }
    draw(fitting, EDGE, y, WIDTH, setting);
    y += height;
  }
  closeFirst();
}

/** How far sizes shrink to keep the page one page; never further than it allows. */
function scaleOf(pen: PdfPen, page: PaperPage): number {
  const needed = (scale: number): number =>
    heightOfAll([...page.blocks, ...page.foot], WIDTH, { pen, scale, ink: INK });
  let scale = 1;
  while (scale - SHRINK_STEP >= page.shrinkTo && needed(scale) > BOTTOM - EDGE) scale -= SHRINK_STEP;
  return scale;
}

/** Cuts a table that is too high between two rows; the rest keeps the head. Other blocks stay whole. */
function cutTable(block: Block, room: number, setting: Setting): readonly [Block, Block | null] {
  if (block.kind !== "table" || heightOf(block, WIDTH, setting) <= room) return [block, null];
  let height = headHeight(block, WIDTH, setting);
  const fits = block.rows.findIndex((cells) => {
    height += rowHeight(cells, block.gap, WIDTH, setting) + ROW_GAP * setting.scale * POINTS;
    return height > room;
  });
  if (fits < 1) return [block, null];
  return [
    { ...block, rows: block.rows.slice(0, fits) },
    { ...block, rows: block.rows.slice(fits) },
  ];
}
