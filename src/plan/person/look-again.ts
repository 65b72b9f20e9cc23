import type { PersonModel, TrailEntry } from "./model.ts";
import { type Slot, SLOTS } from "./slots.ts";

/** A part of the body about which what was tested and what was seen on the mat do not go together. */
export interface LookAgain {
  /** "weak hip". */
  readonly part: string;
  readonly sentence: string;
  /** The finding that stands alone, and what stands against it. */
  readonly because: string;
  readonly finding: string;
}

/** "weak hip", "trunk", "strong hand". */
export function partOf(slot: Slot): string {
  if (slot.side === null) return "trunk";
  const joint = /^(shoulder|elbow|wrist|grip|hip|knee|ankle)/.exec(slot.key)?.[0] ?? slot.key;
  return `${slot.side} ${joint === "grip" ? "hand" : joint}`;
}

/**
 * Where to look again, one line a part: a grade that what was seen in function makes hardly possible, or something seen
 * that all the rest does. It says where, not who is wrong.
 */
export function lookAgain({ disagreements, trail }: PersonModel): readonly LookAgain[] {
  const found = new Map<string, LookAgain>();
  for (const { finding } of [...disagreements].sort(
    (a, b) => a.chance - b.chance || (a.finding < b.finding ? -1 : 1),
  )) {
    const entry = trail.find(({ id }) => id === finding);
    const slot = slotOf(finding, entry);
    if (slot === null || entry === undefined) continue;
    const part = partOf(slot);
    if (found.has(part)) continue;
    const against = trail.filter(({ id, seenInFunction }) => id !== finding && seenInFunction !== entry.seenInFunction);
    const same = against.filter((each) => partMoved(each) === part);
    const others = (same.length > 0 ? same : against).slice(0, 2).map(({ words }) => words);
    found.set(part, {
      part,
      sentence: `Your findings and the mat disagree: look again at the ${part}.`,
      because: `${entry.words}${others.length === 0 ? "; all else speaks against it" : `, against ${others.join(" and ")}`}.`,
      finding,
    });
  }
  return [...found.values()];
}

function slotOf(finding: string, entry: TrailEntry | undefined): Slot | null {
  const tested = /^strength\.(weak|strong|trunk)\.(\w+)$/.exec(finding);
  if (tested !== null)
    return SLOTS.find(({ side, key }) => (side ?? "trunk") === tested[1] && key === tested[2]) ?? null;
  return entry === undefined || entry.mostMoved === null ? null : (SLOTS[entry.mostMoved.slot] ?? null);
}

function partMoved({ mostMoved }: TrailEntry): string | null {
  const slot = mostMoved === null ? undefined : SLOTS[mostMoved.slot];
  return slot === undefined ? null : partOf(slot);
}
