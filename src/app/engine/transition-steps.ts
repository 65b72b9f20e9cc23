import { drawFigure, type Marks, textAlternative } from "../../figures/index.ts";
import type { LinearSolver } from "../../mechanics/linear-program/linear-program.ts";
import { SITE_TABLE } from "../../mechanics/help/sites.data.ts";
import type { SiteId } from "../../mechanics/help/sites.ts";
import { DIRECTION_WORDS } from "../../plan/assess/help.ts";
import { type EffortWord, wordOfEffort } from "../../plan/assess/settings.ts";
import {
  assessTransition,
  type KeyMoment,
  poseOfMoment,
  type TransitionToday,
} from "../../plan/assess/transition-today.ts";
import { positionRow } from "../../plan/session/session-plan.ts";
import { effortSentence, partName, upper } from "../../plan/session/sentences.ts";
import { TRANSITIONS } from "../../practice/catalogue.ts";
import type { PlannedAssistance } from "../../practice/handling/assistance.ts";
import type { Transition, TransitionStep } from "../../practice/transitions/transition.ts";
import { ProgrammingError } from "../../quantity/programming-error.ts";
import { sayOfPerson } from "../../sheets/index.ts";
import type { Picture, PictureRequest } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";
import { discsOf, loadWords, lookFor, segmentOf, turned } from "./pictures.ts";
import { type AnswerSide, answerSide } from "./sides.ts";
import { lowerFirst } from "./words.ts";

/** A way from one position to another for one person, step by step, in words of the body's own sides. */
export interface WaySteps {
  readonly id: string;
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly steps: readonly WayStep[];
  /** People needed besides the person; null where one moment cannot be held with two. */
  readonly helpers: number | null;
  /** The same as a sentence, with the hardest moment and what gives way there. */
  readonly sentence: string;
  /** What the second helper does; null where none is foreseen. */
  readonly secondHelper: string | null;
  /** Number of the hardest step; null where no moment is worked out. */
  readonly hardestStep: number | null;
  readonly prerequisites: readonly string[];
  readonly comfortCheck: string;
}
export interface WayStep {
  readonly number: number;
  readonly whoMoves: TransitionStep["whoMoves"];
  readonly moves: string;
  readonly onCount: string | null;
  readonly helper: string;
  readonly helperBeside: AnswerSide | "front" | "behind" | "foot" | "head";
  readonly say: string | null;
  /** The pictures of this step, in order; often one, sometimes none. */
  readonly moments: readonly WayMoment[];
}
export interface WayMoment {
  readonly number: number;
  readonly picture: Picture;
  /** How hard it is for the person without help; "folds" where it cannot be held without. */
  readonly effort: EffortWord;
  readonly effortSentence: string;
  /** "the left knee"; null where nothing gives way. */
  readonly givesWay: string | null;
  readonly place: string;
  readonly hands: readonly string[];
  readonly knee: string | null;
  /** What lies on the helper's thigh; null where nothing does. */
  readonly onThigh: string | null;
  /** Null where no help makes it possible today. */
  readonly help: {
    readonly words: PlannedAssistance;
    readonly code: number;
    readonly newtons: number;
    readonly helpers: number;
    readonly sentence: string;
  } | null;
  /** Why it cannot be done today; null where it can. */
  readonly because: string | null;
  readonly hardest: boolean;
}

/** Less than a touch is not worth a figure [N]. */
const TOUCH = 20;
const ORDINALS = ["no helper", "one helper", "two helpers"] as const;

/**
 * The numbered steps of a way for this person, each with its pictures, the helper's words, the effort and the help, ready
 * to be replayed from either end.
 * @returns all steps, those without key poses with no moments
 */
export function transitionSteps(
  person: PersonToday,
  id: string,
  solver: LinearSolver,
  request: Pick<PictureRequest, "theme" | "width" | "height">,
): WaySteps {
  const transition = TRANSITIONS.find((each) => each.id === id);
  if (transition === undefined) throw new ProgrammingError(`no way ${id}`);
  const say = (text: string): string => sayOfPerson(text, person.laterality);
  const today = assessTransition({ ...person, solver }, transition);
  return {
    id,
    name: say(transition.name),
    from: say(positionRow(transition.from).name),
    to: say(positionRow(transition.to).name),
    steps: transition.steps.map((step, i) => ({
      number: i + 1,
      whoMoves: step.whoMoves,
      moves: say(step.moves),
      onCount: step.onCount,
      helper: say(step.helper),
      helperBeside: besideOf(step.helperBeside, person),
      say: step.words === null ? null : say(step.words),
      moments: today.moments
        .filter(({ key }) => key.step === i + 1)
        .map((moment) => momentOf(person, transition, today, moment, request)),
    })),
    helpers: today.helpers,
    sentence: say(helpersSentence(today)),
    secondHelper: transition.secondHelper === null ? null : say(transition.secondHelper),
    hardestStep: today.hardest?.key.step ?? null,
    prerequisites: transition.prerequisites.map(say),
    comfortCheck: say(transition.comfortCheck),
  };
}

function besideOf(beside: TransitionStep["helperBeside"], person: PersonToday): WayStep["helperBeside"] {
  return beside === "weak" || beside === "strong" ? answerSide(beside, person.laterality) : beside;
}

