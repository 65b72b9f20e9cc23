import type { FigureInput } from "../src/figures/index.ts";
import { buildBody } from "../src/mechanics/body/build.ts";
import { keepPoses, type PoseKeeper } from "../src/plan/assess/prepared.ts";
import { poseOfMoment } from "../src/plan/assess/transition-today.ts";
import { TRANSITIONS } from "../src/practice/catalogue.ts";
import type { KeyPose, Transition } from "../src/practice/transitions/transition.ts";
import type { PicturedPerson } from "./drawn-rungs.ts";

/** A key moment of a way ready to be drawn for one person; null where the pose does not close. */
export interface MomentToDraw {
  readonly key: KeyPose;
  readonly name: string;
  readonly input: FigureInput | null;
  readonly because: string;
}
export interface WayToDraw {
  readonly transition: Transition;
  readonly moments: readonly MomentToDraw[];
}

/** Every way that has key poses, for one person, in the order of the catalogue. */
export function waysFor(person: PicturedPerson): WayToDraw[] {
  const keeper = keepPoses({
    body: buildBody(person.size, person.weakAt),
    ageYears: person.age,
    loadShareWeak: {},
    ranges: {},
  });
  return TRANSITIONS.flatMap((transition) =>
    transition.keyPoses === undefined
      ? []
      : [{ transition, moments: transition.keyPoses.map((key, i) => momentFor(person, keeper, transition, key, i)) }],
  );
}

function momentFor(
  person: PicturedPerson,
  keeper: PoseKeeper,
  transition: Transition,
  key: KeyPose,
  index: number,
): MomentToDraw {
  const name = `${transition.id}/${index + 1}`;
  const specification = poseOfMoment(key);
  const prepared = keeper.prepare(specification);
  if (!prepared.possible) return { key, name, input: null, because: prepared.because };
  return {
    key,
    name,
    because: "",
    input: {
      body: buildBody(person.size, person.weakAt),
      configuration: prepared.pose.configuration,
      specification,
      size: { width: 340 },
      theme: "paper",
      look: {
        older: person.age >= 60,
        footwear: specification.contacts.some((contact) => contact.on === "floor") ? "shoes" : "bare",
      },
      helper: {
        pose: key.helper.pose,
        at: key.helper.at,
        hands: key.helper.hands.map(({ site, does }) => ({ site, does })),
      },
    },
  };
}
