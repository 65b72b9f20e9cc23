import type { Theme } from "./picture/theme.ts";
import { ink as style } from "./picture/theme.ts";
import { centreOfMass } from "../mechanics/pose/kinematics.ts";
import { drawFigure, type FigureInput } from "./draw-figure.ts";
import { project } from "./picture/camera.ts";
import { escapeText } from "./from-above.ts";

/** One stretch of the session in order: how long, and how the centre of mass goes up and down in it [m above the mat]. */
export interface Stretch {
  readonly id: string;
  readonly minutes: number;
  readonly rest: number;
  readonly work: number;
  /** Bumps to be counted; a hold is one long bump, nothing done is a calm. */
  readonly sets: number;
  readonly repetitions: number;
  readonly hold: boolean;
  /** Up to three lines under the band. */
  readonly words: readonly string[];
  readonly changed?: boolean;
}

export interface SessionLineInput {
  readonly stretches: readonly Stretch[];
  readonly width: number;
  readonly theme: Theme;
  /** Height of the mat's top above the floor [m]; a floor mat is a thin band. */
  readonly matHeight: number;
  /** The stretch that is touched, and the body to be drawn there. */
  readonly touched?: { readonly id: string; readonly figure?: Omit<FigureInput, "size" | "view" | "theme" | "helper"> };
  /** An earlier order shown dashed until it is taken. */
  readonly before?: readonly Stretch[];
  /** Words for the minutes under the ends: "0 minutes", "45". */
  readonly minuteWords?: { readonly from: string; readonly to: string };
}

export interface SessionLine {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly spans: readonly { readonly id: string; readonly fromX: number; readonly toX: number }[];
}

/** The same scale for the line's height and the body on it [units per metre]. */
export const SESSION_ZOOM = 92;
const EDGE = 14;
const FLOOR_MAT = 10;
const HEADROOM = 1.55;

/** The session as a level strip: the mat from the side, and over it the path of the body's centre from arriving to going. */
export function drawSessionLine(input: SessionLineInput): SessionLine {
  const band = input.matHeight < 0.2 ? FLOOR_MAT : input.matHeight * SESSION_ZOOM;
  const top = HEADROOM * SESSION_ZOOM;
  const total = input.stretches.reduce((sum, each) => sum + each.minutes, 0);
  const perMinute = (input.width - 2 * EDGE) / Math.max(1, total);
  const spans = spansOf(input.stretches, perMinute);
  const lines = Math.max(1, ...input.stretches.map((each) => each.words.length));
  const height = Math.ceil(top + band + 8 + lines * 15 + (input.minuteWords === undefined ? 4 : 20));
  const touched = spans.find((span) => span.id === input.touched?.id);
  let out = `<rect ${style(input.theme, { fill: "mat" })} x="0" y="${top}" width="${input.width}" height="${band}"/>`;
  if (touched !== undefined) {
    out += `<rect ${style(input.theme, { fill: "shorts" })} x="${touched.fromX.toFixed(1)}" y="${top}" width="${(touched.toX - touched.fromX).toFixed(1)}" height="${band}"/>`;
    out += `<rect ${style(input.theme, { fill: "mark" })} x="${touched.fromX.toFixed(1)}" y="${(top + band - 3).toFixed(1)}" width="${(touched.toX - touched.fromX).toFixed(1)}" height="3"/>`;
  }
  if (input.before !== undefined)
    out += `<path ${style(input.theme, { stroke: "mark", width: 1 })} stroke-dasharray="4 4" stroke-opacity=".6" d="${traceOf(input.before, spansOf(input.before, perMinute), top)}"/>`;
  const trace = traceOf(input.stretches, spans, top);
  out += `<path ${style(input.theme, { stroke: "line", width: 1.6 })} stroke-linejoin="round" d="${trace}"/>`;
  if (touched !== undefined) {
    const stretch = input.stretches.filter((each) => each.id === touched.id);
    out += `<path ${style(input.theme, { stroke: "line", width: 3 })} stroke-linejoin="round" d="${traceOf(stretch, [touched], top)}"/>`;
    const first = stretch[0];
    out += bodyOn(input, touched, top, band);
    if (first !== undefined)
      out += `<circle ${style(input.theme, { fill: "mark", stroke: "halo", width: 1.4 })} cx="${((touched.fromX + touched.toX) / 2).toFixed(1)}" cy="${(top - first.work * SESSION_ZOOM).toFixed(1)}" r="4"/>`;
  }
  const first = input.stretches[0];
  const last = input.stretches[input.stretches.length - 1];
  const dot = (x: number, high: number): string =>
    `<circle ${style(input.theme, { fill: "mark" })} cx="${x.toFixed(1)}" cy="${(top - high * SESSION_ZOOM).toFixed(1)}" r="3.4"/>`;
  if (first !== undefined && last !== undefined) out += dot(EDGE, first.rest) + dot(input.width - EDGE, last.rest);
  spans.forEach((span, k) => {
    const stretch = input.stretches[k];
    if (stretch === undefined) return;
    const bold = span.id === input.touched?.id ? ` font-weight="700"` : "";
    stretch.words.forEach((word, line) => {
      out += `<text ${style(input.theme, { fill: "line" })} font-size="13"${bold} font-family="inherit" x="${(span.fromX + 2).toFixed(1)}" y="${(top + band + 17 + line * 15).toFixed(1)}">${escapeText(word)}</text>`;
    });
  });
  if (input.minuteWords !== undefined) {
    out += `<text ${style(input.theme, { fill: "line" })} font-size="12" font-family="inherit" x="${EDGE}" y="${height - 4}">${escapeText(input.minuteWords.from)}</text>`;
    out += `<text ${style(input.theme, { fill: "line" })} font-size="12" font-family="inherit" text-anchor="end" x="${input.width - EDGE}" y="${height - 4}">${escapeText(input.minuteWords.to)}</text>`;
  }
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${input.width} ${height}" width="${input.width}" height="${height}" aria-hidden="true">${out}</svg>`,
    width: input.width,
    height,
    spans,
  };
}

