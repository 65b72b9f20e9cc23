import { ON_FLOOR_AT_SEAT } from "../floor-and-arm-poses.data.ts";
import type { Position } from "../position.ts";

export const onFloorAtSeat: Position = {
  id: "on-floor-at-seat",
  name: "On the floor beside a seat",
  plainName: "On the floor next to a chair",
  isFor: "Where the way back up begins after a fall: sitting on the floor with something firm at the strong hand.",
  purposes: ["floorRecovery", "standUp"],
  prerequisites: {
    range: ["Hips bend past ninety degrees", "Knees bend to ninety degrees"],
    strength: ["Sits on the floor with one arm for support"],
    precautions: ["After a real fall nobody is moved before head, neck, hips and pain have been looked at"],
  },
  setUpWell: ["A firm seat against a wall, as high as a chair and on the strong side", "Forearm on the seat, weak foot flat and within sight", "Shoes on, the floor dry, the way to the seat clear"],
  helper: { pose: "halfKneeling", beside: "weak", place: "Half kneeling at the weak side, near knee up beside the weak hip." },
  watch: ["the seat sliding", "the trunk hanging on the strong shoulder", "colour of the face, pain that was not there before"],
  weakShoulder: "The weak arm lies in the lap or in a support; nobody pulls on it to get the person up.",
  comfortCheck: ["Any pain, anywhere?", "Dizzy or sick?", "Is the weak arm in front and free?"],
  wayOut: {
    planned: ["The strong hand comes down from the seat to the floor.", "The knees go long, the helper steadying the back.", "Rest in long sitting, then down over the strong elbow."],
    hurry: ["Cushion behind, lie back over the strong side.", "Stay there and call for a second pair of hands."],
    to: "long-sitting",
    minutes: 0.8,
    strengthShare: 0.03,
  },
  demands: ["hipPastNinety"],
  floorStance: true,
  equipment: ["stool"],
  places: ["floorMat"],
  pose: ON_FLOOR_AT_SEAT,
  sources: ["common-practice"],
};
