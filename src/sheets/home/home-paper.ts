import { HOME_WORDS } from "./home-words.ts";
import type { HomeSheet, HomeStrip } from "./home-sheet.ts";
import { estimateAll } from "../paper/estimate.ts";
import { type Block, PAGE, type Paper, type Run } from "../paper/paper.ts";
import { sayDate } from "../words/dates.ts";

/** Sizes [CSS pixels]; 22 is 16.5 points, the least on a home sheet. */
const PLAIN = {
  title: 44,
  name: 32,
  words: 23,
  count: 25,
  least: 22,
  leading: 1.28,
  picture: 160,
  shares: [0.25, 0.53, 0.22],
} as const;
const APHASIA = {
  title: 44,
  name: 34,
  words: 24,
  count: 30,
  least: 22,
  leading: 1.5,
  picture: 290,
  shares: [0.48, 0.52, 0],
} as const;
type Sizes = typeof PLAIN | typeof APHASIA;

const GAP = 18;
const DAY_BOXES = 12;

const STRIPES = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 24"><rect x="1" y="1" width="62" height="22" rx="11" fill="#ffffff" stroke="#000000" stroke-width="1.6"/><path d="M8 21L18 3M18 22L30 2M28 22L40 2M38 22L50 2M48 21L57 5" fill="none" stroke="#000000" stroke-width="1.1"/></svg>`;

/**
 * The home sheet as a paper: first the head, the strips and the calls, overleaf what found no room, the days to tick
 * and room for words.
 */
export function homePaper(sheet: HomeSheet): Paper {
  const sizes = sheet.form === "plain" ? PLAIN : APHASIA;
  const head = headBlocks(sheet, sizes);
  const foot = footBlocks(sheet, sizes);
  const room = PAGE.height - 2 * PAGE.margin;
  const fits = countFitting(sheet.strips, room - estimateAll(head) - estimateAll(foot), sizes);
  const front = sheet.strips.slice(0, fits).flatMap((strip) => stripBlocks(strip, sizes));
  const over = sheet.strips.slice(fits).flatMap((strip) => stripBlocks(strip, sizes));
  const ticks = tickBlocks(sheet, sizes);
  const overleaf = estimateAll([...over, ...ticks]) <= room ? [[...over, ...ticks]] : [over, ticks];
  return {
    title: sheet.label === null ? sheet.title : `${sheet.title}, ${sheet.label}`,
    language: "en",
    date: sheet.date,
    // Nothing shrinks: large print stays large.
    pages: [
      { blocks: [...head, ...front], foot, shrinkTo: 1 },
      ...overleaf.map((blocks) => ({ blocks, foot: [], shrinkTo: 1 })),
    ],
  };
}

const sans = (text: string): Run => ({ text, font: "sans" });
const bold = (text: string): Run => ({ text, font: "sansBold" });
const words = (runs: readonly Run[], size: number, leading: number): Block => ({ kind: "words", runs, size, leading });

function headBlocks(sheet: HomeSheet, sizes: Sizes): readonly Block[] {
  const legend: readonly Block[] =
    sheet.legend === null
      ? []
      : [
          {
            kind: "row",
            gap: GAP,
            cells: [
              { share: 0.88, blocks: [words([sans(sheet.legend)], sizes.least, 1.3)], upright: "middle" },
              {
                share: 0.12,
                blocks: [{ kind: "figure", svg: STRIPES, alt: "Stripes", height: 28 }],
                upright: "middle",
              },
            ],
          },
        ];
  return [
    { kind: "heading", level: 1, text: sheet.title, size: sizes.title, font: "serifBold" },
    ...legend,
    ...(sheet.lookFirst === null ? [] : [words([bold(sheet.lookFirst)], sizes.least, 1.3)]),
    ...(sheet.wait === null ? [] : [words([bold(sheet.wait)], sizes.least, 1.25)]),
    { kind: "space", height: 6 },
  ];
}

