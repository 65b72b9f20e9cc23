/**
 * Two vocabularies that must never be mixed. Knowledge, plans and mechanics speak of the weak and the strong side;
 * left and right exist only once a person is known, and only at the edge.
 */
export type Side = "weak" | "strong";
export type BodySide = "left" | "right";

export const SIDES: readonly Side[] = ["weak", "strong"];

/** Which side of this person's body counts as the weak one; null where nothing tells the sides apart. */
export interface Laterality {
  readonly weak: BodySide | null;
}

export function otherSide(side: Side): Side {
  return side === "weak" ? "strong" : "weak";
}

export function otherBodySide(side: BodySide): BodySide {
  return side === "left" ? "right" : "left";
}

/**
 * The one place where weak or strong becomes left or right.
 * @returns the side of this person's body, or "either" where the person has no weaker side.
 */
export function bodySideOf(side: Side, person: Laterality): BodySide | "either" {
  if (person.weak === null) return "either";
  return side === "weak" ? person.weak : otherBodySide(person.weak);
}

/** The way back, for findings that arrive by body side. With no weaker side, the left is filed as the weak one. */
export function sideOf(bodySide: BodySide, person: Laterality): Side {
  return bodySide === (person.weak ?? "left") ? "weak" : "strong";
}
