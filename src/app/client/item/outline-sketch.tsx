import type { WeighedRung } from "../../engine/what-if.ts";

type Outline = WeighedRung["outline"];
const SIZE = 150;
const ROOM = 12;

/** How far the weight can go from where it is, from above: as found dashed, as moved drawn through. Words stand beside it. */
export function OutlineSketch({ found, now }: { readonly found: Outline; readonly now: Outline }) {
  const all = [...found, ...now];
  if (all.length === 0) return null;
  const far = Math.max(0.02, ...all.flatMap(({ forward, left }) => [Math.abs(forward), Math.abs(left)]));
  const scale = (SIZE / 2 - ROOM) / far;
  // Forward is up, the person's left on the drawing's left.
  const path = (outline: Outline) =>
    outline.length === 0
      ? ""
      : `M${outline.map(({ forward, left }) => `${(SIZE / 2 - left * scale).toFixed(1)} ${(SIZE / 2 - forward * scale).toFixed(1)}`).join("L")}Z`;
  return (
    <figure className="outline-figure">
      <svg className="outline-sketch" viewBox={`0 0 ${SIZE} ${SIZE}`} aria-hidden="true">
        <path d={path(found)} className="outline-found" />
        <path d={path(now)} className="outline-now" />
        <circle cx={SIZE / 2} cy={SIZE / 2} r="3.5" fill="currentColor" />
        <path d={`M${SIZE / 2 - 6} 9 ${SIZE / 2} 2 ${SIZE / 2 + 6} 9`} className="outline-now" />
      </svg>
      <figcaption className="least">How far the weight can go, ahead is up; dashed: as found.</figcaption>
    </figure>
  );
}
