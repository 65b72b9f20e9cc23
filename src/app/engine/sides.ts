import type { Towards } from "../../mechanics/reach/outline.ts";
import { type BodySide, bodySideOf, type Laterality, type Side } from "../../quantity/sides.ts";

/** A side in an answer. */
export type AnswerSide = BodySide | "both" | "either";

/** Weak or strong of a rung or guard, as the side of this person's body. */
export function answerSide(side: Side | "both" | "eitherSide", person: Laterality): AnswerSide {
  if (side === "both") return "both";
  if (side === "eitherSide") return "either";
  return bodySideOf(side, person);
}

/** Side of a joint; null for the trunk. */
export function jointSide(side: Side | null, person: Laterality): BodySide | "either" | null {
  return side === null ? null : bodySideOf(side, person);
}

/** A direction seen from the person, by the side of the body: forwardWeak of someone weak on the left is forwardLeft. */
export function answerDirection(towards: Towards, person: Laterality) {
  if (towards === "forward" || towards === "back") return towards;
  const side: Side = towards.toLowerCase().endsWith("weak") ? "weak" : "strong";
  const body = bodySideOf(side, person);
  if (towards === "weak" || towards === "strong") return body;
  const ahead = towards.startsWith("forward");
  if (body === "either") return ahead ? "forwardEither" : "backEither";
  if (body === "left") return ahead ? "forwardLeft" : "backLeft";
  return ahead ? "forwardRight" : "backRight";
}

/** A limb that leaves its support. */
export function answerLimb(limb: `${"arm" | "leg"}.${Side}` | null, person: Laterality) {
  if (limb === null) return null;
  const [part, side] = limb.split(".") as ["arm" | "leg", Side];
  return `${part}.${bodySideOf(side, person)}` as const;
}

/** Numbers are rounded for the answer: shares to a hundredth. */
export const round2 = (value: number): number => Math.round(value * 100) / 100;
export const round3 = (value: number): number => Math.round(value * 1000) / 1000;
