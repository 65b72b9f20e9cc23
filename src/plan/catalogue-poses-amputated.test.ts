import { describe, expect, it } from "vitest";
import { type Amputation, amputate } from "../mechanics/body/amputation.ts";
import type { Body } from "../mechanics/body/body.ts";
import { buildBody } from "../mechanics/body/build.ts";
import { capacitiesOf } from "../mechanics/body/strength-capacities.ts";
import { evenStrengths } from "../mechanics/body/strength-keys.ts";
import { solveHabitual } from "../mechanics/equilibrium/habitual.ts";
import { prepareStatics } from "../mechanics/equilibrium/statics.ts";
import { closePose } from "../mechanics/pose/close.ts";
import { leaveOutMissing } from "../mechanics/pose/leave-out-missing.ts";
import type { PoseSpecification } from "../mechanics/pose/specification.ts";
import { ACTIVITIES, POSITIONS } from "../practice/catalogue.ts";

/** Every rung, by the position it is done in, and every position. */
const POSES: readonly { readonly name: string; readonly position: string; readonly pose: PoseSpecification }[] = [
  ...ACTIVITIES.flatMap(({ id, position, rungs }) =>
    rungs.map((rung) => ({ name: `${id}/${rung.id}`, position, pose: rung.pose })),
  ),
  ...POSITIONS.map(({ id, pose }) => ({ name: id, position: id, pose })),
];
const WOMAN = buildBody({ sex: "female", height: 1.63, mass: 68 }, 1);
function cut(amputation: Amputation): Body {
  const result = amputate(WOMAN, amputation);
  if (!result.possible) throw new Error(result.because);
  return result.body;
}
const held = (body: Body, pose: PoseSpecification): boolean => {
  const closed = closePose(body, pose);
  if (!closed.closed) return false;
  const capacities = capacitiesOf(body, 50, closed.configuration.angles, evenStrengths(0.9));
  const balance = solveHabitual({ ...prepareStatics(body, closed), sharing: null }, capacities);
  return balance.balanced && (balance.hardest?.effort ?? 0) <= 1;
};
const count = (body: Body, wanted: RegExp): { all: number; holds: number } => {
  const some = POSES.filter(({ position }) => wanted.test(position));
  return { all: some.length, holds: some.filter(({ pose }) => held(body, leaveOutMissing(body, pose).pose)).length };
};
const LYING = /^(supine|side-lying|prone)/;
const STANDING = /^(standing|walking)/;

describe("the catalogue with a leg amputated", () => {
  it.each(["transtibial", "transfemoral"] as const)(
    "%s, no prosthesis: lying stays, standing in the bars on two legs goes",
    { timeout: 180_000 },
    (level) => {
      for (const side of ["weak", "strong"] as const) {
        const body = cut({ side, level, prosthesis: false });
        const lying = count(body, LYING);
        const standing = count(body, STANDING);
        const all = count(body, /./);
        console.log(
          `${level}, ${side}: held ${all.holds} of ${all.all}; lying ${lying.holds} of ${lying.all}; standing ${standing.holds} of ${standing.all}`,
        );
        expect(lying.holds / lying.all).toBeGreaterThan(0.7);
        expect(standing.holds).toBeLessThan(standing.all);
      }
    },
  );
  it("with a prosthesis below the knee most of it stays, standing too", { timeout: 180_000 }, () => {
    const body = cut({ side: "weak", level: "transtibial", prosthesis: true });
    const all = count(body, /./);
    const standing = count(body, STANDING);
    console.log(
      `prosthesis below the knee: held ${all.holds} of ${all.all}; standing ${standing.holds} of ${standing.all}`,
    );
    expect(all.holds / all.all).toBeGreaterThan(0.8);
    expect(standing.holds).toBeGreaterThan(0);
  });
});
