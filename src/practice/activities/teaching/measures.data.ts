import type { Measure } from "./teaching.ts";

/** Measures in which a gain on the mat would be seen: names and what they tell only; totals are kept, no wording is reprinted. */
export const MEASURES = {
  "trunk-control": { name: "Trunk Control Test", tells: "trunk control in bed and sitting", icf: ["b760", "d410", "d415"], source: "collin-wade-1990" },
  "postural-assessment": { name: "Postural Assessment Scale for Stroke Patients", tells: "holding and changing posture, lying to standing", icf: ["d410", "d415"], source: "benaim-1999" },
  "trunk-impairment": { name: "Trunk Impairment Scale", tells: "sitting balance, still and moving, and trunk coordination", icf: ["b755", "b760"], source: "verheyden-2004" },
  "limb-strength-index": { name: "Motricity Index", tells: "strength of arm and leg after stroke", icf: ["b730"], source: "demeurisse-1980" },
  "muscle-grade": { name: "Muscle grade of the Medical Research Council", tells: "strength of one muscle group", icf: ["b730"], source: "muscle-grade-mrc" },
  "leg-recovery": { name: "Fugl-Meyer Assessment, leg", tells: "selective movement of the leg", icf: ["b760", "b750", "b730"], source: "fugl-meyer-1975" },
  "arm-recovery": { name: "Fugl-Meyer Assessment, arm", tells: "selective movement of the arm", icf: ["b760", "b750", "b730"], source: "fugl-meyer-1975" },
  "balance-scale": { name: "Berg Balance Scale", tells: "balance sitting, rising and standing", icf: ["d410", "d415", "d420"], source: "berg-1989" },
  "sitting-function": { name: "Function in Sitting Test", tells: "balance in sitting while doing something", icf: ["d415", "d410"], source: "gorman-2010" },
  "ambulation-help": { name: "Functional Ambulation Category", tells: "how much human help walking takes", icf: ["d450", "d460"], source: "holden-1984" },
  "walking-speed": { name: "Walking speed over ten metres", tells: "speed of walking", icf: ["d450"], source: "moore-2018" },
  "five-rises": { name: "Five Times Sit to Stand", tells: "time for five rises from a chair", icf: ["d410", "b730"], source: "moore-2018" },
  "rise-walk-turn": { name: "Timed Up and Go", tells: "time to rise, walk, turn and sit", icf: ["d410", "d450", "d420"], source: "podsiadlo-1991" },
  "gait-assessment": { name: "Functional Gait Assessment", tells: "balance while walking", icf: ["d450", "d455"], source: "wrisley-2004" },
  "forward-reach": { name: "Functional Reach Test", tells: "how far the body can go over its feet", icf: ["d415", "d445"], source: "duncan-1990" },
  "one-leg-stance": { name: "Single-leg stance", tells: "seconds on one leg", icf: ["d415"], source: "springer-2007" },
  "mobility-index": { name: "Rivermead Mobility Index", tells: "mobility from bed to stairs", icf: ["d410", "d420", "d450", "d455"], source: "collen-1991" },
  "stroke-movement": { name: "Stroke Rehabilitation Assessment of Movement", tells: "movement of the limbs and basic mobility", icf: ["b760", "d410", "d450"], source: "daley-1999" },
  "mobility-help": { name: "Mobility codes of section GG", tells: "how much help each move takes on a usual day", icf: ["d410", "d420", "d450", "d455"], source: "cms-section-gg" },
  "pain-number": { name: "Pain number from 0 to 10", tells: "pain at rest and on moving", icf: ["b280"], source: "common-practice" },
} as const satisfies Record<string, Measure>;
export type MeasureId = keyof typeof MEASURES;
