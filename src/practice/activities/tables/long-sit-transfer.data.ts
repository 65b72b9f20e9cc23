import { LIFT_SIDEWAYS_ON_BLOCKS, LIFT_TO_LOW_STEP } from "../../positions/floor-and-arm-poses.data.ts";
import { LONG_SITTING } from "../../positions/sitting-poses.data.ts";
import type { Activity, RungDose, RungHelper } from "../activity.ts";

const DOSE: RungDose = { kind: "repetitions", sets: 2, repetitions: 4, restSeconds: 90, minutesPerSet: 2.5 };
const HELPER: Pick<RungHelper, "pose" | "mayHelpAt"> = { pose: "kneeling", mayHelpAt: ["underButtock.weak", "underButtock.strong", "pelvisBack.weak", "pelvisBack.strong", "beltBack"] };
const PLACES = ["plinth", "raisedMat", "floorMat"] as const;
const STOPS = ["the seat drags instead of lifting", "a shoulder hurts", "the trunk tips back"];
const NOT_AT_HOME = "A drag over an edge costs skin: a trained pair of hands stays with it.";

/** Lift and move sideways in long sitting. Common practice. */
export const longSitTransfer: Activity = {
  id: "long-sit-transfer",
  name: "Lift and move sideways in long sitting",
  position: "long-sitting",
  purposes: ["bedMobility", "liftSeat", "comeToSit"],
  purposeWords: "Across the mat and onto something a little higher with the legs lying long: the way from bed to a chair for arms that carry.",
  icf: "d4200",
  setUp: "Long sitting, legs long and a little apart, the goal on the strong side, no gap and nothing to rub on.",
  lookFirst: "Does the seat clear the mat for two seconds? Are heels and seat free of sores?",
  sources: ["common-practice"],
  rungs: [
    {
      id: "lift-sideways",
      name: "Lift and move a hand sideways",
      plainName: "Lift and move over",
      changes: "Up on both arms and a hand's breadth to the strong side.",
      movesFirst: "The head goes away from the goal, the seat toward it.",
      pose: LIFT_SIDEWAYS_ON_BLOCKS,
      start: LONG_SITTING,
      limbFree: null,
      workingSide: "both",
      helper: {
        ...HELPER,
        at: { beside: "behind", nearTo: "hip", awayCm: 42 },
        place: "Kneeling behind, moving along.",
        hands: [
          { site: "underButtock.weak", does: "lifts", words: "Hand under the weak side of the seat." },
          { site: "pelvisBack.strong", does: "cues", words: "Other hand shows the way at the strong side." },
        ],
        knee: null,
      },
      words: "Lift, swing over, set down",
      cue: "swing",
      good: "Lifted over, not dragged, and the legs put after it.",
      faults: [
        { id: "drags-over", fault: "Drags over instead of lifting.", do: "Higher blocks, shorter way.", stepDown: false },
        { id: "legs-forgotten-behind", fault: "The legs stay where they were.", do: "Move them by the trouser leg after each lift.", stepDown: false },
      ],
      demands: ["wristLoad", "shoulderLoad"],
      dose: DOSE,
      trains: { bedMobility: 2, liftSeat: 2 },
      limbs: { arm: "train", leg: "spare", trunk: "train" },
      equipment: ["footBlock"],
      places: PLACES,
      helpersNeeded: 1,
      substitutes: [{ activity: "long-sitting-scoot", rung: "weak-hip-back" }, { activity: "roll-to-strong-side", rung: "blade-touched" }],
      notAtHome: NOT_AT_HOME,
      home: null,
      stopSigns: STOPS,
      sources: ["common-practice"],
    },
    {
      id: "to-a-low-step",
      name: "Lift toward a low step",
      plainName: "Lift toward step",
      changes: "The strong hand stands on a step ten centimetres high and the seat rises toward it.",
      movesFirst: "The chest leans away from the step, the seat goes to it.",
      pose: LIFT_TO_LOW_STEP,
      start: LONG_SITTING,
      limbFree: null,
      workingSide: "both",
      helper: {
        ...HELPER,
        at: { beside: "behind", nearTo: "hip", awayCm: 40 },
        place: "Kneeling behind the weak side.",
        hands: [
          { site: "underButtock.weak", does: "lifts", words: "Hand under the weak side of the seat." },
          { site: "underButtock.strong", does: "lifts", words: "Hand under the strong side toward the step." },
        ],
        knee: null,
        always: true,
      },
      words: "Lean away, seat up to step",
      cue: "up",
      good: "The seat clears the edge before it moves across.",
      faults: [
        { id: "scrapes-the-edge", fault: "The seat scrapes the edge.", do: "Stop: cushion on the edge, more help, less way.", stepDown: true },
        { id: "reaches-too-far-for-step", fault: "The hand reaches too far and the shoulder caves.", do: "Step closer to the hip.", stepDown: false },
      ],
      demands: ["wristLoad", "shoulderLoad"],
      dose: DOSE,
      trains: { bedMobility: 2, liftSeat: 3, comeToSit: 1 },
      limbs: { arm: "train", leg: "spare", trunk: "train" },
      equipment: ["footBlock", "belt"],
      places: PLACES,
      helpersNeeded: 2,
      substitutes: [{ activity: "sit-to-stand", rung: "perch-forearms-on-table" }, { activity: "long-sitting-scoot", rung: "strong-hip-back" }],
      notAtHome: NOT_AT_HOME,
      home: null,
      stopSigns: STOPS,
      sources: ["common-practice"],
    },
  ],
};
