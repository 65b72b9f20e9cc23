import { add, rotate, type Rotation, type Vector } from "../../quantity/vectors.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import type { LimbSegment, SegmentId } from "../../mechanics/body/names.ts";
import { neutralConfiguration, placeFrames } from "../../mechanics/pose/kinematics.ts";
import { KindTable, type Owner, type SurfaceKind, type Tone } from "./kinds.ts";
import { type Binding, emptyMesh, type Mesh } from "./mesh.ts";

/** How a hand is held; a mitten is a hand whose fingers are not told apart. */
export type HandShape = "mitten" | "flat" | "grip" | "fist" | "relaxed";

/** What a figure looks like besides its build. */
export interface Look {
  readonly owner: Exclude<Owner, "thing">;
  readonly hair: "short" | "bun" | "bald";
  /** White hair, as an older person is drawn. */
  readonly older: boolean;
  readonly footwear: "bare" | "shoes";
  readonly hands: { readonly weak: HandShape; readonly strong: HandShape };
  /** Hatch the weak limbs. */
  readonly hatch: boolean;
}

/** What every maker of a part needs. */
export interface SkinContext {
  readonly body: Body;
  readonly look: Look;
  readonly mesh: Mesh;
  readonly kinds: KindTable;
  /** Metres of one table millimetre at this stature. */
  readonly mm: number;
  readonly girth: number;
  readonly origins: readonly Vector[];
}

export function startSkin(body: Body, look: Look): SkinContext {
  return {
    body,
    look,
    mesh: emptyMesh(),
    kinds: new KindTable(),
    mm: body.stature / 1000,
    girth: body.girth,
    origins: placeFrames(body, neutralConfiguration(body)).positions,
  };
}

export const originOf = (context: SkinContext, id: SegmentId): Vector =>
  context.origins[context.body.segmentIndex[id]] ?? [0, 0, 0];
export const lengthOf = (context: SkinContext, id: SegmentId): number =>
  context.body.segments[context.body.segmentIndex[id]]?.length ?? 0;
export const lateralOf = (context: SkinContext, side: Side): number =>
  side === "weak" ? context.body.weakAt : -context.body.weakAt;
export const limb = (name: LimbSegment, side: Side): SegmentId => `${name}.${side}`;
export const rigid = (context: SkinContext, id: SegmentId): Binding => ({
  first: context.body.segmentIndex[id],
  second: context.body.segmentIndex[id],
  share: 0,
});
export function between(context: SkinContext, first: SegmentId, second: SegmentId, share: number): Binding {
  return {
    first: context.body.segmentIndex[first],
    second: context.body.segmentIndex[second],
    share: Math.min(1, Math.max(0, share)),
  };
}

/** A kind for this figure: tones of the person become the helper's where the figure is the helper. */
export function kindFor(
  context: SkinContext,
  part: string,
  tone: Tone,
  side: Side | null = null,
  extra: Partial<Pick<SurfaceKind, "hatched" | "quiet" | "hand">> = {},
): number {
  const helperTones: Partial<Record<Tone, Tone>> = {
    skin: "helperSkin",
    shirt: "helperShirt",
    shorts: "helperTrousers",
    hair: "helperHair",
    shoe: "helperShoe",
    sole: "helperShoe",
  };
  const helper = context.look.owner === "helper";
  return context.kinds.number({
    owner: context.look.owner,
    part,
    side,
    tone: helper ? (helperTones[tone] ?? tone) : tone,
    hatched: (extra.hatched ?? false) && context.look.hatch && side === "weak",
    quiet: extra.quiet ?? 1,
    hand: extra.hand ?? false,
  });
}

/** A point given in a segment's own axes, in the room of the standing body. */
export const inStanding = (context: SkinContext, id: SegmentId, point: Vector, turn?: Rotation): Vector =>
  add(originOf(context, id), turn === undefined ? point : rotate(turn, point));
