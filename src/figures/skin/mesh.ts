import { add, cross, dot, scale, subtract, type Vector } from "../../quantity/vectors.ts";

/** Which segments a point of the skin rides on: the second one with the given share. */
export interface Binding {
  readonly first: number;
  readonly second: number;
  readonly share: number;
}

/** One cross-section of a swept part, in the room of the standing body [m]: a superellipse with its own front and back. */
export interface Ring {
  readonly at: Vector;
  /** Half breadth, a vector. */
  readonly side: Vector;
  /** Half depth to the front and to the back, vectors. */
  readonly front: Vector;
  readonly back: Vector;
  /** 2 is an ellipse; more is squarer. */
  readonly exponent: number;
  readonly binding: Binding;
  /** Surface kind of the strip from this ring to the next. */
  readonly kind: number;
}

/** Skin under construction: points with their bindings, triangles with their kinds. */
export interface Mesh {
  readonly points: number[];
  readonly bindings: Binding[];
  readonly triangles: number[];
  readonly kinds: number[];
}

export const emptyMesh = (): Mesh => ({ points: [], bindings: [], triangles: [], kinds: [] });

function addPoint(mesh: Mesh, at: Vector, binding: Binding): number {
  mesh.points.push(at[0], at[1], at[2]);
  mesh.bindings.push(binding);
  return mesh.bindings.length - 1;
}

const pointOf = (mesh: Mesh, i: number): Vector => [
  mesh.points[3 * i] ?? 0,
  mesh.points[3 * i + 1] ?? 0,
  mesh.points[3 * i + 2] ?? 0,
];

/** Rounds off an end: rings that shrink along a quarter of an ellipse. */
export function roundedEnd(ring: Ring, bulge: Vector, steps = 3): Ring[] {
  const rings: Ring[] = [];
  for (let k = 1; k < steps; k++) {
    const angle = (k / steps) * (Math.PI / 2);
    const shrink = Math.cos(angle);
    rings.push({
      ...ring,
      at: add(ring.at, scale(bulge, Math.sin(angle))),
      side: scale(ring.side, shrink),
      front: scale(ring.front, shrink),
      back: scale(ring.back, shrink),
    });
  }
  return rings;
}

/**
 * Sweeps rings into a closed part.
 * @param ends tip points beyond the first and last ring, as offsets from their centres
 */
export function sweep(mesh: Mesh, rings: readonly Ring[], sides: number, ends: readonly [Vector, Vector]): void {
  const first = rings[0];
  const last = rings[rings.length - 1];
  if (first === undefined || last === undefined) return;
  const firstTriangle = mesh.kinds.length;
  const start = addPoint(mesh, add(first.at, ends[0]), first.binding);
  const rows = rings.map((ring) => {
    const row: number[] = [];
    for (let k = 0; k < sides; k++) {
      const angle = (2 * Math.PI * k) / sides;
      const c = Math.cos(angle);
      const s = Math.sin(angle);
      const x = Math.sign(c) * Math.abs(c) ** (2 / ring.exponent);
      const y = Math.sign(s) * Math.abs(s) ** (2 / ring.exponent);
      const depth = y >= 0 ? scale(ring.front, y) : scale(ring.back, -y);
      row.push(addPoint(mesh, add(add(ring.at, scale(ring.side, x)), depth), ring.binding));
    }
    return row;
  });
  const end = addPoint(mesh, add(last.at, ends[1]), last.binding);
  const triangle = (a: number, b: number, c: number, kind: number): void => {
    mesh.triangles.push(a, b, c);
    mesh.kinds.push(kind);
  };
  for (let k = 0; k < sides; k++) {
    const next = (k + 1) % sides;
    triangle(start, rows[0]?.[k] ?? 0, rows[0]?.[next] ?? 0, first.kind);
    for (let r = 0; r + 1 < rows.length; r++) {
      const kind = rings[r]?.kind ?? 0;
      const a = rows[r]?.[k] ?? 0;
      const b = rows[r]?.[next] ?? 0;
      const c = rows[r + 1]?.[k] ?? 0;
      const d = rows[r + 1]?.[next] ?? 0;
      triangle(a, c, b, kind);
      triangle(b, c, d, kind);
    }
    triangle(end, rows[rows.length - 1]?.[next] ?? 0, rows[rows.length - 1]?.[k] ?? 0, last.kind);
  }
  faceOutward(mesh, firstTriangle, first, last);
}

/** Turns all triangles of a part over if they face inward: only the outside is ever painted. */
function faceOutward(mesh: Mesh, firstTriangle: number, first: Ring, last: Ring): void {
  const middle = scale(add(first.at, last.at), 0.5);
  let volume = 0;
  for (let t = firstTriangle; t < mesh.kinds.length; t++) {
    const a = subtract(pointOf(mesh, mesh.triangles[3 * t] ?? 0), middle);
    const b = subtract(pointOf(mesh, mesh.triangles[3 * t + 1] ?? 0), middle);
    const c = subtract(pointOf(mesh, mesh.triangles[3 * t + 2] ?? 0), middle);
    volume += dot(a, cross(b, c));
  }
  if (volume >= 0) return;
  for (let t = firstTriangle; t < mesh.kinds.length; t++) {
    const b = mesh.triangles[3 * t + 1] ?? 0;
    mesh.triangles[3 * t + 1] = mesh.triangles[3 * t + 2] ?? 0;
    mesh.triangles[3 * t + 2] = b;
  }
}

/** An egg: half axes along x, y, z, turned by nothing. */
export function addEllipsoid(
  mesh: Mesh,
  at: Vector,
  half: Vector,
  binding: Binding,
  kind: number,
  sides = 12,
  rows = 7,
): void {
  const rings: Ring[] = [];
  for (let k = 1; k < rows; k++) {
    const angle = Math.PI * (k / rows);
    const shrink = Math.sin(angle);
    rings.push({
      at: [at[0], at[1], at[2] + half[2] * Math.cos(angle)],
      side: [0, half[1] * shrink, 0],
      front: [half[0] * shrink, 0, 0],
      back: [-half[0] * shrink, 0, 0],
      exponent: 2,
      binding,
      kind,
    });
  }
  const tip = half[2] * (1 - Math.cos(Math.PI / rows));
  sweep(mesh, rings, sides, [
    [0, 0, tip],
    [0, 0, -tip],
  ]);
}

/** Sweeps rings and rounds both ends off by the given bulges beyond the first and the last ring. */
export function sweepRounded(
  mesh: Mesh,
  rings: readonly Ring[],
  sides: number,
  bulges: readonly [Vector, Vector],
): void {
  const first = rings[0];
  const last = rings[rings.length - 1];
  if (first === undefined || last === undefined) return;
  const rest = 1 - Math.sin(Math.PI / 3);
  sweep(mesh, [...roundedEnd(first, bulges[0]).reverse(), ...rings, ...roundedEnd(last, bulges[1])], sides, [
    scale(bulges[0], rest),
    scale(bulges[1], rest),
  ]);
}
