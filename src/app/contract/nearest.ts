/** The known word closest to what was typed, or null where nothing comes near. Capitals and joining signs do not count. */
export function findNearest(typed: string, known: readonly string[]): string | null {
  if (known.includes(typed.trim())) return typed.trim();
  const wanted = flatten(typed);
  if (wanted === "") return null;
  let best: { readonly word: string; readonly distance: number } | null = null;
  for (const word of known) {
    const flat = flatten(word);
    const within = wanted.length >= 3 && (flat.startsWith(wanted) || wanted.startsWith(flat));
    const distance = within ? 0.5 : countEdits(wanted, flat);
    if (best === null || distance < best.distance) best = { word, distance };
  }
  return best !== null && best.distance <= Math.max(2, Math.ceil(wanted.length / 2)) ? best.word : null;
}

/** Longest word that is compared letter by letter. */
const LONGEST = 60;

function flatten(word: string): string {
  return word
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/[\s_-]/g, "");
}

/** Letters to put in, take out, change or swap with their neighbour to make one word of the other. */
function countEdits(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const at = (i: number, j: number) => rows[i]?.[j] ?? 0;
  for (let i = 1; i <= a.length; i++) {
    rows[i] = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, at(i - 2, j - 2) + 1);
      rows[i]?.push(least);
    }
  }
  return at(a.length, b.length);
}
