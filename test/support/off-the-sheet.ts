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
    // A bent arrow's middle number pair is only pulled toward: the line itself goes half as far.
    const bent = d.includes("Q") && numbers.length === 6;
    for (let i = 0; i + 1 < numbers.length; i += 2) {
      const at = (k: number): number =>
        bent && i === 2
          ? (numbers[k - 2] ?? 0) / 4 + (numbers[k] ?? 0) / 2 + (numbers[k + 2] ?? 0) / 4
          : (numbers[k] ?? 0);
      reach(at(i), at(i + 1));
    }
  }
  return most;
}
