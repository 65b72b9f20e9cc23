import type { Side } from "../../quantity/sides.ts";

/** Colour areas of the drawing; what colour each has is the theme's business. */
export const TONES = [
  "skin",
  "shirt",
  "shorts",
  "hair",
  "whiteHair",
  "shoe",
  "sole",
  "helperSkin",
  "helperShirt",
  "helperTrousers",
  "helperHair",
  "helperShoe",
  "top",
  "front",
  "bar",
] as const;
export type Tone = (typeof TONES)[number];
export type Owner = "person" | "helper" | "thing";

/** A kind of surface in the picture: whose it is, which part, in what tone, hatched or not. */
export interface SurfaceKind {
  readonly owner: Owner;
  /** Name of the limb or part, unique with the owner. */
  readonly part: string;
  readonly side: Side | null;
  readonly tone: Tone;
  readonly hatched: boolean;
  /** Folds inside this part must be this many times deeper to be drawn. */
  readonly quiet: number;
  readonly hand: boolean;
}

/** Collects the kinds of a picture and numbers them from one; zero is the background. */
export class KindTable {
  readonly rows: (SurfaceKind | null)[] = [null];
  private readonly known = new Map<string, number>();

  number(kind: SurfaceKind): number {
    const key = `${kind.owner}/${kind.part}/${kind.side}/${kind.tone}/${kind.hatched}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    this.rows.push(kind);
    this.known.set(key, this.rows.length - 1);
    return this.rows.length - 1;
  }
}
