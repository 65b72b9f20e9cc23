import { escapeText } from "./from-above.ts";
import { ink as style, type Theme } from "./picture/theme.ts";

export type LegendId =
  | "weakLimbs"
  | "helper"
  | "weight"
  | "start"
  | "moves"
  | "hardest"
  | "outline"
  | "help"
  | "centre"
  | "wayOut"
  | "helperPlace";

/** The key to the marks, as a picture of its own: only what is asked for, with the words given. */
export function drawLegend(
  entries: readonly { readonly id: LegendId; readonly words: string }[],
  width: number,
  theme: Theme,
  characterWidth = 7.2,
): { readonly svg: string; readonly height: number } {
  let x = 4;
  let row = 0;
  let out = "";
  for (const entry of entries) {
    const wide = 42 + entry.words.length * characterWidth + 22;
    if (x > 4 && x + wide > width) {
      x = 4;
      row++;
    }
    const y = row * 26 + 14;
    out += `<g transform="translate(${x} ${y})">${sampleOf(entry.id, theme)}<text ${style(theme, { fill: "line" })} font-size="14" font-family="inherit" x="42" y="5">${escapeText(entry.words)}</text></g>`;
    x += wide;
  }
  const height = (row + 1) * 26 + 4;
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">${out}</svg>`,
    height,
  };
}

function sampleOf(id: LegendId, theme: Theme): string {
  const pill = `M6 -8h20a8 8 0 0 1 0 16h-20a8 8 0 0 1 0 -16z`;
  switch (id) {
    case "weakLimbs":
      return `<path ${style(theme, { fill: "skin", stroke: "line", width: 1.5 })} d="${pill}"/><path ${style(theme, { stroke: "hatch", width: 0.7 })} d="M1 3l7 -10M4 7l9 -14M10 7l9 -14M16 7l9 -14M22 7l8 -12M28 7l4 -6"/>`;
    case "helper":
      return `<path ${style(theme, { fill: "helperShirt", stroke: "line", width: 1.5 })} d="${pill}"/>`;
    case "weight":
      return `<ellipse ${style(theme, { fill: "disc", stroke: "discEdge", width: 0.8 })} fill-opacity=".22" cx="16" cy="0" rx="15" ry="6.5"/>`;
    case "start":
      return `<path ${style(theme, { stroke: "line", width: 1 })} stroke-dasharray="3 2.6" d="M4 8c0 -20 24 -20 24 0"/>`;
    case "moves":
      return `<path ${style(theme, { stroke: "mark", width: 1.9 })} stroke-linecap="round" d="M3 7q8 -12 20 -10"/><path ${style(theme, { fill: "mark" })} d="M30 -1l-8 -6l0 8z"/>`;
    case "hardest":
      return `<circle ${style(theme, { stroke: "mark", width: 3 })} cx="16" cy="0" r="8"/>`;
    case "outline":
      return `<path ${style(theme, { stroke: "mark", width: 1.1 })} stroke-dasharray="4 3" d="M2 7l6 -14h16l8 14z"/><path ${style(theme, { stroke: "mark", width: 3.3 })} stroke-linecap="round" d="M2 7h30"/>`;
    case "help":
      return `<path ${style(theme, { fill: "press" })} d="M2 -2h17v-4l9 6l-9 6v-4h-17z"/>`;
    case "centre":
      return `<circle ${style(theme, { fill: "mark" })} cx="16" cy="0" r="3.6"/>`;
    case "wayOut":
      return `<path ${style(theme, { stroke: "mark", width: 2.6 })} stroke-linecap="round" stroke-dasharray=".1 5.4" d="M3 0h20"/><path ${style(theme, { fill: "mark" })} d="M32 0l-9 -4.5v9z"/>`;
    case "helperPlace":
      return `<circle ${style(theme, { fill: "press" })} cx="9" cy="0" r="6"/><path ${style(theme, { stroke: "press", width: 3 })} stroke-linecap="round" stroke-linejoin="round" d="M20 -7l7 7l-7 7"/>`;
  }
}
