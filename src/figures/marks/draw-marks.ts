import { scale, add, type Vector } from "../../quantity/vectors.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { Frames } from "../../mechanics/pose/kinematics.ts";
import { type Frame, project } from "../picture/camera.ts";
import type { Ink } from "../picture/ink.ts";
import { ink as style, type Theme } from "../picture/theme.ts";
import type { Marks } from "./marks.ts";

/** The marks of a figure in two layers: on the ground under the body, and over it. */
export interface MarksLayer {
  readonly under: string;
  readonly over: string;
}

/** Radius of a contact disc [m] for a share of body weight: it has to stick out from under a hand or foot. */
export const discRadius = (share: number): number => 0.07 + 0.12 * Math.sqrt(Math.max(0, share));
const LEAST_SHARE = 0.02;
const RING = { radius: 9, thin: 1.5, thick: 3.2 } as const;

export function drawMarks(
  body: Body,
  frames: Frames,
  frame: Frame,
  marks: Marks,
  pen: Ink,
  theme: Theme,
  ground: number,
): MarksLayer {
  let under = "";
  let over = "";
  for (const disc of marks.discs ?? [])
    if (disc.share >= LEAST_SHARE) under += drawDisc(frame, disc.at, discRadius(disc.share), pen, theme);
  if (marks.outline !== undefined) under += drawOutline(frame, marks.outline.points, marks.outline.short, pen, theme);
  if (marks.centre !== undefined) under += drawDot(frame, [marks.centre[0], marks.centre[1], ground], pen, theme, 2.4);
  if (marks.effort !== undefined) {
    const at = frames.positions[body.segmentIndex[marks.effort.segment]];
    if (at !== undefined) over += drawRing(frame, at, marks.effort.level, pen, theme);
  }
  if (marks.arrow !== undefined) over += drawArrow(frame, marks.arrow.from, marks.arrow.to, pen, theme);
  for (const help of marks.help ?? []) over += drawPush(frame, help.at, help.direction, pen, theme);
  return { under, over };
}

/** A level disc seen along the line of sight is an ellipse lying on its long side. */
export function drawDisc(frame: Frame, at: Vector, radius: number, pen: Ink, theme: Theme): string {
  const [x, y, depth] = project(frame.camera, at);
  const rx = (radius * frame.camera.zoom * frame.camera.distance) / depth;
  const ry = rx * Math.abs(frame.camera.forward[2]);
  return `<ellipse ${style(theme, { fill: "disc", stroke: "discEdge", width: 0.8 })} fill-opacity=".22" cx="${pen.across(x)}" cy="${pen.down(y)}" rx="${rx.toFixed(1)}" ry="${ry.toFixed(1)}"/>`;
}

export function drawOutline(
  frame: Frame,
  points: readonly Vector[],
  short: number | null,
  pen: Ink,
  theme: Theme,
): string {
  if (points.length < 2) return "";
  const flat = points.map((at): readonly [number, number] => {
    const [x, y] = project(frame.camera, at);
    return [x, y];
  });
  const path = pen.polyline(flat, points.length > 2);
  let out = `<path ${style(theme, { stroke: "halo", width: 3 })} stroke-opacity=".8" d="${path}"/><path ${style(theme, { stroke: "mark", width: 1.1 })} stroke-dasharray="4 3" d="${path}"/>`;
  const a = short === null ? undefined : flat[short];
  const b = short === null ? undefined : flat[(short + 1) % flat.length];
  if (a !== undefined && b !== undefined)
    out += `<path ${style(theme, { stroke: "mark", width: 3.3 })} stroke-linecap="round" d="${pen.polyline([a, b], false)}"/>`;
  return out;
}

export function drawDot(frame: Frame, at: Vector, pen: Ink, theme: Theme, radius: number): string {
  const [x, y] = project(frame.camera, at);
  return `<circle ${style(theme, { fill: "mark", stroke: "halo", width: 1.2 })} cx="${pen.across(x)}" cy="${pen.down(y)}" r="${radius}"/>`;
}

