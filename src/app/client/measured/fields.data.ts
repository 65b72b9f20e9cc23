/** One field of the case file as the form asks for it. */
export type FieldRow =
  | { readonly kind: "number"; readonly path: string; readonly name: string; readonly unit?: string }
  | { readonly kind: "choice"; readonly path: string; readonly name: string; readonly codes: readonly string[] }
  | { readonly kind: "yesNo"; readonly path: string; readonly name: string }
  | { readonly kind: "words"; readonly path: string; readonly name: string };

const SEVERITY = ["none", "mild", "marked"] as const;
const BALANCE = ["none", "poor", "fair", "good", "normal"] as const;
const SENSE = ["intact", "reduced", "absent"] as const;
const TONE = ["0", "1", "1+", "2", "3", "4"] as const;
const APPROACH = ["spare", "lend", "train"] as const;

export const VITALS: readonly FieldRow[] = [
  { kind: "number", path: "vitals.systolic", name: "Pressure, upper", unit: "mmHg" },
  { kind: "number", path: "vitals.diastolic", name: "Pressure, lower", unit: "mmHg" },
  { kind: "number", path: "vitals.heartRate", name: "Pulse", unit: "a minute" },
  { kind: "number", path: "vitals.oxygenSaturation", name: "Oxygen", unit: "percent" },
  { kind: "number", path: "vitals.respiratoryRate", name: "Breaths", unit: "a minute" },
  { kind: "number", path: "vitals.temperatureC", name: "Temperature", unit: "degrees Celsius" },
  { kind: "number", path: "vitals.painNow", name: "Pain now", unit: "0 to 10" },
  { kind: "number", path: "vitals.lastMealMinutesAgo", name: "Last meal", unit: "minutes ago" },
];

export const PERSON: readonly FieldRow[] = [
  { kind: "words", path: "label", name: "What you call them here" },
  { kind: "words", path: "date", name: "Day of the plan" },
  { kind: "choice", path: "weakSide", name: "Weak side", codes: ["left", "right", "both", "neither"] },
  { kind: "number", path: "daysSinceOnset", name: "Days since it happened" },
  { kind: "choice", path: "person.sex", name: "Sex", codes: ["female", "male"] },
  { kind: "number", path: "person.ageYears", name: "Age", unit: "years" },
  { kind: "number", path: "person.heightCm", name: "Height", unit: "centimetres" },
  { kind: "number", path: "person.massKg", name: "Mass", unit: "kilograms" },
  { kind: "choice", path: "dominantHand", name: "Hand used most", codes: ["left", "right", "both"] },
  { kind: "choice", path: "cause.kind", name: "Cause", codes: ["stroke", "spinalCord", "amputation", "fracture", "general"] },
  { kind: "choice", path: "cause.type", name: "Kind of stroke", codes: ["infarct", "haemorrhage", "unknown"] },
  { kind: "choice", path: "cause.territory", name: "Territory", codes: ["anterior", "middle", "posterior", "brainstem", "cerebellum", "lacunar", "unknown"] },
];

export const SIGNS: readonly FieldRow[] = [
  { kind: "choice", path: "balance.sitting", name: "Balance, sitting", codes: BALANCE },
  { kind: "choice", path: "balance.standing", name: "Balance, standing", codes: BALANCE },
  { kind: "choice", path: "signs.pushing", name: "Pushing", codes: SEVERITY },
  { kind: "choice", path: "signs.neglect", name: "Neglect", codes: SEVERITY },
  { kind: "yesNo", path: "signs.impulsive", name: "Impulsive" },
  { kind: "yesNo", path: "signs.faints", name: "Faints" },
  { kind: "choice", path: "signs.fallSeen", name: "Fall seen toward", codes: ["weak", "strong", "forward", "back", "backAndWeak", "forwardAndWeak"] },
  { kind: "choice", path: "communication.aphasia", name: "Aphasia", codes: ["none", "expressive", "receptive", "global"] },
  { kind: "choice", path: "communication.follows", name: "Follows", codes: ["words", "oneStep", "gesture", "no"] },
  { kind: "words", path: "communication.language", name: "Language (such as en)" },
  { kind: "number", path: "shoulder.painAtRest", name: "Weak shoulder, pain at rest", unit: "0 to 10" },
  { kind: "number", path: "shoulder.painOnMovement", name: "Weak shoulder, pain on moving", unit: "0 to 10" },
  { kind: "number", path: "shoulder.gapFingers", name: "Weak shoulder, gap", unit: "finger breadths" },
  { kind: "number", path: "loadShareWeak.standing", name: "Weight on the weak leg, standing", unit: "share, 0 to 1" },
  { kind: "number", path: "loadShareWeak.sitting", name: "Weight on the weak side, sitting", unit: "share, 0 to 1" },
];

export const APPROACHES: readonly FieldRow[] = [
  { kind: "choice", path: "approach.arm", name: "Arm", codes: APPROACH },
  { kind: "choice", path: "approach.leg", name: "Leg", codes: APPROACH },
  { kind: "choice", path: "approach.trunk", name: "Trunk", codes: APPROACH },
];

export const ROOM: readonly FieldRow[] = [
  { kind: "choice", path: "place", name: "Place", codes: ["bed", "plinth", "raisedMat", "floorMat", "bars"] },
  { kind: "number", path: "helpers.count", name: "Helpers besides you" },
  { kind: "yesNo", path: "helpers.canKneel", name: "You can kneel" },
];

