import { escapeText } from "./from-above.ts";

/** One picture on a sheet, with the words under it. */
export interface SheetEntry {
  readonly svg: string;
  readonly title: string;
  readonly notes?: readonly string[];
}

/** Many pictures on one page, to be looked over: a complete web page. */
export function contactSheet(title: string, entries: readonly SheetEntry[], columns = 4, legend = ""): string {
  const cells = entries
    .map(
      (entry) =>
        `<figure>${entry.svg}<figcaption>${escapeText(entry.title)}${(entry.notes ?? []).map((note) => `<small>${escapeText(note)}</small>`).join("")}</figcaption></figure>`,
    )
    .join("\n");
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>${escapeText(title)}</title><style>body{font:15px sans-serif;margin:16px;background:#fff;color:#17212c}main{display:grid;grid-template-columns:repeat(${columns},max-content);gap:16px}figure{margin:0}figcaption{margin-top:4px}small{display:block;color:#465463}</style><h1>${escapeText(title)}</h1>${legend}<main>\n${cells}\n</main></html>\n`;
}

/** The same as one picture, for turning into pixels: sizes are read from the pictures themselves. */
export function contactSheetSvg(entries: readonly SheetEntry[], columns: number): string {
  const sized = entries.map((entry) => {
    const found = /<svg[^>]*? width="([\d.]+)" height="([\d.]+)"/.exec(entry.svg);
    return { entry, width: Number(found?.[1] ?? 300), height: Number(found?.[2] ?? 240) };
  });
  let out = "";
  let y = 8;
  let widest = 0;
  for (let k = 0; k < sized.length; k += columns) {
    let x = 8;
    let tall = 0;
    for (const each of sized.slice(k, k + columns)) {
      out += `<text x="${x}" y="${y + 12}" font-size="13" font-family="sans-serif" font-weight="700">${escapeText(each.entry.title)}</text>`;
      (each.entry.notes ?? []).forEach((note, n) => {
        out += `<text x="${x}" y="${y + 28 + each.height + n * 12}" font-size="10" font-family="sans-serif">${escapeText(note)}</text>`;
      });
      out += each.entry.svg.replace("<svg ", `<svg x="${x}" y="${y + 16}" `);
      x += each.width + 12;
      tall = Math.max(tall, each.height + 24 + (each.entry.notes?.length ?? 0) * 12);
    }
    widest = Math.max(widest, x);
    y += tall + 10;
  }
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${widest}" height="${y}" viewBox="0 0 ${widest} ${y}"><rect width="100%" height="100%" fill="#fff"/>${out}</svg>`;
}
