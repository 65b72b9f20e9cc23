import { afterAll, describe, expect, it } from "vitest";
import expected from "./expected.json" with { type: "json" };
import type { Fact, Judged, Status } from "./fact.ts";
import { HANDLING } from "./handling.ts";
import { KNEELING_AND_STANDING } from "./kneeling-and-standing.ts";
import { LYING } from "./lying.ts";
import { PRONE_AND_SITTING } from "./prone-and-sitting.ts";
import { WALKING } from "./walking.ts";

interface Frozen {
  readonly fact: string;
  readonly status: string;
  /** Why it does not hold, in words; null where it holds. */
  readonly why: string | null;
}
const FACTS: readonly Fact[] = [...LYING, ...PRONE_AND_SITTING, ...KNEELING_AND_STANDING, ...HANDLING, ...WALKING];
const FROZEN: readonly Frozen[] = expected.rows;
const counts: Record<Status, number> = { holds: 0, disagrees: 0, "not in this version": 0 };

function say({ fact, says }: Fact, { status, figures, because }: Judged, why: string | null): string {
  const reason = because === null ? "" : `, because ${because}`;
  return `fact ${fact}: ${says}\n  computed: ${figures}\n  ${status}${reason}${why === null ? "" : `\n  in words: ${why}`}`;
}

describe("facts of the trade (common practice, no published source)", () => {
  it("are all there, 1 to 26, each with its frozen status", () => {
    expect(FACTS.map(({ fact }) => fact).sort()).toEqual(FROZEN.map(({ fact }) => fact).sort());
    const numbers = new Set(FACTS.map(({ fact }) => Number.parseInt(fact, 10)));
    expect([...numbers].sort((a, b) => a - b)).toEqual(Array.from({ length: 26 }, (_, i) => i + 1));
  });

  it.each(FACTS.map((fact) => [fact.fact, fact] as const))("%s stands as it was found", (name, fact) => {
    const frozen = FROZEN.find((each) => each.fact === name);
    const judged = fact.judge();
    counts[judged.status]++;
    console.log(say(fact, judged, frozen?.why ?? null));
    expect(judged.figures).not.toMatch(/NaN|Infinity|undefined/);
    // A change of status in either way is explained in expected.json before this passes again.
    expect(judged.status).toBe(frozen?.status);
    if (judged.status === "holds") {
      expect(frozen?.why).toBeNull();
    } else {
      expect(judged.because ?? "").not.toBe("");
      expect(frozen?.why?.length ?? 0).toBeGreaterThan(60);
    }
  });

  it("names in words the joint that inverts each fact that disagrees", () => {
    for (const { fact, status, why } of FROZEN)
      if (status === "disagrees")
        expect(why, `fact ${fact}`).toMatch(/\b(shoulder|elbow|wrist|trunk|hip|knee|ankle)s?\b/);
  });
});

afterAll(() => {
  console.log(
    `trade facts: ${counts.holds} hold, ${counts.disagrees} disagree, ${counts["not in this version"]} not in this version`,
  );
});
