import { radiansOf } from "../../quantity/angles.ts";
import type { Side } from "../../quantity/sides.ts";
import type { Body, Loss, Segment } from "./body.ts";
import {
  LOCKED_WITHIN_DEG,
  PROSTHESIS_FOOT_SHARE,
  PROSTHESIS_OF_LOWER_LEG,
  PROSTHESIS_RANGE_DEG,
  PROSTHESIS_SHANK_CENTRE,
  SOCKET_AND_KNEE,
  STIFF,
  STUMP_FROM,
  STUMP_TO,
  USUAL_STUMP,
} from "./amputation.data.ts";
import type { AngleId, SegmentId } from "./names.ts";

/** Through the shank, or through the thigh. */
export type AmputationLevel = "transtibial" | "transfemoral";
export interface Amputation {
  readonly side: Side;
  readonly level: AmputationLevel;
  /** Wearing a prosthesis without a motor. */
  readonly prosthesis: boolean;
  /** Share of the cut part's length that is left; default the usual one. */
  readonly stump?: number;
}
export type AmputationResult =
  | { readonly possible: true; readonly body: Body; readonly lost: number }
  | { readonly possible: false; readonly because: string };

/**
 * The same body with a leg amputated: what is below the cut weighs nothing and can touch nothing; a prosthesis puts its
 * own mass there and can be stood on. The tree keeps its parts, so that every table still fits.
 * @param body a whole body, built for the mass it would have whole (see wholeMass)
 * @returns the body and the share of the whole mass that was lost [0..1], prosthesis not counted; or why it cannot be
 */
export function amputate(body: Body, amputation: Amputation): AmputationResult {
  const { side, level, prosthesis } = amputation;
  const share = amputation.stump ?? USUAL_STUMP[level];
  if (body.loss !== undefined) return { possible: false, because: "one leg of this body is amputated already" };
  if (!(share >= STUMP_FROM && share <= STUMP_TO))
    return { possible: false, because: "so short or long a stump is a loss at the joint: not worked out here" };
  const cut: SegmentId = level === "transtibial" ? `shank.${side}` : `thigh.${side}`;
  const below: readonly SegmentId[] =
    level === "transtibial" ? [`foot.${side}`, `toes.${side}`] : [`shank.${side}`, `foot.${side}`, `toes.${side}`];
  const loss: Loss = { side, gone: below, cut: { segment: cut, share }, prosthesis };
  const whole = body.segments.reduce((sum, each) => sum + each.mass, 0);
  const massOf = (id: SegmentId): number => body.segments[body.segmentIndex[id]]?.mass ?? 0;
  const lower = massOf(`shank.${side}`) + massOf(`foot.${side}`) + massOf(`toes.${side}`);
  const artificial = prosthesis ? PROSTHESIS_OF_LOWER_LEG * lower : 0;
  let lost = 0;
  const segments = body.segments.map((segment): Segment => {
    if (segment.id === cut) {
      const stump = cutOff(segment, share);
      lost += segment.mass - stump.mass;
      const extra =
        level === "transtibial"
          ? { mass: artificial * (1 - PROSTHESIS_FOOT_SHARE), centre: PROSTHESIS_SHANK_CENTRE.transtibial }
          : { mass: prosthesis ? SOCKET_AND_KNEE.mass : 0, centre: SOCKET_AND_KNEE.centre };
      return withMass(stump, extra.mass, extra.centre);
    }
    if (!below.includes(segment.id)) return segment;
    lost += segment.mass;
    const nothing = { ...segment, mass: 0 };
    if (segment.id === `foot.${side}`) return { ...nothing, mass: artificial * PROSTHESIS_FOOT_SHARE };
    if (segment.id === `shank.${side}`)
      return withMass(nothing, artificial * (1 - PROSTHESIS_FOOT_SHARE), PROSTHESIS_SHANK_CENTRE.transfemoral);
    return nothing;
  });
  return { possible: true, body: { ...body, segments, loss }, lost: lost / whole };
}

/** Mass a person would have whole, from what they weigh without the prosthesis [kg]. @param lost share from amputate */
export const wholeMass = (weighed: number, lost: number): number => weighed / (1 - lost);

/**
 * What is left of a limb's part above a cut. Its mass thins out evenly along it, as steeply as its published centre says:
 * density 1 + k (s - 1/2) with k = 12 (centre - 1/2).
 */
function cutOff(segment: Segment, share: number): Segment {
  const centre = -segment.centre[2] / segment.length;
  const k = 12 * (centre - 0.5);
  const mass = share + (k / 2) * (share * share - share);
  const moment = (share * share) / 2 + k * (share ** 3 / 3 - (share * share) / 4);
  return {
    ...segment,
    mass: segment.mass * mass,
    centre: [segment.centre[0], segment.centre[1], (-moment / mass) * segment.length],
  };
}

/** A part with another mass fixed to it, so far down its length. */
function withMass(segment: Segment, mass: number, along: number): Segment {
  if (mass === 0) return segment;
  const sum = segment.mass + mass;
  const z = (segment.mass * segment.centre[2] - mass * along * segment.length) / sum;
  return { ...segment, mass: sum, centre: [segment.centre[0], segment.centre[1], z] };
}

/** The narrower range of a prosthetic joint [rad]; undefined where the joint is the person's own. */
export function prosthesisRange(body: Body, id: AngleId): readonly [number, number] | undefined {
  if (!isArtificial(body, id) || body.loss?.prosthesis !== true) return undefined;
  const name = id.split(".")[0] ?? "";
  const row = Object.entries(PROSTHESIS_RANGE_DEG).find(([key]) => key === name)?.[1];
  return row === undefined ? undefined : [radiansOf(row[0]), radiansOf(row[1])];
}

/** A joint below the cut. */
export function isArtificial(body: Body, id: AngleId): boolean {
  const moved = body.segments[body.segmentOfAngle[body.angleIndex[id]] ?? 0]?.id;
  return body.loss !== undefined && moved !== undefined && body.loss.gone.includes(moved);
}

/** What a joint below the cut can give [N.m]: a stiff foot and a locked knee hold, a bent prosthetic knee folds, what is gone gives nothing. */
export function artificialMoment(body: Body, id: AngleId, angle: number): number {
  if (body.loss?.prosthesis !== true) return 0;
  if (id.startsWith("kneeFlexion")) return angle <= radiansOf(LOCKED_WITHIN_DEG) ? STIFF : 0;
  return STIFF;
}
