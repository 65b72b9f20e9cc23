/** One row of a linear program: low <= sum of factor times unknown <= high. */
export interface LinearRow {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly terms: ReadonlyMap<number, number>;
}
export interface Unknown {
  readonly name: string;
  readonly whole: boolean;
  readonly low: number;
  readonly high: number;
  /** Points one unit of it is worth. */
  readonly worth: number;
}

/** Collects a linear program row by row; entries of one unknown in one row are added up. */
export class LinearRows {
  readonly unknowns: Unknown[] = [];
  readonly rows: LinearRow[] = [];
  private readonly numbers = new Map<string, number>();

  add(name: string, worth: number, form: { readonly whole?: boolean; readonly high?: number } = {}): number {
    const number = this.unknowns.length;
    this.unknowns.push({ name, worth, whole: form.whole ?? true, low: 0, high: form.high ?? 1 });
    this.numbers.set(name, number);
    return number;
  }

  find(name: string): number | null {
    return this.numbers.get(name) ?? null;
  }

  row(name: string, low: number, high: number, terms: Iterable<readonly [unknown: number, factor: number]>): void {
    const merged = new Map<number, number>();
    for (const [unknown, factor] of terms) merged.set(unknown, (merged.get(unknown) ?? 0) + factor);
    for (const [unknown, factor] of merged) if (factor === 0) merged.delete(unknown);
    this.rows.push({ name, low, high, terms: merged });
  }
}
