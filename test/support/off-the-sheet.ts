import type { MarksLayer } from "../../src/figures/marks/draw-marks.ts";

/** How far the marks of a picture reach past its edges [units]; zero where all are on the sheet. */
export function offTheSheet(layer: MarksLayer, width: number, height: number): number {
  let most = 0;
  const reach = (x: number, y: number, rx = 0, ry = 0): void => {
    most = Math.max(most, rx - x, x + rx - width, ry - y, y + ry - height);
  };
  const number = (text: string, name: string): number =>
    Number(new RegExp(` ${name}="([-\\d.]+)"`).exec(text)?.[1] ?? 0);
  for (const [shape] of `${layer.under}${layer.over}`.matchAll(/<(?:circle|ellipse)[^>]*>/g)) {
    const r = number(shape, "r");
    reach(number(shape, "cx"), number(shape, "cy"), Math.max(r, number(shape, "rx")), Math.max(r, number(shape, "ry")));
  }
  for (const [, d = ""] of `${layer.under}${layer.over}`.matchAll(/ d="([^"]+)"/g)) {
    const numbers = (d.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    for (let i = 0; i + 1 < numbers.length; i += 2) reach(numbers[i] ?? 0, numbers[i + 1] ?? 0);
  }
  return most;
}
