import type { SourceId } from "../../sources/bibliography.ts";
import type { Published } from "../../sources/source.ts";

interface HelperLimitRow extends Published<SourceId> {
  readonly what: string;
  readonly editable: boolean;
}

/** What one helper may lift, push and carry in the back. */
export const HELPER_LIMITS = {
  lift: { what: "lifted by one helper in a good posture, person helping and not moving suddenly", value: 156, unit: "N", source: "waters-2007", seen: "derived", place: "35 lb as printed", population: "carers handling patients", editable: false },
  liftPounds: { what: "the same limit as printed", value: 35, unit: "lb", source: "waters-2007", seen: "read", place: "text", population: "carers handling patients", editable: false },
  liftAwkward: { what: "lifted in a kneeling, sitting, twisted, one-handed or far-reaching posture", value: 78, unit: "N", source: "judgement", seen: "judgement", place: "half the limit", population: "helpers at the mat", editable: true },
  touch: { what: "counted as a touch that steadies or cues", value: 20, unit: "N", source: "judgement", seen: "judgement", place: "about 2 kg", population: "helpers at the mat", editable: true },
  pushStartWomen: { what: "pushed to start or stop a load", value: 150, unit: "N", source: "hse-pushing", seen: "read", place: "guideline figures", population: "women", editable: false },
  pushStartMen: { what: "pushed to start or stop a load", value: 200, unit: "N", source: "hse-pushing", seen: "read", place: "guideline figures", population: "men", editable: false },
  pushKeepWomen: { what: "pushed to keep a load moving", value: 70, unit: "N", source: "hse-pushing", seen: "read", place: "guideline figures", population: "women", editable: false },
  pushKeepMen: { what: "pushed to keep a load moving", value: 100, unit: "N", source: "hse-pushing", seen: "read", place: "guideline figures", population: "men", editable: false },
  backCompression: { what: "compression in the low back", value: 3400, unit: "N", source: "arjmand-2015", seen: "read", place: "limit cited from NIOSH", population: "workers", editable: false },
  backCompressionMost: { what: "compression in the low back, most permissible", value: 6400, unit: "N", source: "niosh-1981", seen: "quoted", place: "handbook", population: "workers", editable: false },
} as const satisfies Record<string, HelperLimitRow>;
