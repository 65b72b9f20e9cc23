import type { Figure } from "./draw-figure.ts";

/** A supporting leg further off than this is not in the picture [m]. */
const LEG_DRAWN = 0.04;

/** Words for a picture, put in by the caller in the reader's language; figures only know what is in the picture. */
export interface PictureWords {
  /** How the person lies, sits or stands: "On the back, knees bent, seat up". */
  readonly lies: string;
  /** What moves: "The strong foot is lifted". */
  readonly moves: string | null;
  /** Where the helper is: "The helper kneels at the weak side, beside the hip". */
  readonly helper: string | null;
  /** What each hand does, in the order of the drawing's hands: "one hand under the weak buttock". */
  readonly hands: readonly string[];
  /** What the helper's own knee, thigh, shin or foot does: "The raised thigh is a backrest". */
  readonly support?: string | null;
  /** Where weight goes, the most first, with how much as words: "the weak foot", "both shoulder blades". */
  readonly weight: readonly string[];
  /** Joiners: between the last two of a list, and the beginning of the sentence on weight. */
  readonly and: string;
  readonly weightIsOn: string;
}

/**
 * What the picture shows, as sentences made from the same data: how the person lies; what moves; the helper and each
 * hand; the weight. A part that is not in the picture has no sentence.
 */
export function textAlternative(figure: Pick<Figure, "prepared">, words: PictureWords): readonly string[] {
  const sentences = [ended(words.lies)];
  if (words.moves !== null) sentences.push(ended(words.moves));
  if (words.helper !== null && figure.prepared.helper !== null) {
    const hands = words.hands.slice(0, figure.prepared.helper.palms.length);
    sentences.push(ended(hands.length === 0 ? words.helper : `${words.helper}, ${listed(hands, words.and)}`));
  }
  const support = words.support ?? null;
  const { helper, supportGap } = figure.prepared;
  const legDrawn = (helper?.leg ?? null) !== null && (supportGap ?? 0) < LEG_DRAWN;
  if (support !== null && legDrawn) sentences.push(ended(support));
  if (words.weight.length > 0) sentences.push(ended(`${words.weightIsOn} ${listed(words.weight, words.and)}`));
  return sentences;
}

const ended = (sentence: string): string => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);

function listed(items: readonly string[], and: string): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} ${and} ${items[items.length - 1] ?? ""}`;
}
