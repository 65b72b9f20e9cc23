import type { TherapistRow, TherapistSheet } from "./therapist-sheet.ts";
import { type Block, type Cell, PAGE, type Paper, type Run } from "../paper/paper.ts";
import { sayDate } from "../words/dates.ts";

const SMALL = 12.5;
const MOST_LINE = 236;
const SHARES = [0.16, 0.33, 0.29, 0.22] as const;

const sans = (text: string): Run => ({ text, font: "sans" });
const bold = (text: string): Run => ({ text, font: "sansBold" });
const words = (runs: readonly Run[], size: number = SMALL, leading = 1.26): Block => ({
  kind: "words",
  runs,
  size,
  leading,
});

/** The therapist's sheet as one page of paper. */
export function therapistPaper(sheet: TherapistSheet): Paper {
  return {
    title: `${sheet.title}: ${sheet.label}`,
    language: "en",
    date: sheet.date,
    pages: [
      {
        blocks: [...headBlocks(sheet), ...holdBlocks(sheet), ...tableBlocks(sheet)],
        foot: footBlocks(sheet),
        shrinkTo: 0.62,
      },
    ],
  };
}

function headBlocks(sheet: TherapistSheet): readonly Block[] {
  const aside = [sheet.label, ...(sheet.date === null ? [] : [sayDate(sheet.date)])].join("\n");
  return [
    {
      kind: "row",
      gap: 16,
      cells: [
        { share: 0.66, blocks: [{ kind: "heading", level: 1, text: sheet.title, size: 27, font: "serifBold" }] },
        { share: 0.34, blocks: [words([sans(aside)], 14)] },
      ],
    },
    { kind: "space", height: 4 },
    ...(sheet.changes.length === 0
      ? []
      : [
          words(
            [
              { text: "Changed: ", font: "serifBold" },
              { text: sheet.changes.join(" "), font: "serif" },
            ],
            14.5,
            1.3,
          ),
        ]),
    { kind: "space", height: 8 },
    ...(sheet.line === null
      ? []
      : [
          { kind: "figure", svg: sheet.line.svg, alt: sheet.line.alt, height: lineHeight(sheet.line.svg) } as const,
          { kind: "space", height: 8 } as const,
        ]),
  ];
}

/** The line goes from margin to margin; its height follows from its own proportions. */
function lineHeight(svg: string): number {
  const [, width = 0, height = 0] = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(svg)?.map(Number) ?? [];
  return width > 0 ? Math.min(MOST_LINE, ((PAGE.width - 2 * PAGE.margin) * height) / width) : MOST_LINE;
}

function holdBlocks(sheet: TherapistSheet): readonly Block[] {
  if (sheet.hold.length === 0) return [];
  const blocks = sheet.hold.map((sentence) => words([{ text: sentence, font: "serif" }], 19, 1.4));
  return [{ kind: "box", border: "heavy", padding: 12, blocks }];
}

function tableBlocks(sheet: TherapistSheet): readonly Block[] {
  if (sheet.rows.length === 0) return [];
  const picture = sheet.rows.length > 6 ? 70 : 84;
  return [
    {
      kind: "table",
      shares: SHARES,
      head: ["Picture", "Do and say", "You", "Sets; tick what you saw"],
      size: SMALL,
      gap: 14,
      rows: sheet.rows.map((row) => rowCells(row, picture)),
    },
  ];
}

function rowCells(row: TherapistRow, picture: number): readonly Cell[] {
  const [first, second, third, fourth] = SHARES;
  return [
    {
      share: first,
      blocks:
        row.picture === null ? [] : [{ kind: "figure", svg: row.picture.svg, alt: row.picture.alt, height: picture }],
    },
    {
      share: second,
      blocks: [
        words([{ text: row.name, font: "serifBold" }, ...(row.changed ? [bold("  changed")] : [])], 14.5, 1.2),
        words([{ text: row.say, font: "serif" }], 14, 1.3),
        ...(row.effort === null ? [] : [words([sans(row.effort)])]),
      ],
    },
    {
      share: third,
      blocks: [
        words([sans(row.you)]),
        ...(row.bounds === null ? [] : [words([bold("Assistant: "), sans(row.bounds)])]),
      ],
    },
    {
      share: fourth,
      blocks: [
        { kind: "ticks", boxes: row.sets, side: 11, label: [bold(row.dose)], size: SMALL },
        ...row.faults.map((fault): Block => ({ kind: "ticks", boxes: 1, side: 11, label: [sans(fault)], size: SMALL })),
      ],
    },
  ];
}

function footBlocks(sheet: TherapistSheet): readonly Block[] {
  const stop: Block = { kind: "box", border: "heavy", padding: 8, blocks: [words([bold("Stop: "), sans(sheet.stop)])] };
  const ways = [words([bold("Ways out. "), sans(sheet.waysOut.join(" "))])];
  const boxes: Block = {
    kind: "row",
    gap: 16,
    cells: [
      { share: 0.42, blocks: [stop] },
      { share: 0.58, blocks: [{ kind: "box", border: "line", padding: 8, blocks: ways }] },
    ],
  };
  return [
    { kind: "space", height: 8 },
    ...(sheet.rows.length === 0 ? [] : [boxes, { kind: "space", height: 6 } as const]),
    ...(sheet.out === null ? [] : [words([sans(sheet.out)])]),
    { kind: "words", runs: [sans(sheet.support)], size: 12, leading: 1.3, pale: true },
  ];
}
