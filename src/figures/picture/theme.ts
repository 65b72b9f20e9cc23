import type { Tone } from "../skin/kinds.ts";

/** Screens follow the page's light or dark colours; paper is black on white with greys. */
export type Theme = "screen" | "paper";

type Ink = "line" | "faceLine" | "hatch" | "mat" | "matEdge" | "mark" | "halo" | "press" | "disc" | "discEdge";

const COLOURS: Readonly<
  Record<Tone | Ink, { readonly variable: string; readonly screen: string; readonly paper: string }>
> = {
  skin: { variable: "--figure-skin", screen: "#ffffff", paper: "#ffffff" },
  shirt: { variable: "--figure-shirt", screen: "#dde3ea", paper: "#e4e4e4" },
  shorts: { variable: "--figure-shorts", screen: "#c2ccd7", paper: "#cdcdcd" },
  hair: { variable: "--figure-hair", screen: "#8d99a6", paper: "#9a9a9a" },
  whiteHair: { variable: "--figure-white-hair", screen: "#f1f3f5", paper: "#f2f2f2" },
  shoe: { variable: "--figure-shoe", screen: "#9aa7b5", paper: "#a8a8a8" },
  sole: { variable: "--figure-sole", screen: "#5f6c7a", paper: "#6e6e6e" },
  helperSkin: { variable: "--figure-helper-skin", screen: "#ffffff", paper: "#ffffff" },
  helperShirt: { variable: "--figure-helper-shirt", screen: "#75869a", paper: "#868686" },
  helperTrousers: { variable: "--figure-helper-trousers", screen: "#5d6e83", paper: "#6c6c6c" },
  helperHair: { variable: "--figure-helper-hair", screen: "#3c4855", paper: "#444444" },
  helperShoe: { variable: "--figure-helper-shoe", screen: "#2c3743", paper: "#303030" },
  top: { variable: "--figure-top", screen: "#f4f6f8", paper: "#f7f7f7" },
  front: { variable: "--figure-front", screen: "#e8ecf1", paper: "#ededed" },
  bar: { variable: "--figure-bar", screen: "#d5dce4", paper: "#dadada" },
  line: { variable: "--figure-line", screen: "#17212c", paper: "#000000" },
  faceLine: { variable: "--figure-line", screen: "#17212c", paper: "#000000" },
  hatch: { variable: "--figure-hatch", screen: "#17212c", paper: "#000000" },
  mat: { variable: "--figure-mat", screen: "#eef1f5", paper: "#f4f4f4" },
  matEdge: { variable: "--figure-mat-edge", screen: "#cbd2d9", paper: "#bbbbbb" },
  mark: { variable: "--figure-mark", screen: "#17212c", paper: "#000000" },
  halo: { variable: "--figure-halo", screen: "#ffffff", paper: "#ffffff" },
  press: { variable: "--figure-press", screen: "#26446b", paper: "#000000" },
  discEdge: { variable: "--figure-disc-edge", screen: "#17212c", paper: "#000000" },
  disc: { variable: "--figure-disc", screen: "#17212c", paper: "#000000" },
};

/** The colour as it is written in a style attribute. */
export function colour(theme: Theme, of: Tone | Ink): string {
  const row = COLOURS[of];
  return theme === "paper" ? row.paper : `var(${row.variable},${row.screen})`;
}

export const fill = (theme: Theme, of: Tone | Ink): string =>
  theme === "paper" ? `fill="${colour(theme, of)}"` : `style="fill:${colour(theme, of)}"`;

/** Fill and stroke of the same thing. */
export function ink(
  theme: Theme,
  options: { readonly fill?: Tone | Ink; readonly stroke?: Tone | Ink; readonly width?: number },
): string {
  const parts: string[] = [];
  if (theme === "paper") {
    parts.push(`fill="${options.fill === undefined ? "none" : colour(theme, options.fill)}"`);
    if (options.stroke !== undefined) parts.push(`stroke="${colour(theme, options.stroke)}"`);
  } else {
    parts.push(
      `style="fill:${options.fill === undefined ? "none" : colour(theme, options.fill)}${options.stroke === undefined ? "" : `;stroke:${colour(theme, options.stroke)}`}"`,
    );
  }
  if (options.width !== undefined) parts.push(`stroke-width="${options.width}"`);
  return parts.join(" ");
}

/** Style sheet lines that light the figure in a dark page; a page may set its own. */
export const DARK_FIGURE_VARIABLES: readonly (readonly [string, string])[] = [
  ["--figure-line", "#0b1117"],
  ["--figure-hatch", "#0b1117"],
  ["--figure-skin", "#e3e9ee"],
  ["--figure-shirt", "#b4c2d1"],
  ["--figure-shorts", "#8ea2b7"],
  ["--figure-hair", "#6f8093"],
  ["--figure-white-hair", "#dbe2e9"],
  ["--figure-shoe", "#7d8fa3"],
  ["--figure-helper-skin", "#e3e9ee"],
  ["--figure-helper-shirt", "#5c7794"],
  ["--figure-helper-trousers", "#48617c"],
  ["--figure-helper-hair", "#2b3b4d"],
  ["--figure-helper-shoe", "#1f2c3a"],
  ["--figure-top", "#3a4d63"],
  ["--figure-front", "#2f4156"],
  ["--figure-bar", "#5a6f86"],
  ["--figure-mat", "#233449"],
  ["--figure-mat-edge", "#3d526b"],
  ["--figure-mark", "#0b1117"],
  ["--figure-halo", "#eaeff4"],
  ["--figure-press", "#aecbf2"],
  ["--figure-disc", "#0b1117"],
  ["--figure-disc-edge", "#c5d0db"],
];
