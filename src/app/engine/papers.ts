import { drawSessionLine, type Stretch } from "../../figures/index.ts";
import { bodyHeights } from "../../mechanics/pose/targets.ts";
import { buildBody } from "../../mechanics/body/build.ts";
import { positionRow } from "../../plan/session/session-plan.ts";
import { ACTIVITIES, POSITIONS } from "../../practice/catalogue.ts";
import type { PositionId } from "../../practice/codes.ts";
import { boundsOf } from "../../session/bounds.ts";
import { foldSession } from "../../session/fold-session.ts";
import type { SessionEvent } from "../../session/events.ts";
import {
  homePaper,
  makeHomeSheet,
  makeTherapistSheet,
  nameHelperAtHome,
  type Note,
  type Paper,
  type Picture,
  type PlannedRung,
  sayOfPerson,
  therapistPaper,
  writeNote,
} from "../../sheets/index.ts";
import type { CaseFile } from "../contract/case-file.ts";
import type { PlanAnswer } from "../contract/plan-answer.ts";
import type { Engine } from "./engine.ts";
import { activitiesOf } from "./own-activities.ts";
import { lateralityOf } from "./read-findings.ts";
import { lowerFirst } from "./words.ts";

const PICTURE_WIDTH = 300;
const MAT_HEIGHT = 0.5;

/** What a drawing is for a paper: black and white, with its words; none where the body cannot take the position. */
function pictureFor(engine: Engine, file: CaseFile, planned: PlannedRung, withHelper: boolean): Picture | null {
  const { svg, text } = engine.picture(file, {
    activity: planned.activity,
    rung: planned.rung,
    kind: withHelper ? "item" : "body",
    theme: "paper",
    width: PICTURE_WIDTH,
  });
  return svg === "" ? null : { svg, alt: text };
}

export interface HomeOptions {
  readonly form: "plain" | "aphasia";
  /** Rungs shown back twice, "activity/rung"; null where none are kept yet. */
  readonly shown: readonly string[] | null;
}

/** The person's own sheet; or why there is none. */
export function homePaperOf(
  engine: Engine,
  file: CaseFile,
  plan: PlanAnswer,
  options: HomeOptions,
): { readonly paper: Paper } | { readonly because: string } {
  const sheet = makeHomeSheet({
    person: lateralityOf(file),
    items: plan.items,
    catalogue: activitiesOf(file),
    neglect: file.signs?.neglect ?? "none",
    helper: nameHelperAtHome(file.home?.livesWith ?? null),
    // What was shown back is kept with the findings; a device may know of more.
    shown: file.helpers?.family?.shownTwice ?? options.shown,
    family: file.helpers?.family === undefined ? null : { helper: file.helpers.family, person: file.person },
    form: options.form,
    picture: (planned, { withHelper }) => pictureFor(engine, file, planned, withHelper),
    label: file.label ?? null,
    date: file.date ?? null,
  });
  return sheet.kind === "none" ? { because: sheet.because } : { paper: homePaper(sheet) };
}

/** Today on one page for the one who treats. */
export function therapistPaperOf(engine: Engine, file: CaseFile, plan: PlanAnswer): Paper {
  const previous = file.previous?.[file.previous.length - 1];
  const changed = new Set(
    plan.changesSinceLast.length === 0 || previous === undefined
      ? []
      : plan.items
          .filter(
            (item) =>
              !(previous.items ?? []).some((before) => before.activity === item.activity && before.rung === item.rung),
          )
          .map((item) => item.activity),
  );
  return therapistPaper(
    makeTherapistSheet({
      person: lateralityOf(file),
      label: file.label ?? null,
      date: file.date ?? null,
      dayAfterOnset: file.daysSinceOnset,
      lastDay: previous?.date ?? null,
      changes: plan.changesSinceLast,
      hold: plan.hold,
      line: plan.items.length === 0 ? null : lineFor(file, plan),
      items: plan.items.map((item) => ({
        ...item,
        effortWords: engine.sheet(file, item).asks[0]?.sentence ?? null,
        changed: changed.has(item.activity),
        bounds: boundsOf(file.bounds ?? [], item.activity),
      })),
      catalogue: activitiesOf(file),
      positions: POSITIONS,
      picture: (planned) => pictureFor(engine, file, planned, true),
      out: outOfToday(plan),
      limits: plan.cautions.map((caution) => caution.text).slice(0, 3),
    }),
  );
}

