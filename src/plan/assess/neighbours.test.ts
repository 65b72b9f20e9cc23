import { describe, expect, it } from "vitest";
import { buildBody } from "../../mechanics/body/build.ts";
import { KEPT_APART } from "../../practice/activities/teaching/kept-apart.data.ts";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import { askOf, compareNeighbours, differencesOf, type Neighbours } from "./neighbours.ts";
import { keepPoses } from "./prepared.ts";

/**
 * One rung differs from the next in one thing, and its demands or its computed effort show it. Compared on a woman of 67,
 * 1.63 m and 68 kg with 0.4 of normal strength on the weak side and 0.9 on the strong. At most one neighbour in twenty may
 * be told apart by dose or hands alone, and each of these says why (a rule of this project).
 */
const keeper = keepPoses({
  body: buildBody({ sex: "female", height: 1.63, mass: 68 }, 1),
  ageYears: 67,
  loadShareWeak: {},
  ranges: {},
});
const NEIGHBOURS = compareNeighbours(keeper, ACTIVITIES);
const nameOf = ({ activity, upper }: Neighbours): string => `${activity}/${upper}`;
const tell = ({ activity, lower, upper, differ }: Neighbours): string =>
  `${activity}: ${lower} > ${upper} (${differ.length === 0 ? "nothing" : differ.join(", ")})`;
const only = (pair: Neighbours, allowed: readonly string[]): boolean =>
  pair.differ.every((each) => allowed.includes(each));

describe("neighbouring rungs", () => {
  it("are all compared, in poses that can be taken and held", () => {
    expect(NEIGHBOURS.length).toBe(ACTIVITIES.reduce((sum, { rungs }) => sum + rungs.length - 1, 0));
    const unheld = ACTIVITIES.flatMap(({ id, rungs }) =>
      rungs.filter((rung) => askOf(keeper, rung).effort === null).map((rung) => `${id}/${rung.id}`),
    );
    expect(unheld).toEqual([]);
  });

  it("differ in demands, dose, free limb, support, hands or effort: none is the same rung twice", () => {
    expect(NEIGHBOURS.filter(({ differ }) => differ.length === 0).map(tell)).toEqual([]);
  });

  it("are told apart by dose or hands alone in at most one in twenty, each for a reason of its own", () => {
    const close = NEIGHBOURS.filter((pair) => only(pair, ["dose", "hands"]));
    console.log(
      `${close.length} of ${NEIGHBOURS.length} neighbours differ in dose or hands alone\n${close.map(tell).join("\n")}`,
    );
    const bySupport = NEIGHBOURS.filter((pair) => only(pair, ["dose", "hands", "support"]) && !close.includes(pair));
    console.log(
      `${bySupport.length} more differ in what bears the body and not in effort\n${bySupport.map(tell).join("\n")}`,
    );
    expect(close.length).toBeLessThanOrEqual(NEIGHBOURS.length / 20);
    expect(close.filter((pair) => !(nameOf(pair) in KEPT_APART)).map(tell)).toEqual([]);
  });

  it("are defended only where they exist, in sentences that are their own", () => {
    const names = NEIGHBOURS.map(nameOf);
    expect(Object.keys(KEPT_APART).filter((name) => !names.includes(name))).toEqual([]);
    const sentences = Object.values(KEPT_APART);
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].{40,}[.]$/);
  });

  it("would be found out if one were a copy of the other", () => {
    const rung = ACTIVITIES[0]?.rungs[0];
    if (rung === undefined) throw new Error("no rung");
    const ask = askOf(keeper, rung);
    expect(differencesOf(ask, askOf(keeper, { ...rung, words: "Something else altogether" }))).toEqual([]);
    expect(differencesOf(ask, askOf(keeper, { ...rung, demands: [...rung.demands, "neckExtension"] }))).toEqual([
      "demands",
    ]);
    expect(differencesOf(ask, { ...ask, effort: null })).toEqual(["effort"]);
  });
});
