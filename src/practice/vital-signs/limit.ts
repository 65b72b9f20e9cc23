import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

/** What was measured at the bedside; anything may be missing. Pressure in mmHg, rates a minute, saturation in percent. */
export interface VitalSigns {
  readonly systolic?: number;
  readonly diastolic?: number;
  readonly heartRate?: number;
  readonly oxygenSaturation?: number;
  readonly respiratoryRate?: number;
  readonly temperatureC?: number;
  readonly painNow?: number;
  readonly lastMealMinutesAgo?: number;
}

export type MeasuredVital =
  | "systolic"
  | "diastolic"
  | "heartRate"
  | "oxygenSaturation"
  | "respiratoryRate"
  | "temperatureC";

/** A change against an earlier measurement of the same person; falls and rises are counted as positive numbers. */
export type VitalChange = "systolicFallWithEffort" | "heartRateRise" | "systolicFallComingUp" | "diastolicFallComingUp";

export type Crossing = "below" | "above" | "atOrAbove";

/** The order that stands in for a limit where the physician wrote one. */
export type VitalOrderKey =
  | "systolicMax"
  | "systolicMin"
  | "diastolicMax"
  | "heartRateMax"
  | "heartRateMin"
  | "oxygenSaturationMin";

/** A figure that holds, stops or warns, as printed in its source. */
export interface VitalLimit<Of extends string = MeasuredVital> {
  readonly id: string;
  readonly of: Of;
  readonly when: Crossing;
  readonly value: number;
  readonly unit: string;
  /** The rule in words, without the figure. */
  readonly rule: string;
  readonly whatToDo: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly place: string;
  readonly population: string;
  /** Null where no order of the case file speaks about it. */
  readonly order: VitalOrderKey | null;
}

/** A figure that was found and is not used, with the reason. */
export interface KeptFigure {
  readonly text: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly notUsedBecause: string;
}
