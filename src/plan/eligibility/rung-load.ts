import type { Body } from "../../mechanics/body/body.ts";
import type { ContactLoad } from "../../mechanics/equilibrium/habitual.ts";
import type { ClosedPose } from "../../mechanics/pose/close.ts";
import type { DemandId } from "../../practice/codes.ts";
import type { RungFacts } from "../../practice/precautions/rung-facts.ts";
import { degreesOf } from "../../quantity/angles.ts";
import { SIDES, type Side } from "../../quantity/sides.ts";

/** Patches that carry each demand. */
const CARRIES: readonly { readonly demand: DemandId; readonly patch: RegExp }[] = [
  { demand: "wristLoad", patch: /^(hand|fist|grip)\./ },
  { demand: "shoulderLoad", patch: /^(hand|fist|forearm|elbow|grip|wrist)\./ },
  { demand: "kneePressure", patch: /^(shin|knee)\./ },
  { demand: "footPressure", patch: /^(foot|forefoot|heel|toes)\./ },
];
const LEG = /^(foot|forefoot|heel|toes|shin|knee|instep|calf|ankleSide)\./;
/** A patch that carries less than this share of body weight is only laid down. */
const LAID_DOWN = 0.02;

/** What the computed pose says about a rung to those who judge precautions: which side carries, how far the hip folds, how much each leg bears. */
export function factsOf(body: Body, pose: ClosedPose, loads: readonly ContactLoad[]): RungFacts {
  const sides: Partial<Record<DemandId, readonly Side[]>> = {};
  for (const { demand, patch } of CARRIES) {
    sides[demand] = SIDES.filter((side) =>
      loads.some((load) => load.side === side && patch.test(load.patch) && Math.abs(load.share) > LAID_DOWN),
    );
  }
  const legShare: Partial<Record<Side, number>> = {};
  for (const side of SIDES) {
    legShare[side] = loads
      .filter((load) => load.side === side && LEG.test(load.patch))
      .reduce((sum, load) => sum + Math.max(load.share, 0), 0);
  }
  const hipFlexionDeg = Math.max(
    ...SIDES.map((side) => degreesOf(pose.configuration.angles[body.angleIndex[`hipFlexion.${side}`]] ?? 0)),
  );
  return { sides, hipFlexionDeg, legShare };
}

/** A knee straighter than this holds the hip back by the hamstrings. */
const STRAIGHT_KNEE_DEG = 20;

/** The side on which a pose folds the hip further over a straight knee than the straight-leg raise measured; null where none does. */
export function shortHamstrings(
  body: Body,
  pose: ClosedPose,
  raiseDeg: Readonly<Record<Side, number | undefined>>,
): { readonly side: Side; readonly needs: number; readonly has: number } | null {
  for (const side of SIDES) {
    const has = raiseDeg[side];
    if (has === undefined) continue;
    const hip = degreesOf(pose.configuration.angles[body.angleIndex[`hipFlexion.${side}`]] ?? 0);
    const knee = degreesOf(pose.configuration.angles[body.angleIndex[`kneeFlexion.${side}`]] ?? 0);
    if (knee < STRAIGHT_KNEE_DEG && hip > has + 5) return { side, needs: Math.round(hip), has };
  }
  return null;
}
