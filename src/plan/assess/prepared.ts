import type { Body } from "../../mechanics/body/body.ts";
import { type NormalCapacities, normalCapacities } from "../../mechanics/body/strength-capacities.ts";
import { prepareStatics, type Statics } from "../../mechanics/equilibrium/statics.ts";
import { type ClosedPose, closePose } from "../../mechanics/pose/close.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { limitsOf } from "../../mechanics/pose/targets.ts";
import { takeSharing } from "../../mechanics/reach/sharing.ts";
import { prepareStations, type Stations } from "../../mechanics/reach/outline.ts";
import type { AngleId } from "../../mechanics/body/names.ts";

/** What a person's own body brings to a pose besides strength. */
export interface BodyFacts {
  readonly body: Body;
  readonly ageYears: number;
  readonly loadShareWeak: Readonly<Partial<Record<"standing" | "kneeling" | "halfKneeling" | "sitting", number>>>;
  /** Ranges of the person's own joints [rad]; absent is normal. */
  readonly ranges: Readonly<Partial<Record<AngleId, readonly [number, number]>>>;
}

/** A pose worked out for one body: kept, since it does not depend on strength. */
export interface PreparedPose {
  readonly possible: true;
  readonly pose: ClosedPose;
  readonly statics: Statics;
  readonly normal: NormalCapacities;
}
export interface NoPose {
  readonly possible: false;
  readonly because: string;
}

/** Works out poses of one body once and keeps them. */
export interface PoseKeeper {
  prepare(specification: PoseSpecification): PreparedPose | NoPose;
  stations(specification: PoseSpecification): Stations | null;
}

export function keepPoses(facts: BodyFacts): PoseKeeper {
  const poses = new Map<PoseSpecification, PreparedPose | NoPose>();
  const reach = new Map<PoseSpecification, Stations | null>();
  const limits = limitsOf(facts.body, facts.ranges);
  const shareOf = (specification: PoseSpecification): number | undefined =>
    specification.sharing === undefined ? undefined : facts.loadShareWeak[specification.sharing];
  const work = (specification: PoseSpecification): PreparedPose | NoPose => {
    const closed = closePose(facts.body, specification, limits);
    if (!closed.closed) return { possible: false, because: closed.because };
    const share = shareOf(specification);
    const pose = takeSharing(facts.body, closed, share, limits);
    const normal = normalCapacities(facts.body, facts.ageYears, pose.configuration.angles);
    const statics = prepareStatics(facts.body, pose, share === undefined ? {} : { sharingWeak: share });
    return { possible: true, pose, statics, normal };
  };
  return {
    prepare(specification) {
      let known = poses.get(specification);
      if (known === undefined) {
        known = work(specification);
        poses.set(specification, known);
      }
      return known;
    },
    stations(specification) {
      let known = reach.get(specification);
      if (known === undefined) {
        const prepared = this.prepare(specification);
        const share = shareOf(specification);
        known = prepared.possible ? prepareStations(facts.body, facts.ageYears, prepared.pose, { limits, ...(share === undefined ? {} : { sharingWeak: share }) }) : null;
        reach.set(specification, known);
      }
      return known;
    },
  };
}