function spansOf(stretches: readonly Stretch[], perMinute: number): { id: string; fromX: number; toX: number }[] {
  let x = EDGE;
  return stretches.map((each) => {
    const fromX = x;
    x += each.minutes * perMinute;
    return { id: each.id, fromX, toX: x };
  });
}

/** A repetition is a bump, a hold a flat, a rest a calm. */
function traceOf(
  stretches: readonly Stretch[],
  spans: readonly { readonly fromX: number; readonly toX: number }[],
  top: number,
): string {
  let d = "";
  stretches.forEach((each, k) => {
    const span = spans[k];
    if (span === undefined) return;
    const y = (high: number): string => (top - high * SESSION_ZOOM).toFixed(1);
    const x = (at: number): string => at.toFixed(1);
    const ease = Math.min(8, (span.toX - span.fromX) * 0.15);
    d +=
      d === ""
        ? `M${x(span.fromX)} ${y(each.rest)}`
        : `C${x(span.fromX + ease * 0.2)} ${d.slice(d.lastIndexOf(" ") + 1)} ${x(span.fromX + ease * 0.5)} ${y(each.rest)} ${x(span.fromX + ease)} ${y(each.rest)}`;
    const room = span.toX - span.fromX - ease;
    const sets = Math.max(1, each.sets);
    const busy = each.repetitions > 0 && Math.abs(each.work - each.rest) > 0.005;
    if (busy) {
      for (let s = 0; s < sets; s++) {
        const from = span.fromX + ease + (room * s) / sets;
        const wide = (room / sets) * 0.78;
        const start = from + (room / sets) * 0.11;
        d += `L${x(start)} ${y(each.rest)}`;
        const bumps = each.hold ? 1 : each.repetitions;
        for (let b = 0; b < bumps; b++) {
          const a = start + (wide * b) / bumps;
          const w = wide / bumps;
          const rise = each.hold ? Math.min(6, w * 0.2) : w * 0.35;
          d += `C${x(a + rise * 0.6)} ${y(each.rest)} ${x(a + rise * 0.4)} ${y(each.work)} ${x(a + rise)} ${y(each.work)}L${x(a + w - rise)} ${y(each.work)}C${x(a + w - rise * 0.4)} ${y(each.work)} ${x(a + w - rise * 0.6)} ${y(each.rest)} ${x(a + w)} ${y(each.rest)}`;
        }
      }
    }
    d += `L${x(span.toX)} ${y(each.rest)}`;
  });
  return d;
}

/** The body at the touched place, its centre on the line, seen from the weak side. */
function bodyOn(
  input: SessionLineInput,
  touched: { readonly fromX: number; readonly toX: number } | undefined,
  top: number,
  band: number,
): string {
  const figure = input.touched?.figure;
  const stretch = input.stretches.find((each) => each.id === input.touched?.id);
  if (figure === undefined || touched === undefined || stretch === undefined) return "";
  const drawn = drawFigure({
    ...figure,
    view: { azimuthDeg: 90, elevationDeg: 3 },
    theme: input.theme,
    size: { width: 260, height: 240, zoom: SESSION_ZOOM },
  });
  const centre = centreOfMass(drawn.prepared.body, drawn.prepared.frames);
  const [x, y] = project(drawn.bodyLayer.frame.camera, centre);
  const mirrored = (figure.body.weakAt === -1) !== (figure.mirrored ?? false);
  const ownX = mirrored ? drawn.bodyLayer.width - x : x;
  const left = (touched.fromX + touched.toX) / 2 - ownX;
  // Standing on the floor the feet are at the band's foot; on the mat the centre is as high above it as it is.
  const standing = centre[2] > 0.8;
  const [, groundY] = project(drawn.bodyLayer.frame.camera, [centre[0], centre[1], 0]);
  const down = standing ? top + band - groundY : top - stretch.work * SESSION_ZOOM - y;
  return `<g transform="translate(${left.toFixed(1)} ${down.toFixed(1)})">${drawn.bodyLayer.things}${drawn.bodyLayer.people}</g>`;
}
