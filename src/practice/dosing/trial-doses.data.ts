import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface TrialDose {
  readonly source: SourceId;
  readonly what: string;
  readonly population: string;
  readonly people: number;
  readonly minutes: number | null;
  readonly perWeek: number | null;
  readonly weeks: number | null;
  readonly totalHours: number | null;
  /** What the passage seen said, in own words. */
  readonly found: string;
  readonly seen: Seen;
}

/** Published doses of mat and pre-walking work after a stroke; null where the passage did not print it. Not a recommendation. */
export const TRIAL_DOSES = [
  { source: "karthikbabu-2011", what: "trunk exercise on a ball or a plinth", population: "acute inpatients, mean 12 days", people: 30, minutes: 60, perWeek: 4, weeks: 3, totalHours: 12, found: "Both groups gained; the ball gained more on the trunk scale.", seen: "read" },
  { source: "verheyden-2009", what: "extra trunk exercise", population: "inpatients", people: 33, minutes: 30, perWeek: 4, weeks: 5, totalHours: 10, found: "Only dynamic sitting differed between groups.", seen: "read" },
  { source: "haruyama-2017", what: "core stability in place of part of usual therapy", population: "rehabilitation ward", people: 32, minutes: null, perWeek: null, weeks: 4, totalHours: 6.67, found: "Trunk, balance and walking ability better at the same total time.", seen: "read" },
  { source: "cabanas-valdes-2016", what: "core stability added to usual therapy", population: "inpatients, mean 23 days", people: 80, minutes: 15, perWeek: 5, weeks: 5, totalHours: 6.25, found: "Dose seen; result not seen.", seen: "read" },
  { source: "an-park-2017", what: "selective trunk exercise added", population: "chronic", people: 29, minutes: 30, perWeek: 3, weeks: 4, totalHours: 6, found: "Trunk coordination, dynamic sitting and balance better.", seen: "read" },
  { source: "song-heo-2015", what: "three kinds of bridge", population: "stroke, ten a group, low quality", people: 30, minutes: 20, perWeek: 5, weeks: 4, totalHours: 6.67, found: "All gained standing weight on the weak side.", seen: "read" },
  { source: "pankheaw-2022", what: "progressive bridging added", population: "acute infarct", people: 48, minutes: 30, perWeek: null, weeks: 4, totalHours: null, found: "Feet loaded more evenly in rising.", seen: "read" },
  { source: "kneeling-training-2024", what: "kneeling training against treadmill", population: "stroke", people: 67, minutes: 30, perWeek: 6, weeks: 4, totalHours: 12, found: "Safe; balance better; walking no different.", seen: "read" },
  { source: "dean-shepherd-1997", what: "seated reaching beyond the arm's length, weak foot loaded", population: "a year or more after", people: 20, minutes: 30, perWeek: null, weeks: 2, totalHours: 5, found: "Further and faster reach, more load on the weak foot; walking unchanged.", seen: "read" },
  { source: "britton-2008", what: "sit to stand with an assistant, about 50 more a day", population: "needs stand-by help", people: 18, minutes: 30, perWeek: 5, weeks: 2, totalHours: null, found: "About a tenth of body weight more through the weak foot.", seen: "read" },
  { source: "barreca-2004", what: "extra sit to stand in groups, three sets of five", population: "about 30 days", people: 48, minutes: 45, perWeek: 3, weeks: null, totalHours: null, found: "Dose and criterion seen.", seen: "read" },
  { source: "goljar-2010", what: "standing balance, frame or by hand", population: "subacute", people: 39, minutes: 20, perWeek: 5, weeks: 4, totalHours: 6.67, found: "Both groups gained alike.", seen: "read" },
] as const satisfies readonly TrialDose[];
