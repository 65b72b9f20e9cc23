import { weighPoints, type WeighedPoint } from "../pose/points.ts";

/** Centre of mass of a leg from four markers, with the textbook's own segment table: share of the body's mass, centre from the upper end. */
export function winterLimb(): Readonly<Record<"foot" | "leg" | "thigh" | "limb", WeighedPoint>> {
  const toe = [1.011, 0, 0.013] as const;
  const ankle = [0.849, 0, 0.11] as const;
  const knee = [0.864, 0, 0.549] as const;
  const hip = [0.721, 0, 0.928] as const;
  const foot = { mass: 0.0145, from: ankle, to: toe, centre: 0.5 };
  const leg = { mass: 0.0465, from: knee, to: ankle, centre: 0.433 };
  const thigh = { mass: 0.1, from: hip, to: knee, centre: 0.433 };
  return {
    foot: weighPoints([foot]),
    leg: weighPoints([leg]),
    thigh: weighPoints([thigh]),
    limb: weighPoints([foot, leg, thigh]),
  };
}
