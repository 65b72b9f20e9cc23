import { buildBody } from "../body/build.ts";
import { peakNorm } from "../body/strength-norms.ts";
import { gravityMoment } from "../body/grades.ts";
import { fatigueRates } from "../endurance/rates.ts";
import { holdTime } from "../endurance/hold-time.ts";

/** An arm held out straight: its moment at the shoulder by the published segment masses, the share of strength, and how long. */
export function armHeldOut(): {
  readonly moment: number;
  readonly share: number;
  readonly seconds: number | null;
  readonly planOn: number | null;
} {
  const size = { sex: "male", height: 1.75, mass: 80 } as const;
  const moment = gravityMoment(buildBody(size, 1), "shoulderFlexion") ?? 0;
  const share = moment / peakNorm(size, 70, "shoulderFlexion");
  const { seconds, low } = holdTime(fatigueRates("shoulderFlexion", "male"), share, { age: 70 });
  return { moment, share, seconds, planOn: low };
}
