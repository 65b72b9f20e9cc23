import { pointInRoom, type Configuration, type Frames, placeFrames } from "../mechanics/pose/kinematics.ts";
import type { Body } from "../mechanics/body/body.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import type { Vector } from "../quantity/vectors.ts";
import { type BodyLayer, drawBodyLayer, type FacePlace, type Scene } from "./body-layer.ts";
import { aimCamera, boundsOf, fitCamera, type View } from "./picture/camera.ts";
import type { Theme } from "./picture/theme.ts";
import { placeThings } from "./props/place.ts";
import { buildSkin, type Skin } from "./skin/build.ts";
import type { Look } from "./skin/context.ts";
import { faceStrokes } from "./skin/head.ts";
import { poseSkin } from "./skin/posed.ts";
import { handShapes } from "./hand-shapes.ts";

export interface FigureInput {
  readonly body: Body;
  readonly configuration: Configuration;
  /** What the person rests on and with what; without it the mat alone. */
  readonly specification?: PoseSpecification;
  readonly view: View;
  readonly size: { readonly width: number; readonly height?: number; readonly zoom?: number };
  readonly theme: Theme;
  readonly look?: Partial<Pick<Look, "hair" | "older" | "footwear" | "hatch">>;
}

export interface Figure {
  readonly svg: string;
  readonly bodyLayer: BodyLayer;
}

const skins = new WeakMap<Body, Map<string, Skin>>();

/** The skin of a body with a look, kept while the body lives. */
export function skinOf(body: Body, look: Look): Skin {
  const key = JSON.stringify(look);
  let known = skins.get(body);
  if (known === undefined) {
    known = new Map();
    skins.set(body, known);
  }
  let skin = known.get(key);
  if (skin === undefined) {
    skin = buildSkin(body, look);
    known.set(key, skin);
  }
  return skin;
}

/** Draws a person in a pose. */
export function drawFigure(input: FigureInput): Figure {
  const { body, configuration } = input;
  const frames = placeFrames(body, configuration);
  const specification = input.specification ?? null;
  const placed = placeThings(body, frames, specification);
  const look: Look = {
    owner: "person",
    hair: input.look?.hair ?? (body.size.sex === "female" ? "bun" : "short"),
    older: input.look?.older ?? false,
    footwear: input.look?.footwear ?? "bare",
    hatch: input.look?.hatch ?? true,
    hands: handShapes(specification),
  };
  const skin = skinOf(body, look);
  const points = poseSkin(skin, frames, placed.supports);
  const clouds = [points, ...placed.things.map((thing) => thing.solid.points)];
  const scene: Scene = {
    people: [{ solid: { points, triangles: skin.triangles, triangleKinds: skin.triangleKinds }, kinds: skin.kinds, face: faceOf(body, frames) }],
    things: placed.things,
    ground: groundUnder(clouds, Math.min(placed.matTop, placed.floor)),
  };
  const aim = middleOf(points);
  const raw = aimCamera(input.view, body.weakAt, aim);
  const frame = fitCamera(raw, boundsOf(raw, clouds), input.size);
  const bodyLayer = drawBodyLayer(scene, frame, input.theme, false);
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${bodyLayer.width} ${bodyLayer.height}" width="${bodyLayer.width}" height="${bodyLayer.height}">${bodyLayer.ground}${bodyLayer.things}${bodyLayer.people}</svg>`;
  return { svg, bodyLayer };
}

export function faceOf(body: Body, frames: Frames): FacePlace[] {
  return faceStrokes(body.stature / 1000).map((stroke) => ({ kind: stroke.kind, points: stroke.points.map((at) => pointInRoom(body, frames, "head", at)) }));
}

export function middleOf(points: Float64Array): Vector {
  const least = [1e9, 1e9, 1e9];
  const most = [-1e9, -1e9, -1e9];
  for (let i = 0; i < points.length; i++) {
    const k = i % 3;
    least[k] = Math.min(least[k] ?? 0, points[i] ?? 0);
    most[k] = Math.max(most[k] ?? 0, points[i] ?? 0);
  }
  return [((least[0] ?? 0) + (most[0] ?? 0)) / 2, ((least[1] ?? 0) + (most[1] ?? 0)) / 2, ((least[2] ?? 0) + (most[2] ?? 0)) / 2];
}

export function groundUnder(clouds: readonly Float64Array[], height: number): Vector[] {
  let fromX = 1e9;
  let toX = -1e9;
  let fromY = 1e9;
  let toY = -1e9;
  for (const cloud of clouds) {
    for (let i = 0; i < cloud.length; i += 3) {
      fromX = Math.min(fromX, cloud[i] ?? 0);
      toX = Math.max(toX, cloud[i] ?? 0);
      fromY = Math.min(fromY, cloud[i + 1] ?? 0);
      toY = Math.max(toY, cloud[i + 1] ?? 0);
    }
  }
  const edge = 0.18;
  return [
    [fromX - edge, fromY - edge, height],
    [toX + edge, fromY - edge, height],
    [toX + edge, toY + edge, height],
    [fromX - edge, toY + edge, height],
  ];
}
