import type { Vector } from "../../quantity/vectors.ts";
import type { Solid } from "../picture/buffer.ts";
import { emptyMesh, type Ring, sweep } from "../skin/mesh.ts";

/** A thing people lie, sit or lean on, as it is drawn. */
export interface Thing {
  readonly solid: Omit<Solid, "kindOffset">;
  /** Straight edges to be drawn where they can be seen. */
  readonly edges: readonly (readonly [Vector, Vector])[];
  /** Round bars: their two outlines depend on the eye. */
  readonly tubes: readonly Tube[];
}

export interface Tube {
  readonly from: Vector;
  readonly to: Vector;
  readonly radius: number;
}

/** Surface kinds of things, in the order the picture numbers them. */
export const TOP = 1;
export const FRONT = 2;
export const BAR = 3;
export const SOFT = 4;

interface Growing {
  points: number[];
  triangles: number[];
  kinds: number[];
  edges: [Vector, Vector][];
  tubes: Tube[];
}

const empty = (): Growing => ({ points: [], triangles: [], kinds: [], edges: [], tubes: [] });
const finish = (g: Growing): Thing => ({
  solid: {
    points: Float64Array.from(g.points),
    triangles: Uint16Array.from(g.triangles),
    triangleKinds: Uint8Array.from(g.kinds),
  },
  edges: g.edges,
  tubes: g.tubes,
});

export interface Block {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
  readonly bottom: number;
  readonly top: number;
}

function addBlock(g: Growing, b: Block, topKind: number, sideKind: number): void {
  const at = g.points.length / 3;
  for (const z of [b.bottom, b.top])
    for (const y of [b.fromY, b.toY]) for (const x of [b.fromX, b.toX]) g.points.push(x, y, z);
  const face = (p: number, q: number, r: number, s: number, kind: number): void => {
    g.triangles.push(at + p, at + q, at + r, at + p, at + r, at + s);
    g.kinds.push(kind, kind);
  };
  face(4, 5, 7, 6, topKind);
  face(0, 2, 3, 1, sideKind);
  face(0, 1, 5, 4, sideKind);
  face(2, 6, 7, 3, sideKind);
  face(0, 4, 6, 2, sideKind);
  face(1, 3, 7, 5, sideKind);
  const corner = (i: number): Vector => [
    g.points[3 * (at + i)] ?? 0,
    g.points[3 * (at + i) + 1] ?? 0,
    g.points[3 * (at + i) + 2] ?? 0,
  ];
  for (const [p, q] of [
    [0, 1],
    [1, 3],
    [3, 2],
    [2, 0],
    [4, 5],
    [5, 7],
    [7, 6],
    [6, 4],
    [0, 4],
    [1, 5],
    [2, 6],
    [3, 7],
  ] as const)
    g.edges.push([corner(p), corner(q)]);
}

/** A closed box. */
export function makeBlock(block: Block): Thing {
  const g = empty();
  addBlock(g, block, TOP, FRONT);
  return finish(g);
}

/** A plate on four legs: table, stool, bench. */
export function makeTable(block: Block, thickness: number, leg: number): Thing {
  const g = empty();
  addBlock(g, { ...block, bottom: block.top - thickness }, TOP, FRONT);
  for (const x of [block.fromX + 0.02, block.toX - 0.02 - leg]) {
    for (const y of [block.fromY + 0.02, block.toY - 0.02 - leg]) {
      addBlock(
        g,
        { fromX: x, toX: x + leg, fromY: y, toY: y + leg, bottom: block.bottom, top: block.top - thickness },
        FRONT,
        FRONT,
      );
    }
  }
  return finish(g);
}

/** Two rails with their posts. */
export function makeBars(
  rails: readonly { readonly y: number; readonly z: number }[],
  fromX: number,
  toX: number,
  floor: number,
  radius: number,
): Thing {
  const g = empty();
  for (const rail of rails) {
    addTube(g, [fromX, rail.y, rail.z], [toX, rail.y, rail.z], radius);
    for (const x of [fromX + 0.06, toX - 0.06])
      addTube(g, [x, rail.y, floor], [x, rail.y, rail.z - radius * 0.6], radius * 0.8);
  }
  return finish(g);
}

/** Straight round rods: a cane with its handle, a rail with its posts. */
export function makeRods(rods: readonly Tube[]): Thing {
  const g = empty();
  for (const { from, to, radius } of rods) addTube(g, from, to, radius);
  return finish(g);
}

