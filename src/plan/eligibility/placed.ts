import type { Activity } from "../../practice/activities/activity.ts";
import type { TaskResult } from "../person/evidence.ts";
import type { Findings, LookEntry, PreviousItem } from "../findings.ts";
import { LOOK_PLACES } from "./look-places.data.ts";

/** What was seen on a ladder: the rung reached, and how. It outranks what is computed. */
export interface SeenOnLadder {
  /** Highest rung done without a helper's strength (a touch at most), by number; -1 where none was seen. */
  readonly done: number;
  /** Rungs from this number on failed and are out until tried again; past the end where none failed. */
  readonly failed: number;
  /** Highest rung that needed a touch; -1 where none did. */
  readonly touched: number;
  /** The rung was managed only with help. */
  readonly helped: number | null;
  readonly words: string;
}

const RESULT_WORDS: Readonly<Record<TaskResult, string>> = {
  cannot: "could not",
  withHelp: "only with help",
  withTouch: "with a touch",
  alone: "alone",
  aloneWell: "alone and well",
};

/** What the look and the last sessions say of one ladder; null where neither touched it. */
export function seenOn(findings: Findings, activity: Activity): SeenOnLadder | null {
  let done = -1;
  let failed = activity.rungs.length;
  let helped: number | null = null;
  let touched = -1;
  const words: string[] = [];
  for (const entry of findings.look) {
    const place = LOOK_PLACES[entry.task];
    if (place.activity !== activity.id || entry.result === "notTried") continue;
    const at = activity.rungs.findIndex((rung) => rung.id === place.rung);
    if (at < 0) continue;
    words.push(`In the look: ${place.words} ${RESULT_WORDS[entry.result]}.`);
    if (entry.result === "cannot") failed = stoppedByOther(entry) ? failed : Math.min(failed, at);
    else if (entry.result === "withHelp") helped = at;
    else {
      done = Math.max(done, at);
      if (entry.result === "withTouch") touched = Math.max(touched, at);
    }
  }
  for (const session of findings.previous) {
    for (const item of session.items) {
      if (item.activity !== activity.id) continue;
      const at = activity.rungs.findIndex((rung) => rung.id === item.rung);
      if (at < 0) continue;
      words.push(
        `Logged${session.date === null ? "" : ` ${session.date}`}: ${activity.rungs[at]?.name ?? item.rung}, ${loggedWords(item)}.`,
      );
      if (item.done === "asPlanned" && !item.gaveWay) {
        done = Math.max(done, at);
        // What gave way before is open again one rung above what has since been done as planned.
        failed = Math.max(failed, at + 2);
      } else if (item.gaveWay !== null) failed = Math.min(failed, at + 1);
    }
  }
  return words.length === 0 ? null : { done, touched, failed, helped, words: words.join(" ") };
}

const stoppedByOther = (entry: LookEntry): boolean => entry.stoppedBy !== null && entry.stoppedBy !== "other";

function loggedWords(item: PreviousItem): string {
  const done = { asPlanned: "done as planned", changed: "done with changes", notDone: "not done" }[item.done];
  return item.gaveWay === null ? done : `${done}, the ${item.gaveWay.joint} gave way`;
}

/** Positions and demands that pain or breath closed in the look, until they are tried again. */
export function closedByStops(
  findings: Findings,
): readonly { readonly positions: readonly string[]; readonly demands: readonly string[]; readonly words: string }[] {
  return findings.look.flatMap((entry) => {
    if (entry.stoppedBy !== "pain" && entry.stoppedBy !== "breath") return [];
    const place = LOOK_PLACES[entry.task];
    const what = entry.stoppedBy === "pain" ? "pain" : "shortness of breath";
    // Where the arm hurt, what loads a wrist is closed too and the knees are not to blame.
    const atArm = entry.gaveWay !== null && ["wrist", "elbow", "shoulder"].includes(entry.gaveWay.joint);
    const loading = atArm
      ? [...place.demands.filter((demand) => demand !== "kneePressure"), "wristLoad"]
      : place.demands;
    const demands =
      entry.stoppedBy === "breath" ? place.demands.filter((demand) => demand === "pronePressure") : loading;
    return [
      {
        positions: place.positions,
        demands,
        words: `In the look "${place.words}" was stopped by ${what}: kept out until it is tried again.`,
      },
    ];
  });
}
