import type { SurfaceKind } from "../skin/kinds.ts";
import type { DepthBuffer } from "./buffer.ts";
import { fitCubics, smoothLine } from "./curves.ts";
import type { Ink } from "./ink.ts";
import { apartTable } from "./neighbours.ts";

/** The lines of a picture as path text, by weight. */
export interface LineLayers {
  readonly outline: string;
  readonly fold: string;
  readonly hem: string;
}

const OUTLINE = 1;
const FOLD = 2;
const FOLD_WEAK = 3;
const HEM = 4;
/** Limbs that do not meet at a joint: always a line. */
const APART = 5;
/** A hand's edge where it lies on the other person's skin. */
const TOUCH = 6;
/** Owner number of soft things: they have no straight edges, so their outline is traced as a body's is. */
const SOFT = 4;
/** A depth step inside one figure above `starts` begins a line, above `continues` carries it on [mm]. */
const STARTS = 20;
const CONTINUES = 8;
/** A hand lying on the other person's skin within this gap is drawn with the thinner line [mm]. */
const TOUCHING = 12;
const SHORTEST_OUTLINE = 3;
/** A closed outline smaller than this is a speck. */
const SMALLEST_SPECK = 14;
const SHORTEST_FOLD = 9;
const SHORTEST_HEM = 9;
/** A valley between two limbs sharper than this is a line, whatever the step [rad]. */
const VALLEY = 1.15;
/** Folds that run this close beside an outline are swallowed by it [samples]. */
const BESIDE = 2;

/** Traces the edges between samples where the picture changes from one thing to another or steps back in depth. */
export function traceLines(
  buffer: DepthBuffer,
  kinds: readonly (SurfaceKind | null)[],
  zoom: number,
  ink: Ink,
): LineLayers {
  const edges = classify(buffer, kinds, zoom);
  thinFolds(edges, buffer.depth, buffer.columns);
  dropBesideOutlines(edges);
  const found = listEdges(edges);
  const open = new Uint8Array(2 * edges.upright.length);
  const outline = chainEdges(buffer, edges, found, open, (value) => value === OUTLINE, SHORTEST_OUTLINE, false, ink);
  const fold = chainEdges(
    buffer,
    edges,
    found,
    open,
    (value) => value === FOLD || value === FOLD_WEAK || value === APART,
    SHORTEST_FOLD,
    true,
    ink,
  );
  const touch = chainEdges(buffer, edges, found, open, (value) => value === TOUCH, SHORTEST_OUTLINE, false, ink);
  const hem = chainEdges(buffer, edges, found, open, (value) => value === HEM, SHORTEST_HEM, false, ink);
  return { outline, fold: fold + touch, hem };
}

/** Edges between samples: upright ones between a sample and its neighbour across, level ones between it and the one below. */
interface Edges {
  readonly stride: number;
  readonly upright: Uint8Array;
  readonly level: Uint8Array;
  /** Part in front at that edge: a line follows it across hems. */
  readonly uprightFront: Uint8Array;
  readonly levelFront: Uint8Array;
  /** Where there is an edge at all, in rising order. */
  readonly uprightAt: number[];
  readonly levelAt: number[];
}

