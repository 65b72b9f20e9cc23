import type { Body } from "../body/body.ts";
import { hasPatch, type PatchId } from "../body/patches.ts";
import type { ContactSpecification, PoseSpecification } from "./specification.ts";

/**
 * A pose as a body with a part missing would take it: contacts of what is gone are left out, and said. Whether the rest still
 * holds the body is for the equations; a foot to stand on is not replaced.
 */
export function leaveOutMissing(
  body: Body,
  pose: PoseSpecification,
): { readonly pose: PoseSpecification; readonly leftOut: readonly PatchId[] } {
  const gone = ({ patch, on }: ContactSpecification): boolean =>
    !hasPatch(body, patch) || (typeof on === "object" && !hasPatch(body, on.body));
  const leftOut = pose.contacts.filter(gone).map(({ patch }) => patch);
  return leftOut.length === 0
    ? { pose, leftOut }
    : { pose: { ...pose, contacts: pose.contacts.filter((each) => !gone(each)) }, leftOut };
}
