import type { Side } from "../quantity/sides.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import type { HandShape } from "./skin/context.ts";

/** How the hands are held, from what touches: a hand on a bar grips, a fist leans, a flat hand lies. */
export function handShapes(
  pose: PoseSpecification | null,
  fingers = false,
): { readonly weak: HandShape; readonly strong: HandShape } {
  const shapeOf = (side: Side): HandShape => {
    const touching = pose?.contacts.filter((contact) => contact.patch.endsWith(`.${side}`)) ?? [];
    if (touching.some((contact) => contact.patch.startsWith("grip"))) return "grip";
    if (touching.some((contact) => contact.patch.startsWith("fist"))) return "fist";
    if (touching.some((contact) => contact.patch.startsWith("hand."))) return fingers ? "flat" : "mitten";
    return fingers ? "flat" : "mitten";
  };
  return { weak: shapeOf("weak"), strong: shapeOf("strong") };
}
