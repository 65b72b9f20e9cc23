import { type Belief, strengthOf } from "../../plan/person/prior.ts";
import { type Slot, SLOT_COUNT, SLOTS } from "../../plan/person/slots.ts";
import type { PersonToday } from "./person-today.ts";

export interface StrengthRange {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** One strength that the evidence of a day moved or narrowed. */
export interface LearnedStrength {
  /** "weak hip, straightening" in weak and strong words. */
  readonly name: string;
  /** A plain sentence first. */
  readonly sentence: string;
  /** Before and after in tenths of a typical healthy person's. */
  readonly figure: string;
  readonly before: StrengthRange;
  readonly after: StrengthRange;
}

/** What one day's evidence did to what is believed of this body. */
export interface LearnedAnswer {
  readonly strengths: readonly LearnedStrength[];
  /** The evidence of that day, in words; what was set aside says so. */
  readonly from: readonly string[];
}

/** At most this many strengths are named, the most moved first. */
const MOST = 5;
/** Less than this, in fractions of normal, is no change worth a line. */
const LEAST_MOVED = 0.03;
/** A range that lost this share of its width was narrowed. */
const LEAST_NARROWED = 0.15;

/** Compares what is believed of the strengths before and after a day's evidence. */
export function learnedBetween(before: PersonToday, after: PersonToday): LearnedAnswer {
  const known = new Set(before.model.trail.map(({ id, words }) => `${id} ${words}`));
  const from = after.model.trail
    .filter(({ id, words }) => !known.has(`${id} ${words}`))
    .map(({ words, believed }) => (believed ? words : `${words} (set aside: it stands against the rest)`));
  const moved = SLOTS.flatMap((slot, index) => {
    const old = rangeOf(before.model.belief, index);
    const now = rangeOf(after.model.belief, index);
    const shift = now.middle - old.middle;
    const narrowed = 1 - (now.high - now.low) / Math.max(old.high - old.low, 1e-6);
    if (Math.abs(shift) < LEAST_MOVED && narrowed < LEAST_NARROWED) return [];
    return [{ slot, old, now, shift, narrowed }];
  }).sort((a, b) => Math.abs(b.shift) - Math.abs(a.shift) || b.narrowed - a.narrowed);
  return {
    strengths: moved.slice(0, MOST).map(({ slot, old, now, shift }) => {
      const name = nameOf(slot);
      const [part = name, inWhat] = name.split(", ");
      const move = inWhat === undefined ? "" : `in ${inWhat} `;
      return {
        name,
        sentence:
          Math.abs(shift) < LEAST_MOVED
            ? `The ${part} is as strong ${move}as believed, and known more closely.`
            : `The ${part} is ${shift > 0 ? "stronger" : "weaker"} ${move}than believed.`,
        figure: `Now ${tenths(now)} of normal strength, before ${tenths(old)}.`,
        before: rounded(old),
        after: rounded(now),
      };
    }),
    from,
  };
}

/** 95th percentile of a normal deviate. */
const NINETY_FIVE = 1.645;

/** A strength from the belief itself: draws from it would move a little with every finding, wherever it bears. */
function rangeOf({ mean, covariance }: Belief, index: number): StrengthRange {
  const middle = mean[index] ?? 0;
  const spread = NINETY_FIVE * Math.sqrt(Math.max(covariance[index * SLOT_COUNT + index] ?? 0, 0));
  return { low: strengthOf(middle - spread), middle: strengthOf(middle), high: strengthOf(middle + spread) };
}

const whole = (value: number): number => Math.round(value * 10);
const tenths = ({ low, high }: StrengthRange): string =>
  whole(low) === whole(high) ? `about ${whole(low)} tenths` : `${whole(low)} to ${whole(high)} tenths`;

function rounded({ low, middle, high }: StrengthRange): StrengthRange {
  const two = (value: number) => Math.round(value * 100) / 100;
  return { low: two(low), middle: two(middle), high: two(high) };
}

const MOVES: Readonly<Record<string, string>> = {
  flexion: "bending",
  extension: "straightening",
  abduction: "out to the side",
  adduction: "toward the middle",
  externalRotation: "turning outward",
  internalRotation: "turning inward",
  plantarflexion: "pointing down",
  dorsiflexion: "pulling up",
  lateralFlexion: "bending sideways",
  rotation: "turning",
};

/** "weak hip, straightening". */
export function nameOf(slot: Slot): string {
  if (slot.side === null) return `trunk, ${MOVES[slot.key] ?? slot.key}`;
  if (slot.key === "grip") return `${slot.side} hand's grip`;
  const [, joint = slot.key, move = ""] = /^(shoulder|elbow|wrist|hip|knee|ankle)(.*)$/.exec(slot.key) ?? [];
  const lower = `${move.charAt(0).toLowerCase()}${move.slice(1)}`;
  return `${slot.side} ${joint}, ${MOVES[lower] ?? lower}`;
}