function helpersSentence({ helpers, hardest, moments }: TransitionToday): string {
  if (hardest === null) return "No moment of this way is worked out.";
  if (helpers === null) {
    const lost = moments.find(({ held }) => held === "no") ?? hardest;
    return `Not today with two helpers: step ${lost.key.step}. ${lost.because ?? ""}`.trim();
  }
  const gives = hardest.givesWay === null ? "" : `; ${partName(hardest.givesWay)} gives way first without help`;
  return `${upper(ORDINALS[helpers] ?? `${helpers} helpers`)}. The hardest moment is step ${hardest.key.step}${gives}.`;
}

function momentOf(
  person: PersonToday,
  transition: Transition,
  today: TransitionToday,
  moment: KeyMoment,
  request: Pick<PictureRequest, "theme" | "width" | "height">,
): WayMoment {
  const say = (text: string): string => sayOfPerson(text, person.laterality);
  const { key, asks, help, effort, givesWay } = moment;
  return {
    number: moment.number,
    picture: drawMoment(person, transition, moment, request),
    effort: effort === null ? "folds" : wordOfEffort(effort),
    effortSentence: asks === null ? "It cannot be held still without help." : say(effortSentence(asks)),
    givesWay: givesWay === null ? null : say(partName(givesWay)),
    place: say(key.helper.place),
    hands: key.helper.hands.map(({ words }) => say(words)),
    knee: key.helper.knee === null ? null : say(key.helper.knee),
    onThigh: key.onThigh === null ? null : say(siteWords(key.onThigh)),
    help:
      help === null
        ? null
        : {
            words: help.words,
            code: help.code,
            newtons: Math.round(help.newtons),
            helpers: help.helpers,
            sentence: say(helpSentence(moment)),
          },
    because: moment.because === null ? null : say(moment.because),
    hardest: moment === today.hardest,
  };
}

function helpSentence({ help, key }: KeyMoment): string {
  if (help === null) return "";
  const touches = key.onThigh !== null || key.helper.hands.some(({ does }) => does !== "ready");
  if (help.newtons < TOUCH) return touches ? "A touch is enough." : "Stand by; no hand is needed.";
  const [first] = [...help.pushes].sort((a, b) => b.newtons - a.newtons || (a.site < b.site ? -1 : 1));
  const rounded = Math.round(help.newtons / 5) * 5;
  const where =
    first === undefined
      ? ""
      : `, most of it ${first.words}, pushing ${DIRECTION_WORDS[first.direction] ?? first.direction}`;
  const thigh =
    help.onThighNewtons >= TOUCH ? ` About ${Math.round(help.onThighNewtons / 5) * 5} of it lie on your thigh.` : "";
  const who = help.helpers > 1 ? `It takes ${ORDINALS[help.helpers] ?? `${help.helpers} helpers`}: about` : "About";
  return `${who} ${rounded} newtons${where}.${thigh}`;
}

function siteWords(site: SiteId): string {
  const [name = "", side = ""] = site.split(".");
  const row = Object.entries(SITE_TABLE).find(([id]) => id === name)?.[1];
  return row === undefined ? name : row.words.replace("{side}", side);
}

function drawMoment(
  person: PersonToday,
  transition: Transition,
  moment: KeyMoment,
  { theme, width, height }: Pick<PictureRequest, "theme" | "width" | "height">,
): Picture {
  const { key, asks } = moment;
  const specification = poseOfMoment(key);
  const prepared = person.drawn.prepare(specification);
  if (!prepared.possible) return { svg: "", text: `No picture: ${moment.because ?? prepared.because}` };
  const figure = drawFigure({
    body: person.drawnBody,
    configuration: prepared.pose.configuration,
    specification,
    size: { width, ...(height === undefined ? {} : { height }) },
    theme,
    density: theme === "paper" ? 2 : 1.5,
    look: lookFor(person, specification),
    helper: {
      pose: key.helper.pose,
      at: key.helper.at,
      hands: key.helper.hands.map(({ site, does }) => ({ site, does })),
    },
    marks: marksOf(person, moment),
  });
  const text = textAlternative(figure, {
    lies: `${transition.name}, step ${key.step}`,
    moves: transition.steps[key.step - 1]?.moves ?? null,
    helper: `The helper: ${lowerFirst(key.helper.place).replace(/\.$/, "")}`,
    hands: key.helper.hands.map(({ words }) => lowerFirst(words).replace(/\.$/, "")),
    weight: asks === null ? [] : loadWords(asks.loads),
    and: "and",
    weightIsOn: "Most weight is on",
  }).join(" ");
  return { svg: figure.svg, text: sayOfPerson(text, person.laterality) };
}

function marksOf(person: PersonToday, { asks }: KeyMoment): Marks {
  if (asks === null) return {};
  const segment = segmentOf(asks.limiting);
  return {
    discs: discsOf(asks.loads).map(({ at, share }) => ({ at: turned(person, at), share })),
    ...(segment !== null && asks.cautious > 0.4
      ? { effort: { segment, level: asks.cautious > 0.6 ? ("thick" as const) : ("thin" as const) } }
      : {}),
  };
}
