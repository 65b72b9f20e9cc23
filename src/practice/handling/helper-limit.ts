import type { SourceId } from "../../sources/bibliography.ts";
import type { HelperPose } from "../codes.ts";
import { HELPER_LIMITS } from "./limits.data.ts";

/** How the helper is when taking weight. */
export interface HelperPosture {
  readonly pose: HelperPose;
  readonly twisted?: boolean;
  readonly oneHand?: boolean;
  /** Arms stretched out far from the body. */
  readonly farReach?: boolean;
  /** The helper's own back is troubled: guiding only. */
  readonly backTrouble?: boolean;
}

export interface HelperLimit {
  /** The most this helper takes [newton]. */
  readonly newtons: number;
  readonly because: string;
  readonly source: SourceId;
}

const UPRIGHT: readonly HelperPose[] = ["standing", "strideStanding"];

/**
 * The most weight one helper takes in this posture: the printed limit upright, close and with both hands; half of it
 * otherwise; a guiding touch with a troubled back.
 * @source waters-2007 for the limit; the half is a proposal of this project.
 */
export function limitHelper(posture: HelperPosture): HelperLimit {
  if (posture.backTrouble === true)
    return {
      newtons: HELPER_LIMITS.touch.value,
      because: "The helper's back is troubled: guiding only, no lifting.",
      source: HELPER_LIMITS.touch.source,
    };
  const awkward = [
    UPRIGHT.includes(posture.pose) ? [] : ["low"],
    posture.twisted === true ? ["twisted"] : [],
    posture.oneHand === true ? ["one-handed"] : [],
    posture.farReach === true ? ["far-reaching"] : [],
  ].flat();
  if (awkward.length === 0)
    return {
      newtons: HELPER_LIMITS.lift.value,
      because: "Upright, close and with both hands.",
      source: HELPER_LIMITS.lift.source,
    };
  return {
    newtons: HELPER_LIMITS.liftAwkward.value,
    because: `Half the limit in a ${awkward.join(", ")} posture.`,
    source: HELPER_LIMITS.liftAwkward.source,
  };
}

/** How many helpers a weight needs at this limit each [newton]; at least one. @source waters-2007 */
export function countHelpers(newtons: number, limit: HelperLimit): number {
  return Math.max(1, Math.ceil(newtons / limit.newtons));
}
