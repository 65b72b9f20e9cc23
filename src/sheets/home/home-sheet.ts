import { bodySideOf, type Laterality } from "../../quantity/sides.ts";
import type { Activity } from "../../practice/activities/activity.ts";
import { lowerFirst } from "../note/rung-words.ts";
import type { Picture, PlannedRung } from "../planned-rung.ts";
import { fillSides } from "../words/body-sides.ts";
import { chooseHomeRungs, type HomeQuestion, type HomeRung, type LeftOff } from "./choose-home-rungs.ts";
import { HOME_WORDS, sayHelper, sayHome, sayHowMany } from "./home-words.ts";

export interface HomeSheetInput {
  readonly person: Laterality;
  readonly items: readonly PlannedRung[];
  readonly catalogue: readonly Activity[];
  readonly neglect: "none" | "mild" | "marked";
  /** Who is there at home: "your partner"; null where nobody is. */
  readonly helper: string | null;
  /** Rungs ("activity/rung") shown back twice; null where none is kept yet, and the sheet then says to wait for it. */
  readonly shown: readonly string[] | null;
  /** What is known of the one who helps at home; left out or null where nothing is. */
  readonly family?: HomeQuestion["family"];
  /** "aphasia": fewer words, larger pictures, one sentence a line, numerals. */
  readonly form: "plain" | "aphasia";
  /** The picture of a rung on this person's side, for paper; with the helper in it where asked. Null where none can be drawn. */
  readonly picture: (planned: PlannedRung, options: { readonly withHelper: boolean }) => Picture | null;
  readonly label: string | null;
  readonly date: string | null;
}

export interface HomeStrip {
  readonly activity: string;
  readonly rung: string;
  readonly picture: Picture | null;
  readonly name: string;
  readonly sentences: readonly string[];
  readonly helper: string | null;
  readonly howMany: string;
  /** After "Stop if": "your leg shakes". */
  readonly stopIf: string;
}

export interface HomeSheet {
  readonly kind: "sheet";
  readonly form: "plain" | "aphasia";
  readonly label: string | null;
  readonly date: string | null;
  readonly title: string;
  /** Which side is weaker and that it has stripes; null where no side is. */
  readonly legend: string | null;
  /** What to do first where one side goes unnoticed. */
  readonly lookFirst: string | null;
  /** Said where the show-backs are still to come. */
  readonly wait: string | null;
  readonly strips: readonly HomeStrip[];
  /** One line; never pictured. */
  readonly notAtHome: string;
  readonly stopAll: string;
  readonly callLead: string;
  readonly call: string;
  /** For the therapist, not printed: what was kept back and why. */
  readonly leftOff: readonly LeftOff[];
}

/** No sheet today, and why. */
export interface NoHomeSheet {
  readonly kind: "none";
  readonly because: string;
  readonly leftOff: readonly LeftOff[];
}

/** About three key points is what is kept. With neglect one fewer: each says more. */
const MOST_STRIPS = { plain: 4, aphasia: 3 } as const;

/** The person's own sheet for home, or why there is none. */
export function makeHomeSheet(input: HomeSheetInput): HomeSheet | NoHomeSheet {
  const { person, form, helper } = input;
  const { chosen, leftOff } = chooseHomeRungs({
    ...input,
    most: MOST_STRIPS[form] - (input.neglect === "none" ? 0 : 1),
  });
  if (input.neglect !== "none" && helper === null)
    return { kind: "none", because: "With neglect nothing is done alone at home: name a helper first.", leftOff };
  if (chosen.length === 0) return { kind: "none", because: "Nothing of today may go home yet.", leftOff };
  const short = form === "aphasia";
  return {
    kind: "sheet",
    form,
    label: input.label,
    date: input.date,
    title: short ? HOME_WORDS.shortTitle : HOME_WORDS.title,
    legend: sayLegend(person, short),
    lookFirst: input.neglect === "none" ? null : fillSides("Look for your {weak} arm first.", person),
    wait: input.shown !== null ? null : short ? HOME_WORDS.shortAfterShowing : HOME_WORDS.afterShowing,
    strips: chosen.map((one) => makeStrip(input, one)),
    notAtHome: sayNotAtHome(leftOff, input.catalogue, chosen, person, short),
    stopAll: short ? HOME_WORDS.shortStopAll : HOME_WORDS.stopAll,
    callLead: HOME_WORDS.callLead,
    call: short ? HOME_WORDS.shortCall : HOME_WORDS.call,
    leftOff,
  };
}

function makeStrip({ person, helper, form, picture }: HomeSheetInput, one: HomeRung): HomeStrip {
  const { planned, rung, home, drawHelper } = one;
  return {
    activity: planned.activity,
    rung: planned.rung,
    picture: picture(planned, { withHelper: drawHelper }),
    name: fillSides(rung.plainName, person),
    sentences: sayHome(home, person, helper),
    helper: sayHelper(one, person, helper),
    howMany: sayHowMany(one, form === "aphasia"),
    stopIf: fillSides(home.stopIf, person),
  };
}

function sayLegend(person: Laterality, short: boolean): string | null {
  const side = bodySideOf("weak", person);
  if (side === "either") return null;
  return short ? `Stripes: your ${side} side.` : `Your ${side} arm and leg are weaker. ${HOME_WORDS.stripes}`;
}

/** Names each ladder that stays here once; what may go home but found no room is not among them. */
function sayNotAtHome(
  leftOff: readonly LeftOff[],
  catalogue: readonly Activity[],
  chosen: readonly HomeRung[],
  person: Laterality,
  short: boolean,
): string {
  const atHome = new Set(chosen.map(({ planned }) => planned.activity));
  const kept = leftOff.filter(({ because, activity }) => !because.startsWith("A sheet holds") && !atHome.has(activity));
  const first = catalogue.flatMap(({ id }) => kept.find(({ activity }) => activity === id) ?? []);
  const names = first.slice(0, 3).map(({ plainName }) => lowerFirst(fillSides(plainName, person)));
  if (short) return `Not at home: ${[...names, "walk alone"].join(", ")}.`;
  return `Not at home: ${[...names, "walk by yourself", "or try what you were not shown"].join(", ")}.`;
}

/** All that the person reads, a line each, as it is measured for reading grade. */
export function homeSheetText(sheet: HomeSheet): string {
  return [
    sheet.title,
    sheet.legend,
    sheet.lookFirst,
    sheet.wait,
    ...sheet.strips.flatMap(({ name, sentences, helper, howMany, stopIf }) => [
      name,
      ...sentences,
      helper,
      howMany,
      `Stop if ${stopIf}.`,
    ]),
    sheet.notAtHome,
    sheet.stopAll,
    `${sheet.callLead} ${sheet.call}`,
  ]
    .filter((line) => line !== null)
    .join("\n");
}
