import { add, scale, type Vector } from "../../quantity/vectors.ts";
import type { Side } from "../../quantity/sides.ts";
import { type Ring, sweepRounded } from "./mesh.ts";
import { type HandShape, kindFor, lateralOf, limb, originOf, rigid, type SkinContext } from "./context.ts";
import { FINGERS, PALM_RINGS } from "./shape.data.ts";

/** Bend of each finger joint from knuckle to tip [rad], and how far the thumb stands off and comes across the palm. */
const BENDS: Readonly<
  Record<
    HandShape,
    { readonly joints: readonly [number, number, number]; readonly thumbOut: number; readonly thumbAcross: number }
  >
> = {
  mitten: { joints: [0.03, 0.06, 0.03], thumbOut: 0.75, thumbAcross: 0.12 },
  flat: { joints: [0.07, 0.1, 0.06], thumbOut: 0.85, thumbAcross: 0.05 },
  relaxed: { joints: [0.3, 0.4, 0.25], thumbOut: 0.45, thumbAcross: 0.5 },
  grip: { joints: [0.75, 1.05, 0.6], thumbOut: 0.75, thumbAcross: 0.95 },
  fist: { joints: [1.45, 1.65, 1.0], thumbOut: 0.35, thumbAcross: 1.15 },
};

/** The hand in the standing body: fingers down, palm forward, thumb away from the trunk. */
export function addHand(context: SkinContext, side: Side): void {
  const { mesh, mm, girth, look } = context;
  const shape = look.hands[side];
  const out = lateralOf(context, side);
  const flesh = mm * girth ** 0.35;
  const wrist = originOf(context, limb("hand", side));
  const binding = rigid(context, limb("hand", side));
  const kind = kindFor(context, "hand", "skin", side, { hatched: true, hand: true });
  const palm = PALM_RINGS.map(
    (row): Ring => ({
      at: [wrist[0], wrist[1] + row.thumbward * out * mm, wrist[2] - row.down * mm],
      side: [0, row.half * flesh, 0],
      front: [row.palm * flesh, 0, 0],
      back: [-row.back * flesh, 0, 0],
      exponent: 2.6,
      binding,
      kind,
    }),
  );
  sweepRounded(mesh, palm, 12, [
    [0, 0, 16 * mm],
    [0, 0, -10 * mm],
  ]);
  const bends = BENDS[shape];
  if (shape === "mitten" || shape === "relaxed") {
    const bend = bends.joints;
    addDigit(context, side, { thumbward: 0, down: 92, length: 90, radius: 10, spread: 0 }, bend, 3.6, kind);
  } else {
    FINGERS.forEach((finger, k) => {
      const each = kindFor(context, `finger${k}`, "skin", side, { hatched: true, hand: true });
      addDigit(context, side, shape === "fist" ? { ...finger, spread: 0 } : finger, bends.joints, 1, each);
    });
  }
  addThumb(context, side, bends.thumbOut, bends.thumbAcross);
}

function addDigit(
  context: SkinContext,
  side: Side,
  finger: { thumbward: number; down: number; length: number; radius: number; spread: number },
  bends: readonly [number, number, number],
  widen: number,
  kind: number,
): void {
  const { mesh, mm, girth } = context;
  const flesh = mm * girth ** 0.35;
  const out = lateralOf(context, side);
  const wrist = originOf(context, limb("hand", side));
  const lengthScale = context.body.size.sex === "female" ? 0.92 : 1;
  const radius = finger.radius * flesh;
  let at: Vector = [
    wrist[0] + 6 * flesh,
    wrist[1] + finger.thumbward * out * flesh,
    wrist[2] - finger.down * mm * lengthScale,
  ];
  let angle = 0;
  const shares = [0.46, 0.3, 0.24] as const;
  const rings: Ring[] = [];
  const splay = (finger.spread * Math.PI) / 180;
  const push = (taper: number, turn: number): void => {
    rings.push({
      at,
      side: [0, radius * widen * taper, 0],
      front: scale([Math.cos(turn), 0, Math.sin(turn)], radius * taper),
      back: scale([-Math.cos(turn), 0, -Math.sin(turn)], radius * taper),
      exponent: widen > 1 ? 2.6 : 2.1,
      binding: rigid(context, limb("hand", side)),
      kind,
    });
  };
  push(1.05, 0);
  shares.forEach((share, k) => {
    const before = angle;
    angle += bends[k] ?? 0;
    if (k > 0) push(widen > 1 ? 1 - 0.12 * k : 0.98 - 0.04 * k, (before + angle) / 2);
    const step = finger.length * share * mm * lengthScale;
    at = add(at, [Math.sin(angle) * step, Math.sin(splay) * out * step, -Math.cos(angle) * step]);
  });
  push(widen > 1 ? 0.55 : 0.8, angle);
  const tip: Vector = scale([Math.sin(angle), 0, -Math.cos(angle)], radius * 0.8);
  sweepRounded(mesh, rings, widen > 1 ? 10 : 8, [[0, 0, radius], tip]);
}

function addThumb(context: SkinContext, side: Side, outward: number, across: number): void {
  const { mesh, mm, girth } = context;
  const flesh = mm * girth ** 0.35;
  const out = lateralOf(context, side);
  const wrist = originOf(context, limb("hand", side));
  const kind = kindFor(context, "thumb", "skin", side, { hatched: true, hand: true });
  const binding = rigid(context, limb("hand", side));
  const root: Vector = [wrist[0] + 5 * flesh, wrist[1] + 20 * out * flesh, wrist[2] - 26 * mm];
  const direction = (spread: number): Vector => {
    const c = Math.cos(spread);
    return [Math.sin(across) * c, Math.sin(spread) * out * Math.cos(across), -c * Math.cos(across)];
  };
  const first = direction(outward);
  const second = direction(outward * 0.45);
  const knuckle = add(root, scale(first, 58 * mm));
  const end = add(knuckle, scale(second, 34 * mm));
  const ring = (at: Vector, along: Vector, radius: number): Ring => {
    const sideways: Vector = [0, -along[2], along[1]];
    const length = Math.hypot(sideways[1], sideways[2]) || 1;
    const s: Vector = [0, sideways[1] / length, sideways[2] / length];
    const f: Vector = [s[1] * along[2] - s[2] * along[1], s[2] * along[0], -s[1] * along[0]];
    return {
      at,
      side: scale(s, radius * flesh),
      front: scale(f, radius * flesh),
      back: scale(f, -radius * flesh),
      exponent: 2,
      binding,
      kind,
    };
  };
  sweepRounded(
    mesh,
    [
      ring(root, first, 17),
      ring(add(root, scale(first, 34 * mm)), first, 13),
      ring(knuckle, first, 10.5),
      ring(end, second, 9),
    ],
    8,
    [scale(first, -14 * flesh), scale(second, 9 * flesh)],
  );
}
