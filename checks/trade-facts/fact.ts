import type { Asked } from "./people.ts";
import { nameOf, topThree } from "./people.ts";

export type Status = "holds" | "disagrees" | "not in this version";
/** How one fact came out: both figures, or what was found where; and why it disagrees. */
export interface Judged {
  readonly status: Status;
  readonly figures: string;
  readonly because: string | null;
}
export interface Fact {
  readonly fact: string;
  readonly says: string;
  readonly judge: () => Judged;
}

export const judged = (holds: boolean, figures: string, because: string): Judged => ({
  status: holds ? "holds" : "disagrees",
  figures,
  because: holds ? null : because,
});

/** Each asks more than the one before. What inverts an order is named with the three hardest joints of both. */
export function rising(
  rows: readonly { readonly name: string; readonly value: number; readonly asked: Asked }[],
): Judged {
  const figures = rows.map(({ name, value }) => `${name} ${value.toFixed(3)}`).join(" < ");
  const wrong = rows.flatMap((row, i) => {
    const next = rows[i + 1];
    return next === undefined || row.value < next.value
      ? []
      : [
          `${row.name} asks ${row.value.toFixed(3)} (${topThree(row.asked)}), ${next.name} only ${next.value.toFixed(3)} (${topThree(next.asked)})`,
        ];
  });
  return judged(wrong.length === 0, figures, wrong.join("; "));
}
export const byPeak = (name: string, asked: Asked) => ({ name, value: asked.peak, asked });
export function hardest(asked: Asked): string {
  const first = asked.efforts[0];
  return first === undefined ? "none" : nameOf(first);
}

/** Every text must say what is looked for; what is found is printed, what is missing is named. */
export function said(
  rows: readonly { readonly where: string; readonly text: string; readonly pattern: RegExp }[],
): Judged {
  const found = rows.map(({ where, text, pattern }) => ({ where, pattern, hit: pattern.exec(text)?.[0] }));
  const missing = found.filter(({ hit }) => hit === undefined);
  return judged(
    missing.length === 0,
    found.map(({ where, hit }) => `${where}: ${hit === undefined ? "not said" : `"${hit.slice(0, 90)}"`}`).join("; "),
    missing.map(({ where, pattern }) => `${where} does not say ${pattern.source}`).join("; "),
  );
}
/** Several findings at once: all must hold. */
export function all(parts: readonly Judged[]): Judged {
  const status = parts.find(({ status }) => status !== "holds")?.status ?? "holds";
  const because = parts.flatMap((part) => part.because ?? []);
  return {
    status,
    figures: parts.map(({ figures }) => figures).join(" | "),
    because: because.length === 0 ? null : because.join("; "),
  };
}
