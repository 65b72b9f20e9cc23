/** Degrees live only at the edge and in the tables; inside, angles are radians. */
export const radiansOf = (degrees: number): number => (degrees * Math.PI) / 180;
export const degreesOf = (radians: number): number => (radians * 180) / Math.PI;
