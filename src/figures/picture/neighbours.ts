import type { SurfaceKind } from "../skin/kinds.ts";

/** Parts that run into one another at a joint: only a step in depth draws a line between them. */
const JOINED: readonly (readonly [string, string])[] = [
  ["trunk", "upperArm"],
  ["trunk", "thigh"],
  ["trunk", "neck"],
  ["neck", "head"],
  ["neck", "hair"],
  ["head", "hair"],
  ["hair", "bun"],
  ["upperArm", "forearm"],
  ["forearm", "hand"],
  ["forearm", "thumb"],
  ["thigh", "shank"],
  ["shank", "foot"],
];

function joined(a: SurfaceKind, b: SurfaceKind): boolean {
  if (a.part === b.part && a.side === b.side) return true;
  if (a.side !== null && b.side !== null && a.side !== b.side) return false;
  if (a.hand && b.hand) return true;
  if (a.part.startsWith("ear") || b.part.startsWith("ear")) return a.side === null && b.side === null;
  return JOINED.some(([p, q]) => (a.part === p && b.part === q) || (a.part === q && b.part === p));
}

/** For every pair of kinds, 1 where they belong to one figure but do not meet at a joint: a line is always drawn there. */
export function apartTable(kinds: readonly (SurfaceKind | null)[]): Uint8Array {
  const n = kinds.length;
  const table = new Uint8Array(n * n);
  kinds.forEach((a, i) => {
    kinds.forEach((b, j) => {
      if (a !== null && b !== null && a.owner === b.owner && a.owner !== "thing" && !joined(a, b)) table[i * n + j] = 1;
    });
  });
  return table;
}
