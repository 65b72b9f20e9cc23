import type { BodySize } from "./body.ts";

/** Adults this project is for: height [m] and mass [kg], least and most (judgement). */
const HEIGHT = [1.2, 2.3] as const;
const MASS = [25, 300] as const;

/** Why no body can be built from a size; null where one can. */
export function refuseSize({ height, mass }: Pick<BodySize, "height" | "mass">): string | null {
  if (!(height >= HEIGHT[0] && height <= HEIGHT[1])) return `a height of ${height} m is not an adult's`;
  if (!(mass >= MASS[0] && mass <= MASS[1])) return `a mass of ${mass} kg is not an adult's`;
  return null;
}
