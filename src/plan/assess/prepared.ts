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

const spared = new WeakMap<PoseSpecification, PoseSpecification>();
const OF_WEAK_ARM = /^(hand|grip|fist|wrist|forearm|elbow)\.weak$/;

/**
 * The same pose with a weak arm that is spared: it lies, hangs in a support or is held, bears no more than its own weight,
 * and its muscles are no part of the verdict.
 */
export function spareWeakArm(specification: PoseSpecification): PoseSpecification {
  let known = spared.get(specification);
  if (known === undefined) {
    known = {
      ...specification,
      contacts: specification.contacts.map((contact) =>
        OF_WEAK_ARM.test(contact.patch) && contact.effort !== "light"
          ? { ...contact, effort: "rest" as const }
          : contact,
      ),
      notCounted: [...new Set([...(specification.notCounted ?? []), "upperArm.weak", "girdle.weak"] as const)],
    };
    spared.set(specification, known);
  }
  return known;
}

/** Whether the weak arm pushes in a pose: it then counts even where it is only lent. */
export function weakArmPresses(specification: PoseSpecification): boolean {
  return specification.contacts.some(
    (contact) =>
      OF_WEAK_ARM.test(contact.patch) && (contact.effort ?? "press") === "press" && contact.role !== "closes",
  );
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
    const statics = prepareStatics(facts.body, pose, {
      limits,
      ...(share === undefined ? {} : { sharingWeak: share }),
    });
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
        known = prepared.possible
          ? prepareStations(facts.body, facts.ageYears, prepared.pose, {
              limits,
              ...(share === undefined ? {} : { sharingWeak: share }),
            })
          : null;
        reach.set(specification, known);
      }
      return known;
    },
  };
}
