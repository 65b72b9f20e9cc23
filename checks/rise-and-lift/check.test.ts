import { describe, expect, it } from "vitest";
import type { Body } from "../../src/mechanics/body/body.ts";
import { buildBody } from "../../src/mechanics/body/build.ts";
import { GRAVITY } from "../../src/mechanics/body/strength-norms.ts";
import { at, centreOf, momentAbout, placed, referenceBody, SEXES } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

const BODIES: readonly Body[] = [
  buildBody({ sex: "male", height: 1.75, mass: 80 }, 1),
  buildBody({ sex: "female", height: 1.62, mass: 65 }, 1),
];

/** Just off a seat: thighs so many degrees above level, shanks leaning forward, the trunk leaning until the weight is over the feet. */
function rising(body: Body, thighDeg: number, shankDeg: number): { hip: number; knee: number; hipHeight: number } {
  const lean = (pitch: number) =>
    placed(body, pitch, {
      hipFlexion: 90 - thighDeg + pitch,
      kneeFlexion: 90 - thighDeg + shankDeg,
      ankleDorsiflexion: shankDeg,
      shoulderFlexion: pitch + 30,
    });
  let low = -20;
  let high = 110;
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    const { frames, centre } = lean(middle);
    if (centre[0] < at(body, frames, "foot.weak")[0] + 0.03) low = middle;
    else high = middle;
  }
  const { frames, centre } = lean((low + high) / 2);
  const foot = at(body, frames, "foot.weak");
  const push = {
    segment: "foot.weak",
    at: [centre[0], foot[1], foot[2]],
    force: [0, 0, (body.size.mass * GRAVITY) / 2],
  } as const;
  return {
    hip: Math.abs(momentAbout(body, frames, "hipFlexion.weak", [push])),
    knee: Math.abs(momentAbout(body, frames, "kneeFlexion.weak", [push])),
    hipHeight: at(body, frames, "thigh.weak")[2] - foot[2] + 0.039 * body.size.height,
  };
}

/** Hips sit so far above a seat [m]: the buttock's flesh. */
const FLESH = 0.08;

/** Largest sum of hip and knee on the way up from a seat [N.m]. */
function mostFrom(body: Body, seat: number): number {
  let most = 0;
  for (let thigh = -45; thigh <= 80; thigh += 2.5) {
    const { hip, knee, hipHeight } = rising(body, thigh, 20);
    if (hipHeight >= seat + FLESH) most = Math.max(most, hip + knee);
  }
  return most;
}

/** Shoulder, hip and knee in line, shoulders 70 mm high, the shank leaning toward the buttocks: hip and knee moments of one leg [N.m]. */
function lifted(body: Body, nearDeg: number): { hip: number; knee: number; apart: number } {
  const straight = (slope: number) =>
    placed(body, -90 - slope, { kneeFlexion: 90 + slope + nearDeg, ankleDorsiflexion: 0, shoulderFlexion: 0 });
  let slope = 30;
  for (let k = 0; k < 60; k++) {
    const { frames } = straight(slope);
    const sole = at(body, frames, "foot.weak")[2] - 0.039 * body.size.height;
    slope += (at(body, frames, "upperArm.weak")[2] - sole - 0.07) * 30;
  }
  const { frames } = straight(slope);
  const ankle = at(body, frames, "foot.weak");
  const shoulder = at(body, frames, "upperArm.weak");
  const rest = centreOf(body, frames, (id) => !/^(head|upperArm|forearm|hand)/.test(id));
  const newtons = (((rest.centre[0] - shoulder[0]) / (ankle[0] - shoulder[0])) * rest.mass * GRAVITY) / 2;
  const push = { segment: "foot.weak", at: ankle, force: [0, 0, newtons] } as const;
  return {
    hip: -momentAbout(body, frames, "hipFlexion.weak", [push]),
    knee: -momentAbout(body, frames, "kneeFlexion.weak", [push]),
    apart: Math.abs(ankle[0] - shoulder[0]),
  };
}

describe("rising from seats of six heights", () => {
  it("asks the same at most from low seats, less from a high one", () => {
    for (const body of BODIES) {
      const low = expected.seatsCm.map((cm) => mostFrom(body, cm / 100));
      const high = mostFrom(body, expected.highSeatCm / 100);
      console.log(
        `rising, ${body.size.sex}: hip and knee of one leg ${low.map((each) => each.toFixed(0)).join(", ")} N.m from ${expected.seatsCm.join(", ")} cm; ${high.toFixed(0)} from ${expected.highSeatCm}`,
      );
      expect((Math.max(...low) - Math.min(...low)) / Math.max(...low)).toBeLessThan(expected.sameWithin);
      expect(high).toBeLessThan(0.97 * Math.min(...low));
    }
  });
  it("asks less of the hip with the feet back", () => {
    for (const body of BODIES) {
      const back = rising(body, 0, 30);
      const front = rising(body, 0, -10);
      console.log(
        `feet back, ${body.size.sex}: hip ${back.hip.toFixed(0)}, forward ${front.hip.toFixed(0)} N.m (32.7 and 148.8 published)`,
      );
      expect(front.hip / back.hip).toBeGreaterThan(expected.ratioAtLeast);
    }
  });
});

describe("feet near or far in a bridge", () => {
  it("takes from the hip's extensors and turns the knee from bending to straightening as the feet come near", () => {
    for (const sex of SEXES) {
      const body = referenceBody(sex);
      const rows = [-20, -10, 0, 10, 20].map((near) => lifted(body, near));
      console.log(
        `bridge, ${sex}: feet ${rows.map(({ apart }) => (apart * 100).toFixed(0)).join(", ")} cm from the shoulders: hip extension ${rows.map(({ hip }) => hip.toFixed(0)).join(", ")}, knee straightening ${rows.map(({ knee }) => knee.toFixed(0)).join(", ")} N.m`,
      );
      for (let k = 1; k < rows.length; k++) {
        expect(rows[k]?.apart ?? 9).toBeLessThan(rows[k - 1]?.apart ?? 0);
        expect(rows[k]?.hip ?? 1e9).toBeLessThan(rows[k - 1]?.hip ?? 0);
        expect(rows[k]?.knee ?? -1e9).toBeGreaterThan(rows[k - 1]?.knee ?? 0);
      }
      expect(rows[0]?.knee ?? 1).toBeLessThan(0);
      expect(rows[4]?.knee ?? -1).toBeGreaterThan(0);
    }
  });
});
