import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countText, fleschKincaidGrade, fleschReadingEase, gradeOfText } from "./reading-grade.ts";
import { countSyllables } from "./syllables.ts";

/** A text of a given shape, for the formula alone. */
const shape = (words: number, sentences: number, syllables: number) => ({ words, sentences, syllables });

describe("the Flesch-Kincaid grade level", () => {
  it("gives the published grade of a book of one-syllable words: -1.3 at 5.7 words a sentence and 1.02 syllables a word", () => {
    // Source: published analysis of "Green Eggs and Ham" (words a sentence, syllables a word and grade as printed).
    expect(fleschKincaidGrade(shape(570, 100, 581.4))).toBeCloseTo(-1.3, 1);
  });

  it("gives 11.3 for a sentence of 13 words and 24 syllables, and counts that sentence so", () => {
    // The worked example most often quoted for the formula; its printed figures are from memory.
    const counts = countText("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.");
    expect(counts).toEqual(shape(13, 1, 24));
    expect(fleschKincaidGrade(counts)).toBeCloseTo(11.3, 1);
    expect(fleschReadingEase(counts)).toBeCloseTo(37.5, 1);
  });

  it("gives a reading ease of 116 for the cat on the mat", () => {
    // Printed figure from memory.
    const counts = countText("The cat sat on the mat.");
    expect(counts).toEqual(shape(6, 1, 6));
    expect(fleschReadingEase(counts)).toBeCloseTo(116, 0);
  });

  it("has the floor that follows from the formula: one word of one syllable", () => {
    expect(gradeOfText("Go.")).toBeCloseTo(-3.4, 2);
  });

  it("counts a short instruction as counted by hand", () => {
    const counts = countText(
      "Bend your knees. Put your feet flat. Push down. Lift your hips. Count to five. Lower slowly.",
    );
    expect(counts).toEqual(shape(17, 6, 19));
    expect(fleschKincaidGrade(counts)).toBeCloseTo(-1.3, 1);
  });

  it("says nothing of a text without words", () => {
    expect(gradeOfText("")).toBeNull();
    expect(gradeOfText("...")).toBeNull();
  });

  it("rises with every longer sentence and never is anything but a number", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1, maxLength: 12 }), { minLength: 1, maxLength: 40 }), (parts) => {
        const grade = gradeOfText(parts.join(" "));
        expect(grade === null || Number.isFinite(grade)).toBe(true);
      }),
      { numRuns: 200, seed: 11 },
    );
  });
});

describe("syllables", () => {
  // Own counts, as the words are spoken.
  it.each([
    ["knee", 1],
    ["seat", 1],
    ["table", 2],
    ["little", 2],
    ["pushed", 1],
    ["lifted", 2],
    ["bridges", 2],
    ["toes", 1],
    ["shoulder", 2],
    ["shoulders", 2],
    ["elbow", 2],
    ["slowly", 2],
    ["ambulance", 3],
    ["headache", 2],
    ["strange", 1],
    ["speech", 1],
    ["body", 2],
    ["carefully", 3],
    ["makes", 1],
    ["comes", 1],
    ["cushion", 2],
    ["ceiling", 2],
    ["straight", 1],
    ["breathe", 1],
    ["sideways", 2],
    ["lying", 2],
    ["eyes", 1],
    ["you", 1],
    ["yourself", 2],
    ["touches", 2],
    ["partner", 2],
    ["dizzy", 2],
    ["half-way", 2],
    ["don’t", 1],
    ["8", 1],
    ["17", 3],
    ["25", 3],
    ["100", 3],
    ["stays", 1],
    ["steady", 2],
    ["whole", 1],
  ] as const)("%s has %i", (word, count) => {
    expect(countSyllables(word)).toBe(count);
  });
});