export const HOME: readonly FieldRow[] = [
  { kind: "choice", path: "home.livesWith", name: "Lives with", codes: ["alone", "partner", "family", "facility"] },
  { kind: "number", path: "helpers.family.heightCm", name: "Who helps at home: height", unit: "centimetres" },
  { kind: "number", path: "helpers.family.massKg", name: "Who helps at home: mass", unit: "kilograms" },
  { kind: "number", path: "helpers.family.ageYears", name: "Who helps at home: age", unit: "years" },
  { kind: "yesNo", path: "helpers.family.backTrouble", name: "Who helps at home: back trouble" },
  { kind: "number", path: "home.stepsIn", name: "Steps at the door" },
  { kind: "choice", path: "home.railGoingUp", name: "Rail going up", codes: ["left", "right", "both", "none"] },
  { kind: "number", path: "home.bedHeightCm", name: "Height of the bed", unit: "centimetres" },
  { kind: "number", path: "home.toiletHeightCm", name: "Height of the toilet", unit: "centimetres" },
];

export const STRENGTH_ROWS: readonly { readonly key: string; readonly name: string }[] = [
  { key: "shoulderFlexion", name: "Shoulder forward" },
  { key: "shoulderExtension", name: "Shoulder back" },
  { key: "shoulderAbduction", name: "Shoulder out" },
  { key: "shoulderAdduction", name: "Shoulder in" },
  { key: "shoulderExternalRotation", name: "Shoulder turned out" },
  { key: "shoulderInternalRotation", name: "Shoulder turned in" },
  { key: "elbowFlexion", name: "Elbow bend" },
  { key: "elbowExtension", name: "Elbow straighten" },
  { key: "wristFlexion", name: "Wrist bend" },
  { key: "wristExtension", name: "Wrist lift" },
  { key: "grip", name: "Grip" },
  { key: "hipFlexion", name: "Hip bend" },
  { key: "hipExtension", name: "Hip straighten" },
  { key: "hipAbduction", name: "Hip out" },
  { key: "hipAdduction", name: "Hip in" },
  { key: "hipExternalRotation", name: "Hip turned out" },
  { key: "hipInternalRotation", name: "Hip turned in" },
  { key: "kneeFlexion", name: "Knee bend" },
  { key: "kneeExtension", name: "Knee straighten" },
  { key: "anklePlantarflexion", name: "Foot down" },
  { key: "ankleDorsiflexion", name: "Foot up" },
];
export const TRUNK_ROWS: readonly { readonly key: string; readonly name: string }[] = [
  { key: "flexion", name: "Trunk bend" },
  { key: "extension", name: "Trunk straighten" },
  { key: "lateralFlexion", name: "Trunk sideways" },
  { key: "rotation", name: "Trunk turn" },
];
export const RANGE_ROWS: readonly { readonly key: string; readonly name: string }[] = [
  { key: "shoulderFlexion", name: "Shoulder forward" },
  { key: "shoulderExternalRotation", name: "Shoulder turned out" },
  { key: "elbowExtension", name: "Elbow straighten" },
  { key: "wristExtension", name: "Wrist lift" },
  { key: "hipFlexion", name: "Hip bend" },
  { key: "hipExtension", name: "Hip straighten" },
  { key: "kneeFlexion", name: "Knee bend" },
  { key: "kneeExtension", name: "Knee straighten" },
  { key: "ankleDorsiflexion", name: "Foot up" },
  { key: "hamstrings", name: "Straight leg raised" },
];
export const TONE_ROWS: readonly { readonly key: string; readonly name: string }[] = [
  { key: "shoulderAdductors", name: "Shoulder, pulling in" },
  { key: "elbowFlexors", name: "Elbow, bending" },
  { key: "wristFlexors", name: "Wrist, bending" },
  { key: "fingerFlexors", name: "Fingers, bending" },
  { key: "hipAdductors", name: "Hip, pulling in" },
  { key: "kneeExtensors", name: "Knee, straightening" },
  { key: "kneeFlexors", name: "Knee, bending" },
  { key: "anklePlantarflexors", name: "Ankle, pointing" },
];
export const SENSE_ROWS: readonly { readonly key: string; readonly name: string }[] = [
  { key: "armTouch", name: "Arm, touch" },
  { key: "armPosition", name: "Arm, position" },
  { key: "legTouch", name: "Leg, touch" },
  { key: "legPosition", name: "Leg, position" },
];
export const TONE_CODES = TONE;
export const SENSE_CODES = SENSE;
export const EQUIPMENT: readonly { readonly id: string; readonly title: string }[] = [
  { id: "bolster", title: "Bolster" },
  { id: "wedge", title: "Wedge" },
  { id: "pillow", title: "Pillow" },
  { id: "stool", title: "Stool" },
  { id: "bench", title: "Bench" },
  { id: "table", title: "Table" },
  { id: "wall", title: "Wall" },
  { id: "belt", title: "Belt" },
  { id: "bars", title: "Parallel bars" },
  { id: "cane", title: "Cane" },
  { id: "quadCane", title: "Four-footed cane" },
  { id: "walker", title: "Walker" },
  { id: "footBlock", title: "Foot block" },
  { id: "nonSlip", title: "Non-slip mat" },
  { id: "band", title: "Band" },
  { id: "cuff", title: "Weight cuff" },
  { id: "ball", title: "Ball" },
  { id: "mirror", title: "Mirror" },
  { id: "steps", title: "Steps with a rail" },
];
