import type { ContactSpecification, LimbAngles, PoseSpecification } from "../../src/mechanics/pose/specification.ts";

const OF_THE_LEG = /^(hip|knee|ankle|toe|inversion)/;

const pick = (angles: LimbAngles, leg: boolean): LimbAngles =>
  Object.fromEntries(Object.entries(angles).filter(([name]) => OF_THE_LEG.test(name) === leg));

/** The other side's patch for one of foot or seat; a hand stays where it is. */
export function otherFoot(patch: string): ContactSpecification["patch"] {
  switch (patch) {
    case "foot.weak":
      return "foot.strong";
    case "foot.strong":
      return "foot.weak";
    case "forefoot.weak":
      return "forefoot.strong";
    case "forefoot.strong":
      return "forefoot.weak";
    case "grip.strong":
      return "grip.strong";
    default:
      throw new Error(`nobody stands on ${patch} on the stairs`);
  }
}

const turned = (degrees: number | undefined): number => -(degrees ?? 0);

/** The same step with the legs changed over, what the weak leg did now done by the strong one and the other way round; the hand stays on its rail. */
export function swapLegs(pose: PoseSpecification): PoseSpecification {
  const { trunkDeg = {}, weakDeg = {}, strongDeg = {}, shift = {}, surfaces = [] } = pose;
  return {
    ...pose,
    trunkDeg: {
      ...trunkDeg,
      lumbarSideBend: turned(trunkDeg.lumbarSideBend),
      thoraxSideBend: turned(trunkDeg.thoraxSideBend),
      neckSideBend: turned(trunkDeg.neckSideBend),
    },
    weakDeg: { ...pick(weakDeg, false), ...pick(strongDeg, true) },
    strongDeg: { ...pick(strongDeg, false), ...pick(weakDeg, true) },
    shift: { ...shift, toWeakCm: turned(shift.toWeakCm) },
    surfaces: surfaces.map((surface) =>
      surface.under === undefined ? surface : { ...surface, under: surface.under.map(otherFoot) },
    ),
    contacts: pose.contacts.map((contact) => ({ ...contact, patch: otherFoot(contact.patch) })),
  };
}
