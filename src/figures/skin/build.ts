import type { Body } from "../../mechanics/body/body.ts";
import { type MidPatch, type PairedPatch, type PatchId, patchOn } from "../../mechanics/body/patches.ts";
import { SIDES } from "../../quantity/sides.ts";
import type { Look, SkinContext } from "./context.ts";
import { startSkin } from "./context.ts";
import { addHand } from "./hand.ts";
import { addHead } from "./head.ts";
import type { SurfaceKind } from "./kinds.ts";
import { addLimbs } from "./limbs.ts";
import { addTrunk } from "./trunk.ts";

/** The skin of one body with one look, ready to be posed: made once. */
export interface Skin {
  readonly body: Body;
  readonly look: Look;
  /** Kinds of this skin, numbered from one. */
  readonly kinds: readonly (SurfaceKind | null)[];
  /** For every point: segment and place in it, twice, and the share of the second [m]. */
  readonly firstSegment: Uint8Array;
  readonly secondSegment: Uint8Array;
  readonly share: Float64Array;
  readonly inFirst: Float64Array;
  readonly inSecond: Float64Array;
  readonly triangles: Uint16Array;
  readonly triangleKinds: Uint8Array;
}

/** Builds the skin of a body. */
export function buildSkin(body: Body, look: Look): Skin {
  const context = startSkin(body, look);
  addTrunk(context);
  addHead(context);
  addLimbs(context);
  for (const side of SIDES) addHand(context, side);
  fillContactBalls(context);
  return freeze(context);
}

/** Patches whose balls the skin has to reach on every build; the others lie well inside it or are judged where they rest. */
const FILLED_MIDDLE: readonly MidPatch[] = ["chestFront", "lowBack"];
const FILLED_PAIRS: readonly PairedPatch[] = [
  "shoulderBlade",
  "buttock",
  "hipSide",
  "shoulderSide",
  "elbow",
  "forearm",
  "hand",
  "thighBack",
  "thighFront",
  "knee",
  "shin",
  "calf",
  "ankleSide",
  "heel",
  "foot",
  "forefoot",
  "instep",
  "toes",
];

/** Skin that lies inside a contact ball is brought out to it, so that what touches in the computation touches in the drawing. */
function fillContactBalls(context: SkinContext): void {
  const { body, mesh, origins } = context;
  const ids: readonly PatchId[] = [
    ...FILLED_MIDDLE,
    ...FILLED_PAIRS.flatMap((name) => SIDES.map((side): PatchId => `${name}.${side}`)),
  ];
  for (const id of ids) {
    const patch = patchOn(body, id);
    const segment = body.segmentIndex[patch.segment];
    const origin = origins[segment] ?? [0, 0, 0];
    for (const ball of patch.balls) {
      if (ball.radius < 0.02) continue;
      const reach = ball.radius + 0.001;
      const cx = origin[0] + ball.centre[0];
      const cy = origin[1] + ball.centre[1];
      const cz = origin[2] + ball.centre[2];
      mesh.bindings.forEach((binding, i) => {
        const rides = binding.share < 0.5 ? binding.first : binding.second;
        if (rides !== segment) return;
        const x = (mesh.points[3 * i] ?? 0) - cx;
        const y = (mesh.points[3 * i + 1] ?? 0) - cy;
        const z = (mesh.points[3 * i + 2] ?? 0) - cz;
        const distance = Math.hypot(x, y, z);
        if (distance >= reach || distance < 0.35 * reach) return;
        // A shoulder is only as round as the ball on its outer side.
        if (patch.id.startsWith("shoulderSide") && y * Math.sign(cy) < 0.6 * distance) return;
        const k = reach / distance;
        mesh.points[3 * i] = cx + x * k;
        mesh.points[3 * i + 1] = cy + y * k;
        mesh.points[3 * i + 2] = cz + z * k;
      });
    }
  }
}

function freeze(context: SkinContext): Skin {
  const { body, look, mesh, kinds, origins } = context;
  const count = mesh.bindings.length;
  const skin = {
    body,
    look,
    kinds: kinds.rows,
    firstSegment: new Uint8Array(count),
    secondSegment: new Uint8Array(count),
    share: new Float64Array(count),
    inFirst: new Float64Array(3 * count),
    inSecond: new Float64Array(3 * count),
    triangles: Uint16Array.from(mesh.triangles),
    triangleKinds: Uint8Array.from(mesh.kinds),
  };
  mesh.bindings.forEach((binding, i) => {
    skin.firstSegment[i] = binding.first;
    skin.secondSegment[i] = binding.second;
    skin.share[i] = binding.share;
    for (let k = 0; k < 3; k++) {
      const at = mesh.points[3 * i + k] ?? 0;
      skin.inFirst[3 * i + k] = at - (origins[binding.first]?.[k] ?? 0);
      skin.inSecond[3 * i + k] = at - (origins[binding.second]?.[k] ?? 0);
    }
  });
  return skin;
}
