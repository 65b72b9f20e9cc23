/** What the parts of the body that bear are called. */
export const PATCH_WORDS: Readonly<Record<string, string>> = {
  foot: "foot",
  forefoot: "ball of the foot",
  heel: "heel",
  hand: "hand",
  forearm: "forearm",
  elbow: "elbow",
  shin: "knee and shin",
  knee: "knee",
  instep: "instep",
  buttock: "buttock",
  thighBack: "thigh",
  thighFront: "thigh",
  shoulderBlade: "shoulder blade",
  ribSide: "ribs",
  hipSide: "hip",
  shoulderSide: "shoulder",
  pelvisFront: "front of the pelvis",
  headBack: "back of the head",
  headSide: "side of the head",
  chestFront: "chest",
  calf: "calf",
  grip: "hand on the bar",
  lowBack: "low back",
  belly: "belly",
};

/** "weak forearm" for "forearm.weak". */
export function sayPart(patch: string): string {
  const [part = patch, side] = patch.split(".");
  const words = PATCH_WORDS[part] ?? part.replace(/([A-Z])/g, " $1").toLowerCase();
  return side === undefined ? words : `${side} ${words}`;
}
