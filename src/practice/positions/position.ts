import type { Side } from "../../quantity/sides.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { DemandId, EquipmentId, HelperPose, PlaceId, PositionId, PurposeId } from "../codes.ts";

/** A position to rest or work in: what it is for, how it is set up well, where the helper is, and how to leave it. Weak and strong only. */
export interface Position {
  readonly id: PositionId;
  /** As a therapist names it: "Hook-lying". */
  readonly name: string;
  /** As a patient or relative would say it: "On your back, knees bent". */
  readonly plainName: string;
  /** What it is for: the function and what it leads to, in one or two sentences. */
  readonly isFor: string;
  readonly purposes: readonly PurposeId[];
  readonly prerequisites: {
    readonly range: readonly string[];
    readonly strength: readonly string[];
    readonly precautions: readonly string[];
  };
  /** How it is set up well, one point per line: "Elbows directly under the shoulders". */
  readonly setUpWell: readonly string[];
  readonly helper: {
    readonly pose: HelperPose;
    /** Which side of the person, or which end. */
    readonly beside: Side | "front" | "behind" | "foot" | "head";
    /** Where and how, in words. */
    readonly place: string;
  };
  readonly watch: readonly string[];
  /** How the weak shoulder is protected here. */
  readonly weakShoulder: string;
  /** Asked and looked at on arriving: arm free, nothing pressing, breathing easy, dizzy or not. */
  readonly comfortCheck: readonly string[];
  readonly wayOut: WayOut;
  readonly demands: readonly DemandId[];
  /** The helper has to kneel on the floor for it, unless the mat is raised. */
  readonly floorStance: boolean;
  readonly equipment: readonly EquipmentId[];
  readonly places: readonly PlaceId[];
  /** The person resting in it. */
  readonly pose: PoseSpecification;
  readonly sources: readonly SourceId[];
}

/** How to leave a position, planned and in a hurry, and what it costs. */
export interface WayOut {
  readonly planned: readonly string[];
  readonly hurry: readonly string[];
  /** Where the planned way ends. */
  readonly to: PositionId;
  readonly minutes: number;
  /** Share of the person's strength for a session that is kept back for it, 0 to 1. */
  readonly strengthShare: number;
}
