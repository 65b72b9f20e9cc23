import { NUMERAL_SYLLABLES, SYLLABLE_EXCEPTIONS } from "./syllable-exceptions.data.ts";

/**
 * Syllables of an English word, by rule: every run of vowels (a e i o u, and y after a consonant) is one; a silent e at
 * the end is none, nor is the e of -ed after any sound but t or d, nor the e of -es after a sound that does not hiss;
 * -le after a consonant is one. A short list holds the words the rule miscounts. A compound with a hyphen is counted
 * part by part; a numeral below 1000 as it is read aloud.
 */
export function countSyllables(word: string): number {
  const parts = word
    .toLowerCase()
    .replace(/[’']/g, "")
    .split("-")
    .filter((part) => part !== "");
  return parts.reduce(
    (sum, part) => sum + (/^\d+$/.test(part) ? numeralSyllables(Number(part)) : partSyllables(part)),
    0,
  );
}

function partSyllables(part: string): number {
  const letters = part.replace(/[^a-z]/g, "");
  if (letters === "") return 0;
  const known = SYLLABLE_EXCEPTIONS[letters];
  if (known !== undefined) return known;
  const spoken = letters
    .replace(/([^aeiouytd])ed$/, "$1d")
    .replace(/([^aeiou])les$/, "$1el")
    .replace(/([^aeiou])le$/, "$1el")
    .replace(/([^aeiouscgxz])es$/, (all, before: string) => (/(sh|ch)es$/.test(letters) ? all : `${before}s`))
    .replace(/([aeiouy][^aeiouy]+)e$/, "$1")
    .replace(/(ble|[aeiouy][^aeiouy]+)e(ful|less|ly|ment)/, "$1$2");
  const vowels = spoken.replace(/(^|[aeiou])y(?=[aeiou])/g, "$1j").match(/[aeiouy]+/g);
  return Math.max(1, vowels?.length ?? 0);
}

function numeralSyllables(value: number): number {
  const known = NUMERAL_SYLLABLES[value];
  if (known !== undefined) return known;
  if (value >= 100)
    return numeralSyllables(Math.floor(value / 100)) + 2 + (value % 100 === 0 ? 0 : numeralSyllables(value % 100));
  return numeralSyllables(value - (value % 10)) + numeralSyllables(value % 10);
}
