import { countSyllables } from "./syllables.ts";

/** What a reading formula counts in a text. */
export interface TextCounts {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
}

/** Sheets for home stay at or below this school grade. @source reading-level-aafp-2015, reading-level-acp */
export const HIGHEST_GRADE = 6;

/** Counts words, sentences and syllables. A line of its own counts as a sentence even without a full stop. */
export function countText(text: string): TextCounts {
  const sentences = text
    .split(/[.!?;:]+(?=\s|$)|\n+/)
    .map(wordsIn)
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  return {
    words: words.length,
    sentences: sentences.length,
    syllables: words.reduce((sum, word) => sum + countSyllables(word), 0),
  };
}

const wordsIn = (sentence: string): readonly string[] => sentence.match(/[A-Za-z0-9][A-Za-z0-9’'-]*/g) ?? [];

/**
 * School grade a text asks for, by the Flesch-Kincaid grade level: 0.39 words a sentence + 11.8 syllables a word - 15.59.
 * It measures length, not sense; below about a hundred words it only warns. Below zero means easier than first grade.
 *
 * @returns null for a text without words
 * @source flesch-kincaid
 */
export function fleschKincaidGrade({ words, sentences, syllables }: TextCounts): number | null {
  if (words === 0 || sentences === 0) return null;
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/** How easily a text reads, 100 and above being very easy: 206.835 - 1.015 words a sentence - 84.6 syllables a word. */
export function fleschReadingEase({ words, sentences, syllables }: TextCounts): number | null {
  if (words === 0 || sentences === 0) return null;
  return 206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);
}

/** Grade of a text, straight from its words; null where there are none. */
export function gradeOfText(text: string): number | null {
  return fleschKincaidGrade(countText(text));
}
