export { drawFigure, type Figure, type FigureInput, joinLayers, redrawMarks } from "./draw-figure.ts";
export { type AboveFigure, type AboveInput, type AboveMarkId, drawFromAbove } from "./from-above.ts";
export {
  drawSessionLine,
  type SessionLine,
  type SessionLineInput,
  SESSION_ZOOM,
  type Stretch,
} from "./session-line.ts";
export { drawLegend, type LegendId } from "./legend.ts";
export { contactSheet, contactSheetSvg, type SheetEntry } from "./sheet.ts";
export { drawMovingFigure, type MovingFigure } from "./moving.ts";
export { type PictureWords, textAlternative } from "./text-alternative.ts";
export type { HelperDrawing, HelperPlace, HelperStance } from "./helper/drawing.ts";
export type { Marks } from "./marks/marks.ts";
export type { FreeLimb } from "./marks/ghost.ts";
export type { FigureChecks } from "./checks.ts";
export type { View } from "./picture/camera.ts";
export { DARK_FIGURE_VARIABLES, type Theme } from "./picture/theme.ts";
