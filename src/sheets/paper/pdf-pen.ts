import type PDFDocument from "pdfkit";
import type { FontName } from "./fonts.data.ts";

export type PaperFonts = Readonly<Record<FontName, Uint8Array>>;

/** What a sheet is drawn with. Lengths in points, y downwards. What is not inside `tagged` is an ornament. */
export interface PdfPen {
  readonly widthOf: (text: string, font: FontName, size: number) => number;
  /** Everything drawn meanwhile belongs to one element of the structure tree. */
  readonly tagged: (type: string, draw: () => void, options?: { readonly alt?: string }) => void;
  /** Groups elements; holds no drawing of its own. */
  readonly grouped: (type: string, fill: () => void, options?: { readonly scope?: "Column" }) => void;
  readonly text: (text: string, x: number, baseline: number, font: FontName, size: number, colour: string) => void;
  readonly svg: (svg: string, x: number, y: number, width: number, height: number) => void;
  readonly rectangle: (
    x: number,
    y: number,
    width: number,
    height: number,
    paint: { readonly fill?: string; readonly stroke?: number },
  ) => void;
  readonly line: (x1: number, y1: number, x2: number, y2: number, width: number) => void;
  readonly newPage: () => void;
  readonly finish: () => Promise<Uint8Array>;
}

type StructureElement = ReturnType<PDFDocument["struct"]>;

const INK = "#000000";
/** Stands for the day where none is known, so that the same sheet gives the same bytes. */
const NO_DATE = "2000-01-01";

/**
 * Opens a tagged PDF of A4 pages: title, language and structure tree are written, fonts are embedded.
 * The same calls give the same bytes. The library is loaded with the first sheet, so that a plan without one need not wait.
 */
export async function openPdf({
  title,
  language,
  date,
  fonts,
}: {
  readonly title: string;
  readonly language: string;
  readonly date: string | null;
  readonly fonts: PaperFonts;
}): Promise<PdfPen> {
  const [{ default: Document }, { default: drawSvg }] = await Promise.all([import("pdfkit"), import("svg-to-pdfkit")]);
  const document = new Document({
    size: "A4",
    margin: 0,
    tagged: true,
    subset: "PDF/UA",
    pdfVersion: "1.7",
    lang: language,
    displayTitle: true,
    font: null,
    info: {
      Title: title,
      Creator: "Matside",
      Producer: "Matside",
      CreationDate: new Date(`${date ?? NO_DATE}T00:00:00Z`),
    },
  });
  const chunks: Uint8Array[] = [];
  const done = new Promise<void>((resolve) => document.on("end", resolve));
  document.on("data", (chunk) => chunks.push(chunk));
  for (const name of FONT_NAMES) document.registerFont(name, fonts[name]);
  const root = document.struct("Document", { lang: language, title });
  document.addStructure(root);
  const open: StructureElement[] = [root];
  let depth = 0;

  const inside = (type: string, options: object, fill: (element: StructureElement) => void): void => {
    const element = document.struct(type, options);
    (open.at(-1) ?? root).add(element);
    fill(element);
    element.end();
  };
  const ornament = (draw: () => void): void => {
    if (depth === 0) document.markContent("Artifact", { type: "Layout" });
    draw();
    if (depth === 0) document.endMarkedContent();
  };
  return {
    widthOf: (text, font, size) => document.font(font).fontSize(size).widthOfString(text),
    tagged: (type, draw, options = {}) =>
      inside(type, options, (element) => {
        depth += 1;
        element.add(draw);
        depth -= 1;
      }),
    grouped: (type, fill, options = {}) =>
      inside(type, options, (element) => {
        open.push(element);
        fill();
        open.pop();
      }),
    text: (text, x, baseline, font, size, colour) =>
      ornament(
        () =>
          void document
            .font(font)
            .fontSize(size)
            .fillColor(colour)
            .text(text, x, baseline, { lineBreak: false, baseline: "alphabetic" }),
      ),
    svg: (svg, x, y, width, height) =>
      ornament(() =>
        drawSvg(document, svg, x, y, {
          width,
          height,
          preserveAspectRatio: "xMidYMid meet",
          assumePt: true,
          fontCallback: (_family: string, bold: boolean): FontName => (bold ? "sansBold" : "sans"),
        }),
      ),
    rectangle: (x, y, width, height, paint) =>
      ornament(() => {
        if (paint.fill !== undefined) document.rect(x, y, width, height).fill(paint.fill);
        if (paint.stroke !== undefined) document.rect(x, y, width, height).lineWidth(paint.stroke).stroke(INK);
      }),
    line: (x1, y1, x2, y2, width) =>
      ornament(() => void document.moveTo(x1, y1).lineTo(x2, y2).lineWidth(width).stroke(INK)),
    newPage: () => void document.addPage(),
    finish: async () => {
      root.end();
      document.end();
      await done;
      return joined(chunks);
    },
  };
}

const FONT_NAMES: readonly FontName[] = ["serif", "serifBold", "sans", "sansBold"];

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
