import type { Vector } from "../quantity/vectors.ts";
import type { Body } from "../mechanics/body/body.ts";
import { type Configuration, type Frames, placeFrames, pointInRoom } from "../mechanics/pose/kinematics.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import type { FacePlace, Scene } from "./body-layer.ts";
import { clearArms } from "./clear-arms.ts";
import { canonicalBody, canonicalConfiguration } from "./canonical.ts";
import { handShapes } from "./hand-shapes.ts";
import { type HelperDrawing, secondHelper } from "./helper/drawing.ts";
import { type Rod, rodsOf } from "./helper/keep-apart.ts";
import { layHands } from "./helper/lay-hand.ts";
import { type PosedHelper, poseHelper, type Stand, STATED_STAND } from "./helper/pose-helper.ts";
import { supportGap } from "./helper/support.ts";
import { placeThings, type PlacedThings } from "./props/place.ts";
import { makeTable, type Thing } from "./props/solid.ts";
import { buildSkin, type Skin } from "./skin/build.ts";
import type { Look } from "./skin/context.ts";
import { faceStrokes } from "./skin/head.ts";
import { poseSkin } from "./skin/posed.ts";
import { settleSkin } from "./skin/settle.ts";

/** Everything of a picture that does not depend on the eye. */
export interface PreparedScene {
  /** The body with its weak side at the left; the picture is turned over afterwards where it is not. */
  readonly body: Body;
  readonly frames: Frames;
  readonly placed: PlacedThings;
  readonly people: readonly { readonly skin: Skin; readonly points: Float64Array }[];
  readonly helper: PosedHelper | null;
  /** How far the helper's supporting leg is from the skin it should touch [m]; null where none touches. */
  readonly supportGap: number | null;
  readonly scene: Scene;
  /** What has to be in the picture. */
  readonly clouds: readonly Float64Array[];
}

export interface SceneInput {
  readonly body: Body;
  readonly configuration: Configuration;
  readonly specification?: PoseSpecification;
  readonly look?: Partial<Pick<Look, "hair" | "older" | "footwear" | "hatch">>;
  readonly helper?: HelperDrawing;
  readonly helperBody?: Body;
  readonly closeUp?: number;
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

export function lookOf(body: Body, input: Pick<SceneInput, "look" | "specification" | "closeUp">): Look {
  return {
    owner: "person",
    hair: input.look?.hair ?? (body.size.sex === "female" ? "bun" : "short"),
    older: input.look?.older ?? false,
    footwear: input.look?.footwear ?? "bare",
    hatch: input.look?.hatch ?? true,
    hands: handShapes(input.specification ?? null, input.closeUp !== undefined),
  };
}

/**
 * Poses the person, the things and the helper.
 * @param stays things that stay where another pose put them
 */
export function prepareScene(input: SceneInput, stand: Stand = STATED_STAND, stays?: PlacedThings): PreparedScene {
  const body = canonicalBody(input.body);
  const specification = input.specification ?? null;
  const computed = canonicalConfiguration(input.body, input.configuration);
  const frames = placeFrames(body, clearArms(body, computed, specification));
  const placed = stays ?? placeThings(body, frames, specification);
  const skin = skinOf(body, lookOf(body, input));
  const points = poseSkin(skin, frames, placed.supports);
  if (specification !== null) settleSkin(body, frames, specification, placed.tops, points);
  const ground = Math.min(placed.matTop, placed.floor);
  const people = [{ skin, points }];
  const faces: FacePlace[][] = [faceOf(body, frames, skin.look.older && skin.look.hair === "bun")];
  const things: Thing[] = [...placed.things];
  let helper: PosedHelper | null = null;
  let gap: number | null = null;
  if (input.helper !== undefined) {
    const helperBody = input.helperBody === undefined ? undefined : canonicalBody(input.helperBody);
    const join = (drawing: HelperDrawing, keepOutOf: readonly Rod[], how: Stand): PosedHelper => {
      const posed = poseHelper(
        body,
        frames,
        skin,
        points,
        drawing,
        ground,
        placed.footprints,
        [...placed.rails, ...keepOutOf],
        helperBody,
        how,
      );
      const helperSkin = skinOf(posed.body, {
        owner: "helper",
        hair: posed.body.size.sex === "female" ? "bun" : "short",
        older: false,
        footwear: "shoes",
        hatch: false,
        hands: posed.hands,
      });
      const helperPoints = poseSkin(helperSkin, posed.reach.frames, [{ top: ground, footprint: null, depth: 0.2 }]);
      layHands(helperSkin, helperPoints, skin, points, posed.palms);
      people.push({ skin: helperSkin, points: helperPoints });
      faces.push(faceOf(posed.body, posed.reach.frames));
      if (posed.seat > 0) things.push(stoolUnder(posed, ground));
      return posed;
    };
    helper = join(input.helper, [], stand);
    const { leg } = helper;
    const [person, first] = people;
    if (leg?.support.touches === true && person !== undefined && first !== undefined)
      gap = supportGap(first, person, leg.support, leg.side, leg.place);
    if ((input.helper.people ?? 1) > 1)
      join(secondHelper(input.helper), rodsOf(helper.body, helper.reach.frames), STATED_STAND);
  }
  const clouds = [...people.map((each) => each.points), ...things.map((thing) => thing.solid.points)];
  return {
    body,
    frames,
    placed,
    people,
    helper,
    supportGap: gap,
    clouds,
    scene: {
      people: people.map((each, k) => ({
        solid: { points: each.points, triangles: each.skin.triangles, triangleKinds: each.skin.triangleKinds },
        kinds: each.skin.kinds,
        face: faces[k] ?? [],
      })),
      things,
      ground: groundUnder(clouds, ground),
    },
  };
}

function stoolUnder(helper: PosedHelper, ground: number): Thing {
  const hips = helper.reach.configuration.rootPosition;
  const top = ground + helper.seat - 0.005;
  return makeTable(
    { fromX: hips[0] - 0.19, toX: hips[0] + 0.19, fromY: hips[1] - 0.19, toY: hips[1] + 0.19, bottom: ground, top },
    0.06,
    0.035,
  );
}

function faceOf(body: Body, frames: Frames, strands = false): FacePlace[] {
  return faceStrokes(body.stature / 1000, strands).map((stroke) => ({
    kind: stroke.kind,
    points: stroke.points.map((at) => pointInRoom(body, frames, "head", at)),
  }));
}

/** The mat: a rectangle a hand's breadth larger than what is on it. */
function groundUnder(clouds: readonly Float64Array[], height: number): Vector[] {
  const { least, most } = extentOf(clouds);
  const edge = 0.18;
  return [
    [least[0] - edge, least[1] - edge, height],
    [most[0] + edge, least[1] - edge, height],
    [most[0] + edge, most[1] + edge, height],
    [least[0] - edge, most[1] + edge, height],
  ];
}

export function extentOf(clouds: readonly Float64Array[]): { readonly least: Vector; readonly most: Vector } {
  const least: [number, number, number] = [1e9, 1e9, 1e9];
  const most: [number, number, number] = [-1e9, -1e9, -1e9];
  for (const cloud of clouds) {
    for (let i = 0; i < cloud.length; i += 3) {
      const x = cloud[i] ?? 0;
      const y = cloud[i + 1] ?? 0;
      const z = cloud[i + 2] ?? 0;
      if (x < least[0]) least[0] = x;
      if (x > most[0]) most[0] = x;
      if (y < least[1]) least[1] = y;
      if (y > most[1]) most[1] = y;
      if (z < least[2]) least[2] = z;
      if (z > most[2]) most[2] = z;
    }
  }
  return { least, most };
}
