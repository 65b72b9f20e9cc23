/**
 * Grip of a contact, low end of what was published, because the person cannot be asked to rely on more. Hand on vinyl:
 * "buchholz1988", 0.53 less one spread of 0.18. Clothes on vinyl: "lamsal2024" gives 0.50-0.57 for trousers on vinyl and
 * 0.34 on cloth; 0.35. Sock on vinyl 0.25: "sock-friction-2022" from 0.27 up, rounded down. Shoe on floor 0.5:
 * "miller1983". Bare skin on cotton 0.24: "temel2022", 0.31 less one spread. A stick stands on one point and can push only
 * along itself: set down within six degrees of upright it gives a tenth sideways ("judgement").
 */
export const FRICTION_LOW = { hand: 0.35, clothes: 0.35, sock: 0.25, shoe: 0.5, skinOnCotton: 0.24, stick: 0.1 } as const;
