import { seededStream } from "../../../src/quantity/random.ts";
import { noLocks, type Link, type Option, type SessionProblem } from "../../../src/plan/optimiser/problem.ts";

export interface InventedSize {
  readonly positions: number;
  readonly rungs: number;
  readonly links: number;
  readonly purposes: number;
  readonly doses: number;
  readonly halfMinutes: number;
  readonly lastTime: boolean;
}
export const dayLike: InventedSize = {
  positions: 16,
  rungs: 70,
  links: 30,
  purposes: 9,
  doses: 2,
  halfMinutes: 66,
  lastTime: false,
};

/** An invented session problem, for tests and timing; the same seed gives the same problem. */
export function inventProblem(seed: number, size: InventedSize): SessionProblem {
  const next = seededStream(seed);
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const chance = (share: number) => next() < share;
  const name = (kind: string, n: number) => `${kind}${String(n).padStart(3, "0")}`;
  const positions = Array.from({ length: size.positions }, (_, n) => ({
    id: name("place", n),
    wayBack: { halfMinutes: whole(0, 4), strength: whole(0, 12) },
    canEnd: !chance(0.1),
    entry: chance(0.15) ? null : { halfMinutes: whole(0, 4), strength: whole(0, 6), cost: whole(0, 12) },
  }));
  const links: Link[] = Array.from({ length: size.links }, (_, n) => {
    // The first few make a ring, so that most places can be reached.
    const from = n < size.positions ? n : whole(0, size.positions - 1);
    const to = n < size.positions ? (n + 1) % size.positions : (from + whole(1, size.positions - 1)) % size.positions;
    return {
      id: name("move", n),
      from: name("place", from),
      to: name("place", to),
      halfMinutes: whole(1, 3),
      strength: whole(1, 7),
      ease: whole(0, 6),
      threshold: chance(0.15) ? whole(30, 80) : null,
      kneelDowns: chance(0.2) ? 1 : 0,
      sideChange: chance(0.2),
    };
  });
  const options: Option[] = [];
  const rungNames: string[] = [];
  const activities = Math.max(1, Math.ceil(size.rungs / 3));
  for (let n = 0; n < size.rungs; n += 1) {
    const activity = n % activities;
    const rung = name("rung", n);
    const position = name("place", activity % size.positions);
    const minutes = whole(5, 11),
      strength = whole(4, 16),
      worth = whole(-6, 20),
      place = name("side", whole(0, 2));
    const units = Array.from({ length: whole(1, 3) }, () => ({
      purpose: name("purpose", whole(0, size.purposes - 1)),
      units: whole(1, 3),
    }));
    const prerequisite =
      rungNames.length > 0 && chance(0.1) ? (rungNames[whole(0, rungNames.length - 1)] ?? null) : null;
    const hard = chance(0.3);
    const limit = hard ? whole(30, 70) : null,
      substitutes = chance(0.1) ? name("group", whole(0, 2)) : null;
    const kind = size.lastTime ? (chance(0.2) ? "kept" : "new") : "kept";
    rungNames.push(rung);
    for (let dose = 0; dose < size.doses; dose += 1)
      options.push({
        id: `${rung}/${dose}`,
        rung,
        activity: name("activity", activity),
        ladderIndex: Math.floor(n / activities),
        position,
        helperPlace: place,
        halfMinutes: Math.max(2, minutes - 3 * dose),
        strength: Math.max(1, strength - 4 * dose),
        units: units.flatMap((u) => (u.units - dose > 0 ? [{ ...u, units: u.units - dose }] : [])),
        worth: worth - 4 * dose,
        freshnessLimit: limit,
        freshnessCost: hard ? 6 : 0,
        prerequisite,
        substitutes,
        change: { kind, cost: kind === "new" ? 25 : 0 },
      });
  }
  return {
    positions,
    links,
    options,
    purposes: Array.from({ length: size.purposes }, (_, n) => ({ id: name("purpose", n), need: whole(10, 90) })),
    lastTime: size.lastTime
      ? [...new Set(options.filter((o) => o.change.kind === "kept").map((o) => o.rung))]
          .slice(0, 6)
          .map((rung) => ({ rung, dropCost: 25 }))
      : [],
    locks: noLocks,
    prices: { kneelDown: 12, sideChange: 6, helperPlace: 4, movingHalfMinute: 1, itemShort: 40 },
    workingHalfMinutes: size.halfMinutes,
    strength: 100,
  };
}

export function shuffle<T>(list: readonly T[], seed: number): T[] {
  const next = seededStream(seed);
  return list
    .map((item) => ({ item, key: next() }))
    .sort((a, b) => a.key - b.key)
    .map(({ item }) => item);
}
