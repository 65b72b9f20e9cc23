import type { Side } from "../../quantity/sides.ts";
import type { Body } from "../body/body.ts";
import { type NormalCapacities, normalCapacities, scaleCapacities } from "../body/strength-capacities.ts";
import type { Strengths } from "../body/strength-keys.ts";
import type { Sharing } from "../equilibrium/cubes.ts";
import { leastImbalance } from "../equilibrium/feasible.ts";
import { BALANCED_WITHIN, describeBalance, shareHabitually } from "../equilibrium/habitual.ts";
import { prepareStatics, type Statics, type StaticsOptions } from "../equilibrium/statics.ts";
import type { ClosedPose } from "../pose/close.ts";
import { type Limits, limitsOf } from "../pose/targets.ts";
import { contactReach, FURTHEST } from "./contact-reach.ts";
import { slideCentre, type Slide } from "./slide.ts";

/** Directions in words of the person; front is the room's x. */
export const TOWARDS = [
  "forward",
  "forwardWeak",
  "weak",
  "backWeak",
  "back",
  "backStrong",
  "strong",
  "forwardStrong",
] as const;
export type Towards = (typeof TOWARDS)[number];

/** How far the weight can be taken one way, and what ends it. */
export interface OutlineDirection {
  readonly towards: Towards;
  /** Unit vector, room: x forward, y to the person's left. */
  readonly direction: readonly [number, number];
  readonly metres: number;
  readonly endedBy: "contact" | "friction" | "jointRange" | "muscle";
  /** What exactly: the joint and way for a muscle or a range; the patches that carry there for a contact. */
  readonly what: string;
  readonly side: Side | null;
}
export interface BalanceOutline {
  readonly balanced: true;
  readonly centre: readonly [number, number];
  readonly directions: readonly OutlineDirection[];
  readonly least: OutlineDirection;
  /** Effort that was allowed: 1, or today's where the pose already asks more. */
  readonly level: number;
}
export interface NoOutline {
  readonly balanced: false;
  readonly because: string;
}

/** What the outline needs of a body and a pose, whatever the strength: kept per body and pose. */
export interface Stations {
  readonly body: Body;
  readonly age: number;
  readonly square: Solvable;
  readonly ways: readonly Way[];
  readonly options: StaticsOptions;
  readonly limits: Limits;
}
interface Solvable {
  readonly metres: number;
  readonly statics: Statics;
  readonly normal: NormalCapacities;
}
/** One way out. Stops are worked out when first asked for: where muscle ends it early, the far ones never are. */
interface Way {
  readonly towards: Towards;
  readonly direction: readonly [number, number];
  /** Where the contacts end it, as they stand. */
  readonly contactEnd: number;
  readonly slips: () => boolean;
  readonly distances: readonly number[];
  readonly solvable: (Solvable | undefined)[];
  rangeEnd: Slide["rangeEnd"];
  /** The last stop before a joint's range ends the way; null where the body does not get there exactly. */
  atRange?: Solvable | null;
}

export interface StationOptions extends StaticsOptions {
  /** Stops on the way to the contacts' end, as shares of it. */
  readonly shares?: readonly number[];
}

/**
 * Works out where the centre of mass can go in eight directions before a contact, friction or a joint's range ends it, and
 * re-poses the body at stations on the way. Depends on the body alone: keep it.
 */
export function prepareStations(body: Body, age: number, pose: ClosedPose, options: StationOptions = {}): Stations {
  const limits = options.limits ?? limitsOf(body);
  const onFeet = pose.contacts.every(
    (contact) =>
      !contact.touches ||
      contact.specification.grips === true ||
      /^(foot|forefoot|heel|toes|hand|fist)\./.test(contact.patch),
  );
  const own = { ...options, functionalFeet: options.functionalFeet ?? onFeet };
  const square = solvableAt(body, age, 0, pose, own);
  let stuck: Statics | null = null;
  const sticky = (): Statics => (stuck ??= prepareStatics(body, pose, { ...own, friction: () => 2 }));
  const grip = { weak: square.normal.grip, strong: square.normal.grip };
  const lies = liesDown(pose);
  const shares = options.shares ?? [0.25, 0.5, 0.97];
  const ways = TOWARDS.map((towards, k): Way => {
    const turn = (k * Math.PI) / 4;
    const direction = [round(Math.cos(turn)), round(Math.sin(turn)) * body.weakAt] as const;
    const contactEnd = contactReach(square.statics, direction, grip);
    return {
      towards,
      direction,
      contactEnd,
      slips: () => !lies && contactEnd < FURTHEST && contactReach(sticky(), direction, grip) > contactEnd + 0.01,
      distances: lies || contactEnd < 0.004 ? [] : shares.map((share) => share * contactEnd),
      solvable: [],
      rangeEnd: null,
    };
  });
  return { body, age, square, ways, options: own, limits };
}

