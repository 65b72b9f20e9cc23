/** Points of the picture plane as x, y, x, y … in samples. */
export type Polyline = Float64Array;

/** Evens out a traced line: each point moves to the 1-2-1 mean of its neighbours; open ends stay. */
export function smoothLine(line: Polyline, closed: boolean, passes = 4): Polyline {
  const n = line.length / 2;
  if (n < 3) return line;
  let now = line;
  let next: Polyline = new Float64Array(line.length);
  for (let pass = 0; pass < passes; pass++) {
    for (let i = 0; i < n; i++) {
      const ends = !closed && (i === 0 || i === n - 1);
      const before = closed ? (i + n - 1) % n : Math.max(0, i - 1);
      const after = closed ? (i + 1) % n : Math.min(n - 1, i + 1);
      for (let k = 0; k < 2; k++) {
        const at = now[2 * i + k] ?? 0;
        next[2 * i + k] = ends ? at : 0.25 * (now[2 * before + k] ?? 0) + 0.5 * at + 0.25 * (now[2 * after + k] ?? 0);
      }
    }
    const spare = now === line ? new Float64Array(line.length) : now;
    now = next;
    next = spare;
  }
  return now;
}

/** Cubic pieces laid end to end: start point, then six numbers a piece. */
export type CubicPath = number[];

/** Points of a line tried as one piece at first. */
const TRIED_AT_ONCE = 40;

/**
 * Fits cubic pieces to a line by least squares, splitting where the error is largest.
 * @param error largest distance allowed [samples]
 */
export function fitCubics(line: Polyline, error: number): CubicPath {
  const n = line.length / 2;
  const path: CubicPath = [line[0] ?? 0, line[1] ?? 0];
  if (n < 2) return path;
  const corners = [0];
  const span = 3;
  const along = new Float64Array(n);
  for (let i = 1; i < n; i++) {
    const dx = (line[2 * i] ?? 0) - (line[2 * i - 2] ?? 0);
    const dy = (line[2 * i + 1] ?? 0) - (line[2 * i - 1] ?? 0);
    along[i] = (along[i - 1] ?? 0) + Math.sqrt(dx * dx + dy * dy);
  }
  for (let i = span; i < n - span; i++) {
    const ax = (line[2 * i] ?? 0) - (line[2 * (i - span)] ?? 0);
    const ay = (line[2 * i + 1] ?? 0) - (line[2 * (i - span) + 1] ?? 0);
    const bx = (line[2 * (i + span)] ?? 0) - (line[2 * i] ?? 0);
    const by = (line[2 * (i + span) + 1] ?? 0) - (line[2 * i + 1] ?? 0);
    const cosine = (ax * bx + ay * by) / (Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by)) + 1e-12);
    if (cosine < 0.4 && i - (corners[corners.length - 1] ?? 0) > 4) corners.push(i);
  }
  corners.push(n - 1);
  for (let k = 0; k + 1 < corners.length; k++) {
    const from = corners[k] ?? 0;
    const to = corners[k + 1] ?? 0;
    // A long stretch never fits in one piece: cutting it beforehand spares trying.
    const parts = Math.max(1, Math.round((to - from) / TRIED_AT_ONCE));
    let begin = from;
    let t0 = tangentAt(line, from, Math.min(from + 3, to));
    for (let part = 1; part <= parts; part++) {
      const end = part === parts ? to : from + Math.round(((to - from) * part) / parts);
      const t1 = part === parts ? tangentAt(line, to, Math.max(to - 3, from)) : tangentAt(line, end + 3, end - 3);
      fitPiece(line, along, begin, end, t0, t1, error, path, 0);
      begin = end;
      t0 = [-t1[0], -t1[1]];
    }
  }
  return path;
}

function tangentAt(line: Polyline, at: number, toward: number): readonly [number, number] {
  const x = (line[2 * toward] ?? 0) - (line[2 * at] ?? 0);
  const y = (line[2 * toward + 1] ?? 0) - (line[2 * at + 1] ?? 0);
  const length = Math.sqrt(x * x + y * y) || 1;
  return [x / length, y / length];
}

