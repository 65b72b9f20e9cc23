import type { PoseAsks } from "../assess/efforts.ts";
import { wordOfEffort } from "../assess/settings.ts";

/** Tenths of what a joint has, as a range in words: "6 to 8 tenths"; above all there is: "2.5 to 4 times what it has". */
export function figureOf(range: { readonly low: number; readonly middle: number; readonly high: number }): string {
  if (range.middle >= 1.45) return `${half(range.low)} to ${half(range.high)} times what it has`;
  const low = Math.max(0, Math.round(range.low * 10));
  const high = Math.round(Math.min(range.high, 3) * 10);
  return low === high ? `about ${low} tenths of what it has` : `${low} to ${high} tenths of what it has`;
}
const half = (value: number): string => String(Math.round(Math.min(value, 20) * 2) / 2);

/** "the weak hip", "the trunk". */
export function partName(limiting: PoseAsks["limiting"]): string {
  if (limiting.joint === "none") return "nothing in particular";
  return limiting.side === null ? `the ${limiting.joint}` : `the ${limiting.side} ${limiting.joint}`;
}

/** What a rung asks, first as a plain sentence. */
export function effortSentence(asks: PoseAsks): string {
  const part = partName(asks.limiting);
  switch (wordOfEffort(asks.cautious)) {
    case "easy":
      return `Easy for ${part}: slower, not heavier.`;
    case "steady":
      return `Steady work for ${part}.`;
    case "hard":
      return `Hard for ${part}, but inside what it has.`;
    case "edge":
      return `At the edge of what ${part} has; stay ready.`;
    default:
      return asks.cautious > 1.3
        ? `${upper(part)} would fold without help.`
        : `More than ${part} can be asked without help.`;
  }
}

/** Which side carries, as a sentence: shares of the body's weight on each side's limbs. */
export function loadSentence(asks: PoseAsks): { readonly sentence: string; readonly figure: string } {
  const share = (side: "weak" | "strong") =>
    asks.loads.filter((load) => load.side === side).reduce((sum, load) => sum + Math.max(load.share, 0), 0);
  const weak = share("weak");
  const strong = share("strong");
  const rest = Math.max(0, 1 - weak - strong);
  const figure = `weak side ${percent(weak)}, strong side ${percent(strong)}, middle ${percent(rest)} of body weight in a hundred`;
  if (weak + strong < 0.15) return { sentence: "The trunk carries; arms and legs are only laid down.", figure };
  if (weak > strong * 1.15) return { sentence: "The weak side carries more.", figure };
  if (strong > weak * 1.15) return { sentence: "The strong side still carries more.", figure };
  return { sentence: "Both sides carry about alike.", figure };
}
const percent = (share: number): string => String(Math.round(share * 20) * 5);
export const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
