import { add, norm, rotate, scale, subtract, unit, IDENTITY, ZERO, type Vector } from "../../quantity/vectors.ts";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Body } from "../../mechanics/body/body.ts";
import { buildBody } from "../../mechanics/body/build.ts";
import { type Configuration, type Frames, pointInRoom } from "../../mechanics/pose/kinematics.ts";
import type { HandShape } from "../skin/context.ts";
import type { Skin } from "../skin/build.ts";
import type { Block } from "../props/solid.ts";
import type { HelperDrawing } from "./drawing.ts";
import { type Rod, rodsOf, rodsOfBlock } from "./keep-apart.ts";
import { type HandGoal, type LegGoal, palmOf, type Reach, reachFor, startOf } from "./reach.ts";
import { nearestOnSkin, siteGuess, siteOnSkin, type SkinPlace } from "./site-place.ts";
import { supportIn, supportingSide, supportOnSkin } from "./support.ts";
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
  /** Which hand goes to the first site, and which leg leads. */
  readonly hold: { readonly first: Side; readonly lead: Side };
  /** Height of the stool the helper sits on [m], zero where none. */
  readonly seat: number;
  /** What the helper's own leg does, where the rung says so. */
  readonly leg: LegGoal | null;
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

/** How a helper's stand departs from the stated one, within what the words still say. */
export interface Stand {
  /** Sideways over the ground and away from the person, as the helper sees it [m]. */
  readonly along: number;
  readonly back: number;
  /** The other hand on each site than the one that reaches more easily. */
  readonly swapped: boolean;
  /** How much more than usual the helper keeps out of the person. */
  readonly firmness: number;
  /** Which hand goes to the first site, and which leg leads, where that is settled. */
  readonly hold?: { readonly first: Side; readonly lead: Side };
  /** The helper a moment later or earlier: the reach begins there, so that nothing jumps. */
  readonly from?: Configuration;
}
export const STATED_STAND: Stand = { along: 0, back: 0, swapped: false, firmness: 1 };

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
  stand: Stand = STATED_STAND,
): PosedHelper {
  const places = drawing.hands.slice(0, 2).map((hand) => ({
    hand,
    place: siteOnSkin(person, frames, skin, points, hand.site),
    guess: siteGuess(person, frames, hand.site),
  }));
  const stated = helperGround(person, frames, drawing.at);
  const sideways: Vector = [-stated.toward[1], stated.toward[0], 0];
  const where = {
    ...stated,
    at: add(add(stated.at, scale(sideways, stand.along)), scale(stated.toward, -stand.back)),
  };
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
  const support = supportIn(drawing.knee);
  const legPlace = support === null ? null : supportOnSkin(person, frames, skin, points, support);
  const hasLead = drawing.pose === "halfKneeling" || drawing.pose === "strideStanding";
  const legFor = (start: Configuration, lead: Side): LegGoal | null =>
    support === null || legPlace === null
      ? null
      : {
          support,
          side: supportingSide(helper, start, hasLead ? lead : null, legPlace),
          place: legPlace,
          extra: 0,
        };
  const tried: { reach: Reach; sides: readonly Side[]; lead: Side }[] = [];
  const choices: readonly (readonly Side[])[] =
    places.length < 2
      ? [["weak"], ["strong"]]
      : [
          ["weak", "strong"],
          ["strong", "weak"],
        ];
  const leads: readonly Side[] = hasLead ? ["weak", "strong"] : ["weak"];
  const { hold } = stand;
  for (const sides of choices) {
    if (hold !== undefined && (sides[0] === hold.first) === stand.swapped && choices.length > 1) continue;
    for (const lead of leads) {
      if (hold !== undefined && leads.length > 1 && lead !== hold.lead) continue;
      const start = stand.from ?? startOf(helper, drawing.pose, lead, where.at, toward, ground);
      const goals = goalsFor(sides, []);
      const leg = legFor(start, lead);
      const reach = reachFor(helper, drawing.pose, lead, start, goals, rods, ground, gaze, stand.firmness, leg);
      tried.push({ reach, sides, lead });
    }
  }
  tried.sort((a, b) => a.reach.cost - b.reach.cost);
  const easiest = tried[0];
  const best =
    stand.swapped && hold === undefined ? tried.find((each) => each.sides[0] !== easiest?.sides[0]) : easiest;
  if (best === undefined) throw new ProgrammingError("no choice of hands was tried");
  const { sides, lead } = best;
  const shapes: { weak: HandShape; strong: HandShape } = { weak: "relaxed", strong: "relaxed" };
  places.forEach(({ guess }, k) => {
    const side = sides[k];
    if (side !== undefined)
      shapes[side] =
        LIMB_PARTS.includes(guess.segment.split(".")[0] ?? "") && !guess.segment.startsWith("foot") ? "grip" : "flat";
  });
  const start = stand.from ?? startOf(helper, drawing.pose, lead, where.at, toward, ground);
  const sites = places.map((each) => each.place);
  const ready = places.map((each) => each.hand.does === "ready");
  let reach = best.reach;
  let palms = measure(helper, reach, skin, points, sites, sides, ready);
  const leg = legFor(start, lead);
  const attempt = (extra: readonly number[], firmness: number): void => {
    const again = reachFor(
      helper,
      drawing.pose,
      lead,
      start,
      goalsFor(sides, extra),
      rods,
      ground,
      gaze,
      firmness,
      leg,
    );
    const measured = measure(helper, again, skin, points, sites, sides, ready);
    if (faultOf(again, measured) >= faultOf(reach, palms)) return;
    reach = again;
    palms = measured;
  };
  // Where skin curves away or toward the palm, the first reach is off by a little: correct once.
  const extra = palms.map((palm) => (palm.ready ? 0 : Math.max(-0.01, Math.min(0.03, 0.002 - palm.signedGap))));
  if (palms.some((palm) => !palm.ready && Math.abs(palm.signedGap - 0.003) > 0.004)) attempt(extra, stand.firmness);
  if (reach.overlap > PASSES_THROUGH) attempt(extra, 2 * stand.firmness);
  if (reach.overlap > PASSES_THROUGH) attempt(extra, 4 * stand.firmness);
  return {
    body: helper,
    reach,
    hands: shapes,
    palms,
    hold: { first: sides[0] ?? "weak", lead },
    seat: STANCES[drawing.pose].seat,
    leg,
  };
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