function classify(buffer: DepthBuffer, kinds: readonly (SurfaceKind | null)[], zoom: number): Edges {
  const { columns, rows, depth, painted } = buffer;
  const stride = columns + 1;
  const size = stride * (rows + 1);
  const edges: Edges = {
    stride,
    upright: new Uint8Array(size),
    level: new Uint8Array(size),
    uprightFront: new Uint8Array(size),
    levelFront: new Uint8Array(size),
    uprightAt: [],
    levelAt: [],
  };
  const owners = ["person", "helper", "thing"];
  const owner = Uint8Array.from(kinds, (kind) =>
    kind === null ? 0 : kind.part === "soft" ? SOFT : owners.indexOf(kind.owner) + 1,
  );
  const partNames = kinds.map((kind) => (kind === null ? "" : `${kind.owner}/${kind.part}/${kind.side}`));
  const part = Uint8Array.from(partNames, (name) => partNames.indexOf(name));
  const tone = kinds.map((kind) => kind?.tone ?? "");
  const quiet = Float64Array.from(kinds, (kind) => kind?.quiet ?? 1);
  const hand = Uint8Array.from(kinds, (kind) => (kind?.hand === true ? 1 : 0));
  const map = buffer.kinds;
  const apart = apartTable(kinds);
  const sampleSize = 1000 / (zoom * buffer.density);
  const judge = (a: number, b: number, beforeA: number, afterB: number): number => {
    const ka = map[a] ?? 0;
    const kb = map[b] ?? 0;
    const oa = owner[ka] ?? 0;
    const ob = owner[kb] ?? 0;
    const da = depth[a] ?? 0;
    const db = depth[b] ?? 0;
    if (oa !== ob) {
      if ((oa === 0 || oa === 3) && (ob === 0 || ob === 3)) return 0;
      const touching =
        oa + ob === 3 &&
        oa > 0 &&
        ob > 0 &&
        ((hand[ka] ?? 0) === 1 || (hand[kb] ?? 0) === 1) &&
        Math.abs(da - db) < TOUCHING;
      return touching ? TOUCH : OUTLINE;
    }
    if (oa === 0 || oa >= 3) return 0;
    const pa = part[ka];
    const pb = part[kb];
    if (apart[ka * kinds.length + kb] === 1) return APART;
    const hasA = beforeA >= 0 && part[map[beforeA] ?? 0] === pa;
    const hasB = afterB >= 0 && part[map[afterB] ?? 0] === pb;
    const ownA = hasA ? Math.abs(da - (depth[beforeA] ?? 0)) : 0;
    const ownB = hasB ? Math.abs(db - (depth[afterB] ?? 0)) : 0;
    // Where a part ends, its slope is taken to go on as on the other side of this edge.
    const slopeA = hasA ? ownA : ownB;
    const slopeB = hasB ? ownB : ownA;
    const gap = Math.abs(da - db) - Math.min(slopeA, slopeB) - Math.min(30, 0.3 * Math.max(slopeA, slopeB));
    const loud =
      pa === pb || (quiet[ka] ?? 1) > 1 || (quiet[kb] ?? 1) > 1 ? Math.min(quiet[ka] ?? 1, quiet[kb] ?? 1) : 1;
    if (gap > STARTS * loud) return FOLD;
    if (gap > CONTINUES * loud) return FOLD_WEAK;
    if (pa !== pb && hasA && hasB && da > (depth[beforeA] ?? 0) && db > (depth[afterB] ?? 0)) {
      if (Math.atan(slopeA / sampleSize) + Math.atan(slopeB / sampleSize) > VALLEY) return FOLD;
    }
    if (tone[ka] !== tone[kb]) return HEM;
    if ((hand[ka] ?? 0) === 1 && (hand[kb] ?? 0) === 1 && pa !== pb && gap > 1.2) return FOLD;
    return 0;
  };
  // The sample before the first painted one still has an edge with it.
  for (let r = Math.max(0, painted.top - 1); r <= painted.bottom; r++) {
    const first = Math.min(painted.first[r] ?? columns, painted.first[r + 1] ?? columns);
    const last = Math.max(painted.last[r] ?? -1, painted.last[r + 1] ?? -1);
    for (let c = Math.max(0, first - 1); c <= last; c++) {
      const a = r * columns + c;
      const ka = map[a] ?? 0;
      const da = depth[a] ?? 0;
      if (c + 1 < columns) {
        const kb = map[a + 1] ?? 0;
        if (ka !== kb || Math.abs(da - (depth[a + 1] ?? 0)) > CONTINUES) {
          const value = judge(a, a + 1, c > 0 ? a - 1 : -1, c + 2 < columns ? a + 2 : -1);
          if (value !== 0) {
            const at = r * stride + c + 1;
            edges.upright[at] = value;
            edges.uprightFront[at] = part[da <= (depth[a + 1] ?? 0) ? ka : kb] ?? 0;
            edges.uprightAt.push(at);
          }
        }
      }
      if (r + 1 < rows) {
        const kb = map[a + columns] ?? 0;
        if (ka !== kb || Math.abs(da - (depth[a + columns] ?? 0)) > CONTINUES) {
          const value = judge(a, a + columns, r > 0 ? a - columns : -1, r + 2 < rows ? a + 2 * columns : -1);
          if (value !== 0) {
            const at = (r + 1) * stride + c;
            edges.level[at] = value;
            edges.levelFront[at] = part[da <= (depth[a + columns] ?? 0) ? ka : kb] ?? 0;
            edges.levelAt.push(at);
          }
        }
      }
    }
  }
  return edges;
}

const isFold = (value: number): boolean => value === FOLD || value === FOLD_WEAK;

/** Of two fold edges side by side the one with the larger step stays, so that a line has one trace to follow. */
function thinFolds(edges: Edges, depth: Float32Array, columns: number): void {
  const { stride, upright, level, uprightAt, levelAt } = edges;
  // A level edge lies between a sample and the one above it, an upright one between it and the one before.
  const thin = (field: Uint8Array, at: number, back: number, up: number): void => {
    if (at < back || (field[at] ?? 0) === 0 || (field[at - back] ?? 0) === 0) return;
    const sample = at - Math.floor(at / stride);
    const here = Math.abs((depth[sample] ?? 0) - (depth[sample - up] ?? 0));
    const before = Math.abs((depth[sample - up] ?? 0) - (depth[sample - 2 * up] ?? 0));
    const weaker = here > before ? at - back : at;
    const stronger = weaker === at ? at - back : at;
    if (isFold(field[weaker] ?? 0)) field[weaker] = 0;
    else if (isFold(field[stronger] ?? 0)) field[stronger] = 0;
  };
  for (const at of uprightAt) thin(upright, at, 1, 1);
  for (const at of levelAt) thin(level, at, stride, columns);
}

