import { gripPull } from "../contact/columns.ts";
import type { Capacities } from "../body/strength-capacities.ts";
import { boxWork, solveBox } from "../linear-program/box-quadratic.ts";
import type { NoBalance } from "./habitual.ts";
import { prepareStatics, type Statics } from "./statics.ts";

/**
 * Least error with which the contacts can hold the whole body, muscles aside [N, N.m]: zero where balance is possible.
 */
export function leastImbalance(statics: Statics, capacities: Capacities): number {
  const { unknowns: n, whole, wholeSide, columns } = statics;
  const matrix = new Float64Array(n * n);
  const h = new Float64Array(n);
  const upper = new Float64Array(n);
  const work = boxWork(n);
  for (let j = 0; j < n; j++) {
    const column = columns[j];
    upper[j] =
      column === undefined
        ? 0
        : typeof column.most === "number"
          ? column.most
          : gripPull(capacities.grip[column.most.grip]);
    for (let r = 0; r < 6; r++) h[j] = (h[j] ?? 0) + (whole[r * n + j] ?? 0) * (wholeSide[r] ?? 0);
    for (let k = 0; k < n; k++) {
      let sum = j === k ? 1e-8 : 0;
      for (let r = 0; r < 6; r++) sum += (whole[r * n + j] ?? 0) * (whole[r * n + k] ?? 0);
      matrix[j * n + k] = sum;
    }
  }
  solveBox(matrix, h, upper, work);
  let worst = 0;
  for (let r = 0; r < 6; r++) {
    let error = wholeSide[r] ?? 0;
    for (let j = 0; j < n; j++) error -= (whole[r * n + j] ?? 0) * (work.x[j] ?? 0);
    worst = Math.max(worst, Math.abs(error));
  }
  return worst;
}

/** Why a pose cannot be in balance: nothing bears where it would have to, or the contacts would slide. */
export function whyNoBalance(statics: Statics, capacities: Capacities, residual: number): NoBalance {
  const sticky = prepareStatics(statics.body, statics.pose, { ...statics.options, friction: () => 2 });
  const endedBy = leastImbalance(sticky, capacities) < 1 ? "friction" : "contact";
  return {
    balanced: false,
    endedBy,
    residual,
    because:
      endedBy === "friction"
        ? "the contacts would have to slide: too little friction for this pose"
        : "the weight lies outside what bears: this pose cannot be held without help or a shift",
  };
}
