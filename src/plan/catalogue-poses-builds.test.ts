import { describe, expect, it } from "vitest";
import { buildBody } from "../mechanics/body/build.ts";
import { capacitiesOf } from "../mechanics/body/strength-capacities.ts";
import { evenStrengths } from "../mechanics/body/strength-keys.ts";
import { solveHabitual } from "../mechanics/equilibrium/habitual.ts";
import { prepareStatics } from "../mechanics/equilibrium/statics.ts";
import { closePose } from "../mechanics/pose/close.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { limitsOf } from "../mechanics/pose/targets.ts";
import { takeSharing } from "../mechanics/reach/sharing.ts";
import { ACTIVITIES, POSITIONS, TRANSITIONS } from "../practice/catalogue.ts";

/** Every pose of the catalogue on bodies far from the middle, either side the weak one. */
const POSES: readonly { readonly name: string; readonly pose: PoseSpecification }[] = [
  ...ACTIVITIES.flatMap(({ id, rungs }) =>
    rungs.flatMap((rung) => [
      { name: `${id}/${rung.id}`, pose: rung.pose },
      ...(rung.start === undefined ? [] : [{ name: `${id}/${rung.id}, start`, pose: rung.start }]),
    ]),
  ),
  ...POSITIONS.map(({ id, pose }) => ({ name: id, pose })),
  ...TRANSITIONS.flatMap(({ id, steps }) =>
    steps.flatMap(({ pose }, k) => (pose === undefined ? [] : [{ name: `${id}, step ${k + 1}`, pose }])),
  ),
];
const BUILDS = [
  { name: "woman of 1.50 m and 45 kg", size: { sex: "female", height: 1.5, mass: 45 } },
  { name: "man of 1.95 m and 120 kg", size: { sex: "male", height: 1.95, mass: 120 } },
  { name: "heavy short woman, 1.52 m and 95 kg", size: { sex: "female", height: 1.52, mass: 95 } },
  { name: "slight tall man, 1.92 m and 62 kg", size: { sex: "male", height: 1.92, mass: 62 } },
] as const;

/** A contact that closes the pose stands this near [m], and nothing sinks deeper. */
const NEAR = 0.005;

describe.each(BUILDS)("every pose of the catalogue on a $name", ({ size }) => {
  it.each([1, -1] as const)("closes with contacts within 5 mm and joints in range, weak side %i", (weakAt) => {
    const body = buildBody(size, weakAt);
    const limits = limitsOf(body);
    const faults: string[] = [];
    let residual = 0;
    let worst = 0;
    for (const { name, pose } of POSES) {
      const result = closePose(body, pose);
      if (!result.closed) {
        faults.push(`${name}: ${result.because}`);
        continue;
      }
      residual = Math.max(residual, result.residual);
      if (result.sinks > NEAR) faults.push(`${name}: sinks ${Math.round(result.sinks * 1000)} mm`);
      for (const contact of result.contacts) {
        if (contact.specification.role === "bears") continue;
        for (const point of contact.points) {
          worst = Math.max(worst, Math.abs(point.gap));
          if (Math.abs(point.gap) > NEAR)
            faults.push(`${name}: ${contact.patch} is off by ${Math.round(point.gap * 1000)} mm`);
        }
      }
      result.configuration.angles.forEach((angle, i) => {
        if (angle < (limits.least[i] ?? 0) - 1e-9 || angle > (limits.most[i] ?? 0) + 1e-9)
          faults.push(`${name}: ${body.angles[i]} leaves its range`);
      });
    }
    console.log(
      `${POSES.length} poses, ${size.height} m, ${size.mass} kg, weak side ${weakAt}: residual ${residual.toExponential(1)} m, worst gap ${(worst * 1000).toFixed(2)} mm, ${faults.length} faults`,
    );
    expect(faults).toEqual([]);
  });
  it("is held by a healthy person of forty without help, no joint over its strength", { timeout: 180_000 }, () => {
    const body = buildBody(size, 1);
    const faults: string[] = [];
    let most = 0;
    for (const { name, pose } of POSES) {
      const closed = closePose(body, pose);
      if (!closed.closed) continue;
      const shared = takeSharing(body, closed);
      const capacities = capacitiesOf(body, 40, shared.configuration.angles, evenStrengths(1));
      const balance = solveHabitual(prepareStatics(body, shared), capacities);
      if (!balance.balanced) faults.push(`${name}: ${balance.because}`);
      else {
        most = Math.max(most, balance.hardest?.effort ?? 0);
        if ((balance.hardest?.effort ?? 0) > 1) faults.push(`${name}: ${balance.hardest?.joint} over its strength`);
      }
    }
    console.log(`${size.height} m, ${size.mass} kg: hardest of all poses ${(most * 100).toFixed(0)} %`);
    expect(faults).toEqual([]);
  });
});
