/** How a figure or fact was seen. Nothing from memory or judgement stands under a safety limit. */
export type Seen = "read" | "quoted" | "memory" | "derived" | "common-practice" | "judgement";

/** One entry of the bibliography: enough to find the work again. */
export interface SourceRow {
  readonly authors: string;
  readonly year: number | null;
  readonly title: string;
  readonly where: string;
  readonly seen: Seen;
}

/** A published figure as printed, with where it stands and for whom it holds. */
export interface Published<Id extends string = string> {
  readonly value: number;
  readonly unit: string;
  readonly source: Id;
  readonly seen: Seen;
  readonly place?: string;
  readonly population?: string;
}
