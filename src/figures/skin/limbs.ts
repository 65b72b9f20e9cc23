import type { Vector } from "../../quantity/vectors.ts";
import { SIDES, type Side } from "../../quantity/sides.ts";
import { type Ring, sweep, sweepRounded } from "./mesh.ts";
import { kindFor, lateralOf, lengthOf, limb, originOf, rigid, type SkinContext } from "./context.ts";
import { FOOT_RINGS, LIMB_RADII, TOE_RINGS } from "./shape.data.ts";

type LongPart = keyof typeof LIMB_RADII;
interface RadiusRow {
  readonly along: number;
  readonly out: number;
  readonly front: number;
  readonly back: number;
}

/** Where the hatch of a weak limb begins, where the cloth ends, as shares of the length; cloth thickness [mm]. */
const CLOTH = {
  person: { upperArm: 0.6, forearm: 0, thigh: 0.52, shank: 0 },
  helper: { upperArm: 0.7, forearm: 0, thigh: 1.01, shank: 0.96 },
} as const;
const HATCH_FROM_MM: Readonly<Record<LongPart, number>> = { upperArm: 35, forearm: -1, thigh: 100, shank: -1 };
const CLOTH_THICKNESS_MM = 4;
const GROWTH: Readonly<Record<LongPart, readonly [number, number]>> = {
  upperArm: [0.85, 0.6],
  forearm: [0.6, 0.35],
  thigh: [0.85, 0.6],
  shank: [0.6, 0.35],
};

export function addLimbs(context: SkinContext): void {
  for (const side of SIDES) {
    addLong(context, "upperArm", side);
    addLong(context, "forearm", side);
    addLong(context, "thigh", side);
    addLong(context, "shank", side);
    addFoot(context, side);
  }
}

function addLong(context: SkinContext, name: LongPart, side: Side): void {
  const { mesh, mm, girth, look } = context;
  const id = limb(name, side);
  const length = lengthOf(context, id);
  const origin = originOf(context, id);
  const rows: readonly RadiusRow[] = LIMB_RADII[name];
  const hem = CLOTH[look.owner][name];
  const hatchFrom = (HATCH_FROM_MM[name] * mm) / length;
  const cloth = name === "upperArm" || name === "forearm" ? "shirt" : "shorts";
  const stations = [
    ...new Set([
      ...rows.map((row) => row.along),
      ...(hem > 0 && hem < 1 ? [hem - 0.0005, hem + 0.0005] : []),
      ...(hatchFrom > 0 ? [hatchFrom] : []),
    ]),
  ].sort((a, b) => a - b);
  const slim = context.body.size.sex === "female" && (name === "upperArm" || name === "forearm") ? 0.93 : 1;
  const [near, far] = GROWTH[name];
  const rings = stations.map((along): Ring => {
    const at = sample(rows, along);
    // Flesh in the middle of a limb follows the build; joints do so less.
    const power =
      name === "shank" || name === "forearm"
        ? near + (far - near) * along + 0.25 * Math.sin(Math.PI * Math.min(1, along * 1.4)) ** 2 * (along < 0.7 ? 1 : 0)
        : near + ((far - near) * Math.max(0, along - 0.4)) / 0.6;
    const covered = along < hem;
    const flesh = mm * girth ** power * (along > 0.001 && along < 0.95 ? slim : 1);
    const thick = covered ? CLOTH_THICKNESS_MM * mm : 0;
    return {
      at: [origin[0], origin[1], origin[2] - along * length],
      side: [0, at.out * flesh + thick, 0],
      front: [at.front * flesh + thick, 0, 0],
      back: [-at.back * flesh - thick, 0, 0],
      exponent: 2,
      binding: rigid(context, id),
      kind: kindFor(context, name, covered ? cloth : "skin", side, { hatched: along >= hatchFrom - 1e-9 }),
    };
  });
  const first = rings[0];
  const last = rings[rings.length - 1];
  if (first === undefined || last === undefined) return;
  const bulge = (ring: Ring, sign: number, share: number): Vector => [0, 0, sign * ring.side[1] * share];
  const topBulge = bulge(first, 1, name === "thigh" ? 0.75 : name === "upperArm" ? 0.88 : 1);
  const lowBulge = bulge(last, -1, name === "forearm" ? 0.5 : 1);
  sweepRounded(mesh, rings, name === "thigh" ? 16 : 12, [topBulge, lowBulge]);
}

function sample(rows: readonly RadiusRow[], along: number): RadiusRow {
  const k = rows.findIndex((row) => row.along >= along);
  const high = rows[k < 0 ? rows.length - 1 : k];
  const low = rows[Math.max(0, (k < 0 ? rows.length : k) - 1)];
  if (high === undefined || low === undefined) return { along, out: 0, front: 0, back: 0 };
  const t = high.along === low.along ? 0 : (along - low.along) / (high.along - low.along);
  const mix = (a: number, b: number): number => a + (b - a) * t;
  return { along, out: mix(low.out, high.out), front: mix(low.front, high.front), back: mix(low.back, high.back) };
}

function addFoot(context: SkinContext, side: Side): void {
  const { mesh, mm, girth, look } = context;
  const out = lateralOf(context, side);
  const shoe = look.footwear === "shoes";
  const extra = shoe ? 4 : 0;
  const tone = shoe ? "shoe" : "skin";
  const wide = mm * girth ** 0.35;
  const ankle = originOf(context, limb("foot", side));
  const toes = originOf(context, limb("toes", side));
  const kind = kindFor(context, "foot", tone, side, { hatched: !shoe });
  const ring = (
    row: { ahead: number; top: number; bottom: number; half: number; mid: number },
    from: Vector,
    segment: "foot" | "toes",
    high: number,
    low: number,
  ): Ring => {
    const top = high;
    const bottom = low;
    const middle = bottom + (top - bottom) * 0.4;
    return {
      at: [from[0] + row.ahead * mm, from[1] + row.mid * mm * -out, from[2] + middle],
      side: [0, (row.half + extra) * wide, 0],
      front: [0, 0, top - middle],
      back: [0, 0, bottom - middle],
      exponent: 2.5,
      binding: rigid(context, limb(segment, side)),
      kind,
    };
  };
  const rings = [
    ...FOOT_RINGS.map((row) => ring(row, ankle, "foot", (row.top + extra) * mm, row.bottom * mm)),
    ...TOE_RINGS.map((row) => ring(row, toes, "toes", (row.top + extra) * mm, row.bottom * mm)),
  ];
  sweep(mesh, rings, 14, [
    [-5 * mm, 0, 0],
    [(7 + extra) * mm, 0, 0],
  ]);
}
