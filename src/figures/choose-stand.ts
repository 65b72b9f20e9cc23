import { searchView, WANTED_VISIBLE } from "./choose-view.ts";
import { type Stand, STATED_STAND } from "./helper/pose-helper.ts";
import { type PreparedScene, prepareScene, type SceneInput } from "./scene.ts";
import { helperThroughPerson } from "./skin/passing.ts";
import { usualView } from "./views.ts";

/** Tried in this order where the stated stand hides a hand or passes through the person, until one does neither. */
const OTHER_STANDS: readonly Stand[] = [
  { ...STATED_STAND, firmness: 3 },
  { ...STATED_STAND, swapped: true, firmness: 2 },
  { ...STATED_STAND, along: -0.16, firmness: 2 },
  { ...STATED_STAND, along: 0.16, firmness: 2 },
  { ...STATED_STAND, along: -0.3, back: 0.04, firmness: 2 },
  { ...STATED_STAND, along: 0.3, back: 0.04, firmness: 2 },
  { ...STATED_STAND, along: -0.16, swapped: true, firmness: 2 },
  { ...STATED_STAND, along: 0.16, swapped: true, firmness: 2 },
];

/** Clothes and flesh give this much [m]. */
const GIVES = 0.02;
/** Deeper than this, another stand is looked for [m]. */
const TOO_DEEP = 0.03;
/** Palms further than this off their place are no hold [m]. */
const OFF_PLACE = 0.0145;

/** A stand with no fault may show a little less of the rest, in points of the view. */
const FINE_IS_WORTH = 1.5;

interface Judged {
  readonly prepared: PreparedScene;
  readonly worth: number;
  readonly fine: boolean;
}

/** Poses the helper where both hands show and no limb passes through the person; the stated stand where it does. */
export function prepareBestStand(input: SceneInput): { readonly prepared: PreparedScene; readonly stand: Stand } {
  let stand = STATED_STAND;
  let best = judge(input, prepareScene(input), stand);
  const { helper } = best.prepared;
  if (helper === null || best.fine) return { prepared: best.prepared, stand };
  for (const departs of OTHER_STANDS) {
    const other = { ...departs, hold: helper.hold };
    const judged = judge(input, prepareScene(input, other), other);
    if (judged.worth <= best.worth - (judged.fine ? FINE_IS_WORTH : 0)) continue;
    best = judged;
    stand = other;
    if (best.fine) break;
  }
  return { prepared: best.prepared, stand };
}

function judge(input: SceneInput, prepared: PreparedScene, stand: Stand): Judged {
  const { helper, people, body, frames } = prepared;
  const [person, helperPerson] = people;
  if (helper === null || person === undefined || helperPerson === undefined) return { prepared, worth: 0, fine: true };
  const through = helperThroughPerson(helperPerson, person)[0]?.depth ?? 0;
  const touching = helper.palms.filter((palm) => !palm.ready);
  const off = touching.reduce((most, palm) => Math.max(most, Math.abs(palm.signedGap), palm.siteMiss), 0);
  // Another stand that does not hold the person is not worth looking at.
  if (off > 2 * OFF_PLACE && stand !== STATED_STAND) return { prepared, worth: Number.NEGATIVE_INFINITY, fine: false };
  const found = searchView(prepared, usualView(body, frames, input.specification ?? null, true), null, false);
  const hands = found?.shown.hands ?? [];
  const departs = Math.abs(stand.along) * 1.5 + Math.abs(stand.back) + (stand.swapped ? 0.15 : 0);
  return {
    prepared,
    worth:
      (found?.value ?? 0) -
      40 * Math.max(0, through - GIVES) -
      600 * Math.max(0, off - OFF_PLACE) -
      15 * Math.max(0, (prepared.supportGap ?? 0) - GIVES) -
      departs,
    fine: through <= TOO_DEEP && off <= OFF_PLACE && hands.every((share) => share >= WANTED_VISIBLE + 0.03),
  };
}
