import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { inflateSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FONT_FILES } from "./fonts.data.ts";
import { breakLines } from "./line-breaks.ts";
import type { Block, Paper } from "./paper.ts";
import { writePaperPdf } from "./paper-pdf.ts";

const require = createRequire(import.meta.url);
const read = (file: string) => new Uint8Array(readFileSync(require.resolve(file)));
const fonts = {
  serif: read(FONT_FILES.serif),
  serifBold: read(FONT_FILES.serifBold),
  sans: read(FONT_FILES.sans),
  sansBold: read(FONT_FILES.sansBold),
};

const SVG = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 10"><path d="M0 0L20 10" stroke="#000000"/><text x="2" y="8" font-size="4">word</text></svg>`;
const words = (text: string, size = 20): Block => ({
  kind: "words",
  runs: [{ text, font: "sans" }],
  size,
  leading: 1.3,
});
const PAPER: Paper = {
  title: "A sheet",
  language: "en",
  date: "2026-03-16",
  pages: [
    {
      blocks: [
        { kind: "heading", level: 1, text: "Lift your seat", size: 40, font: "serifBold" },
        words("Press both feet down."),
        { kind: "figure", svg: SVG, alt: "On the back, seat up.", height: 100 },
        {
          kind: "table",
          shares: [0.5, 0.5],
          head: ["You", "Say"],
          rows: [
            [
              { share: 0.5, blocks: [words("Kneel")] },
              { share: 0.5, blocks: [words("Push")] },
            ],
          ],
          size: 14,
          gap: 10,
        },
        { kind: "box", border: "heavy", padding: 8, blocks: [words("Stop if it hurts.")] },
        { kind: "ticks", boxes: 3, side: 20, label: [{ text: "knee out", font: "sans" }], size: 14 },
      ],
      foot: [{ kind: "rule", weight: 2 }],
      shrinkTo: 0.9,
    },
  ],
};

/** The file with its packed streams laid open, as one text. */
function openFile(bytes: Uint8Array): string {
  const raw = Buffer.from(bytes).toString("latin1");
  return raw.replace(/stream\r?\n([\s\S]*?)\r?\nendstream/g, (whole, packed: string) => {
    try {
      return `stream\n${inflateSync(Buffer.from(packed, "latin1")).toString("latin1")}\nendstream`;
    } catch {
      return whole;
    }
  });
}

describe("a paper as PDF", () => {
  it("has a structure tree with headings, paragraphs, figures with words, a table and its heads", async () => {
    // What ISO 14289-1 asks of an accessible file, in part: tagged, language, title shown, figures with alternatives.
    const file = openFile(await writePaperPdf(PAPER, fonts));
    expect(file).toMatch(/\/StructTreeRoot \d+ 0 R/);
    expect(file).toMatch(/\/MarkInfo/);
    expect(file).toMatch(/\/Marked true/);
    expect(file).toMatch(/\/Lang \(en\)/);
    expect(file).toMatch(/\/DisplayDocTitle true/);
    expect(file).toMatch(/\/Title (\(A sheet\)|\d+ 0 R)/);
    expect(file).toMatch(/\/T \(A sheet\)/);
    expect(file).toMatch(/\/Alt \(On the back, seat up\.\)/);
    expect(file).toMatch(/pdfuaid:part/);
    for (const type of ["Document", "H1", "P", "Figure", "Table", "TR", "TH", "TD", "Sect"])
      expect(file, type).toMatch(new RegExp(`/S /${type}\\b`));
    expect(file).toMatch(/\/Scope \/?\(?Column/);
    expect(file).toMatch(/\/Artifact/);
  });

  it("embeds every font it uses", async () => {
    const file = openFile(await writePaperPdf(PAPER, fonts));
    const used = file.match(/\/BaseFont \/\S+/g) ?? [];
    expect(used.length).toBeGreaterThan(0);
    for (const name of used) expect(name).toMatch(/\+(Literata|AtkinsonHyperlegibleNext)/);
    expect(file.match(/\/FontFile2/g)?.length).toBeGreaterThanOrEqual(3);
  });

  it("gives the same bytes for the same paper, and others for another day", async () => {
    const first = await writePaperPdf(PAPER, fonts);
    expect(Buffer.compare(first, await writePaperPdf(PAPER, fonts))).toBe(0);
    expect(Buffer.compare(first, await writePaperPdf({ ...PAPER, date: "2026-03-17" }, fonts))).not.toBe(0);
    expect(
      Buffer.compare(
        await writePaperPdf({ ...PAPER, date: null }, fonts),
        await writePaperPdf({ ...PAPER, date: null }, fonts),
      ),
    ).toBe(0);
  });

  it("goes on to a further page with what does not fit, and loses nothing", async () => {
    const page = {
      blocks: Array.from({ length: 60 }, (_, index) => words(`Line ${index} of a long sheet.`, 30)),
      foot: [],
      shrinkTo: 0.95,
    };
    const file = openFile(await writePaperPdf({ ...PAPER, pages: [page] }, fonts));
    expect(
      Number(/\/Type \/Pages[\s\S]{0,200}?\/Count (\d+)/.exec(file)?.[1] ?? /\/Count (\d+)/.exec(file)?.[1]),
    ).toBeGreaterThanOrEqual(2);
    expect(file.match(/\/S \/P\b/g)).toHaveLength(60);
  });
});

describe("a table", () => {
  it("that is too high is cut between rows, keeps its head on each page and loses no row", async () => {
    const rows = Array.from({ length: 50 }, (_, index) => [{ share: 1, blocks: [words(`Row ${index}`, 30)] }]);
    const table: Block = { kind: "table", shares: [1], head: ["Rows"], rows, size: 14, gap: 10 };
    const file = openFile(
      await writePaperPdf({ ...PAPER, pages: [{ blocks: [table], foot: [words("Foot")], shrinkTo: 1 }] }, fonts),
    );
    const pages = file.match(/\/Type \/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThanOrEqual(2);
    expect(file.match(/\/S \/TD\b/g)).toHaveLength(50);
    expect(file.match(/\/S \/TH\b/g)).toHaveLength(pages);
  });
});

describe("lines", () => {
  const width = (text: string) => text.length;
  it("keep within the width wherever a break allows it, and keep every word", () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 10, max: 60 }),
        (parts, room) => {
          const half = Math.floor(parts.length / 2);
          const runs = [
            { text: `${parts.slice(0, half).join(" ")} `, font: "sans" as const },
            { text: parts.slice(half).join(" "), font: "sansBold" as const },
          ];
          const lines = breakLines(runs, room, width);
          for (const line of lines)
            for (const piece of line) expect(piece.at + piece.text.trimEnd().length).toBeLessThanOrEqual(room);
          expect(
            lines
              .flat()
              .map(({ text }) => text)
              .join("")
              .split(/\s+/)
              .filter((word) => word !== ""),
          ).toEqual(parts);
        },
      ),
      { numRuns: 300, seed: 3 },
    );
  });

  it("break where a line feed stands, and not inside a word that changes its font", () => {
    expect(
      breakLines([{ text: "one\ntwo", font: "sans" }], 100, width).map((line) =>
        line.map(({ text }) => text.trim()).join(""),
      ),
    ).toEqual(["one", "two"]);
    const joined = breakLines(
      [
        { text: "stop", font: "sansBold" },
        { text: "ped now", font: "sans" },
      ],
      9,
      width,
    );
    expect(
      joined.map((line) =>
        line
          .map(({ text }) => text)
          .join("")
          .trim(),
      ),
    ).toEqual(["stopped", "now"]);
  });
});
