import { dot, subtract, type Vector } from "../../quantity/vectors.ts";
import type { Skin } from "./build.ts";
import { nearestOnTriangle } from "./nearest.ts";
import type { SurfaceKind } from "./kinds.ts";

/** A closed piece of a posed skin: an upper arm, a thigh, the trunk. */
interface Piece {
  readonly part: string;
  readonly side: SurfaceKind["side"];
  readonly corners: readonly (readonly [Vector, Vector, Vector])[];
  readonly least: Vector;
  readonly most: Vector;
}

/** A skin in a pose. */
export interface PosedSkin {
  readonly skin: Skin;
  readonly points: Float64Array;
}

/** A piece of one skin that lies inside a piece of another. */
export interface PassesThrough {
  readonly part: string;
  readonly side: SurfaceKind["side"];
  readonly into: string;
  readonly intoSide: SurfaceKind["side"];
  /** Deepest point [m]. */
  readonly depth: number;
}

type Counts = (kind: SurfaceKind, into: Piece) => boolean;

/**
 * Where points of one skin lie inside closed pieces of another, deepest first.
 * @param counts which pairs of pieces are looked at
 */
export function passesThrough(from: PosedSkin, into: PosedSkin, counts: Counts): PassesThrough[] {
  return throughPieces(from, piecesOf(into), counts);
}

function throughPieces(from: PosedSkin, pieces: readonly Piece[], counts: Counts): PassesThrough[] {
  const found = new Map<string, PassesThrough>();
  const kindOfPoint = new Uint8Array(from.points.length / 3);
  for (let k = 0; k < from.skin.triangles.length; k++)
    kindOfPoint[from.skin.triangles[k] ?? 0] = from.skin.triangleKinds[Math.floor(k / 3)] ?? 0;
  for (const piece of pieces) {
    const allowed = from.skin.kinds.map((kind) => kind !== null && counts(kind, piece));
    for (let i = 0; i < kindOfPoint.length; i++) {
      const number = kindOfPoint[i] ?? 0;
      const kind = from.skin.kinds[number] ?? null;
      if (kind === null || allowed[number] !== true) continue;
      const at: Vector = [from.points[3 * i] ?? 0, from.points[3 * i + 1] ?? 0, from.points[3 * i + 2] ?? 0];
      if (!isInside(piece, at)) continue;
      const depth = distanceToSurface(piece, at);
      const key = `${kind.part}.${kind.side}>${piece.part}.${piece.side}`;
      if (depth > (found.get(key)?.depth ?? 0))
        found.set(key, { part: kind.part, side: kind.side, into: piece.part, intoSide: piece.side, depth });
    }
  }
  return [...found.values()].sort((a, b) => b.depth - a.depth);
}

/** Pieces that grow out of one another, or lie on one another by nature: they may share room. */
const NEIGHBOURS: readonly (readonly [string, string])[] = [
  ["trunk", "upperArm"],
  ["trunk", "thigh"],
  ["trunk", "neck"],
  ["upperArm", "forearm"],
  ["forearm", "hand"],
  ["forearm", "thumb"],
  ["hand", "thumb"],
  ["thigh", "shank"],
  ["shank", "foot"],
];
const LIMBS: readonly string[] = ["trunk", "upperArm", "forearm", "hand", "thigh", "shank", "foot"];

/** Where a body's limbs pass through one another or through its trunk; neighbours at a joint do not count. */
export function limbsThroughEachOther(posed: PosedSkin): PassesThrough[] {
  return passesThrough(posed, posed, (kind, into) => {
    if (!LIMBS.includes(kind.part) || !LIMBS.includes(into.part)) return false;
    if (kind.part === into.part && kind.side === into.side) return false;
    const sameSide = kind.side === into.side || kind.side === null || into.side === null;
    return !(
      sameSide &&
      NEIGHBOURS.some(([a, b]) => (a === kind.part && b === into.part) || (b === kind.part && a === into.part))
    );
  });
}

/** Where the helper passes into the person; the hands lie on the skin and are measured by themselves. */
export const helperThroughPerson = (helper: PosedSkin, person: PosedSkin): PassesThrough[] =>
  throughPieces(helper, keptPieces(person), (kind) => !kind.hand);

/** A person who stays while several stands of the helper are tried. */
const kept = new WeakMap<Float64Array, readonly Piece[]>();

function keptPieces(posed: PosedSkin): readonly Piece[] {
  const known = kept.get(posed.points) ?? piecesOf(posed);
  kept.set(posed.points, known);
  return known;
}

function piecesOf(posed: PosedSkin): Piece[] {
  const { skin, points } = posed;
  const corner = (i: number): Vector => [points[3 * i] ?? 0, points[3 * i + 1] ?? 0, points[3 * i + 2] ?? 0];
  const byName = new Map<string, { part: string; side: SurfaceKind["side"]; corners: [Vector, Vector, Vector][] }>();
  skin.triangleKinds.forEach((number, t) => {
    const kind = skin.kinds[number] ?? null;
    if (kind === null) return;
    const key = `${kind.part}/${kind.side}`;
    const piece = byName.get(key) ?? { part: kind.part, side: kind.side, corners: [] };
    byName.set(key, piece);
    piece.corners.push([
      corner(skin.triangles[3 * t] ?? 0),
      corner(skin.triangles[3 * t + 1] ?? 0),
      corner(skin.triangles[3 * t + 2] ?? 0),
    ]);
  });
  return [...byName.values()].map((piece): Piece => {
    const least: [number, number, number] = [1e9, 1e9, 1e9];
    const most: [number, number, number] = [-1e9, -1e9, -1e9];
    for (const at of piece.corners.flat())
      for (const k of [0, 1, 2] as const) {
        least[k] = Math.min(least[k], at[k]);
        most[k] = Math.max(most[k], at[k]);
      }
    return { ...piece, least, most };
  });
}

/** Counts how often the skin is crossed straight upward from a point, out of it and into it. */
function isInside(piece: Piece, at: Vector): boolean {
  const { least, most } = piece;
  const [x, y, z] = at;
  if (x < least[0] || x > most[0] || y < least[1] || y > most[1] || z < least[2] || z > most[2]) return false;
  let winding = 0;
  for (const [a, b, c] of piece.corners) {
    if (z > a[2] && z > b[2] && z > c[2]) continue;
    const wc = (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
    const wa = (c[0] - b[0]) * (y - b[1]) - (c[1] - b[1]) * (x - b[0]);
    const wb = (a[0] - c[0]) * (y - c[1]) - (a[1] - c[1]) * (x - c[0]);
    const up = wa >= 0 && wb >= 0 && wc >= 0;
    if (!up && !(wa < 0 && wb < 0 && wc < 0)) continue;
    const whole = wa + wb + wc;
    if (whole === 0 || (wa * a[2] + wb * b[2] + wc * c[2]) / whole < z) continue;
    winding += up ? 1 : -1;
  }
  return winding > 0;
}

function distanceToSurface(piece: Piece, at: Vector): number {
  let least = Number.MAX_VALUE;
  for (const [a, b, c] of piece.corners) {
    const away = subtract(nearestOnTriangle(a, b, c, at), at);
    least = Math.min(least, dot(away, away));
  }
  return Math.sqrt(least);
}