function drawRing(frame: Frame, at: Vector, level: "thin" | "thick", pen: Ink, theme: Theme): string {
  const [x, y] = project(frame.camera, at);
  const place = `cx="${pen.across(x)}" cy="${pen.down(y)}" r="${RING.radius}"`;
  const width = RING[level];
  return `<circle ${style(theme, { stroke: "halo", width: width + 2.4 })} ${place}/><circle ${style(theme, { stroke: "mark", width })} ${place}/>`;
}

/** A bent arrow beside the way a limb takes. */
export function drawArrow(frame: Frame, from: Vector, to: Vector, pen: Ink, theme: Theme): string {
  const [x0, y0] = project(frame.camera, from);
  const [x1, y1] = project(frame.camera, to);
  const length = Math.hypot(x1 - x0, y1 - y0);
  if (length < 8) return "";
  const nx = -(y1 - y0) / length;
  const ny = (x1 - x0) / length;
  const side = nx < 0 ? 1 : -1;
  const bend = Math.min(14, 0.22 * length) * side;
  const cx = (x0 + x1) / 2 + nx * bend;
  const cy = (y0 + y1) / 2 + ny * bend;
  return curvedArrow(pen, theme, [x0, y0], [cx, cy], [x1, y1]);
}

function curvedArrow(
  pen: Ink,
  theme: Theme,
  from: readonly [number, number],
  control: readonly [number, number],
  to: readonly [number, number],
): string {
  const angle = Math.atan2(to[1] - control[1], to[0] - control[0]);
  const tip = (turn: number, size: number): readonly [number, number] => [
    to[0] - Math.cos(angle + turn) * size,
    to[1] - Math.sin(angle + turn) * size,
  ];
  const back = tip(0, 5);
  const d = `M${pen.point(from[0], from[1])}Q${pen.point(control[0], control[1])} ${pen.point(back[0], back[1])}`;
  const head = pen.polyline([to, tip(0.45, 8), tip(-0.45, 8)], true);
  return (
    `<path ${style(theme, { stroke: "halo", width: 5 })} stroke-linecap="round" d="${d}"/><path ${style(theme, { fill: "halo", stroke: "halo", width: 3 })} stroke-linejoin="round" d="${head}"/>` +
    `<path ${style(theme, { stroke: "mark", width: 1.9 })} stroke-linecap="round" d="${d}"/><path ${style(theme, { fill: "mark" })} d="${head}"/>`
  );
}

/** A straight, stout arrow that ends on the skin where the helper pushes. */
function drawPush(frame: Frame, at: Vector, direction: Vector, pen: Ink, theme: Theme): string {
  const [x1, y1] = project(frame.camera, at);
  const [ax, ay] = project(frame.camera, add(at, scale(direction, -0.15)));
  const length = Math.max(1, Math.hypot(x1 - ax, y1 - ay));
  const k = Math.max(14, length) / length;
  const x0 = x1 + (ax - x1) * k;
  const y0 = y1 + (ay - y1) * k;
  const ux = (x1 - x0) / Math.hypot(x1 - x0, y1 - y0);
  const uy = (y1 - y0) / Math.hypot(x1 - x0, y1 - y0);
  const shape = pen.polyline(
    [
      [x0 - uy * 1.8, y0 + ux * 1.8],
      [x1 - ux * 7 - uy * 1.8, y1 - uy * 7 + ux * 1.8],
      [x1 - ux * 7 - uy * 5, y1 - uy * 7 + ux * 5],
      [x1, y1],
      [x1 - ux * 7 + uy * 5, y1 - uy * 7 - ux * 5],
      [x1 - ux * 7 + uy * 1.8, y1 - uy * 7 - ux * 1.8],
      [x0 + uy * 1.8, y0 - ux * 1.8],
    ],
    true,
  );
  return `<path ${style(theme, { fill: "press", stroke: "halo", width: 1.4 })} stroke-linejoin="round" d="${shape}"/>`;
}
