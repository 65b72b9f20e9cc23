import type { Vector } from "../../quantity/vectors.ts";
import { SIDES } from "../../quantity/sides.ts";
import { addEllipsoid, type Binding, type Ring, sweep, sweepRounded } from "./mesh.ts";
import { between, kindFor, lateralOf, limb, originOf, rigid, type SkinContext } from "./context.ts";
import { BELLY, SHIRT_HEM_MM, TRUNK_RINGS } from "./shape.data.ts";

interface TrunkRow {
  readonly up: number;
  readonly half: number;
  readonly front: number;
  readonly back: number;
}

const smooth = (t: number): number => {
  const x = Math.min(1, Math.max(0, t));
  return x * x * (3 - 2 * x);
};

/** Pelvis to neck: one closed part bending over the three trunk joints, with buttocks, breast and shoulder slopes. */
export function addTrunk(context: SkinContext): void {
  const { mesh, mm, girth } = context;
  const sex = context.body.size.sex;
  const abdomen = originOf(context, "abdomen")[2];
  const thorax = originOf(context, "thorax")[2];
  const neck = originOf(context, "head")[2];
  const table: readonly TrunkRow[] = TRUNK_RINGS[sex];
  const top = table[table.length - 1]?.up ?? 590;
  const shirt = kindFor(context, "trunk", "shirt", null, { quiet: 2.2 });
  const shorts = kindFor(context, "trunk", "shorts", null, { quiet: 2.2 });
  const bindingAt = (z: number): Binding => {
    const low = smooth((z - abdomen) / 0.1 + 0.5);
    const high = smooth((z - thorax) / 0.1 + 0.5);
    return z < (abdomen + thorax) / 2
      ? between(context, "pelvis", "abdomen", low)
      : between(context, "abdomen", "thorax", high);
  };
  // The table's neck ends at the reference neck; the trunk is stretched to this body's.
  const stretch = (neck - 0.005) / (top * mm);
  const rows = withHem(table);
  const rings = rows.map((row): Ring => {
    const belly = Math.max(0, girth - 1) * BELLY[sex] * Math.exp(-(((row.up - BELLY.middle) / BELLY.spread) ** 2));
    const thin = Math.min(1, row.up > 525 ? 0.35 / 0.95 + (1 - 0.35 / 0.95) * ((590 - row.up) / 65) : 1);
    const breadth = mm * girth ** (0.95 * thin);
    const depth = mm * girth ** (1.25 * thin);
    const z = row.up * mm * (row.up > 330 ? 1 + (stretch - 1) * smooth((row.up - 330) / 260) : 1);
    return {
      at: [0, 0, z],
      side: [0, row.half * breadth, 0],
      front: [row.front * depth + belly * mm, 0, 0],
      back: [-row.back * depth, 0, 0],
      exponent: row.up > 500 || row.up < -30 ? 2.1 : 2.45,
      binding: bindingAt(z),
      kind: row.up < SHIRT_HEM_MM ? shorts : shirt,
    };
  });
  sweep(mesh, rings, 22, [
    [0, 0, -14 * mm],
    [0, 0, 2 * mm],
  ]);
  for (const side of SIDES) {
    const out = lateralOf(context, side);
    addEllipsoid(
      mesh,
      [-40 * mm * girth, 75 * mm * out * girth ** 0.5, -4 * mm],
      [78 * mm * girth, 80 * mm * girth ** 0.85, 92 * mm * girth ** 0.8],
      between(context, "pelvis", limb("thigh", side), 0.3),
      kindFor(context, "trunk", "shorts", null, { quiet: 2.2 }),
      14,
      9,
    );
    addSlope(context, out, side);
    if (sex === "female") {
      addEllipsoid(
        mesh,
        [72 * mm * girth ** 1.25, 68 * mm * out * girth ** 0.9, thorax + 18 * mm],
        [48 * mm * girth, 56 * mm * girth ** 0.9, 56 * mm * girth ** 0.8],
        rigid(context, "thorax"),
        shirt,
        12,
        8,
      );
    }
  }
}

function withHem(table: readonly TrunkRow[]): TrunkRow[] {
  const above = table.findIndex((row) => row.up > SHIRT_HEM_MM);
  const low = table[above - 1];
  const high = table[above];
  if (low === undefined || high === undefined) return [...table];
  const t = (SHIRT_HEM_MM - low.up) / (high.up - low.up);
  const mix = (a: number, b: number): number => a + (b - a) * t;
  const hem = {
    up: SHIRT_HEM_MM,
    half: mix(low.half, high.half),
    front: mix(low.front, high.front),
    back: mix(low.back, high.back),
  };
  return [...table.slice(0, above), hem, ...table.slice(above)];
}

/** The slope from neck to shoulder, and the flesh before and behind the armpit, inside the trunk at one end. */
function addSlope(context: SkinContext, out: number, side: "weak" | "strong"): void {
  const { mesh, mm, girth } = context;
  const shirt = kindFor(context, "trunk", "shirt", null, { quiet: 2.2 });
  const shoulder = originOf(context, limb("upperArm", side));
  const neck = originOf(context, "head");
  const thorax = originOf(context, "thorax");
  const fat = girth ** 0.85;
  const inner = rigid(context, "thorax");
  const outer = rigid(context, limb("girdle", side));
  const rope = (from: Vector, to: Vector, r0: number, r1: number, bindings: readonly [Binding, Binding]): void => {
    const along: Vector = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
    const length = Math.hypot(...along);
    const flat = Math.hypot(along[1], along[2]);
    const across: Vector = [0, -along[2] / flat, along[1] / flat];
    const ring = (t: number): Ring => {
      const r = (r0 + (r1 - r0) * t) * mm * fat;
      return {
        at: [from[0] + along[0] * t, from[1] + along[1] * t, from[2] + along[2] * t],
        side: [0, across[1] * r, across[2] * r],
        front: [r, 0, 0],
        back: [-r, 0, 0],
        exponent: 2,
        binding: t < 0.5 ? bindings[0] : bindings[1],
        kind: shirt,
      };
    };
    const first = ring(0);
    const last = ring(1);
    const bulge: Vector = [
      (along[0] / length) * r1 * mm * fat,
      (along[1] / length) * r1 * mm * fat,
      (along[2] / length) * r1 * mm * fat,
    ];
    const against: Vector = [-bulge[0], -bulge[1], -bulge[2]];
    sweepRounded(mesh, [first, ring(0.45), ring(0.55), last], 10, [against, bulge]);
  };
  const blend = between(context, "thorax", limb("girdle", side), 0.6);
  rope(
    [-14 * mm, out * 30 * mm, neck[2] - 42 * mm],
    [shoulder[0] - 4 * mm, shoulder[1] - out * 18 * mm, shoulder[2] + 4 * mm],
    36,
    46,
    [inner, outer],
  );
  const arm = between(context, limb("girdle", side), limb("upperArm", side), 0.35);
  rope(
    [30 * mm, out * 70 * mm, thorax[2] + 60 * mm],
    [14 * mm, shoulder[1] - out * 14 * mm, shoulder[2] - 22 * mm],
    52,
    44,
    [blend, arm],
  );
  rope(
    [-46 * mm, out * 62 * mm, thorax[2] + 96 * mm],
    [-10 * mm, shoulder[1] - out * 8 * mm, shoulder[2] - 4 * mm],
    50,
    50,
    [blend, arm],
  );
  rope(
    [-38 * mm, out * 78 * mm, thorax[2] + 40 * mm],
    [-14 * mm, shoulder[1] - out * 14 * mm, shoulder[2] - 26 * mm],
    52,
    44,
    [blend, arm],
  );
}
