import { z } from "zod";
import { MEDICINE_IDS } from "../../practice/precautions/medicines.data.ts";
import { PRECAUTION_IDS } from "../../practice/precautions/identifiers.data.ts";
import { AMPUTATION_LEVELS, BODY_SIDES, CAUSE_KINDS, STROKE_TYPES, TERRITORIES } from "./case-codes.ts";
import { codes, group, listOf, maybe, measured, words, yesOrNo } from "./fields.ts";

const AMPUTATION_FIELDS = {
  side: maybe(codes("side of the amputation", BODY_SIDES)),
  level: maybe(codes("level of the amputation", AMPUTATION_LEVELS)),
  prosthesis: maybe(codes("prosthesis", ["on", "off"])),
};

/** What made the side weak. After an amputation its side, level and prosthesis stand beside the kind or in a group of their own. */
export const CAUSE = group("cause", {
  kind: maybe(codes("kind of cause", CAUSE_KINDS)),
  type: maybe(codes("type of stroke", STROKE_TYPES)),
  territory: maybe(codes("territory of the stroke", TERRITORIES)),
  ...AMPUTATION_FIELDS,
  amputation: maybe(group("amputation", AMPUTATION_FIELDS)),
});

const rate = (what: string, min: number, max: number, unit: string) => measured({ what, min, max, unit });

/** What the physician set; it prevails over every figure of the tables. */
export const ORDERS = group("orders of the physician", {
  weightBearing: maybe(
    group("weight-bearing order", {
      leg: codes("leg", ["left", "right", "weak", "strong"]),
      percent: rate("share of body weight", 0, 100, "percent"),
    }),
  ),
  hipFlexionDegMax: maybe(rate("most hip flexion", 0, 150, "degrees")),
  systolicMax: maybe(rate("highest systolic pressure", 80, 260, "mmHg")),
  systolicMin: maybe(rate("lowest systolic pressure", 50, 200, "mmHg")),
  diastolicMax: maybe(rate("highest diastolic pressure", 40, 160, "mmHg")),
  heartRateMax: maybe(rate("highest heart rate", 40, 230, "beats a minute")),
  heartRateMin: maybe(rate("lowest heart rate", 20, 150, "beats a minute")),
  oxygenSaturationMin: maybe(rate("lowest oxygen saturation", 50, 100, "percent")),
  cleared: maybe(yesOrNo("cleared by the physician")),
});

const PRECAUTION_CODE = codes("precaution", PRECAUTION_IDS);

export const PRECAUTION = z.union(
  [
    PRECAUTION_CODE,
    group("precaution", { code: PRECAUTION_CODE, note: maybe(words("note", 500)), orders: maybe(ORDERS) }),
  ],
  { error: 'precaution: a code in quotes, or {"code": …, "note": …, "orders": …}' },
);

export const MEDICINES = listOf("medicines", codes("medicine", MEDICINE_IDS), 50);

export const VITALS = group("vital signs", {
  systolic: maybe(rate("systolic pressure", 40, 300, "mmHg")),
  diastolic: maybe(rate("diastolic pressure", 20, 200, "mmHg")),
  heartRate: maybe(rate("heart rate", 20, 250, "beats a minute")),
  oxygenSaturation: maybe(
    measured({
      what: "oxygen saturation",
      min: 40,
      max: 100,
      unit: "percent",
      hint: (v) => (v > 0.4 && v <= 1 ? `this looks like a fraction: write ${Math.round(v * 100)}` : null),
    }),
  ),
  respiratoryRate: maybe(rate("breaths", 2, 80, "a minute")),
  temperatureC: maybe(
    measured({
      what: "temperature",
      min: 30,
      max: 44,
      unit: "degrees Celsius",
      hint: (v) => (v > 85 && v < 112 ? "this looks like Fahrenheit" : null),
    }),
  ),
  painNow: maybe(rate("pain now", 0, 10, "(0 none, 10 the most)")),
  lastMealMinutesAgo: maybe(rate("last meal", 0, 10080, "minutes ago")),
});
