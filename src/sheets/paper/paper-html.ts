import { escapeHtml } from "./escape.ts";
import { estimateScale } from "./estimate.ts";
import type { Block, Cell, Paper, PaperPage, Run } from "./paper.ts";
import { PAPER_STYLE } from "./paper-style.ts";

/**
 * The paper as one page of HTML that needs nothing else: prints on A4, black on white.
 * @param fontStyle rules that name the fonts, where the page that shows it does not load them
 */
export function writePaperHtml(paper: Paper, fontStyle = ""): string {
  return `<!doctype html>
<html lang="${escapeHtml(paper.language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escapeHtml(paper.title)}</title><style>${fontStyle}${PAPER_STYLE}</style></head>
<body><main>${paper.pages.map((page) => writePage(page)).join("\n")}</main></body></html>
`;
}

/** The paper's pages alone, for a page that already has `PAPER_STYLE`. */
export function writePaperFragment(paper: Paper): string {
  return paper.pages.map((page) => writePage(page)).join("\n");
}

function writePage(page: PaperPage): string {
  const scale = estimateScale(page);
  const zoom = scale === 1 ? "" : ` style="zoom:${scale}"`;
  const foot = page.foot.length === 0 ? "" : `<div class="foot"${zoom}>${writeAll(page.foot)}</div>`;
  return `<section class="sheet"><div${zoom}>${writeAll(page.blocks)}</div>${foot}</section>`;
}

const writeAll = (blocks: readonly Block[]): string => blocks.map(writeBlock).join("");

function writeBlock(block: Block): string {
  if (block.kind === "heading")
    return `<h${block.level} class="${block.font}" style="font-size:${block.size}px">${escapeHtml(block.text)}</h${block.level}>`;
  if (block.kind === "words")
    return `<p class="${block.pale === true ? "pale" : ""}" style="font-size:${block.size}px;line-height:${block.leading}">${writeRuns(block.runs)}</p>`;
  if (block.kind === "figure") return writeFigure(block);
  if (block.kind === "ticks")
    return `<p style="font-size:${block.size}px;line-height:1.25">${tick(block.side).repeat(block.boxes)}${writeRuns(block.label)}</p>`;
  if (block.kind === "row")
    return `<div class="row" style="gap:${block.gap}px">${block.cells.map(writeCell).join("")}</div>`;
  if (block.kind === "box")
    return `<div class="box ${block.border}" style="padding:${block.padding}px">${writeAll(block.blocks)}</div>`;
  if (block.kind === "rule") return `<hr style="height:${block.weight}px">`;
  if (block.kind === "space") return `<div style="height:${block.height}px"></div>`;
  return writeTable(block);
}

const tick = (side: number): string =>
  `<span class="tick" aria-hidden="true" style="width:${side}px;height:${side}px"></span>`;

function writeRuns(runs: readonly Run[]): string {
  return runs
    .map(({ text, font }) => `<span class="${font}">${escapeHtml(text).replaceAll("\n", "<br>")}</span>`)
    .join("");
}

function writeFigure(block: Extract<Block, { kind: "figure" }>): string {
  const told = block.alt === null ? 'aria-hidden="true"' : `role="img" aria-label="${escapeHtml(block.alt)}"`;
  return `<div class="picture" ${told} style="height:${block.height}px">${block.svg}</div>`;
}

function writeCell(cell: Cell): string {
  const upright = cell.upright === "middle" ? " middle" : "";
  return `<div class="cell${upright}" style="flex-grow:${Math.round(cell.share * 100)}">${writeAll(cell.blocks)}</div>`;
}

function writeTable(block: Extract<Block, { kind: "table" }>): string {
  const columns = block.shares.map((share) => `<col style="width:${Math.round(share * 1000) / 10}%">`).join("");
  const head = block.head
    .map((text) => `<th scope="col" class="sansBold" style="font-size:${block.size}px">${escapeHtml(text)}</th>`)
    .join("");
  const rows = block.rows
    .map((cells) => `<tr>${cells.map((cell) => `<td>${writeAll(cell.blocks)}</td>`).join("")}</tr>`)
    .join("");
  return `<table><colgroup>${columns}</colgroup><thead><tr>${head}</tr></thead><tbody>${rows}</tbody></table>`;
}