/** Folds right beside an outline would only thicken it: they may carry a line on but not begin one. */
function dropBesideOutlines(edges: Edges): void {
  const { stride, upright, level, uprightAt, levelAt } = edges;
  const beside = (at: number): boolean => {
    for (let r = -BESIDE; r <= BESIDE; r++) {
      for (let i = at + r * stride - BESIDE; i <= at + r * stride + BESIDE; i++)
        if (upright[i] === OUTLINE || level[i] === OUTLINE) return true;
    }
    return false;
  };
  for (const at of uprightAt) if (upright[at] === FOLD && beside(at)) upright[at] = FOLD_WEAK;
  for (const at of levelAt) if (level[at] === FOLD && beside(at)) level[at] = FOLD_WEAK;
}

/** Numbers of all edges that are something: upright ones as they stand, level ones behind them. */
function listEdges(edges: Edges): number[] {
  const { upright, level, uprightAt, levelAt } = edges;
  const found: number[] = [];
  for (const at of uprightAt) if (upright[at] !== 0) found.push(at);
  for (const at of levelAt) if (level[at] !== 0) found.push(upright.length + at);
  return found;
}

/**
 * Links edges to lines, each following its front part as long as it can.
 * @param open room for marking edges, all zero, and all zero again afterwards
 */
function chainEdges(
  buffer: DepthBuffer,
  edges: Edges,
  found: readonly number[],
  open: Uint8Array,
  wanted: (value: number) => boolean,
  shortest: number,
  sure: boolean,
  ink: Ink,
): string {
  const { stride, upright, level, uprightFront, levelFront } = edges;
  const size = upright.length;
  for (const edge of found) if (wanted((edge < size ? upright[edge] : level[edge - size]) ?? 0)) open[edge] = 1;
  // At a corner: upright edge above it and below it, level edge before it and after it; and the far corner of each.
  const edgeAt = (corner: number, way: number): number =>
    way === 0 ? corner - stride : way === 1 ? corner : way === 2 ? size + corner - 1 : size + corner;
  const cornerAt = (corner: number, way: number): number =>
    way === 0 ? corner - stride : way === 1 ? corner + stride : way === 2 ? corner - 1 : corner + 1;
  const frontOf = (edge: number): number => (edge < size ? (uprightFront[edge] ?? 0) : (levelFront[edge - size] ?? 0));
  const walk = (from: number, front: number, heading: number): number[] => {
    const passed: number[] = [];
    let corner = from;
    let way = heading;
    for (;;) {
      let best = -1;
      let score = -1;
      for (let k = 0; k < 4; k++) {
        const edge = edgeAt(corner, k);
        if (edge < 0 || open[edge] !== 1) continue;
        const s = (frontOf(edge) === front ? 4 : 0) + (k === way ? 1 : 0) + 1;
        if (s > score) {
          score = s;
          best = k;
        }
      }
      if (best < 0) return passed;
      const edge = edgeAt(corner, best);
      open[edge] = 0;
      front = frontOf(edge);
      passed.push(edge);
      corner = cornerAt(corner, best);
      way = best;
    }
  };
  let out = "";
  for (const start of found) {
    if (open[start] !== 1) continue;
    open[start] = 0;
    const isUpright = start < size;
    const first = isUpright ? start : start - size;
    const second = isUpright ? first + stride : first + 1;
    const front = frontOf(start);
    const forward = walk(second, front, isUpright ? 1 : 3);
    const backward = walk(first, front, isUpright ? 0 : 2);
    const chain = [...backward.reverse(), start, ...forward];
    if (chain.length < shortest) continue;
    if (
      sure &&
      chain.filter((edge) => ((edge < size ? upright[edge] : level[edge - size]) ?? 0) !== FOLD_WEAK).length < 3
    )
      continue;
    const line = new Float64Array(2 * chain.length);
    chain.forEach((edge, i) => {
      const at = edge < size ? edge : edge - size;
      line[2 * i] = (at % stride) + (edge < size ? 0 : 0.5);
      line[2 * i + 1] = Math.floor(at / stride) + (edge < size ? 0.5 : 0);
    });
    const gapX = (line[0] ?? 0) - (line[line.length - 2] ?? 0);
    const gapY = (line[1] ?? 0) - (line[line.length - 1] ?? 0);
    const closed = chain.length > 12 && Math.hypot(gapX, gapY) < 1.5;
    const smoothed = smoothLine(line, closed);
    let ready = smoothed;
    if (closed) {
      ready = new Float64Array(smoothed.length + 2);
      ready.set(smoothed);
      ready[smoothed.length] = smoothed[0] ?? 0;
      ready[smoothed.length + 1] = smoothed[1] ?? 0;
    }
    if (closed && chain.length < SMALLEST_SPECK) continue;
    out += ink.cubics(fitCubics(ready, 0.9), buffer.density, closed);
  }
  return out;
}
