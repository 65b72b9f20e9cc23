import type { BodySize } from "../mechanics/body/body.ts";
import type { Approach, EquipmentId, Limb, PlaceId } from "../practice/codes.ts";
import type { MedicineId } from "../practice/precautions/cautions.ts";
import type { PrecautionFinding } from "../practice/precautions/precaution.ts";
import type { VitalSigns } from "../practice/vital-signs/limit.ts";
import type { Side } from "../quantity/sides.ts";
import type { TaskResult } from "./person/evidence.ts";
import type { Pattern } from "./person/prior.ts";
import type { LimbKey, TrunkKey } from "./person/slots.ts";

/** The twelve tasks of the ten-minute look. */
export const LOOK_TASKS = [
  "rollToStrong",
  "rollToWeak",
  "bridge",
  "bridgeLiftWeakFoot",
  "lieToSit",
  "sitThirtySeconds",
  "propOnForearms",
  "handsAndKnees",
  "tallKneel",
  "standUp",
  "standThirtySeconds",
  "step",
] as const;
export type LookTask = (typeof LOOK_TASKS)[number];
export type StoppedBy =
  | "pain"
  | "dizziness"
  | "breath"
  | "fear"
  | "understanding"
  | "attention"
  | "tone"
  | "equipment"
  | "other";
export type GaveWayJoint = "shoulder" | "elbow" | "wrist" | "trunk" | "hip" | "knee" | "ankle";

export interface GaveWay {
  readonly joint: GaveWayJoint;
  readonly side: Side | null;
  readonly how: "folds" | "snapsBack" | "turns" | "drops" | null;
}
export interface LookEntry {
  readonly task: LookTask;
  readonly result: TaskResult | "notTried";
  readonly gaveWay: GaveWay | null;
  readonly stoppedBy: StoppedBy | null;
  /** Height of the seat the person stood up from [m]. */
  readonly seatHeight: number | null;
}

export type GradeCode = "0" | "1" | "1+" | "2-" | "2" | "2+" | "3-" | "3" | "3+" | "4-" | "4" | "4+" | "5-" | "5";
export type StrengthReading =
  | { readonly grade: GradeCode }
  | { readonly newtonMetres: number }
  | { readonly newtons: number; readonly leverMetres: number };
export type StrengthEntry =
  | { readonly side: Side; readonly key: LimbKey; readonly reading: StrengthReading }
  | { readonly side: null; readonly key: TrunkKey; readonly reading: StrengthReading };

export type FallSeen = "weak" | "strong" | "forward" | "back" | "backAndWeak" | "forwardAndWeak";
export type Severity = "none" | "mild" | "marked";
export type BalanceGrade = "none" | "poor" | "fair" | "good" | "normal";

export interface PreviousItem {
  readonly activity: string;
  readonly rung: string;
  readonly done: "asPlanned" | "changed" | "notDone";
  readonly sets: number | null;
  readonly repetitions: number | null;
  readonly help: string | null;
  readonly faults: readonly string[];
  readonly pain: number | null;
  readonly exertion: number | null;
  readonly gaveWay: GaveWay | null;
  /** Whether it got worse within a set, or from one set to a later one; absent where nobody said so. */
  readonly worse?: "withinSet" | "laterSets";
}
export interface PreviousSession {
  readonly date: string | null;
  readonly items: readonly PreviousItem[];
  readonly stopped: { readonly because: string } | null;
  /** What was said on the day after; about one ladder where it names one. */
  readonly nextDay?: {
    readonly activity: string | null;
    readonly pain: number | null;
    readonly tired: "no" | "sleptOff" | "stillThere" | null;
  };
  /** Who looked at what had got worse since, and let it go on. */
  readonly checkedBy?: string;
}

/** All that is known of the person, in weak and strong words. Null and absent mean "not known". */
export interface Findings {
  readonly size: BodySize;
  readonly ageYears: number;
  readonly pattern: Pattern;
  readonly daysSinceOnset: number | null;
  readonly stroke: boolean;
  readonly date: string | null;
  readonly look: readonly LookEntry[];
  readonly strength: readonly StrengthEntry[];
  readonly loadShareWeak: Readonly<Partial<Record<"standing" | "kneeling" | "halfKneeling" | "sitting", number>>>;
  readonly rangeDeg: Readonly<Record<Side, Readonly<Record<string, number>>>>;
  readonly tone: Readonly<Record<Side, Readonly<Record<string, string>>>>;
  readonly sensation: Readonly<Record<Side, Readonly<Record<string, "intact" | "reduced" | "absent">>>>;
  readonly shoulder: {
    readonly painAtRest: number | null;
    readonly painOnMovement: number | null;
    readonly gapFingers: number | null;
  };
  readonly balance: { readonly sitting: BalanceGrade | null; readonly standing: BalanceGrade | null };
  readonly signs: {
    readonly pushing: Severity | null;
    readonly neglect: Severity | null;
    readonly impulsive: boolean | null;
    readonly faints: boolean | null;
    readonly fallSeen: FallSeen | null;
  };
  readonly communication: {
    readonly aphasia: "none" | "expressive" | "receptive" | "global" | null;
    readonly follows: "words" | "oneStep" | "gesture" | "no" | null;
  };
  readonly precautions: readonly PrecautionFinding[];
  readonly medicines: readonly MedicineId[];
  readonly vitals: VitalSigns;
  readonly place: PlaceId | null;
  readonly equipment: readonly EquipmentId[];
  readonly helpers: { readonly count: number; readonly canKneel: boolean; readonly backTrouble: boolean };
  readonly approach: Readonly<Record<Limb, Approach>>;
  /** Which of the above was not given and is assumed, by the case file's own path. */
  readonly assumed: readonly string[];
  readonly goals: readonly string[];
  readonly home: { readonly livesWith: "alone" | "partner" | "family" | "facility" | null } | null;
  readonly previous: readonly PreviousSession[];
}
