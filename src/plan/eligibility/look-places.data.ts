import type { LookTask } from "../findings.ts";

/**
 * Where each task of the look stands on the ladders, and which positions and demands go with it when pain or breath
 * stopped it. `delay` is the mean of what other causes add to the logarithm of its effort ("judgement").
 */
export const LOOK_PLACES: Readonly<
  Record<
    LookTask,
    {
      readonly words: string;
      readonly activity: string;
      readonly rung: string;
      readonly positions: readonly string[];
      readonly demands: readonly string[];
      readonly delay: number;
    }
  >
> = {
  rollToStrong: { words: "rolls to the strong side", activity: "roll-to-strong-side", rung: "blade-touched", positions: [], demands: [], delay: 0.38 },
  rollToWeak: { words: "rolls to the weak side", activity: "roll-to-weak-side", rung: "strong-arm-reaches", positions: [], demands: [], delay: 0.38 },
  bridge: { words: "bridges", activity: "bridge", rung: "full-lift", positions: [], demands: ["headLow"], delay: 0.25 },
  bridgeLiftWeakFoot: { words: "lifts the weak foot in a bridge", activity: "bridge", rung: "weak-foot-up", positions: [], demands: [], delay: 0.25 },
  lieToSit: { words: "comes from lying to sitting", activity: "side-lying-to-sit-over-strong", rung: "hand-prop", positions: [], demands: [], delay: 0.38 },
  sitThirtySeconds: { words: "sits thirty seconds", activity: "long-sitting-balance-and-reach", rung: "hands-on-thighs", positions: [], demands: [], delay: 0.55 },
  propOnForearms: { words: "props on both forearms", activity: "prone-on-elbows-hold-and-shift", rung: "flat-hold", positions: ["prone", "prone-on-elbows", "wedge-prone"], demands: ["pronePressure"], delay: 0.3 },
  handsAndKnees: { words: "holds hands and knees", activity: "hands-and-knees-rock", rung: "rock-back", positions: ["hands-and-knees"], demands: ["kneePressure"], delay: 0.3 },
  tallKneel: { words: "kneels upright", activity: "tall-kneel-bench-hold-and-shift", rung: "strong-hand-hold", positions: ["tall-kneeling", "tall-kneeling-at-bench", "heel-sitting"], demands: ["kneePressure"], delay: 0.55 },
  standUp: { words: "stands up", activity: "sit-to-stand", rung: "high-seat-hands-on-knees", positions: ["standing-in-bars", "walking-in-bars", "forearms-on-table-standing"], demands: ["standing"], delay: 0.25 },
  standThirtySeconds: { words: "stands thirty seconds", activity: "bars-weak-stance", rung: "stand-seat-close", positions: ["standing-in-bars", "walking-in-bars"], demands: ["standing"], delay: 0.55 },
  step: { words: "steps", activity: "bars-strong-step", rung: "strong-foot-lifts", positions: ["walking-in-bars", "walking-with-device", "standing-at-steps"], demands: [], delay: 0.38 },
};
