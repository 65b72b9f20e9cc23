import type { Position } from "../position.ts";
import { STANDING_AT_STEPS } from "../upright-poses.data.ts";

export const standingAtSteps: Position = {
  id: "standing-at-steps",
  name: "Standing at steps, hand on the rail",
  plainName: "Standing at the stairs",
  isFor: "The last stretch to the front door or the bedroom: one step at a time with the strong hand on the rail.",
  purposes: ["stepping", "stanceOnWeak", "deviceReady"],
  prerequisites: {
    range: ["Strong knee and hip bend to a step's height", "The weak foot clears a step, with an orthosis if needed"],
    strength: ["Walks twenty steps with a cane and one helper", "The strong leg rises from a low seat alone"],
    precautions: ["Pulse, pressure and breath settled after walking", "Strong hand free to hold the rail"],
  },
  setUpWell: ["Steps lit, dry and clear, edges seen", "Strong hand on the rail a little ahead of the hip", "Toes a hand's breadth from the first edge", "Belt on; helper one step lower than the person"],
  helper: { pose: "strideStanding", beside: "weak", place: "Always one step lower: behind and to the weak side going up, in front and to the weak side going down." },
  watch: ["the weak toes catching the edge", "the hand pulling the body up by the rail", "haste at the last step"],
  weakShoulder: "Hand in the belt and flat on the chest or shoulder; the weak arm in its support.",
  comfortCheck: ["Breath for a sentence?", "Which foot goes first?", "Ready for one, or to turn back?"],
  wayOut: {
    planned: ["Both feet level on the same step, hand on the rail.", "Back to the floor: weak foot down, strong foot after.", "The chair is brought until it touches both calves; down on a count."],
    hurry: ["Both hands of the helper to belt and rail, hips against the rail.", "Sit down on the step behind, helper below."],
    to: "short-sitting",
    minutes: 0.9,
    strengthShare: 0.08,
  },
  demands: ["standing", "footPressure"],
  floorStance: false,
  equipment: ["steps", "belt"],
  places: ["plinth", "raisedMat"],
  pose: STANDING_AT_STEPS,
  sources: ["common-practice"],
};