/** A firm roll, lying across the person or lengthwise under the trunk. */
export function makeRoll(centre: Vector, half: number, radius: number, lengthwise: boolean): Thing {
  const g = empty();
  const x = lengthwise ? half : 0;
  const y = lengthwise ? 0 : half;
  addTube(
    g,
    [centre[0] - x, centre[1] - y, centre[2]],
    [centre[0] + x, centre[1] + y, centre[2]],
    radius,
    20,
    TOP,
    FRONT,
  );
  return finish(g);
}

function addTube(g: Growing, from: Vector, to: Vector, radius: number, sides = 8, kind = BAR, endKind = BAR): void {
  g.tubes.push({ from, to, radius });
  const along: Vector = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const length = Math.hypot(...along);
  const d: Vector = [along[0] / length, along[1] / length, along[2] / length];
  const u: Vector = Math.abs(d[2]) > 0.5 ? [1, 0, 0] : [0, 0, 1];
  const v: Vector = [d[1] * u[2] - d[2] * u[1], d[2] * u[0] - d[0] * u[2], d[0] * u[1] - d[1] * u[0]];
  const at = g.points.length / 3;
  for (const end of [from, to]) {
    for (let k = 0; k < sides; k++) {
      const c = Math.cos((2 * Math.PI * k) / sides) * radius;
      const s = Math.sin((2 * Math.PI * k) / sides) * radius;
      g.points.push(end[0] + u[0] * c + v[0] * s, end[1] + u[1] * c + v[1] * s, end[2] + u[2] * c + v[2] * s);
    }
  }
  g.points.push(...from, ...to);
  if (kind === TOP) {
    // The round ends of a roll are drawn as many short edges.
    const corner = (i: number): Vector => [
      g.points[3 * (at + i)] ?? 0,
      g.points[3 * (at + i) + 1] ?? 0,
      g.points[3 * (at + i) + 2] ?? 0,
    ];
    for (let k = 0; k < sides; k++) {
      g.edges.push([corner(k), corner((k + 1) % sides)], [corner(sides + k), corner(sides + ((k + 1) % sides))]);
    }
  }
  for (let k = 0; k < sides; k++) {
    const n = (k + 1) % sides;
    g.triangles.push(at + k, at + n, at + sides + k, at + n, at + sides + n, at + sides + k);
    g.kinds.push(kind, kind);
    g.triangles.push(at + 2 * sides, at + n, at + k, at + 2 * sides + 1, at + sides + k, at + sides + n);
    g.kinds.push(endKind, endKind);
  }
}

/** A wedge: level edge low at one end, high at the other. */
export function makeWedge(block: Block, highAtFarX: boolean): Thing {
  const g = empty();
  addBlock(g, block, TOP, FRONT);
  // The low end's upper corners come down.
  for (let i = 4; i < 8; i++) {
    const far = i % 2 === 1;
    if (far !== highAtFarX) g.points[3 * i + 2] = block.bottom + 0.02;
  }
  const corner = (i: number): Vector => [g.points[3 * i] ?? 0, g.points[3 * i + 1] ?? 0, g.points[3 * i + 2] ?? 0];
  g.edges = (
    [
      [0, 1],
      [1, 3],
      [3, 2],
      [2, 0],
      [4, 5],
      [5, 7],
      [7, 6],
      [6, 4],
      [0, 4],
      [1, 5],
      [2, 6],
      [3, 7],
    ] as const
  ).map(([p, q]) => [corner(p), corner(q)]);
  return finish(g);
}

/** Share of the height, and of the breadth there: a filled pillow. */
const PILLOW_PROFILE = [
  [0.02, 0.88],
  [0.25, 0.98],
  [0.6, 1],
  [0.85, 0.94],
  [0.97, 0.84],
] as const;

/** A soft pillow with rounded edges. */
export function makePillow(block: Block): Thing {
  const mesh = emptyMesh();
  const x = (block.fromX + block.toX) / 2;
  const y = (block.fromY + block.toY) / 2;
  const binding = { first: 0, second: 0, share: 0 };
  const rings = PILLOW_PROFILE.map(
    ([up, wide]): Ring => ({
      at: [x, y, block.bottom + (block.top - block.bottom) * up],
      side: [0, ((block.toY - block.fromY) / 2) * wide, 0],
      front: [((block.toX - block.fromX) / 2) * wide, 0, 0],
      back: [(-(block.toX - block.fromX) / 2) * wide, 0, 0],
      exponent: 5,
      binding,
      kind: SOFT,
    }),
  );
  sweep(mesh, rings, 28, [
    [0, 0, 0],
    [0, 0, (block.top - block.bottom) * 0.03],
  ]);
  return {
    solid: {
      points: Float64Array.from(mesh.points),
      triangles: Uint16Array.from(mesh.triangles),
      triangleKinds: Uint8Array.from(mesh.kinds),
    },
    edges: [],
    tubes: [],
  };
}