function fitPiece(
  line: Polyline,
  along: Float64Array,
  from: number,
  to: number,
  t0: readonly [number, number],
  t1: readonly [number, number],
  error: number,
  path: CubicPath,
  level: number,
): void {
  const x0 = line[2 * from] ?? 0;
  const y0 = line[2 * from + 1] ?? 0;
  const x3 = line[2 * to] ?? 0;
  const y3 = line[2 * to + 1] ?? 0;
  const count = to - from;
  const chord = Math.sqrt((x3 - x0) * (x3 - x0) + (y3 - y0) * (y3 - y0));
  if (count < 3) {
    path.push(
      x0 + (t0[0] * chord) / 3,
      y0 + (t0[1] * chord) / 3,
      x3 + (t1[0] * chord) / 3,
      y3 + (t1[1] * chord) / 3,
      x3,
      y3,
    );
    return;
  }
  const begin = along[from] ?? 0;
  const total = (along[to] ?? 0) - begin || 1;
  let c00 = 0;
  let c01 = 0;
  let c11 = 0;
  let r0 = 0;
  let r1 = 0;
  for (let i = 0; i <= count; i++) {
    const u = ((along[from + i] ?? 0) - begin) / total;
    const v = 1 - u;
    const b1 = 3 * u * v * v;
    const b2 = 3 * u * u * v;
    const b0 = v * v * v + b1;
    const b3 = u * u * u + b2;
    const p = 2 * (from + i);
    const ex = (line[p] ?? 0) - x0 * b0 - x3 * b3;
    const ey = (line[p + 1] ?? 0) - y0 * b0 - y3 * b3;
    c00 += b1 * b1;
    c01 += b1 * b2 * (t0[0] * t1[0] + t0[1] * t1[1]);
    c11 += b2 * b2;
    r0 += b1 * (ex * t0[0] + ey * t0[1]);
    r1 += b2 * (ex * t1[0] + ey * t1[1]);
  }
  const det = c00 * c11 - c01 * c01;
  let alpha = Math.abs(det) > 1e-12 ? (r0 * c11 - r1 * c01) / det : chord / 3;
  let beta = Math.abs(det) > 1e-12 ? (r1 * c00 - r0 * c01) / det : chord / 3;
  if (alpha < 0.05 * total || beta < 0.05 * total || alpha > 1.5 * total || beta > 1.5 * total) {
    alpha = total / 3;
    beta = total / 3;
  }
  const x1 = x0 + t0[0] * alpha;
  const y1 = y0 + t0[1] * alpha;
  const x2 = x3 + t1[0] * beta;
  const y2 = y3 + t1[1] * beta;
  let worst = 0;
  let split = from + (count >> 1);
  for (let i = 1; i < count; i++) {
    const u = ((along[from + i] ?? 0) - begin) / total;
    const v = 1 - u;
    const p = 2 * (from + i);
    const dx = v * v * v * x0 + 3 * u * v * v * x1 + 3 * u * u * v * x2 + u * u * u * x3 - (line[p] ?? 0);
    const dy = v * v * v * y0 + 3 * u * v * v * y1 + 3 * u * u * v * y2 + u * u * u * y3 - (line[p + 1] ?? 0);
    const d = dx * dx + dy * dy;
    if (d > worst) {
      worst = d;
      split = from + i;
    }
  }
  if (worst <= error * error || level > 9) {
    path.push(x1, y1, x2, y2, x3, y3);
    return;
  }
  split = Math.min(Math.max(split, from + 1), to - 1);
  const reach = Math.max(1, Math.min(3, split - from, to - split));
  const back = tangentAt(line, split + reach, split - reach);
  fitPiece(line, along, from, split, t0, back, error, path, level + 1);
  fitPiece(line, along, split, to, [-back[0], -back[1]], t1, error, path, level + 1);
}
