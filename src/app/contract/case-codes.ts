/** Codes of the case file that no other folder holds. They stay stable. */
export const WEAK_SIDES = ["left", "right", "both", "neither"] as const;
export const BODY_SIDES = ["left", "right"] as const;
export const GRADES = ["0", "1", "1+", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"] as const;
export const TONE_GRADES = ["0", "1", "1+", "2", "3", "4"] as const;
export const TONE_KEYS = [
  "shoulderAdductors",
  "elbowFlexors",
  "wristFlexors",
  "fingerFlexors",
  "hipAdductors",
  "kneeExtensors",
  "kneeFlexors",
  "anklePlantarflexors",
] as const;
export const SENSATION_KEYS = ["armTouch", "armPosition", "legTouch", "legPosition"] as const;
export const LOAD_SHARE_KEYS = ["standing", "kneeling", "halfKneeling", "sitting"] as const;
export const CAUSE_KINDS = ["stroke", "spinalCord", "amputation", "fracture", "general"] as const;
export const STROKE_TYPES = ["infarct", "haemorrhage", "unknown"] as const;
export const TERRITORIES = [
  "anterior",
  "middle",
  "posterior",
  "brainstem",
  "cerebellum",
  "lacunar",
  "unknown",
] as const;
export const AMPUTATION_LEVELS = ["partialFoot", "ankle", "belowKnee", "throughKnee", "aboveKnee"] as const;
export const LOOK_RESULTS = ["notTried", "cannot", "withHelp", "withTouch", "alone", "aloneWell"] as const;
export const GAVE_WAY_JOINTS = ["shoulder", "elbow", "wrist", "trunk", "hip", "knee", "ankle"] as const;
export const GAVE_WAY_HOW = ["folds", "snapsBack", "turns", "drops"] as const;
export const TASK_STOPPED_BY = [
  "pain",
  "dizziness",
  "breath",
  "fear",
  "understanding",
  "attention",
  "tone",
  "equipment",
  "other",
] as const;
export const BALANCE_GRADES = ["none", "poor", "fair", "good", "normal"] as const;
export const SEVERITIES = ["none", "mild", "marked"] as const;
export const FALLS_SEEN = ["weak", "strong", "forward", "back", "backAndWeak", "forwardAndWeak"] as const;
export const APHASIAS = ["none", "expressive", "receptive", "global"] as const;
export const FOLLOWS = ["words", "oneStep", "gesture", "no"] as const;
export const APPROACHES = ["spare", "lend", "train"] as const;
export const RAILS = ["left", "right", "both", "none"] as const;
export const LIVES_WITH = ["alone", "partner", "family", "facility"] as const;
