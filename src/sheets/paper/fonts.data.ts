/** What a paper is set in: the serif says, the sans is looked up; each in two weights. */
export type FontName = "serif" | "serifBold" | "sans" | "sansBold";

/** Where each cut lies among the installed packages; whoever writes a PDF reads the four and hands them over. */
export const FONT_FILES: Readonly<Record<FontName, string>> = {
  serif: "@fontsource/literata/files/literata-latin-400-normal.woff",
  serifBold: "@fontsource/literata/files/literata-latin-600-normal.woff",
  sans: "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff",
  sansBold: "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff",
};
