import { describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import { closePose } from "../mechanics/pose/close.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import type { Activity } from "../practice/activities/activity.ts";
import { longSittingBalanceAndReach } from "../practice/activities/tables/long-sitting-balance-and-reach.data.ts";
import { longSittingScoot } from "../practice/activities/tables/long-sitting-scoot.data.ts";
import { proneOnElbowsHoldAndShift } from "../practice/activities/tables/prone-on-elbows-hold-and-shift.data.ts";
import { proneOnElbowsLiftAndReach } from "../practice/activities/tables/prone-on-elbows-lift-and-reach.data.ts";
import { shortSittingHipHike } from "../practice/activities/tables/short-sitting-hip-hike.data.ts";
import { shortSittingReach } from "../practice/activities/tables/short-sitting-reach.data.ts";
import { sitToStand } from "../practice/activities/tables/sit-to-stand.data.ts";
import { tableForearmsSittingLean } from "../practice/activities/tables/table-forearms-sitting-lean.data.ts";
import { tableForearmsStandingLean } from "../practice/activities/tables/table-forearms-standing-lean.data.ts";
import { PRONE } from "../practice/positions/prone-poses.data.ts";
import { SIDE_SITTING_ON_STRONG } from "../practice/positions/side-sitting-poses.data.ts";

const ACTIVITIES: readonly Activity[] = [
  proneOnElbowsHoldAndShift,
  proneOnElbowsLiftAndReach,
  tableForearmsSittingLean,
  tableForearmsStandingLean,
  longSittingBalanceAndReach,
  longSittingScoot,
  shortSittingReach,
  shortSittingHipHike,
  sitToStand,
];
const BODIES = [
  ["a woman of 1.63 m and 68 kg", buildBody({ sex: "female", height: 1.63, mass: 68 }, 1)],
  ["a man of 1.77 m and 84 kg", buildBody({ sex: "male", height: 1.77, mass: 84 }, -1)],
  ["a short and heavy woman", buildBody({ sex: "female", height: 1.5, mass: 90 }, -1)],
  ["a tall and slight man", buildBody({ sex: "male", height: 1.92, mass: 68 }, 1)],
] as const;

const POSES: readonly (readonly [string, PoseSpecification])[] = [
  ["prone", PRONE],
  ["side-sitting on the strong hip", SIDE_SITTING_ON_STRONG],
  ...ACTIVITIES.flatMap((activity) =>
    activity.rungs.flatMap((rung): (readonly [string, PoseSpecification])[] => [
      [`${activity.id} / ${rung.id}`, rung.pose],
      ...(rung.start === undefined ? [] : [[`${activity.id} / ${rung.id}, start`, rung.start] as const]),
    ]),
  ),
];

describe.each(BODIES)("prone, table and sitting poses on %s", (_who, body) => {
  it.each(POSES)("%s closes within 1 mm and nothing sinks", (_name, specification) => {
    const pose = closePose(body, specification);
    expect(pose).toMatchObject({ closed: true });
    if (!pose.closed) return;
    expect(pose.residual).toBeLessThan(0.001);
    expect(pose.sinks).toBeLessThan(0.002);
    for (const contact of pose.contacts) {
      if (contact.specification.role !== "bears") expect(contact.touches, contact.patch).toBe(true);
    }
  });

  it.each(POSES)("%s keeps its weight over what it stands on", (_name, specification) => {
    const pose = closePose(body, specification);
    if (!pose.closed) throw new Error(pose.because);
    const carried = pose.contacts
      .filter((contact) => contact.touches && contact.other === null && contact.specification.effort !== "rest")
      .flatMap((contact) => contact.points.map((point) => point.at));
    // In any direction some carrying point lies further out than the centre of mass.
    for (let degrees = 0; degrees < 360; degrees += 5) {
      const along = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)] as const;
      const reach = Math.max(
        ...carried.map((at) => (at[0] - pose.centre[0]) * along[0] + (at[1] - pose.centre[1]) * along[1]),
      );
      expect(reach).toBeGreaterThan(0);
    }
  });
});

describe("standing up", () => {
  it.each(BODIES)("is off the seat by no more than a hand in every rung on %s", (_who, body) => {
    for (const rung of sitToStand.rungs) {
      const pose = closePose(body, {
        ...rung.pose,
        contacts: [...rung.pose.contacts, { patch: "buttock.weak", on: "seat", role: "bears" }],
      });
      if (!pose.closed) throw new Error(pose.because);
      const gap = pose.contacts.at(-1)?.points[0]?.gap ?? 0;
      expect(gap, rung.id).toBeGreaterThan(0.003);
      expect(gap, rung.id).toBeLessThan(0.1);
    }
  });
});
