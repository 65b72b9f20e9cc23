import type { ClosedContact } from "../pose/close.ts";
import { FRICTION_LOW } from "./friction.data.ts";

/** Grip of a contact, low end: share of the load it can carry sideways. */
export function frictionOf(contact: ClosedContact): number {
  const { on } = contact.specification;
  if (typeof on === "object") return FRICTION_LOW.skinOnCotton;
  if (on === "cane") return FRICTION_LOW.stick;
  const name = contact.patch.split(".")[0];
  if (name === "hand" || name === "fist" || name === "grip") return FRICTION_LOW.hand;
  if (name === "foot" || name === "forefoot" || name === "heel" || name === "toes")
    return on === "floor" || on === "step" ? FRICTION_LOW.shoe : FRICTION_LOW.sock;
  return FRICTION_LOW.clothes;
}
