import { describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import { closePose } from "../mechanics/pose/close.ts";
import { limitsOf } from "../mechanics/pose/targets.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { TRANSITIONS } from "../practice/catalogue.ts";
import type { KeyPose } from "../practice/transitions/transition.ts";

/** A short and a tall body, a heavy short and a slight tall one. */
const SIZES = [
  { sex: "female", height: 1.5, mass: 45 },
  { sex: "male", height: 1.95, mass: 120 },
  { sex: "female", height: 1.52, mass: 90 },
  { sex: "male", height: 1.9, mass: 70 },
] as const;
const WAYS = TRANSITIONS.flatMap(({ id, steps, keyPoses, helpersNeeded }) =>
  keyPoses === undefined ? [] : [{ id, steps, keyPoses, helpersNeeded }],
);
const MOMENTS: readonly { readonly name: string; readonly key: KeyPose }[] = WAYS.flatMap(({ id, keyPoses }) =>
  keyPoses.map((key, i) => ({ name: `${id}, moment ${i + 1}`, key })),
);
/** Every pose once, under the first name it is used by. */
const POSES: readonly (readonly [string, PoseSpecification])[] = [
  ...new Map(MOMENTS.map(({ name, key }) => [key.pose, name] as const).reverse()),
].map(([pose, name]) => [name, pose]);
const ROUNDING = 1e-6;

describe("key poses of the ways between positions", () => {
  it("cover at least fifty ways with two to four moments each, in the order of their steps", () => {
    expect(WAYS.length).toBeGreaterThanOrEqual(50);
    const wrong = WAYS.filter(({ keyPoses, steps }) => {
      const numbers = keyPoses.map(({ step }) => step);
      return (
        numbers.length < 2 ||
        numbers.length > 4 ||
        numbers.some((step, i) => step < 1 || step > steps.length || step < (numbers[i - 1] ?? 1))
      );
    });
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  it.each(POSES)(
    "%s closes on four bodies, weak on either side: contacts touch, nothing sinks, joints keep their limits",
    (_, pose) => {
      for (const size of SIZES) {
        const [one, other] = ([1, -1] as const).map((weakAt) => {
          const body = buildBody(size, weakAt);
          const result = closePose(body, pose);
          if (!result.closed) throw new Error(`${size.height}: ${result.because}`);
          expect(result.residual).toBeLessThan(0.001);
          expect(result.sinks).toBeLessThan(0.001);
          const loose = result.contacts.filter(
            ({ specification, touches }) => specification.role === "both" && !touches,
          );
          expect(loose.map(({ patch }) => patch)).toEqual([]);
          const { least, most } = limitsOf(body);
          result.configuration.angles.forEach((angle, i) => {
            expect(angle).toBeGreaterThanOrEqual((least[i] ?? angle) - ROUNDING);
            expect(angle).toBeLessThanOrEqual((most[i] ?? angle) + ROUNDING);
          });
          // Aims are what a therapist would set: no joint leaves its own by more than a hand joint does for flat palms.
          expect((result.furthest.by * 180) / Math.PI, result.furthest.angle).toBeLessThan(40);
          return result;
        });
        expect(one?.centre[2]).toBeCloseTo(other?.centre[2] ?? Number.NaN, 6);
        expect(one?.centre[0]).toBeCloseTo(other?.centre[0] ?? Number.NaN, 6);
      }
    },
  );

  it("say where help is counted, and lie on the thigh only of a helper who half kneels", () => {
    for (const { name, key } of MOMENTS) {
      expect(key.helper.mayHelpAt.length, name).toBeGreaterThan(0);
      expect(key.helper.hands.length, name).toBeGreaterThan(0);
      if (key.onThigh === null) continue;
      expect(key.helper.pose, name).toBe("halfKneeling");
      expect(key.helper.knee ?? "", name).toMatch(/thigh/);
      expect(key.onThigh, name).not.toMatch(/armpit|hand/);
    }
  });

  // Common practice, no source: rolling, trade rule.
  it("roll with the strong hand holding the weak forearm, the weak blade forward when it goes under", () => {
    const moments = (id: string): readonly KeyPose[] => WAYS.find((way) => way.id === id)?.keyPoses ?? [];
    const toStrong = moments("roll-onto-strong-side");
    expect(toStrong.length).toBeGreaterThan(2);
    for (const { pose } of toStrong.slice(0, 3))
      expect(
        pose.contacts.some(
          ({ patch, on }) => patch === "grip.strong" && typeof on === "object" && on.body === "wrist.weak",
        ),
      ).toBe(true);
    for (const { pose } of moments("roll-onto-weak-side")) {
      expect(pose.weakDeg?.girdleProtraction ?? 0).toBeGreaterThan(15);
      expect(pose.contacts.some(({ patch }) => patch === "shoulderSide.weak")).toBe(false);
    }
    // Going to the strong side the weak leg is brought over: its knee ends ahead of the strong one.
    const over = toStrong[2]?.pose;
    expect(over?.weakDeg?.hipFlexion ?? 0).toBeGreaterThan((over?.strongDeg?.hipFlexion ?? 0) + 30);
  });
});
