import { useMemo } from "react";
import type { Picture } from "../../engine/engine.ts";
import type { Answer } from "../computing/use-answer.ts";

/**
 * The drawing as this page may show it: its inline styles become plain attributes, which the page's rule against
 * inline styles lets through, and it scales with its place.
 */
export function presentDrawing(svg: string): string {
  return svg
    .replace(/ style="([^"]*)"/g, (_whole, style: string) =>
      style
        .split(";")
        .map((rule) => /^\s*([\w-]+)\s*:\s*(.+?)\s*$/.exec(rule))
        .map((found) => (found === null ? "" : ` ${found[1]}="${found[2]}"`))
        .join(""),
    )
    .replace(/^<svg([^>]*?) width="[^"]*" height="[^"]*"/, "<svg$1")
    .replace(/^<svg/, '<svg aria-hidden="true" focusable="false"');
}

/** A picture with its text alternative. */
export function Figure({
  answer,
  wait,
  className = "",
}: {
  readonly answer: Answer<Picture>;
  readonly wait: string;
  readonly className?: string;
}) {
  const picture = answer.state === "there" ? answer.value : answer.state === "waiting" ? answer.last : null;
  if (answer.state === "failed") return <p className="least">This picture could not be drawn.</p>;
  if (picture === null) return <div className={`figure figure-wait ${className}`} role="img" aria-label={wait} />;
  return <DrawnFigure picture={picture} className={className} />;
}

export function DrawnFigure({ picture, className = "" }: { readonly picture: Picture; readonly className?: string }) {
  const svg = useMemo(() => presentDrawing(picture.svg), [picture.svg]);
  return (
    <div
      className={`figure ${className}`}
      role="img"
      aria-label={picture.text}
      // biome-ignore lint/security/noDangerouslySetInnerHtml: the drawing is made by this program and holds no outside text
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
