import type { VitalLimit } from "./limit.ts";

/**
 * Outside these nothing starts. Every figure was read in its source; the choice among sources is this project's, the
 * stricter one where two speak of the same people. A site may change them and the physician's orders prevail.
 */
export const START_LIMITS = [
  { id: "systolicLow", of: "systolic", when: "below", value: 110, unit: "mmHg", rule: "systolic pressure too low to start", whatToDo: "Lie flat, measure again after 5 minutes, tell the nurse or physician.", source: "avert-criteria-2014", seen: "read", place: "table 1", population: "adults in the first days after a stroke", order: "systolicMin" },
  { id: "systolicHigh", of: "systolic", when: "atOrAbove", value: 180, unit: "mmHg", rule: "systolic pressure too high to start", whatToDo: "Rest 5 to 10 minutes, measure again, tell the nurse or physician.", source: "heart-failure-rev-2023", seen: "read", place: "table 1", population: "adults before exercise training", order: "systolicMax" },
  { id: "diastolicHigh", of: "diastolic", when: "atOrAbove", value: 110, unit: "mmHg", rule: "diastolic pressure too high to start", whatToDo: "Rest 5 to 10 minutes, measure again, tell the nurse or physician.", source: "heart-failure-rev-2023", seen: "read", place: "table 1", population: "adults before exercise training", order: "diastolicMax" },
  { id: "heartRateLow", of: "heartRate", when: "below", value: 40, unit: "1/min", rule: "heart rate too low to start", whatToDo: "Do not start; feel the pulse for a minute and tell the physician.", source: "avert-criteria-2014", seen: "read", place: "table 1", population: "adults in the first days after a stroke", order: "heartRateMin" },
  { id: "heartRateHigh", of: "heartRate", when: "above", value: 110, unit: "1/min", rule: "heart rate at rest too high to start", whatToDo: "Rest 5 to 10 minutes, measure again, tell the physician.", source: "avert-criteria-2014", seen: "read", place: "table 1", population: "adults in the first days after a stroke", order: "heartRateMax" },
  { id: "oxygenLow", of: "oxygenSaturation", when: "below", value: 92, unit: "%", rule: "oxygen saturation too low to start", whatToDo: "Sit up, check probe and oxygen, tell the nurse.", source: "avert-criteria-2014", seen: "read", place: "table 1", population: "adults in the first days after a stroke, with or without oxygen", order: "oxygenSaturationMin" },
  { id: "temperatureHigh", of: "temperatureC", when: "above", value: 38.5, unit: "degrees Celsius", rule: "fever", whatToDo: "Do not start; tell the nurse or physician.", source: "avert-criteria-2014", seen: "read", place: "table 1", population: "adults in the first days after a stroke", order: null },
  { id: "breathingFast", of: "respiratoryRate", when: "above", value: 30, unit: "1/min", rule: "breathing too fast to start", whatToDo: "Sit up, measure oxygen, tell the nurse or physician.", source: "hodgson-2014", seen: "read", place: "consensus table", population: "adults in intensive care", order: null },
] as const satisfies readonly VitalLimit[];

/** Between these and the limits above the session may start, and says so. */
export const NEAR_LIMITS = [
  { id: "systolicLowish", of: "systolic", when: "below", value: 120, unit: "mmHg", rule: "systolic pressure on the low side: come up in stages and measure", whatToDo: "Come up in stages and measure.", source: "avert-phase-two", seen: "read", place: "table", population: "adults in the first days after a stroke", order: "systolicMin" },
  { id: "diastolicHighish", of: "diastolic", when: "above", value: 100, unit: "mmHg", rule: "diastolic pressure on the high side: measure after the first set", whatToDo: "Measure after the first set.", source: "ats-walk-test-2002", seen: "read", place: "relative contraindications", population: "adults before a walk test", order: "diastolicMax" },
  { id: "heartRateHighish", of: "heartRate", when: "above", value: 100, unit: "1/min", rule: "heart rate on the high side: light work, longer rests", whatToDo: "Light work, longer rests.", source: "avert-phase-two", seen: "read", place: "table", population: "adults in the first days after a stroke", order: "heartRateMax" },
] as const satisfies readonly VitalLimit[];
