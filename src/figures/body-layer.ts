import { add, cross, scale, subtract, unit, type Vector } from "../quantity/vectors.ts";
import type { DepthBuffer, Solid } from "./picture/buffer.ts";
import { paint } from "./picture/buffer.ts";
import { type Frame, project } from "./picture/camera.ts";
import { traceHatch } from "./picture/hatch.ts";
import { Ink } from "./picture/ink.ts";
import { traceLines } from "./picture/lines.ts";
import { traceTones } from "./picture/regions.ts";
import { straightEdges } from "./picture/straight.ts";
import { ink as style, type Theme } from "./picture/theme.ts";
import type { FaceStroke } from "./skin/head.ts";
import { type SurfaceKind, TONES, type Tone } from "./skin/kinds.ts";
import type { Thing, Tube } from "./props/solid.ts";

/** Everything solid in the picture. */
export interface Scene {
  readonly people: readonly {
    readonly solid: Omit<Solid, "kindOffset">;
    readonly kinds: readonly (SurfaceKind | null)[];
    readonly face: readonly FacePlace[];
  }[];
  readonly things: readonly Thing[];
  /** The mat's outline seen from above, or what stands for the floor. */
  readonly ground: readonly Vector[];
}

/** A stroke of a face already in the room. */
export interface FacePlace {
  readonly kind: FaceStroke["kind"];
  readonly points: readonly Vector[];
}

/** The part of a picture that does not change with strength or marks; keep it per pose and view. */
export interface BodyLayer {
  readonly width: number;
  readonly height: number;
  readonly ground: string;
  readonly things: string;
  readonly people: string;
  readonly buffer: DepthBuffer;
  readonly kinds: readonly (SurfaceKind | null)[];
  readonly frame: Frame;
}

/** In the order of the numbers things give their surfaces: level, upright, bar, soft. */
const THING_KINDS: readonly SurfaceKind[] = (["top", "front", "bar", "soft"] as const).map((part) => ({
  owner: "thing",
  part,
  side: null,
  tone: part === "soft" ? "top" : part,
  hatched: false,
  quiet: 1,
  hand: false,
}));
const THING_TONES: readonly Tone[] = ["top", "front", "bar"];

/** Paints the scene and traces it. */
export function drawBodyLayer(
  scene: Scene,
  frame: Frame,
  theme: Theme,
  mirrored: boolean,
  density = 1.5,
  hatchAngle = Math.PI / 4,
): BodyLayer {
  const kinds: (SurfaceKind | null)[] = [null, ...THING_KINDS];
  const solids: Solid[] = scene.things.map((thing) => ({ ...thing.solid, kindOffset: 0 }));
  for (const person of scene.people) {
    solids.push({ ...person.solid, kindOffset: kinds.length - 1 });
    kinds.push(...person.kinds.slice(1));
  }
  const { camera, width, height } = frame;
  const buffer = paint(camera, width, height, density, solids);
  const pen = new Ink(width, mirrored);
  const areas = traceTones(buffer, kinds, TONES, pen);
  const area = (tone: Tone): string => {
    const d = areas.get(tone);
    return d === undefined
      ? ""
      : `<path fill-rule="evenodd" ${style(theme, { fill: tone, stroke: tone, width: 0.7 })} d="${d}"/>`;
  };
  const lines = traceLines(buffer, kinds, camera.zoom, pen);
  const path = (d: string, width: number, stroke: "line" | "hatch" = "line"): string =>
    d === "" ? "" : `<path ${style(theme, { stroke, width })} d="${d}"/>`;
  const ground =
    scene.ground.length < 3
      ? ""
      : `<path ${style(theme, { fill: "mat", stroke: "matEdge", width: 0.8 })} d="${pen.polyline(
          scene.ground.map((at) => project(camera, at)).map(([x, y]) => [x, y] as const),
          true,
        )}"/>`;
  const things =
    THING_TONES.map(area).join("") +
    path(
      straightEdges(
        buffer,
        camera,
        scene.things.flatMap((thing) => [...thing.edges, ...tubeEdges(thing.tubes, camera.forward)]),
        pen,
      ),
      1.1,
    );
  const people =
    TONES.filter((tone) => !THING_TONES.includes(tone))
      .map(area)
      .join("") +
    path(traceHatch(buffer, kinds, hatchAngle, pen), 0.6, "hatch") +
    path(lines.hem, 0.7) +
    path(lines.fold, 1.1) +
    path(lines.outline, 1.6) +
    faces(scene, frame, buffer, pen, theme);
  return { width, height, ground, things: group(things), people: group(people), buffer, kinds, frame };
}

const group = (inner: string): string => `<g stroke-linecap="round" stroke-linejoin="round">${inner}</g>`;

/** The two outlines of a round bar as this eye sees them. */
function tubeEdges(tubes: readonly Tube[], forward: Vector): (readonly [Vector, Vector])[] {
  return tubes.flatMap(({ from, to, radius }) => {
    const side = scale(unit(cross(subtract(to, from), forward)), radius);
    const ends = [from, to].map((end): readonly [Vector, Vector] => [add(end, side), subtract(end, side)]);
    const [a, b] = ends;
    if (a === undefined || b === undefined) return [];
    const sides = [[a[0], b[0]] as const, [a[1], b[1]] as const];
    // A thick roll shows its round ends, which are drawn as edges; a bar just ends.
    return radius > 0.05 ? sides : [...sides, a, b];
  });
}

/** Strokes of the face where the picture shows the head there. */
function faces(scene: Scene, frame: Frame, buffer: DepthBuffer, pen: Ink, theme: Theme): string {
  let thin = "";
  let dots = "";
  for (const person of scene.people) {
    for (const stroke of person.face) {
      const placed = stroke.points.map((at) => project(frame.camera, at));
      const shown = placed.map(([x, y, z]) => visible(buffer, x, y, z * 1000, 9));
      if (stroke.kind === "eye") {
        const at = placed[1];
        if (at !== undefined && shown[1] === true) {
          const size = Math.max(0.7, frame.camera.zoom * 0.0052);
          dots += `<circle ${style(theme, { fill: "line" })} cx="${pen.across(at[0])}" cy="${pen.down(at[1])}" r="${size.toFixed(1)}"/>`;
        }
        continue;
      }
      let open: (readonly [number, number])[] = [];
      placed.forEach(([x, y], k) => {
        if (shown[k] === true) open.push([x, y]);
        else {
          if (open.length > 1) thin += pen.polyline(open, false);
          open = [];
        }
      });
      if (open.length > 1) thin += pen.polyline(open, false);
    }
  }
  return (thin === "" ? "" : `<path ${style(theme, { stroke: "line", width: 0.8 })} d="${thin}"/>`) + dots;
}

function visible(buffer: DepthBuffer, x: number, y: number, distance: number, tolerance: number): boolean {
  const column = Math.floor(x * buffer.density);
  const row = Math.floor(y * buffer.density);
  if (column < 0 || row < 0 || column >= buffer.columns || row >= buffer.rows) return false;
  return Math.abs((buffer.depth[row * buffer.columns + column] ?? 0) - distance) < tolerance;
}