/** Both ends of the trunk bear: lying, where nothing is re-posed and nobody falls. */
function liesDown(pose: ClosedPose): boolean {
  const bears = (names: RegExp): boolean =>
    pose.contacts.some((contact) => contact.touches && contact.other === null && names.test(contact.patch));
  return (
    bears(/^(shoulderBlade|ribSide|shoulderSide|chestFront)/) && bears(/^(buttock|hipSide|pelvisFront|belly|lowBack)/)
  );
}

const round = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value);

function solvableAt(body: Body, age: number, metres: number, pose: ClosedPose, options: StaticsOptions): Solvable {
  const statics = prepareStatics(body, pose, options);
  // Leaning is the person's to do: no sharing is imposed on it.
  return {
    metres,
    statics: { ...statics, sharing: null },
    normal: normalCapacities(body, age, pose.configuration.angles),
  };
}

/**
 * The balance outline held still: how far the weight can be taken slowly, hands, knees and feet staying put, before a
 * contact, the friction, a joint's range or a muscle ends it. Strength is tested at the re-posed stations by the habitual
 * sharing and the end found between two of them. It is an outline of holding still, not of being safe from a fall.
 */
export function balanceOutline(stations: Stations, strengths: Strengths): BalanceOutline | NoOutline {
  const { square } = stations;
  const start = effortAt(square, strengths);
  if (!start.stands) {
    const left = leastImbalance(square.statics, scaleCapacities(square.normal, strengths));
    return {
      balanced: false,
      because:
        left > BALANCED_WITHIN ? "the weight lies outside what bears" : "this pose cannot be held still as it stands",
    };
  }
  const level = Math.max(1, start.most * 1.02);
  const directions = stations.ways.map((way): OutlineDirection => {
    const { towards, direction } = way;
    const limit = muscleLimit(stations, way, start, level, strengths);
    if (limit !== null) {
      if (limit.what === "")
        return { towards, direction, metres: limit.metres, endedBy: "contact", what: "edge of what bears", side: null };
      return { towards, direction, metres: limit.metres, endedBy: "muscle", what: limit.what, side: limit.side };
    }
    const range = way.rangeEnd;
    if (range !== null) {
      const [name, side] = range.angle.split(".");
      return {
        towards,
        direction,
        metres: range.metres,
        endedBy: "jointRange",
        what: name ?? range.angle,
        side: side === "weak" || side === "strong" ? side : null,
      };
    }
    return {
      towards,
      direction,
      metres: way.contactEnd,
      endedBy: way.slips() ? "friction" : "contact",
      what: "edge of what bears",
      side: null,
    };
  });
  const least = directions.reduce((best, each) => (each.metres < best.metres ? each : best));
  const { centre } = square.statics.pose;
  return { balanced: true, centre: [centre[0], centre[1]], directions, least, level };
}

interface EffortAt {
  readonly stands: boolean;
  readonly most: number;
  readonly sharing: Sharing;
  readonly name: () => { what: string; side: Side | null };
}

function effortAt(at: Solvable, strengths: Strengths, start?: Sharing): EffortAt {
  const sharing = shareHabitually(at.statics, scaleCapacities(at.normal, strengths), start);
  return {
    sharing,
    stands: sharing.residual <= BALANCED_WITHIN,
    most: sharing.most,
    name: () => {
      const hardest = describeBalance(at.statics, sharing).hardest;
      return { what: hardest === null ? "" : `${hardest.joint} ${hardest.direction}`, side: hardest?.side ?? null };
    },
  };
}

/**
 * Where muscle ends the way: the middle station first, then the nearer or the farther half, then on a curve through the
 * stations around the end. Null where muscle holds all the way.
 */
