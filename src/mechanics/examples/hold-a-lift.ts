import { buildBody } from "../body/build.ts";
import { capacitiesOf } from "../body/strength-capacities.ts";
import { strengthsFrom } from "../body/strength-keys.ts";
import { solveHabitual } from "../equilibrium/habitual.ts";
import { prepareStatics } from "../equilibrium/statics.ts";
import { closePose } from "../pose/close.ts";
import type { PoseSpecification } from "../pose/specification.ts";

/** Lying on the back, knees bent, buttocks lifted. */
export const LIFTED: PoseSpecification = {
  pelvis: { pitchDeg: -118 },
  trunkDeg: { lumbarFlexion: 4, thoraxFlexion: 7, neckFlexion: 18 },
  bothDeg: {
    hipFlexion: 1,
    kneeFlexion: 117,
    ankleDorsiflexion: -2,
    shoulderFlexion: -22,
    shoulderAbduction: 17,
    elbowFlexion: 5,
    pronation: 90,
  },
  contacts: (["weak", "strong"] as const).flatMap((side) => [
    { patch: `foot.${side}`, on: "mat", role: "both" } as const,
    { patch: `shoulderBlade.${side}`, on: "mat", role: "both" } as const,
    { patch: `forearm.${side}`, on: "mat", role: "both" } as const,
  ]),
};

/** What holding it asks of a woman of 67 with one side at 40 % of normal: hardest joint, and what her feet carry. */
export function holdALift():
  | { readonly joint: string; readonly effort: number; readonly feetCarry: number }
  | { readonly because: string } {
  const body = buildBody({ sex: "female", height: 1.62, mass: 68 }, 1);
  const pose = closePose(body, LIFTED);
  if (!pose.closed) return { because: pose.because };
  const strengths = strengthsFrom((id) => (id.endsWith(".weak") ? 0.4 : id.startsWith("trunk") ? 0.7 : 0.9));
  const capacities = capacitiesOf(body, 67, pose.configuration.angles, strengths);
  const balance = solveHabitual(prepareStatics(body, pose), capacities);
  if (!balance.balanced) return { because: balance.because };
  const { hardest } = balance;
  return {
    joint: `${hardest?.joint} ${hardest?.direction}, ${hardest?.side} side`,
    effort: hardest?.effort ?? 0,
    feetCarry: balance.loads.filter(({ patch }) => patch.startsWith("foot")).reduce((sum, { share }) => sum + share, 0),
  };
}
