/**
 * Share of the most that can be lifted once which can be lifted n times to the end, by three published lines and the
 * spread between them.
 * @returns [least, most] share of the one-repetition maximum
 * @source epley (three lines as printed beside each other); healthy adults, mostly young
 */
export function shareForRepetitions(count: number): readonly [number, number] {
  const all = [1 / (0.0333 * count + 1), 1 / (0.0353 * (count - 1) + 1), Math.max(0, (33 - count + 1) / 33)];
  return [Math.min(...all), Math.min(1, Math.max(...all))];
}

/** Repetitions to the end at a share of the one-repetition maximum, cautious: the fewest of the three lines; at most 30. */
export function repetitionsAt(share: number): number {
  let count = 0;
  while (count < 30 && shareForRepetitions(count + 1)[0] >= share) count++;
  return count;
}
