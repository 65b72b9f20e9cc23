import type { Vector } from "../../quantity/vectors.ts";
import { addEllipsoid, type Ring, sweep } from "./mesh.ts";
import { between, kindFor, originOf, rigid, type SkinContext } from "./context.ts";
import { HEAD_RINGS } from "./shape.data.ts";

/** Strokes of the face: polylines on the head [m, head frame]; drawn only where the picture shows the head there. */
export interface FaceStroke {
  readonly points: readonly Vector[];
  readonly kind: "eye" | "brow" | "mouth" | "strand";
}

/** Height above the neck joint at which hair begins, going round from the forehead (0) to the back (1) [mm]. */
function hairline(round: number, long: boolean): number {
  if (round < 0.3) return 196 - 20 * (round / 0.3) ** 2;
  if (round < 0.42) return 176 - ((round - 0.3) / 0.12) * 62;
  if (round < 0.56) return 114 + ((round - 0.42) / 0.14) * 22;
  const nape = long ? 62 : 72;
  return 136 - Math.min(1, (round - 0.56) / 0.12) * (136 - nape);
}

/** Neck, head, nose, ears and hair. */
export function addHead(context: SkinContext): void {
  const { mesh, mm, girth, look } = context;
  const head = originOf(context, "head");
  const skin = kindFor(context, "head", "skin", null, { quiet: 1.4 });
  const own = rigid(context, "head");
  const neckHalf = (context.body.size.sex === "male" ? 58 : 50) * mm * girth ** 0.35;
  const neckRing = (up: number, forward: number, wide: number, share: number): Ring => ({
    at: [forward * mm, 0, head[2] + up * mm],
    side: [0, neckHalf * wide, 0],
    front: [neckHalf * wide, 0, 0],
    back: [-neckHalf * wide, 0, 0],
    exponent: 2,
    binding: between(context, "thorax", "head", share),
    kind: kindFor(context, "neck", "skin", null, { quiet: 2.2 }),
  });
  sweep(
    mesh,
    [
      neckRing(-60, -6, 0.9, 0),
      neckRing(-25, -4, 1, 0.1),
      neckRing(5, 0, 0.98, 0.4),
      neckRing(40, 5, 0.98, 0.8),
      neckRing(78, 10, 0.84, 1),
      neckRing(110, 12, 0.7, 1),
    ],
    14,
    [
      [0, 0, 0],
      [0, 0, 0],
    ],
  );
  const ring = (row: (typeof HEAD_RINGS)[number], swell: number, kind: number): Ring => ({
    at: [row.middle * mm, 0, head[2] + row.up * mm],
    side: [0, (row.half + swell) * mm, 0],
    front: [(row.front + swell) * mm, 0, 0],
    back: [-(row.back + swell) * mm, 0, 0],
    exponent: row.up < 60 ? 2.3 : 2,
    binding: own,
    kind,
  });
  sweep(
    mesh,
    HEAD_RINGS.map((row) => ring(row, 0, skin)),
    18,
    [
      [0, 0, -4 * mm],
      [0, 0, 4 * mm],
    ],
  );
  addEllipsoid(mesh, [99 * mm, 0, head[2] + 96 * mm], [15 * mm, 11 * mm, 15 * mm], own, skin, 8, 6);
  addEllipsoid(mesh, [98 * mm, 0, head[2] + 112 * mm], [8 * mm, 8 * mm, 26 * mm], own, skin, 8, 6);
  for (const out of [1, -1]) {
    addEllipsoid(
      mesh,
      [-4 * mm, out * 76 * mm, head[2] + 112 * mm],
      [17 * mm, 8 * mm, 30 * mm],
      own,
      kindFor(context, out > 0 ? "earOne" : "earTwo", "skin"),
      8,
      6,
    );
  }
  if (look.hair !== "bald") addHair(context, head);
}

/** Depths and breadth of the head at a height above the neck joint [mm]. */
function profile(up: number): { middle: number; front: number; back: number; half: number } {
  const k = HEAD_RINGS.findIndex((row) => row.up >= up);
  const high = HEAD_RINGS[k < 0 ? HEAD_RINGS.length - 1 : k];
  const low = HEAD_RINGS[Math.max(0, k - 1)];
  if (high === undefined || low === undefined) return { middle: 0, front: 0, back: 0, half: 0 };
  const t = high.up === low.up ? 0 : (up - low.up) / (high.up - low.up);
  const mix = (a: number, b: number): number => a + (b - a) * t;
  return {
    middle: mix(low.middle, high.middle),
    front: mix(low.front, high.front),
    back: mix(low.back, high.back),
    half: mix(low.half, high.half),
  };
}

