import type { FontName } from "./fonts.data.ts";

/**
 * A paper as a list of blocks, from which the page and the PDF are both written, so that the two cannot differ.
 * Sizes are in CSS pixels: a sheet of A4 is 794 wide and 1123 high.
 */
export interface Paper {
  readonly title: string;
  /** Language tag, e.g. "en". */
  readonly language: string;
  /** Day of the paper, "2026-03-16"; null where the case has none. */
  readonly date: string | null;
  readonly pages: readonly PaperPage[];
}

export interface PaperPage {
  readonly blocks: readonly Block[];
  /** Set at the foot of the page. */
  readonly foot: readonly Block[];
  /** How far all sizes may shrink to keep the page one page [0-1]. */
  readonly shrinkTo: number;
}

export interface Run {
  readonly text: string;
  readonly font: FontName;
}

export type Block =
  | {
      readonly kind: "heading";
      readonly level: 1 | 2 | 3;
      readonly text: string;
      readonly size: number;
      readonly font: FontName;
    }
  | {
      readonly kind: "words";
      readonly runs: readonly Run[];
      readonly size: number;
      readonly leading: number;
      readonly pale?: boolean;
    }
  /** Without words for it a picture is an ornament. */
  | { readonly kind: "figure"; readonly svg: string; readonly alt: string | null; readonly height: number }
  /** Empty boxes to tick, with what is ticked after them. */
  | {
      readonly kind: "ticks";
      readonly boxes: number;
      readonly side: number;
      readonly label: readonly Run[];
      readonly size: number;
    }
  | { readonly kind: "row"; readonly cells: readonly Cell[]; readonly gap: number }
  | {
      readonly kind: "table";
      readonly shares: readonly number[];
      readonly head: readonly string[];
      readonly rows: readonly (readonly Cell[])[];
      readonly size: number;
      readonly gap: number;
    }
  /** "heavy": a stop, one side heavy; "filled": white on black. */
  | {
      readonly kind: "box";
      readonly border: "heavy" | "line" | "filled";
      readonly blocks: readonly Block[];
      readonly padding: number;
    }
  | { readonly kind: "rule"; readonly weight: number }
  | { readonly kind: "space"; readonly height: number };

export interface Cell {
  /** Part of the row's width [0-1]. */
  readonly share: number;
  readonly blocks: readonly Block[];
  readonly upright?: "middle";
}

export const PAGE = { width: 794, height: 1123, margin: 46 } as const;

/** Every word of a block, in the order it is read; pictures count with their words. */
export function wordsOf(block: Block): readonly string[] {
  if (block.kind === "heading") return [block.text];
  if (block.kind === "words") return [block.runs.map(({ text }) => text).join("")];
  if (block.kind === "ticks") return [block.label.map(({ text }) => text).join("")];
  if (block.kind === "figure") return block.alt === null ? [] : [block.alt];
  if (block.kind === "row") return block.cells.flatMap((cell) => cell.blocks.flatMap(wordsOf));
  if (block.kind === "table")
    return [...block.head, ...block.rows.flatMap((row) => row.flatMap((cell) => cell.blocks.flatMap(wordsOf)))];
  if (block.kind === "box") return block.blocks.flatMap(wordsOf);
  return [];
}

/** Every block with all that stand inside it. */
export function everyBlock(blocks: readonly Block[]): readonly Block[] {
  return blocks.flatMap((block) => [block, ...everyBlock(insideOf(block))]);
}

function insideOf(block: Block): readonly Block[] {
  if (block.kind === "row") return block.cells.flatMap((cell) => cell.blocks);
  if (block.kind === "table") return block.rows.flatMap((row) => row.flatMap((cell) => cell.blocks));
  return block.kind === "box" ? block.blocks : [];
}
