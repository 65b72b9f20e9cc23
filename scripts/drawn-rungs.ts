import { drawFigure, type Figure, type FigureInput } from "../src/figures/index.ts";
import type { Body, BodySize } from "../src/mechanics/body/body.ts";
import { buildBody } from "../src/mechanics/body/build.ts";
import { poseOf } from "../src/plan/assess/posed.ts";
import { keepPoses, type PoseKeeper, type PreparedPose } from "../src/plan/assess/prepared.ts";
import type { Activity, Rung } from "../src/practice/activities/activity.ts";
import { ACTIVITIES } from "../src/practice/catalogue.ts";

/** Two invented people: a slight older woman weak on the right, a heavy man weak on the left. */
export interface PicturedPerson {
  readonly name: string;
  readonly words: string;
  readonly size: BodySize;
  readonly age: number;
  readonly weakAt: 1 | -1;
}
export const PICTURED_PEOPLE: readonly [PicturedPerson, PicturedPerson] = [
  {
    name: "woman-weak-right",
    words: "woman, 1.63 m, 68 kg, weak on the right",
    size: { sex: "female", height: 1.63, mass: 68 },
    age: 67,
    weakAt: -1,
  },
  {
    name: "man-weak-left",
    words: "man, 1.77 m, 96 kg, weak on the left",
    size: { sex: "male", height: 1.77, mass: 96 },
    age: 59,
    weakAt: 1,
  },
];

/** A rung ready to be drawn for one of them; null where the pose does not close. */
export interface RungToDraw {
  readonly activity: Activity;
  readonly rung: Rung;
  readonly name: string;
  readonly prepared: PreparedPose | null;
  readonly because: string;
  readonly input: FigureInput | null;
}

/** Every rung of the catalogue for one person, in order. */
export function rungsFor(person: PicturedPerson): RungToDraw[] {
  const body = buildBody(person.size, person.weakAt);
  const keeper = keepPoses({ body, ageYears: person.age, loadShareWeak: {}, ranges: {} });
  return ACTIVITIES.flatMap((activity) => activity.rungs.map((rung) => rungFor(person, body, keeper, activity, rung)));
}

function rungFor(person: PicturedPerson, body: Body, keeper: PoseKeeper, activity: Activity, rung: Rung): RungToDraw {
  const name = `${activity.id}/${rung.id}`;
  const specification = poseOf(rung);
  const prepared = keeper.prepare(specification);
  if (!prepared.possible) return { activity, rung, name, prepared: null, because: prepared.because, input: null };
  const start = rung.start === undefined ? null : keeper.prepare(rung.start);
  const input: FigureInput = {
    body,
    configuration: prepared.pose.configuration,
    specification,
    size: { width: 340 },
    theme: "paper",
    look: {
      older: person.age >= 60,
      footwear: specification.contacts.some((contact) => contact.on === "floor") ? "shoes" : "bare",
    },
    helper: {
      pose: rung.helper.pose,
      at: rung.helper.at,
      hands: rung.helper.hands.map(({ site, does }) => ({ site, does })),
      knee: rung.helper.knee,
      people: rung.helpersNeeded,
    },
    ...(start?.possible === true && rung.limbFree !== null
      ? { start: { configuration: start.pose.configuration, moves: rung.limbFree } }
      : {}),
  };
  return { activity, rung, name, prepared, because: "", input };
}

/** The close-up of one of the helper's hands. */
export const drawHand = (input: FigureInput, hand: number): Figure =>
  drawFigure({ ...input, size: { width: 220, height: 220 }, closeUp: hand });
