import type { KeptFigure, VitalChange, VitalLimit } from "./limit.ts";

/** Outside these an exercise under way ends. */
export const STOP_LIMITS = [
  { id: "systolicStop", of: "systolic", when: "atOrAbove", value: 250, unit: "mmHg", rule: "systolic pressure too high to go on", whatToDo: "Stop, rest sitting or lying with the head up, measure again, tell the physician.", source: "heart-failure-rev-2023", seen: "read", place: "table 2", population: "adults in exercise training", order: "systolicMax" },
  { id: "diastolicStop", of: "diastolic", when: "atOrAbove", value: 115, unit: "mmHg", rule: "diastolic pressure too high to go on", whatToDo: "Stop, rest sitting or lying with the head up, measure again, tell the physician.", source: "heart-failure-rev-2023", seen: "read", place: "table 2", population: "adults in exercise training", order: "diastolicMax" },
  { id: "oxygenStop", of: "oxygenSaturation", when: "below", value: 90, unit: "%", rule: "oxygen saturation too low to go on", whatToDo: "Stop, sit up, check probe and oxygen, tell the nurse.", source: "hodgson-2014", seen: "read", place: "consensus table", population: "adults in intensive care", order: "oxygenSaturationMin" },
  { id: "breathingStop", of: "respiratoryRate", when: "above", value: 30, unit: "1/min", rule: "breathing too fast to go on", whatToDo: "Stop, sit up, measure oxygen; no better in 2 minutes: call.", source: "hodgson-2014", seen: "read", place: "consensus table", population: "adults in intensive care", order: null },
  { id: "heartRateStop", of: "heartRate", when: "above", value: 130, unit: "1/min", rule: "heart rate too high to go on", whatToDo: "Stop, rest, feel the pulse; irregular or not settling: tell the physician.", source: "cardiac-inpatient-phase", seen: "quoted", place: "secondary summary", population: "adults in the inpatient phase of cardiac rehabilitation", order: "heartRateMax" },
] as const satisfies readonly VitalLimit[];

/** Changes against the measurement before that end an exercise or a rise. */
export const STOP_CHANGES = [
  { id: "systolicFallEffort", of: "systolicFallWithEffort", when: "above", value: 10, unit: "mmHg", rule: "systolic pressure falls while the work rises", whatToDo: "Stop, lie down, measure again, tell the physician.", source: "exercise-stop-trial-table", seen: "read", place: "table 6", population: "adults in exercise testing", order: null },
  { id: "heartRateRise", of: "heartRateRise", when: "above", value: 30, unit: "1/min", rule: "heart rate far above rest", whatToDo: "Stop, rest until it is near rest again, then one rung down.", source: "cardiac-inpatient-phase", seen: "quoted", place: "secondary summary", population: "adults in the inpatient phase of cardiac rehabilitation", order: null },
  { id: "systolicFallUp", of: "systolicFallComingUp", when: "atOrAbove", value: 20, unit: "mmHg", rule: "systolic pressure falls on coming up", whatToDo: "Lie down again; ankle pumps, then up in stages once settled; not settled: call.", source: "orthostatic-statpearls", seen: "read", place: "definition", population: "adults, within 3 minutes of standing after 5 minutes lying", order: null },
  { id: "diastolicFallUp", of: "diastolicFallComingUp", when: "atOrAbove", value: 10, unit: "mmHg", rule: "diastolic pressure falls on coming up", whatToDo: "Lie down again; ankle pumps, then up in stages once settled; not settled: call.", source: "orthostatic-statpearls", seen: "read", place: "definition", population: "adults, within 3 minutes of standing after 5 minutes lying", order: null },
] as const satisfies readonly VitalLimit<VitalChange>[];

/** Smaller falls from sitting to standing that already mean something. */
export const NEAR_CHANGES = [
  { id: "systolicFallFromSitting", of: "systolicFallComingUp", when: "atOrAbove", value: 15, unit: "mmHg", rule: "systolic pressure fell on rising from sitting: wait, measure again", whatToDo: "Wait and measure again.", source: "shaw-2017", seen: "read", place: "abstract", population: "adults rising from sitting", order: null },
  { id: "diastolicFallFromSitting", of: "diastolicFallComingUp", when: "atOrAbove", value: 7, unit: "mmHg", rule: "diastolic pressure fell on rising from sitting: wait, measure again", whatToDo: "Wait and measure again.", source: "shaw-2017", seen: "read", place: "abstract", population: "adults rising from sitting", order: null },
] as const satisfies readonly VitalLimit<VitalChange>[];

/** Figures found and not used as a limit, so that a site can see what else is printed. */
export const KEPT_FIGURES = [
  { text: "Early mobilisation was allowed up to a systolic pressure of 220 in the first days.", source: "avert-criteria-2014", seen: "read", notUsedBecause: "the training limit of 180 is stricter; an order may allow more" },
  { text: "Resting systolic pressure above 200 or diastolic above 110: do not train.", source: "inpatient-pressure-list", seen: "read", notUsedBecause: "older and looser than the limit used" },
  { text: "Below 180/105 for 24 hours after a clot was dissolved; at most 180/105 after it was drawn out.", source: "thrombolysis-pressure", seen: "read", notUsedBecause: "the first day is held altogether without an order" },
  { text: "Without reperfusion the pressure is usually not treated below 220/120 in the first 48 to 72 hours.", source: "no-reperfusion-pressure", seen: "read", notUsedBecause: "about drugs, not about moving" },
  { text: "Saturation above 88 %, breathing 5 to 40, heart rate 40 to 130, systolic 90 to 180.", source: "icu-mobilisation-table-5", seen: "read", notUsedBecause: "looser than the limits used" },
  { text: "Systolic pressure falls by more than 30 on first sitting up: lie down, stop.", source: "avert-first-sitting", seen: "memory", notUsedBecause: "from memory, and looser than the fall of 20 used" },
  { text: "Resting heart rate above 120: do not train.", source: "heart-failure-rev-2023", seen: "read", notUsedBecause: "looser than the limit used" },
] as const satisfies readonly KeptFigure[];
