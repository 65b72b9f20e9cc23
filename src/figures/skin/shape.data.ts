/**
 * Shape of the drawn body at reference stature [mm], set by eye around the contact balls of the mechanics ("judgement";
 * breadths and depths of the trunk after "pheasant1996"). Growth with girth: breadth 0.95, depth 1.25, limbs 0.85,
 * wrists, neck and feet 0.35.
 */
export const TRUNK_RINGS = {
  male: [
    { up: -62, half: 92, front: 60, back: 74 },
    { up: -36, half: 138, front: 84, back: 100 },
    { up: 0, half: 163, front: 93, back: 110 },
    { up: 45, half: 160, front: 100, back: 104 },
    { up: 90, half: 155, front: 103, back: 95 },
    { up: 145, half: 147, front: 105, back: 84 },
    { up: 200, half: 145, front: 104, back: 82 },
    { up: 265, half: 152, front: 110, back: 90 },
    { up: 330, half: 163, front: 116, back: 100 },
    { up: 390, half: 172, front: 118, back: 106 },
    { up: 440, half: 174, front: 114, back: 107 },
    { up: 485, half: 165, front: 98, back: 101 },
    { up: 525, half: 134, front: 74, back: 90 },
    { up: 560, half: 92, front: 60, back: 74 },
    { up: 590, half: 62, front: 52, back: 60 },
  ],
  female: [
    { up: -62, half: 96, front: 58, back: 76 },
    { up: -36, half: 146, front: 84, back: 104 },
    { up: 0, half: 172, front: 95, back: 112 },
    { up: 45, half: 166, front: 100, back: 110 },
    { up: 90, half: 153, front: 102, back: 96 },
    { up: 145, half: 128, front: 98, back: 80 },
    { up: 200, half: 120, front: 94, back: 78 },
    { up: 265, half: 128, front: 99, back: 84 },
    { up: 330, half: 140, front: 105, back: 94 },
    { up: 390, half: 148, front: 105, back: 97 },
    { up: 440, half: 151, front: 98, back: 96 },
    { up: 485, half: 146, front: 84, back: 91 },
    { up: 525, half: 121, front: 66, back: 80 },
    { up: 553, half: 82, front: 52, back: 66 },
    { up: 578, half: 55, front: 45, back: 56 },
  ],
} as const;

/** Height above the hip joints where the shirt ends [mm]. */
export const SHIRT_HEM_MM = 72;
/** Swelling of the belly per unit of girth above 1 [mm], its middle and spread above the hip joints [mm]. */
export const BELLY = { male: 160, female: 100, middle: 130, spread: 110 } as const;

export const LIMB_RADII = {
  upperArm: [
    { along: 0, out: 50, front: 47, back: 47 },
    { along: 0.124, out: 54, front: 54, back: 54 },
    { along: 0.3, out: 52, front: 53, back: 52 },
    { along: 0.52, out: 47, front: 51, back: 48 },
    { along: 0.75, out: 43, front: 46, back: 44 },
    { along: 1, out: 40, front: 40, back: 40 },
  ],
  forearm: [
    { along: 0, out: 40, front: 40, back: 40 },
    { along: 0.2, out: 43, front: 41, back: 41 },
    { along: 0.45, out: 39, front: 36, back: 37 },
    { along: 0.75, out: 32, front: 28, back: 28 },
    { along: 0.93, out: 29, front: 25, back: 25 },
    { along: 1, out: 29, front: 23, back: 23 },
  ],
  thigh: [
    { along: 0, out: 84, front: 86, back: 84 },
    { along: 0.12, out: 86, front: 88, back: 88 },
    { along: 0.237, out: 85, front: 88, back: 88 },
    { along: 0.45, out: 77, front: 83, back: 82 },
    { along: 0.7, out: 64, front: 69, back: 66 },
    { along: 0.88, out: 56, front: 58, back: 56 },
    { along: 1, out: 52, front: 52, back: 52 },
  ],
  shank: [
    { along: 0, out: 51, front: 51, back: 51 },
    { along: 0.12, out: 52, front: 48, back: 57 },
    { along: 0.3, out: 54, front: 45, back: 67 },
    { along: 0.5, out: 48, front: 42, back: 58 },
    { along: 0.75, out: 37, front: 37, back: 40 },
    { along: 0.93, out: 32, front: 34, back: 34 },
    { along: 1, out: 33, front: 35, back: 35 },
  ],
} as const;

/** Rings of the head above the neck joint: middle forward of the joint, half depth to front and back, half breadth. */
export const HEAD_RINGS = [
  { up: 22, middle: 62, front: 26, back: 20, half: 24 },
  { up: 36, middle: 44, front: 51, back: 40, half: 43 },
  { up: 58, middle: 28, front: 67, back: 62, half: 57 },
  { up: 82, middle: 16, front: 80, back: 80, half: 66 },
  { up: 105, middle: 9, front: 88, back: 91, half: 72 },
  { up: 132, middle: 7, front: 93, back: 98, half: 77 },
  { up: 160, middle: 6, front: 97, back: 97, half: 77 },
  { up: 188, middle: 4, front: 91, back: 91, half: 72 },
  { up: 212, middle: 2, front: 76, back: 78, half: 60 },
  { up: 230, middle: 0, front: 53, back: 55, half: 42 },
  { up: 240, middle: -1, front: 28, back: 28, half: 22 },
] as const;

/** Sections of the foot forward of the ankle joint: top and half breadth; the sole is level. */
export const FOOT_RINGS = [
  { ahead: -62, top: -26, bottom: -52, half: 14, mid: 0 },
  { ahead: -54, top: -12, bottom: -64, half: 24, mid: 0 },
  { ahead: -38, top: 4, bottom: -68, half: 32, mid: 0 },
  { ahead: -10, top: 16, bottom: -68, half: 34, mid: 0 },
  { ahead: 22, top: 13, bottom: -68, half: 35, mid: 0 },
  { ahead: 55, top: 2, bottom: -68, half: 38, mid: 0 },
  { ahead: 90, top: -14, bottom: -68, half: 43, mid: 1 },
  { ahead: 118, top: -35, bottom: -68, half: 46, mid: 1 },
] as const;
/** Sections of the toes forward of their joint; height against it. */
export const TOE_RINGS = [
  { ahead: 22, top: 11, bottom: -13, half: 42, mid: 0 },
  { ahead: 48, top: 7, bottom: -12, half: 35, mid: -2 },
  { ahead: 66, top: 1, bottom: -10, half: 22, mid: -5 },
] as const;

/** Palm: sections down from the wrist, half breadth, thickness to palm and to the back. */
export const PALM_RINGS = [
  { down: 0, half: 28, palm: 20, back: 20, thumbward: 0 },
  { down: 18, half: 33, palm: 18, back: 18, thumbward: 1 },
  { down: 48, half: 39, palm: 17, back: 14, thumbward: 2 },
  { down: 78, half: 42, palm: 16, back: 13, thumbward: 0 },
  { down: 94, half: 41, palm: 15, back: 12, thumbward: 0 },
] as const;
/** Fingers from the thumb side: knuckle toward the thumb and down, length, radius. */
export const FINGERS = [
  { thumbward: 31, down: 92, length: 82, radius: 9.5, spread: 5 },
  { thumbward: 11, down: 96, length: 92, radius: 9.5, spread: 1 },
  { thumbward: -10, down: 94, length: 86, radius: 9.2, spread: -3 },
  { thumbward: -30, down: 88, length: 68, radius: 8.2, spread: -8 },
] as const;
