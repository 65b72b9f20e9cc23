import type { Piece, Stretch } from "./stretches.ts";

/** The scale of the line and of the body on it [px/m]. */
export const PER_METRE = 92;
/** The raised mat in elevation [m]. */
export const MAT = 0.5;

export interface LineScale {
  readonly width: number;
  readonly minutes: number;
  /** Where the surface of the mat is [px from the top]. */
  readonly matTop: number;
  /** Space before the first and after the last dot [px]. */
  readonly inset: number;
}

export function xAt(minute: number, { width, minutes, inset }: LineScale): number {
  return round(inset + ((width - 2 * inset) * minute) / Math.max(minutes, 1));
}
export function yAt(height: number, { matTop }: LineScale): number {
  return round(matTop - Math.max(height, 0.05) * PER_METRE);
}

interface Walk {
  readonly scale: LineScale;
  height: number;
  path: string;
}

/** The body's trace over the given stretches: a repetition is a bump, a hold a flat, a rest a calm. */
export function tracePath(stretches: readonly Stretch[], scale: LineScale, restBefore?: number): string {
  const first = stretches[0]?.pieces[0];
  if (first === undefined) return "";
  const walk: Walk = { scale, height: restBefore ?? first.height, path: "" };
  walk.path = `M${xAt(first.fromMinute, scale)} ${yAt(walk.height, scale)}`;
  for (const stretch of stretches) for (const piece of stretch.pieces) addPiece(walk, piece);
  return walk.path;
}

/** Height of the calm before a stretch begins. */
export function restBefore(stretches: readonly Stretch[], index: number): number {
  const before = stretches.slice(0, index).flatMap(({ pieces }) => pieces);
  return before.findLast(({ kind }) => kind !== "work")?.height ?? 0.2;
}

function addPiece(walk: Walk, piece: Piece): void {
  if (piece.kind === "work") {
    addWork(walk, piece);
    return;
  }
  const [from, to] = [xAt(piece.fromMinute, walk.scale), xAt(piece.toMinute, walk.scale)];
  const [before, after] = [yAt(walk.height, walk.scale), yAt(piece.height, walk.scale)];
  if (before === after) walk.path += `L${to} ${after}`;
  else {
    const middle = round((from + to) / 2);
    walk.path += `L${from} ${before}C${middle} ${before} ${middle} ${after} ${to} ${after}`;
  }
  walk.height = piece.height;
}

/** A small lift even where the centre hardly moves, so that bumps can be counted [px]. */
const LEAST_BUMP = 3;
/** Share of a set's time that is work; the rest is calm. */
const WORK_SHARE = 0.72;

function addWork(walk: Walk, { fromMinute, toMinute, height, dose }: Piece): void {
  const { scale } = walk;
  const low = yAt(walk.height, scale);
  const raised = yAt(height, scale);
  const high = Math.abs(low - raised) < LEAST_BUMP ? low - LEAST_BUMP : raised;
  const sets = Math.max(1, dose?.sets ?? 1);
  const [from, to] = [xAt(fromMinute, scale), xAt(toMinute, scale)];
  const each = (to - from) / sets;
  for (let set = 0; set < sets; set++) {
    const start = from + each * (set + 0.5 - WORK_SHARE / 2);
    const end = start + each * WORK_SHARE;
    walk.path += `L${round(start)} ${low}`;
    walk.path +=
      dose?.repetitions === undefined ? flat(start, end, low, high) : bumps(start, end, low, high, dose.repetitions);
  }
  walk.path += `L${to} ${low}`;
}

function bumps(start: number, end: number, low: number, high: number, count: number): string {
  const step = (end - start) / count;
  let path = "";
  for (let i = 0; i < count; i++) {
    const [a, b] = [start + i * step, start + (i + 1) * step];
    const middle = (a + b) / 2;
    path += `C${round(a + step * 0.3)} ${low} ${round(middle - step * 0.3)} ${high} ${round(middle)} ${high}`;
    path += `C${round(middle + step * 0.3)} ${high} ${round(b - step * 0.3)} ${low} ${round(b)} ${low}`;
  }
  return path;
}

function flat(start: number, end: number, low: number, high: number): string {
  const edge = Math.min((end - start) / 4, 10);
  return `C${round(start + edge / 2)} ${low} ${round(start + edge / 2)} ${high} ${round(start + edge)} ${high}L${round(end - edge)} ${high}C${round(end - edge / 2)} ${high} ${round(end - edge / 2)} ${low} ${round(end)} ${low}`;
}

const round = (value: number): number => Math.round(value * 10) / 10;
