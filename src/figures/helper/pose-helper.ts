import { add, norm, rotate, scale, subtract, unit, IDENTITY, ZERO } from "../../quantity/vectors.ts";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import { buildBody } from "../../mechanics/body/build.ts";
import type { Frames } from "../../mechanics/pose/kinematics.ts";
import { pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { HandShape } from "../skin/context.ts";
import type { Skin } from "../skin/build.ts";
import type { Block } from "../props/solid.ts";
import type { HelperDrawing } from "./drawing.ts";
import { type Rod, rodsOf, rodsOfBlock } from "./keep-apart.ts";
import { type HandGoal, palmOf, type Reach, reachFor, startOf } from "./reach.ts";
import { nearestOnSkin, siteGuess, siteOnSkin, type SkinPlace } from "./site-place.ts";
import { helperGround } from "./standing-place.ts";
import { STANCES } from "./stances.data.ts";

/** A helper of middling build, where none is stated. */
export const usualHelper: Body = buildBody({ sex: "female", height: 1.68, mass: 65 }, 1);

/** The helper in place. */
export interface PosedHelper {
  readonly body: Body;
  readonly reach: Reach;
  readonly hands: { readonly weak: HandShape; readonly strong: HandShape };
  /** For each stated hand: the helper's own hand, the place on the skin, and how far the palm is from the skin there [m]. */
  readonly palms: readonly PalmOnSite[];
  /** Height of the stool the helper sits on [m], zero where none. */
  readonly seat: number;
}

export interface PalmOnSite {
  readonly hand: Side;
  readonly site: SkinPlace;
  readonly ready: boolean;
  /** Unsigned distance from palm to the nearest skin [m], and the same with a sign: negative where it sinks in. */
  readonly gap: number;
  readonly signedGap: number;
  /** Distance from the palm to its own place on the skin [m]. */
  readonly siteMiss: number;
}

const LIMB_PARTS = ["upperArm", "forearm", "thigh", "shank", "foot"];
/** A gripping palm stands off so that the thumb does not sink in [m]. */
const GRIP_STANDOFF = 0.008;
const READY_STANDOFF = 0.06;
/** Clothes and flesh give this much [m]. */
const PASSES_THROUGH = 0.02;

/**
 * Poses the helper so that the palms lie on the sites.
 * @param ground height of what the helper is on [m]
 */
export function poseHelper(
  person: Body,
  frames: Frames,
  skin: Skin,
  points: Float64Array,
  drawing: HelperDrawing,
  ground: number,
  blocks: readonly Block[],
  rails: readonly Rod[],
  helper: Body = usualHelper,
): PosedHelper {
  const places = drawing.hands.slice(0, 2).map((hand) => ({
    hand,
    place: siteOnSkin(person, frames, skin, points, hand.site),
    guess: siteGuess(person, frames, hand.site),
  }));
  const where = helperGround(person, frames, drawing.at);
  const rods = [...rodsOf(person, frames), ...blocks.flatMap(rodsOfBlock), ...rails];
  const middle =
    places.length === 0
      ? null
      : scale(
          places.reduce((sum, each) => add(sum, each.place.at), ZERO),
          1 / places.length,
        );
  const toSites = middle === null ? where.toward : subtract([middle[0], middle[1], 0], where.at);
  const toward =
    norm(toSites) > 0.05 ? unit(add(unit([toSites[0], toSites[1], 0]), scale(where.toward, 0.4))) : where.toward;
  const gaze = middle ?? frames.positions[person.segmentIndex.thorax] ?? where.at;
  const goalsFor = (sides: readonly Side[], extra: readonly number[]): HandGoal[] =>
    places.map(({ hand, place, guess }, k): HandGoal => {
      const limbName = guess.segment.split(".")[0] ?? "";
      const grips = LIMB_PARTS.includes(limbName);
      const rotation = frames.rotations[person.segmentIndex[guess.segment]] ?? IDENTITY;
      const off = hand.does === "ready" ? READY_STANDOFF : (grips ? GRIP_STANDOFF : 0.001) + (extra[k] ?? 0);
      return {
        side: sides[k] ?? "weak",
        at: add(place.at, scale(place.outward, off)),
        outward: place.outward,
        around: grips && limbName !== "foot" ? rotate(rotation, [0, 0, 1]) : null,
      };
    });
  let best: { reach: Reach; sides: readonly Side[]; lead: Side } | null = null;
  const choices: readonly (readonly Side[])[] =
    places.length < 2
      ? [["weak"], ["strong"]]
      : [
          ["weak", "strong"],
          ["strong", "weak"],
        ];
  const leads: readonly Side[] =
    drawing.pose === "halfKneeling" || drawing.pose === "strideStanding" ? ["weak", "strong"] : ["weak"];
  for (const sides of choices) {
    for (const lead of leads) {
      const start = startOf(helper, drawing.pose, lead, where.at, toward, ground);
      const reach = reachFor(helper, drawing.pose, lead, start, goalsFor(sides, []), rods, ground, gaze);
      if (best === null || reach.cost < best.reach.cost) best = { reach, sides, lead };
    }
  }
  if (best === null) throw new ProgrammingError("no choice of hands was tried");
  const { sides, lead } = best;
  const shapes: { weak: HandShape; strong: HandShape } = { weak: "relaxed", strong: "relaxed" };
  places.forEach(({ guess }, k) => {
    const side = sides[k];
    if (side !== undefined)
      shapes[side] =
        LIMB_PARTS.includes(guess.segment.split(".")[0] ?? "") && !guess.segment.startsWith("foot") ? "grip" : "flat";
  });
  const start = startOf(helper, drawing.pose, lead, where.at, toward, ground);
  const sites = places.map((each) => each.place);
  const ready = places.map((each) => each.hand.does === "ready");
  let reach = best.reach;
  let palms = measure(helper, reach, skin, points, sites, sides, ready);
  const attempt = (extra: readonly number[], firmness: number): void => {
    const again = reachFor(helper, drawing.pose, lead, start, goalsFor(sides, extra), rods, ground, gaze, firmness);
    const measured = measure(helper, again, skin, points, sites, sides, ready);
    if (faultOf(again, measured) >= faultOf(reach, palms)) return;
    reach = again;
    palms = measured;
  };
  // Where skin curves away or toward the palm, the first reach is off by a little: correct once.
  const extra = palms.map((palm) => (palm.ready ? 0 : Math.max(-0.01, Math.min(0.03, 0.002 - palm.signedGap))));
  if (palms.some((palm) => !palm.ready && Math.abs(palm.signedGap - 0.003) > 0.004)) attempt(extra, 1);
  if (reach.overlap > PASSES_THROUGH) attempt(extra, 2);
  if (reach.overlap > PASSES_THROUGH) attempt(extra, 4);
  return { body: helper, reach, hands: shapes, palms, seat: STANCES[drawing.pose].seat };
}

/** How bad a reach looks: palms off the skin or off their place, limbs passing through the person [m]. */
function faultOf(reach: Reach, palms: readonly PalmOnSite[]): number {
  let worst = 0;
  for (const palm of palms) if (!palm.ready) worst = Math.max(worst, Math.abs(palm.signedGap), 0.6 * palm.siteMiss);
  return worst + 0.5 * Math.max(0, reach.overlap - PASSES_THROUGH);
}

function measure(
  helper: Body,
  reach: Reach,
  skin: Skin,
  points: Float64Array,
  places: readonly SkinPlace[],
  sides: readonly Side[],
  ready: readonly boolean[],
): PalmOnSite[] {
  const palm = palmOf(helper);
  return places.map((site, k): PalmOnSite => {
    const hand = sides[k] ?? "weak";
    const at = pointInRoom(helper, reach.frames, `hand.${hand}`, palm);
    const near = nearestOnSkin(skin, points, at, () => true);
    const gap = near?.distance ?? norm(subtract(at, site.at));
    const inside =
      near !== null &&
      (at[0] - near.at[0]) * near.outward[0] +
        (at[1] - near.at[1]) * near.outward[1] +
        (at[2] - near.at[2]) * near.outward[2] <
        0;
    return {
      hand,
      site,
      ready: ready[k] ?? false,
      gap,
      signedGap: inside ? -gap : gap,
      siteMiss: norm(subtract(at, site.at)),
    };
  });
}
