export type Point = readonly [number, number];
/** Points p with normal . p <= offset. */
export interface HalfPlane {
  readonly normal: Point;
  readonly offset: number;
}

/** Part of a convex polygon inside a half-plane; corners stay in their order. */
export function clipPolygon(polygon: readonly Point[], { normal, offset }: HalfPlane): readonly Point[] {
  const height = (p: Point): number => normal[0] * p[0] + normal[1] * p[1] - offset;
  const kept: Point[] = [];
  polygon.forEach((from, k) => {
    const to = polygon[(k + 1) % polygon.length] ?? from;
    const a = height(from);
    const b = height(to);
    if (a <= 0) kept.push(from);
    if (a < 0 !== b < 0 && a !== b) {
      const share = a / (a - b);
      if (share > 0 && share < 1) kept.push([from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]);
    }
  });
  return kept;
}

/** Convex hull, counter-clockwise (Andrew's chain). */
export function hullOf(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (from: readonly Point[]): Point[] => {
    const out: Point[] = [];
    for (const p of from) {
      for (;;) {
        const a = out[out.length - 2];
        const b = out[out.length - 1];
        if (a === undefined || b === undefined) break;
        if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 0) break;
        out.pop();
      }
      out.push(p);
    }
    out.pop();
    return out;
  };
  const hull = [...chain(sorted), ...chain([...sorted].reverse())];
  return hull.length === 0 ? sorted.slice(0, 1) : hull;
}

/** How far a point stands outside a convex hull [same unit]; zero inside. */
export function outsideHull(hull: readonly Point[], p: Point): number {
  let inside = hull.length > 2;
  let nearest = Number.MAX_VALUE;
  hull.forEach((a, k) => {
    const b = hull[(k + 1) % hull.length] ?? a;
    const edge: Point = [b[0] - a[0], b[1] - a[1]];
    const to: Point = [p[0] - a[0], p[1] - a[1]];
    if (edge[0] * to[1] - edge[1] * to[0] < 0) inside = false;
    const square = edge[0] ** 2 + edge[1] ** 2;
    const share = square === 0 ? 0 : Math.min(1, Math.max(0, (edge[0] * to[0] + edge[1] * to[1]) / square));
    nearest = Math.min(nearest, Math.hypot(to[0] - share * edge[0], to[1] - share * edge[1]));
  });
  return inside ? 0 : nearest;
}
