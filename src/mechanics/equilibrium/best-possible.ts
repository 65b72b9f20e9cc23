import type { Capacities } from "../body/strength-capacities.ts";
import type { Certificate, LinearSolver } from "../linear-program/linear-program.ts";
import { muscleMoments, ratios } from "./efforts.ts";
import { whyNoBalance } from "./feasible.ts";
import { type Balance, describeBalance, type NoBalance } from "./habitual.ts";
import { effortProgram } from "./program.ts";
import { mostEffort } from "./cubes.ts";
import type { Statics } from "./statics.ts";

export interface BestPossible extends Balance {
  /** Least possible largest effort. */
  readonly effort: number;
  /** Joints that hold it there: name and side. */
  readonly limiting: readonly { readonly joint: string; readonly side: "weak" | "strong" | null }[];
  readonly certificate: Certificate;
}

/**
 * What perfect use of everything would allow: the least possible largest effort, with proof. It explains a verdict and
 * flatters; the habitual sharing decides. Loads are one of many that reach it.
 */
export function solveBestPossible(
  statics: Statics,
  capacities: Capacities,
  solver: LinearSolver,
): BestPossible | NoBalance {
  const { builder, allowed, effortRow } = effortProgram(statics, capacities, null);
  let answer = solver.solve(builder.build());
  if (answer.status !== "best" && statics.sharing !== null) {
    const free = effortProgram({ ...statics, sharing: null }, capacities, null);
    answer = solver.solve(free.builder.build());
  }
  if (answer.status !== "best") return whyNoBalance(statics, capacities, Number.MAX_VALUE);
  const x = answer.x.slice(0, statics.unknowns);
  const moments = muscleMoments(statics, x, new Float64Array(statics.angles));
  const ratio = ratios(moments, allowed, new Float64Array(statics.angles));
  const { duals } = answer;
  const shared = statics.sharing === null || duals.length === 0 ? 0 : builder.rowLower.length - duals.length;
  const limiting = statics.joints
    .filter((joint, k) =>
      joint.angles.some((_, a) => Math.abs(duals[(effortRow[k] ?? 0) - shared + (joint.ball ? 0 : a)] ?? 0) > 1e-6),
    )
    .map((joint) => ({ joint: joint.name, side: statics.body.segments[joint.segment]?.side ?? null }));
  const described = describeBalance(statics, {
    x,
    moments,
    ratios: ratio,
    allowed,
    residual: answer.certificate.primal,
    rounds: 0,
    most: mostEffort(statics, allowed, ratio),
    state: new Int8Array(0),
    sharingHeld: statics.sharing !== null && shared === 0,
  });
  return { ...described, effort: answer.value, limiting, certificate: answer.certificate };
}
