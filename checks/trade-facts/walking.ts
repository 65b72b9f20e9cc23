import { buildBody } from "../../src/mechanics/body/build.ts";
import type { BodySize } from "../../src/mechanics/body/body.ts";
import { bodyHeights } from "../../src/mechanics/pose/targets.ts";
import { elbowAtHandle } from "./cane-hold.ts";
import { all, type Fact, judged, said } from "./fact.ts";
import { type Asked, askHeld, CASE_P, effortOf, findRung, shareOn, topThree } from "./people.ts";
import { swapLegs } from "./swapped.ts";
import { rungText, setUpOf } from "./texts.ts";

/** Shoes lift the floor of a height measured in them [m] (judgement). */
const SHOE = 0.025;
/** Holes in a cane are about an inch apart; the formula is a first setting, two holes off at most. */
const TWO_HOLES = 0.05;
const SIZES: readonly BodySize[] = [
  { sex: "female", height: 1.55, mass: 58 },
  { sex: "female", height: 1.63, mass: 68 },
  { sex: "female", height: 1.75, mass: 75 },
  { sex: "male", height: 1.65, mass: 72 },
  { sex: "male", height: 1.77, mass: 96 },
  { sex: "male", height: 1.9, mass: 95 },
];
const BODIES = SIZES.map((size) => ({
  name: `${size.sex} ${size.height.toFixed(2)} m`,
  size,
  body: buildBody(size, -1),
}));

const poseAt = (name: string) => findRung(name).rung.pose;
const weak = (asked: Asked, joint: string, direction: string): number => effortOf(asked, joint, direction, "weak");
const ofPose = (pose: ReturnType<typeof poseAt>): Asked => askHeld(CASE_P, pose, CASE_P.draws);

/** The weak knee and the help it would need with one order of the feet and with the other. */
function compareOrder(where: string, name: string) {
  const [taught, other] = [ofPose(poseAt(name)), ofPose(swapLegs(poseAt(name)))];
  const [own, swapped] = [weak(taught, "knee", "extension"), weak(other, "knee", "extension")];
  return judged(
    own < swapped,
    `${where}: weak knee extension ${own.toFixed(2)}, legs changed over ${swapped.toFixed(2)}`,
    `${where}: ${topThree(taught)} against ${topThree(other)}`,
  );
}

export const WALKING: readonly Fact[] = [
  {
    fact: "21b",
    says: "Later the device with the weak leg, then the strong; it asks more of the weak leg than the first order.",
    judge: () => {
      const { rung } = findRung("cane-two-point/cane-with-weak");
      const [first, later] = [
        ofPose(poseAt("cane-three-point/strong-comes-level")),
        ofPose(poseAt("cane-two-point/strong-passes-light")),
      ];
      const [a, b] = [weak(first, "hip", "abduction"), weak(later, "hip", "abduction")];
      const together =
        rung.limbFree === "leg.weak" &&
        rung.pose.contacts.some(({ on, effort }) => on === "cane" && effort === "light") &&
        !rung.pose.contacts.some(({ patch }) => patch.endsWith("foot.weak"));
      return all([
        judged(together, "cane and weak foot are light at once", "the weak foot or the cane carries in that rung"),
        judged(
          a < b,
          `weak hip abduction ${a.toFixed(2)} (cane ${(100 * shareOn(first, /grip/)).toFixed(0)} %) in the first order, ${b.toFixed(2)} (cane ${(100 * shareOn(later, /grip/)).toFixed(0)} %) in the later`,
          `${topThree(first)} against ${topThree(later)}`,
        ),
        said([
          { where: "first order", text: setUpOf("cane-three-point"), pattern: /cane, weak foot, strong foot/ },
          {
            where: "later order",
            text: rungText("cane-two-point/cane-with-weak"),
            pattern: /Cane and weak foot travel at once/,
          },
        ]),
      ]);
    },
  },
  {
    fact: "21c",
    says: "Kerb and stairs: up with the strong foot first, down with the weak foot first; each spares the weak knee the lifting or the lowering.",
    judge: () =>
      all([
        compareOrder("up the stairs", "stairs-strong-rail/stair-up-strong-first"),
        compareOrder("down the stairs", "stairs-strong-rail/stair-down-weak-first"),
        compareOrder("up the kerb", "kerb-with-cane/up-strong-first"),
        compareOrder("down the kerb", "kerb-with-cane/down-weak-first"),
      ]),
  },
  {
    fact: "21d",
    says: "One rail may be on the wrong side on the way down: backward with the strong hand on it, or across.",
    judge: () =>
      said([
        {
          where: "backward",
          text: rungText("stairs-down-other-rail/backward-strong-hand"),
          pattern: /faces up, so the rail is again at the strong hand/,
        },
        {
          where: "across",
          text: rungText("stairs-down-other-rail/forward-hand-across"),
          pattern: /strong hand reaches across the body to the rail/,
        },
        {
          where: "set-up",
          text: setUpOf("stairs-down-other-rail"),
          pattern: /where the rails are at home/,
        },
      ]),
  },
  {
    fact: "23a",
    says: "Cane at the wrist crease, in usual shoes, standing, upper arm hanging: elbow 20 to 30 degrees (Kumar 1995: 25.4, spread 6.1); at the hip joint's height more (44.8, spread 11.8).",
    judge: () => {
      const rows = BODIES.map(({ name, body }) => ({
        name,
        wrist: elbowAtHandle(body, bodyHeights(body).wristStanding),
        hip: elbowAtHandle(body, bodyHeights(body).hipStanding),
      }));
      const wrong = rows.filter(
        ({ wrist, hip }) => !(wrist >= 20 && wrist <= 30 && hip > wrist && Math.abs(hip - 44.8) <= 11.8),
      );
      return all([
        judged(
          wrong.length === 0,
          rows
            .map(
              ({ name, wrist, hip }) =>
                `${name}: ${wrist.toFixed(0)} degrees at the wrist crease, ${hip.toFixed(0)} at the hip joint`,
            )
            .join("; "),
          wrong.map(({ name }) => name).join(", "),
        ),
        said([{ where: "set-up", text: setUpOf("cane-fit-and-load"), pattern: /wrist crease.*20 to 30 degrees/ }]),
      ]);
    },
  },
  {
    fact: "23b",
    says: "A first setting of the cane is 0.45 of the stature and 8.7 cm, within two holes of the wrist crease in shoes (Kumar 1995, as a second reader quotes the constant).",
    judge: () => {
      const rows = BODIES.map(({ name, body, size }) => ({
        name,
        formula: 0.45 * size.height + 0.087,
        crease: bodyHeights(body).wristStanding + SHOE,
      }));
      const wrong = rows.filter(({ formula, crease }) => Math.abs(formula - crease) > TWO_HOLES);
      return judged(
        wrong.length === 0,
        rows
          .map(
            ({ name, formula, crease }) =>
              `${name}: formula ${formula.toFixed(3)} m, wrist crease ${crease.toFixed(3)} m`,
          )
          .join("; "),
        wrong
          .map(({ name, formula, crease }) => `${name} is off by ${(100 * (crease - formula)).toFixed(1)} cm`)
          .join(", "),
      );
    },
  },
];