/** Hair is the head swollen above the hairline; below it the swelling turns inward, under the skin. */
function addHair(context: SkinContext, head: Vector): void {
  const { mesh, mm, look } = context;
  const tone = look.older && look.owner === "person" ? "whiteHair" : "hair";
  const hair = kindFor(context, "hair", tone, null, { quiet: 1.6 });
  const own = rigid(context, "head");
  const long = look.hair === "bun";
  const sides = 26;
  const rows = 18;
  const start = mesh.bindings.length;
  // Columns run from the crown down to the hairline and tuck under the skin there.
  const tip = mesh.bindings.length;
  mesh.points.push(-2 * mm, 0, head[2] + 256 * mm);
  mesh.bindings.push(own);
  for (let r = 1; r <= rows; r++) {
    for (let k = 0; k < sides; k++) {
      const angle = (2 * Math.PI * k) / sides;
      const round = Math.abs(angle > Math.PI ? 2 * Math.PI - angle : angle) / Math.PI;
      const line = hairline(round, long);
      const last = r === rows;
      const t = Math.min(1, r / (rows - 1));
      const up = 240 - (240 - line) * t ** 1.15;
      const at = profile(up);
      // At its edge hair turns straight in under the skin.
      const swell = last ? -14 : 11 - 3 * Math.max(0, t - 0.75);
      const c = Math.cos(angle);
      const s = Math.sin(angle);
      const depth = c >= 0 ? at.front + swell : at.back + swell;
      mesh.points.push(
        (at.middle + c * depth) * mm,
        s * (at.half + swell) * mm,
        head[2] + (up + 11 * (1 - t) ** 2) * mm,
      );
      mesh.bindings.push(own);
    }
  }
  const index = (r: number, k: number): number => start + 1 + (r - 1) * sides + (k % sides);
  for (let k = 0; k < sides; k++) {
    mesh.triangles.push(tip, index(1, k), index(1, k + 1));
    mesh.kinds.push(hair);
    for (let r = 1; r < rows; r++) {
      mesh.triangles.push(
        index(r, k),
        index(r + 1, k),
        index(r, k + 1),
        index(r, k + 1),
        index(r + 1, k),
        index(r + 1, k + 1),
      );
      mesh.kinds.push(hair, hair);
    }
  }
  if (long)
    addEllipsoid(
      mesh,
      [-92 * mm, 0, head[2] + 214 * mm],
      [40 * mm, 40 * mm, 38 * mm],
      own,
      kindFor(context, "bun", tone),
      12,
      8,
    );
}

/** Eyes, brows and mouth, a little in front of the skin. */
export function faceStrokes(mm: number, strands = false): readonly FaceStroke[] {
  const front = (out: number, up: number): Vector => {
    const k = HEAD_RINGS.findIndex((row) => row.up >= up);
    const high = HEAD_RINGS[k];
    const low = HEAD_RINGS[Math.max(0, k - 1)];
    if (high === undefined || low === undefined) return [0, 0, 0];
    const t = (up - low.up) / Math.max(1, high.up - low.up);
    const mix = (a: number, b: number): number => a + (b - a) * t;
    const half = mix(low.half, high.half);
    const depth = mix(low.front, high.front) * Math.sqrt(Math.max(0, 1 - (out / half) ** 2));
    return [(mix(low.middle, high.middle) + depth + 1) * mm, out * mm, up * mm];
  };
  const strokes: FaceStroke[] = [];
  for (const out of [1, -1]) {
    strokes.push({ kind: "eye", points: [front(out * 24, 127), front(out * 31, 129), front(out * 39, 126)] });
    strokes.push({ kind: "brow", points: [front(out * 18, 145), front(out * 30, 149), front(out * 45, 144)] });
  }
  if (strands) {
    // Combed back from the hairline to the bun.
    for (const round of [0.12, 0.24, 0.36]) {
      for (const out of [1, -1]) {
        const points: Vector[] = [];
        for (let k = 0; k <= 6; k++) {
          const angle = Math.PI * (round + (0.86 - round) * (k / 6) * 0.8);
          const up = hairline(round, true) + 6 + (226 - hairline(round, true)) * Math.sin((k / 6) * 1.35) * 0.82;
          const at = profile(up);
          const c = Math.cos(angle);
          const depth = (c >= 0 ? at.front : at.back) + 12.5;
          points.push([(at.middle + c * depth) * mm, out * Math.sin(angle) * (at.half + 12.5) * mm, (up + 3) * mm]);
        }
        strokes.push({ kind: "strand", points });
      }
    }
  }
  strokes.push({ kind: "mouth", points: [front(-21, 62), front(-8, 60), front(8, 60), front(21, 62)] });
  return strokes;
}