/** The note of a session, written from its events. */
export function noteOf(file: CaseFile, plan: PlanAnswer | null, events: readonly SessionEvent[]): Note {
  const previous = file.previous?.[file.previous.length - 1];
  return writeNote({
    label: file.label ?? null,
    person: lateralityOf(file),
    state: foldSession(events),
    changes: plan?.changesSinceLast ?? [],
    catalogue: activitiesOf(file),
    previous:
      previous === undefined
        ? null
        : ({ ...previous, items: previous.items ?? [] } as Parameters<typeof writeNote>[0]["previous"]),
    lastDay: previous?.date ?? null,
  });
}

/** A few ladders a therapist would look for that are out as a whole, with the reason of their lowest rung. */
function outOfToday(plan: PlanAnswer): { name: string; because: string; instead: string | null }[] {
  return ["hands-and-knees-rock", "prone-on-elbows-hold-and-shift", "sit-to-stand", "bars-weak-stance"].flatMap(
    (id) => {
      const activity = ACTIVITIES.find((each) => each.id === id);
      if (
        activity === undefined ||
        plan.items.some((item) => item.activity === id) ||
        plan.available.some((each) => each.activity === id)
      )
        return [];
      const lowest = plan.excluded.find((each) => each.activity === id);
      const because = lowest?.because[0]?.detail;
      const instead = activity.rungs[0]?.substitutes[0];
      const serves = ACTIVITIES.find((each) => each.id === instead?.activity);
      return because === undefined
        ? []
        : [
            {
              name: activity.name,
              because: lowerFirst(because),
              instead: serves === undefined ? null : lowerFirst(serves.name),
            },
          ];
    },
  );
}

const LINE_WIDTH = 760;
/** Width of a letter under the line [px], a little generous. */
const LETTER = 7;

/** Words in at most three lines that fit under a stretch; a longer word stands alone. */
function wrapped(text: string, width: number): string[] {
  const most = Math.max(5, Math.floor(width / LETTER));
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.slice(0, 3);
}

/** The session line for paper, from the plan's own stretches. */
function lineFor(file: CaseFile, plan: PlanAnswer): Picture {
  const body = buildBody({ sex: file.person.sex, height: file.person.heightCm / 100, mass: file.person.massKg }, 1);
  const rise = bodyHeights(body).kneeHollow / 12;
  let item = 0;
  const activities = activitiesOf(file);
  const stretches = plan.timeline.map((stretch, k): Stretch => {
    const own = plan.items[item];
    const isItem =
      own !== undefined &&
      own.position === stretch.position &&
      Math.abs(stretch.toMinute - stretch.fromMinute - own.minutes) < 1e-9 &&
      k > 0;
    const activity = activities.find((each) => each.id === own?.activity);
    if (isItem) item++;
    const hold = isItem && own.dose.holdSeconds !== undefined && own.dose.repetitions === undefined;
    return {
      id: `${k}`,
      minutes: stretch.toMinute - stretch.fromMinute,
      rest: stretch.centreHeightMetres,
      work: stretch.centreHeightMetres + (isItem ? rise : 0),
      sets: isItem ? own.dose.sets : 0,
      repetitions: isItem ? (own.dose.repetitions ?? 1) : 0,
      hold,
      words: isItem
        ? wrapped(
            sayOfPerson(activity?.rungs.find((rung) => rung.id === own.rung)?.plainName ?? "", lateralityOf(file)),
            ((stretch.toMinute - stretch.fromMinute) * LINE_WIDTH) / plan.minutes,
          )
        : k === 0
          ? ["Arrive"]
          : k === plan.timeline.length - 1
            ? ["Rest"]
            : [],
    };
  });
  const line = drawSessionLine({
    stretches,
    width: LINE_WIDTH,
    theme: "paper",
    matHeight: file.place === "floorMat" ? 0 : MAT_HEIGHT,
    minuteWords: { from: "0 minutes", to: String(plan.minutes) },
  });
  const highest = plan.timeline.reduce((most, each) =>
    each.centreHeightMetres > most.centreHeightMetres ? each : most,
  );
  const first = plan.timeline[0];
  const last = plan.timeline[plan.timeline.length - 1];
  const name = (id: string | undefined): string =>
    id === undefined ? "resting" : lowerFirst(positionRow(id as PositionId).name);
  return {
    svg: line.svg,
    alt: `The session line: starts in ${name(first?.position)}, highest in ${name(highest.position)} at minute ${Math.round(highest.fromMinute)}, ends in ${name(last?.position)}.`,
  };
}