function stripBlocks(strip: HomeStrip, sizes: Sizes): readonly Block[] {
  const numbered = sizes === APHASIA;
  const sentences = numbered
    ? strip.sentences.map((sentence, index) =>
        words([bold(`${index + 1} `), sans(sentence)], sizes.words, sizes.leading),
      )
    : [words([sans(strip.sentences.join(" "))], sizes.words, sizes.leading)];
  const text: readonly Block[] = [
    { kind: "heading", level: 2, text: strip.name, size: sizes.name, font: "serifBold" },
    ...sentences,
    ...(strip.helper === null ? [] : [words([bold(strip.helper)], sizes.words, sizes.leading)]),
    words([{ text: strip.howMany, font: "serifBold" }], sizes.count, 1.3),
  ];
  const stop: Block = {
    kind: "box",
    border: "heavy",
    padding: 9,
    blocks: [words([bold("Stop if "), sans(`${strip.stopIf}.`)], sizes.least, 1.25)],
  };
  const [forPicture, forText, forStop] = sizes.shares;
  return [
    { kind: "rule", weight: 2 },
    { kind: "space", height: 9 },
    {
      kind: "row",
      gap: GAP,
      cells: [
        {
          share: forPicture,
          upright: "middle",
          blocks:
            strip.picture === null
              ? []
              : [{ kind: "figure", svg: strip.picture.svg, alt: strip.picture.alt, height: sizes.picture }],
        },
        {
          share: forText,
          upright: "middle",
          blocks: forStop > 0 ? text : [...text, { kind: "space", height: 6 }, stop],
        },
        ...(forStop > 0 ? [{ share: forStop, upright: "middle", blocks: [stop] } as const] : []),
      ],
    },
    { kind: "space", height: 9 },
  ];
}

function footBlocks(sheet: HomeSheet, sizes: Sizes): readonly Block[] {
  const [lead = "", ...rest] = sheet.notAtHome.split(": ");
  return [
    { kind: "rule", weight: 2 },
    { kind: "space", height: 8 },
    words([sans(sheet.stopAll)], sizes.least, 1.25),
    { kind: "space", height: 8 },
    {
      kind: "row",
      gap: GAP,
      cells: [
        {
          share: 0.46,
          blocks: [
            {
              kind: "box",
              border: "line",
              padding: 10,
              blocks: [words([bold(`${lead}: `), sans(rest.join(": "))], sizes.least, 1.25)],
            },
          ],
        },
        {
          share: 0.54,
          blocks: [
            {
              kind: "box",
              border: "filled",
              padding: 10,
              blocks: [words([bold(`${sheet.callLead} ${sheet.call}`)], sizes.least, 1.25)],
            },
          ],
        },
      ],
    },
  ];
}

function tickBlocks(sheet: HomeSheet, sizes: Sizes): readonly Block[] {
  return [
    { kind: "rule", weight: 2 },
    { kind: "space", height: 10 },
    { kind: "heading", level: 2, text: HOME_WORDS.ticksTitle, size: sizes.name, font: "serifBold" },
    words([sans(HOME_WORDS.ticks)], sizes.least, 1.3),
    ...sheet.strips.flatMap(({ name }): readonly Block[] => [
      { kind: "space", height: 8 },
      { kind: "heading", level: 3, text: name, size: sizes.words, font: "serifBold" },
      { kind: "ticks", boxes: DAY_BOXES, side: 32, label: [], size: sizes.least },
      { kind: "space", height: 4 },
    ]),
    { kind: "space", height: 12 },
    words([sans(HOME_WORDS.hard)], sizes.least, 1.3),
    ...[0, 1].flatMap((): readonly Block[] => [
      { kind: "space", height: 34 },
      { kind: "rule", weight: 1 },
    ]),
    { kind: "space", height: 16 },
    words([sans(HOME_WORDS.phone)], sizes.least, 1.3),
    { kind: "space", height: 18 },
    { kind: "rule", weight: 1 },
    ...(sheet.date === null
      ? []
      : [
          { kind: "space", height: 10 } as const,
          words([{ text: `Sheet of ${sayDate(sheet.date)}`, font: "serif" }], sizes.least, 1.3),
        ]),
  ];
}

/** How many strips the front takes, one at least. */
function countFitting(strips: readonly HomeStrip[], room: number, sizes: Sizes): number {
  let used = 0;
  for (const [index, strip] of strips.entries()) {
    used += estimateAll(stripBlocks(strip, sizes));
    if (used > room && index > 0) return index;
  }
  return strips.length;
}
