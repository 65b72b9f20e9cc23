import { describe, expect, it } from "vitest";
import { radiansOf } from "../../quantity/angles.ts";
import { LIMB_STOPS } from "../equilibrium/stops.data.ts";
import { LIMB_LIMITS_DEG } from "../pose/joint-limits.data.ts";
import { passiveMoments, passiveMomentsOfYoung } from "./passive-moments.ts";
import { RANGE_NORMS } from "./range-norms.data.ts";
import { usualRange } from "./range-norms.ts";

const leg = (hip: number, knee: number, ankle = 0) => ({
  hip: radiansOf(hip),
  knee: radiansOf(knee),
  ankle: radiansOf(ankle),
});

describe("passive moments at the ends of the leg's range", () => {
  it("are the table worked from the published equations (Riener and Edrich 1999)", () => {
    // [hip, knee, ankle, resisting moment]
    const hip = [
      [-20, 0, 25.4],
      [-20, 90, 22.1],
      [-10, 0, 14.4],
      [0, 0, 8.6],
      [0, 90, 10.8],
      [60, 0, -15.7],
      [90, 0, -51.4],
      [90, 30, -22.1],
      [90, 60, -7.2],
      [90, 90, 0.3],
      [110, 0, -101],
      [110, 90, -6.2],
    ] as const;
    for (const [h, k, moment] of hip)
      expect(Math.abs((passiveMoments(leg(h, k)).hip ?? 1e9) - moment), `hip ${h}/${k}`).toBeLessThan(
        Math.abs(moment) > 50 ? 0.6 : 0.06,
      );
    const knee = [
      [0, 0, 10.4],
      [90, 0, 47],
      [0, 10, 1.5],
      [90, 10, 27.2],
      [0, 110, -9.1],
      [0, 130, -16.5],
    ] as const;
    for (const [h, k, moment] of knee)
      expect(Math.abs((passiveMoments(leg(h, k)).knee ?? 1e9) - moment), `knee ${h}/${k}`).toBeLessThan(0.06);
    const ankle = [
      [0, 0, -6.4],
      [90, 0, 0.1],
      [0, 10, -17.2],
      [90, 10, -2.1],
      [0, 15, -27.2],
      [90, 15, -4.2],
      [0, 20, -42.4],
      [90, 20, -7.3],
    ] as const;
    for (const [k, a, moment] of ankle)
      expect(Math.abs((passiveMoments(leg(0, k, a)).ankle ?? 1e9) - moment), `ankle ${k}/${a}`).toBeLessThan(0.06);
  });
  it("agree between two works where both measured: hip bent 40, knee straight, within 4 N.m (Silder 2007)", () => {
    const one = passiveMoments(leg(40, 0)).hip ?? Number.NaN;
    const two = passiveMomentsOfYoung(leg(40, 0))?.hip ?? Number.NaN;
    console.log(`hip at 40, knee straight: ${one.toFixed(1)} and ${two.toFixed(1)} N.m`);
    expect(Math.abs(one - two)).toBeLessThan(4);
    expect(passiveMomentsOfYoung(leg(60, 0))).toBeNull();
    expect(passiveMoments(leg(-40, 0)).hip).toBeNull();
  });
  it("are not exceeded by what a joint's end is trusted with at the hip and the ankle", () => {
    const at = (angle: "hipFlexion" | "ankleDorsiflexion", end: "least" | "most"): number =>
      LIMB_STOPS[angle]?.find((row) => row.end === end)?.most ?? Number.NaN;
    // Drawn-up foot with the knee straight: at 20 degrees already, and the range ends at 25.
    expect(at("ankleDorsiflexion", "most")).toBeLessThan(-(passiveMoments(leg(0, 0, 20)).ankle ?? 0));
    // Hip extended to 18 degrees, knee straight or bent.
    expect(at("hipFlexion", "least")).toBeLessThanOrEqual(passiveMoments(leg(-18, 90)).hip ?? 0);
  });
});

describe("usual ranges", () => {
  it("come by sex and age, the nearest group where there is none, nothing where nothing was found", () => {
    // Soucie 2011: hip extension of men 17.4 at 20-44 and 13.5 at 45-69 years.
    expect(usualRange("hipFlexion", "least", "male", 30)?.degrees).toBe(-17.4);
    expect(usualRange("hipFlexion", "least", "male", 60)?.degrees).toBe(-13.5);
    expect(usualRange("hipFlexion", "least", "male", 80)).toMatchObject({ degrees: -13.5, otherAge: true });
    expect(usualRange("wristExtension", "most", "female", 72)?.degrees).toBe(63);
    expect(usualRange("girdleElevation", "most", "female", 72)).toBeNull();
    expect(usualRange("toeExtension", "most", "female", 72)).toBeNull();
  });
  it("lie inside what poses allow, give or take nine in ten people: poses ask the easier end", () => {
    const outside: string[] = [];
    for (const row of RANGE_NORMS) {
      const limits = Object.entries(LIMB_LIMITS_DEG).find(([angle]) => angle === row.angle)?.[1];
      if (limits === undefined) continue;
      const [least, most] = limits;
      const wide = 1.645 * 8;
      const degrees = (row.women + row.men) / 2;
      if (row.end === "most" ? degrees > most + wide : degrees < least - wide) outside.push(`${row.angle} ${row.end}`);
    }
    expect(outside).toEqual([]);
  });
});
