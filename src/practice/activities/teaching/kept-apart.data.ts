/**
 * Neighbouring rungs that bear on the same things with the same limb free and work the joints alike, and stay two rungs
 * all the same: by activity and the upper rung, why.
 */
export const KEPT_APART: Readonly<Record<string, string>> = {
  "bridge/full-lift":
    "Half height is lifted with the helper's palm under the seat; at full height the palm only touches, so the person carries what the helper carried.",
  "heel-slide-weak/on-cloth":
    "The heel's weight passes from the helper's hand to the cloth: the same bend, but now the leg makes the way by itself.",
  "heel-slide-weak/stop-on-call":
    "The slide is the same and so is its force; new is the braking, three times on a word, which no balance of forces shows.",
  "weak-hip-hike-side-lying/leg-long":
    "The pillow carries the leg in both, so the joints work alike; but the long leg is drawn up in the line of walking and slides twice as far from the waist.",
  "weak-blade-set-side-lying/back-and-down":
    "The blade goes the other way, with other muscles, while the arm lies and weighs nothing in either.",
  "weak-knee-bend-prone/from-the-mat":
    "Stopping a falling shin half way and starting it from the mat cost nearly the same, yet many can brake a leg they cannot start.",
  "short-sitting-still/eyes-shut":
    "Nothing moves and nothing weighs more: the eyes are taken away, and with them the only upright some people have.",
  "short-sitting-heel-and-toes/toes-up-foot-ahead":
    "The ankle works alike; with the foot ahead of the knee the calf is longer and the toes must clear as they do before the heel lands.",
  "prone-hip-straight/thighs-together-head-away":
    "It is lying still in both; the thighs brought together and the head turned away take the hip to the last of its range.",
};
