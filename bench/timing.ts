/** One thing that was timed, with what it is measured against. */
export interface BenchRow {
  readonly what: string;
  readonly median: number;
  /** Tenth and ninetieth percentile. */
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly rival?: string;
  readonly rivalMedian?: number;
  /** Most the median may be, in the row's unit. */
  readonly target?: number;
}

export type Spread = Pick<BenchRow, "median" | "low" | "high">;

/** Median and spread of figures already taken. */
export function spreadOf(figures: readonly number[]): Spread {
  const sorted = [...figures].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? 0;
  return { median: at(0.5), low: at(0.1), high: at(0.9) };
}

/** Times a piece of work many times over, after a warm-up [ms]. */
export function time(work: (k: number) => unknown, times: number, warmUp = Math.min(30, times)): Spread {
  for (let k = 0; k < warmUp; k++) work(k);
  return spreadOf(
    Array.from({ length: times }, (_, k) => {
      const from = performance.now();
      work(k);
      return performance.now() - from;
    }),
  );
}
