import { guardSignsOf } from "../practice/precautions/effects.ts";
import type { HelperPose } from "../practice/codes.ts";
import type { PositionId } from "../practice/codes.ts";
import type { Side } from "../quantity/sides.ts";
import type { Findings } from "./findings.ts";

/** Directions seen from the person, in weak and strong words. */
export const QUADRANTS = [
  "forward",
  "forwardWeak",
  "weak",
  "backWeak",
  "back",
  "backStrong",
  "strong",
  "forwardStrong",
] as const;
export type Quadrant = (typeof QUADRANTS)[number];

/** Which fall is guarded, by whom it was decided, and what the outline says besides. */
export interface Guard {
  readonly side: Side | "both";
  readonly quadrant: Quadrant;
  readonly helperPose: HelperPose;
  readonly decidedBy: "sign" | "seen" | "rule" | "outline";
  readonly because: string;
}

/** Lying flat nobody can fall; near the edge of a raised mat is another matter and stands in the texts. */
const CANNOT_FALL: readonly PositionId[] = [
  "supine",
  "hook-lying",
  "side-lying-on-weak-side",
  "side-lying-on-strong-side",
  "prone",
];

const SEEN: Readonly<Record<NonNullable<Findings["signs"]["fallSeen"]>, Quadrant>> = {
  weak: "weak",
  strong: "strong",
  forward: "forward",
  back: "back",
  backAndWeak: "backWeak",
  forwardAndWeak: "forwardWeak",
};

/** Where a fall usually goes by what is taught, position by position (common practice). */
const TAUGHT: Readonly<Partial<Record<PositionId, Quadrant>>> = {
  "long-sitting": "backWeak",
  "short-sitting": "backWeak",
  "forearms-on-table-sitting": "weak",
  "bed-sitting": "backWeak",
  "hands-and-knees": "forwardWeak",
  "prone-on-elbows": "weak",
  "tall-kneeling": "forwardWeak",
  "tall-kneeling-at-bench": "weak",
  "half-kneeling-weak-forward": "weak",
  "half-kneeling-strong-forward": "weak",
  standing: "backWeak",
  "standing-in-bars": "weak",
  "forearms-on-table-standing": "backWeak",
};

/**
 * Which side is guarded. Order of authority: a special sign (pushing, neglect, fainting, impulsive, seizure), then the
 * fall direction seen, then the taught rule (the weak side), then the computed outline. Where the outline disagrees with
 * the rule the helper stays on the weak side and the sentence says so.
 * @param outline direction in which the weight has least to go, or null where it was not computed
 * @source common practice
 */
export function chooseGuard(
  findings: Findings,
  position: PositionId,
  helperPose: HelperPose,
  outline: Quadrant | null,
): Guard | null {
  if (CANNOT_FALL.includes(position)) return null;
  const sign = signOf(findings);
  const taught = TAUGHT[position] ?? "weak";
  if (sign !== null)
    return {
      side: sign.side === "all" ? "both" : "weak",
      quadrant: sign.side === "all" ? taught : quadrantOfSign(taught),
      helperPose,
      decidedBy: "sign",
      because: sign.because,
    };
  const seen = findings.signs.fallSeen;
  if (seen !== null) {
    const quadrant = SEEN[seen];
    return {
      side: sideOfQuadrant(quadrant) ?? "weak",
      quadrant,
      helperPose,
      decidedBy: "seen",
      because: `A fall was seen going ${wordsOf(quadrant)}.`,
    };
  }
  if (findings.pattern !== "oneSide") {
    if (outline === null)
      return {
        side: "both",
        quadrant: "back",
        helperPose,
        decidedBy: "rule",
        because: "Neither side is known to be the weaker one.",
      };
    return {
      side: sideOfQuadrant(outline) ?? "both",
      quadrant: outline,
      helperPose,
      decidedBy: "outline",
      because: `The weight has least to go ${wordsOf(outline)}.`,
    };
  }
  const agrees = outline === null || sideOfQuadrant(outline) !== "strong";
  return {
    side: "weak",
    quadrant: taught,
    helperPose,
    decidedBy: "rule",
    because: agrees
      ? "Taught rule: guard the weak side."
      : `Taught rule: guard the weak side. By the outline the weight has least to go ${wordsOf(outline)}; stay at the weak side all the same.`,
  };
}

function signOf(findings: Findings): { readonly side: "weak" | "all"; readonly because: string } | null {
  const coded = guardSignsOf(findings.precautions)[0];
  if (findings.signs.pushing === "marked" || findings.signs.pushing === "mild") {
    const own = guardSignsOf([{ code: "pusher" }])[0];
    if (own !== undefined) return own;
  }
  if (coded !== undefined) return coded;
  if (findings.signs.neglect === "marked" || findings.signs.neglect === "mild")
    return guardSignsOf([{ code: "neglect" }])[0] ?? null;
  if (findings.signs.faints === true) return { side: "all", because: "Faints: be ready to lower from any side." };
  if (findings.signs.impulsive === true) return guardSignsOf([{ code: "impulsivity" }])[0] ?? null;
  return null;
}

const quadrantOfSign = (taught: Quadrant): Quadrant => (sideOfQuadrant(taught) === "weak" ? taught : "weak");

export function sideOfQuadrant(quadrant: Quadrant): Side | null {
  if (quadrant === "weak" || quadrant === "forwardWeak" || quadrant === "backWeak") return "weak";
  if (quadrant === "strong" || quadrant === "forwardStrong" || quadrant === "backStrong") return "strong";
  return null;
}

export function wordsOf(quadrant: Quadrant): string {
  const words: Readonly<Record<Quadrant, string>> = {
    forward: "forward",
    back: "back",
    weak: "to the weak side",
    strong: "to the strong side",
    forwardWeak: "forward and to the weak side",
    backWeak: "back and to the weak side",
    forwardStrong: "forward and to the strong side",
    backStrong: "back and to the strong side",
  };
  return words[quadrant];
}

/** The direction word for a displacement [m]: forward, and toward the weak side. */
export function quadrantOf(forward: number, towardWeak: number): Quadrant {
  const turn = Math.round(Math.atan2(towardWeak, forward) / (Math.PI / 4));
  return QUADRANTS[(turn + 8) % 8] ?? "forward";
}