function muscleLimit(
  stations: Stations,
  way: Way,
  start: EffortAt,
  level: number,
  strengths: Strengths,
): { metres: number; what: string; side: Side | null } | null {
  const samples: Sample[] = [{ metres: 0, most: start.most }];
  let inside = -1;
  let outside = way.distances.length;
  let outer: (Sample & { name: EffortAt["name"]; stands: boolean }) | null = null;
  let inner: Sample = { metres: 0, most: start.most };
  while (outside - inside > 1) {
    const k = Math.floor((inside + outside) / 2);
    const solvable = stationOf(stations, way, k);
    if (solvable === null) {
      // A joint's range ends the way before this station: what is nearer may still be ended by muscle.
      outside = k;
      continue;
    }
    const effort = effortAt(solvable, strengths, start.sharing);
    const sample = { metres: solvable.metres, most: effort.most };
    if (effort.stands) samples.push(sample);
    if (effort.stands && effort.most <= level) {
      inside = k;
      inner = sample;
    } else {
      outside = k;
      outer = { ...sample, name: effort.name, stands: effort.stands };
    }
  }
  // Between the last station and a range that ends the way before the next one, muscle may still end it.
  const last = outer === null ? stationAtRange(stations, way) : null;
  if (last !== null && last.metres > inner.metres) {
    const effort = effortAt(last, strengths, start.sharing);
    if (!effort.stands || effort.most > level)
      outer = { metres: last.metres, most: effort.most, name: effort.name, stands: effort.stands };
  }
  if (outer === null) return null;
  if (!outer.stands) return { metres: (inner.metres + outer.metres) / 2, what: "", side: null };
  const { metres } = outer;
  const third = samples.find((each) => each.metres !== inner.metres && each.metres !== metres) ?? null;
  return { metres: crossing(inner, outer, third, level), ...outer.name() };
}

interface Sample {
  readonly metres: number;
  readonly most: number;
}

/** Where the effort passes the level between two stations: on a parabola through a third where there is one, else on a line. */
function crossing(inner: Sample, outer: Sample, third: Sample | null, level: number): number {
  const line = (at: number): number =>
    inner.most + ((outer.most - inner.most) * (at - inner.metres)) / (outer.metres - inner.metres);
  let bend = 0;
  if (third !== null) {
    const spread = (third.metres - inner.metres) * (third.metres - outer.metres);
    bend = spread === 0 ? 0 : (third.most - line(third.metres)) / spread;
  }
  let low = inner.metres;
  let high = outer.metres;
  for (let k = 0; k < 24; k++) {
    const middle = (low + high) / 2;
    const effort = line(middle) + bend * (middle - inner.metres) * (middle - outer.metres);
    if (effort <= level) low = middle;
    else high = middle;
  }
  return low;
}

/** The stop where a joint's range ends the way; null where none does, or the body does not get there exactly. */
function stationAtRange(stations: Stations, way: Way): Solvable | null {
  if (way.rangeEnd === null) return null;
  if (way.atRange !== undefined) return way.atRange;
  way.atRange = null;
  for (const share of [1, 0.95, 0.9]) {
    const solvable = reposed(stations, way, way.rangeEnd.metres * share);
    if (!("rangeEnd" in solvable)) {
      way.atRange = solvable;
      break;
    }
  }
  return way.atRange;
}

function stationOf(stations: Stations, way: Way, k: number): Solvable | null {
  const known = way.solvable[k];
  if (known !== undefined) return known;
  const metres = way.distances[k];
  if (metres === undefined || (way.rangeEnd !== null && metres > way.rangeEnd.metres)) return null;
  const solvable = reposed(stations, way, metres);
  if ("rangeEnd" in solvable) {
    way.rangeEnd = solvable.rangeEnd;
    return null;
  }
  way.solvable[k] = solvable;
  return solvable;
}

/** The body taken so far out, from the nearest stop it has been at; or the joint range that does not let it. */
function reposed(stations: Stations, way: Way, metres: number): Solvable | Pick<Slide, "rangeEnd"> {
  const { body, square, limits, age, options } = stations;
  let from = square;
  for (const each of way.solvable)
    if (each !== undefined && each.metres < metres && each.metres > from.metres) from = each;
  const slide = slideCentre(
    body,
    square.statics.pose,
    way.direction,
    from.metres,
    from.statics.pose.configuration,
    metres,
    limits,
  );
  if (slide.station === null) return { rangeEnd: slide.rangeEnd };
  return solvableAt(body, age, metres, slide.station, options);
}
