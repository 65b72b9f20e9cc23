import { useMemo } from "react";
import type { Picture } from "../../engine/engine.ts";
import { presentDrawing } from "../parts/figure.tsx";
import { type LineScale, MAT, PER_METRE, restBefore, tracePath, xAt, yAt } from "./line-path.ts";
import type { Stretch } from "./stretches.ts";

const INSET = 4;
/** Space for a tall person standing on the floor beside the mat [px]. */
const ABOVE = 112;
const FLOOR_MAT = 10;

/** The drawing under the tabs: band, line, marks and the one body. */
export function LineDrawing({
  stretches,
  before = null,
  changed = [],
  minutes,
  touched,
  width,
  body = null,
  floorMat = false,
  above = ABOVE,
}: {
  readonly stretches: readonly Stretch[];
  readonly before?: readonly Stretch[] | null;
  readonly changed?: readonly boolean[];
  readonly minutes: number;
  readonly touched: number;
  readonly width: number;
  readonly body?: Picture | null;
  readonly floorMat?: boolean;
  readonly above?: number;
}) {
  const band = floorMat ? FLOOR_MAT : MAT * PER_METRE;
  const scale: LineScale = { width, minutes, matTop: above, inset: INSET };
  const height = above + band + 2;
  const here = stretches[touched];
  const [from, to] = here === undefined ? [0, 0] : [xAt(here.fromMinute, scale), xAt(here.toMinute, scale)];
  const whole = tracePath(stretches, scale);
  const ends = [stretches[0]?.pieces[0], stretches.at(-1)?.pieces.at(-1)];
  return (
    <svg
      className="line-drawing"
      viewBox={`0 0 ${width} ${height}`}
      height={height}
      aria-hidden="true"
      focusable="false"
    >
      <rect className="band" x="0" y={above} width={width} height={band} />
      {here !== undefined && <rect className="band-touched" x={from} y={above} width={to - from} height={band} />}
      {here !== undefined && <rect className="band-bar" x={from} y={above + band - 4} width={to - from} height="4" />}
      {stretches.map(
        ({ fromMinute }, index) =>
          index > 0 && (
            <path key={`tick-${fromMinute}`} className="tickmark" d={`M${xAt(fromMinute, scale)} ${above}v8`} />
          ),
      )}
      {stretches.map(
        ({ fromMinute, toMinute }, index) =>
          changed[index] === true && (
            <rect
              key={`changed-${fromMinute}`}
              className="band-changed"
              x={xAt(fromMinute, scale) + 2}
              y={above}
              width={Math.max(4, xAt(toMinute, scale) - xAt(fromMinute, scale) - 4)}
              height="5"
            />
          ),
      )}
      {before !== null && <path className="trace-before" d={tracePath(before, scale)} />}
      <path className="trace" d={whole} />
      {here !== undefined && (
        <path className="trace-touched" d={tracePath([here], scale, restBefore(stretches, touched))} />
      )}
      {ends.map(
        (piece, index) =>
          piece !== undefined && (
            <circle
              key={index === 0 ? "start" : "end"}
              className="end"
              cx={xAt(index === 0 ? piece.fromMinute : piece.toMinute, scale)}
              cy={yAt(piece.height, scale)}
              r="5"
            />
          ),
      )}
      {here !== undefined && body !== null && <RidingBody stretch={here} body={body} scale={scale} />}
    </svg>
  );
}

/** The body in the middle of the touched stretch, its centre on the line; in the line's own scale. */
function RidingBody({
  stretch,
  body,
  scale,
}: {
  readonly stretch: Stretch;
  readonly body: Picture;
  readonly scale: LineScale;
}) {
  const inner = useMemo(
    () =>
      presentDrawing(body.svg)
        .replace(/^<svg[^>]*>/, "")
        .replace(/<\/svg>\s*$/, ""),
    [body.svg],
  );
  const size = body.scale;
  if (size === undefined) return null;
  const work = stretch.pieces.findLast(({ kind }) => kind === "work") ?? stretch.pieces.at(-1);
  if (work === undefined) return null;
  const shrink = PER_METRE / size.perMetre;
  const reach = shrink * Math.max(size.centreX, 60 / shrink);
  const x = Math.min(
    Math.max((xAt(work.fromMinute, scale) + xAt(work.toMinute, scale)) / 2, reach),
    scale.width - reach,
  );
  const y = yAt(work.height, scale);
  return (
    <g className="riding" style={{ transform: `translate(${x}px, ${y}px)` }}>
      <g
        transform={`scale(${shrink}) translate(${-size.centreX} ${-size.centreY})`}
        // biome-ignore lint/security/noDangerouslySetInnerHtml: the drawing is made by this program and holds no outside text
        dangerouslySetInnerHTML={{ __html: inner }}
      />
      <circle className="centre" r="4.5" />
    </g>
  );
}
