import {
  drawFigure,
  drawFromAbove,
  type Figure,
  SESSION_ZOOM,
  type FigureInput,
  type Marks,
  textAlternative,
} from "../../figures/index.ts";
import type { SegmentId } from "../../mechanics/body/names.ts";
import type { ContactLoad } from "../../mechanics/equilibrium/habitual.ts";
import type { BalanceOutline } from "../../mechanics/reach/outline.ts";
import { type Vector, ZERO } from "../../quantity/vectors.ts";
import type { PoseSpecification } from "../../mechanics/pose/specification.ts";
import { poseOf } from "../../plan/assess/posed.ts";
import type { PoseAsks } from "../../plan/assess/efforts.ts";
import type { RungToday } from "../../plan/assess/rung-today.ts";
import { outlineOf, positionRow } from "../../plan/session/session-plan.ts";
import { jointsOf, scaleOf } from "./anchors.ts";
import type { Picture, PictureRequest } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";
import { PATCH_WORDS } from "./part-words.ts";
import { waysOutOf } from "./ways-out.ts";
import { lowerFirst } from "./words.ts";

const HALF_KNEE = /^(half|kneel)/;
const LOOKS_OLD_FROM = 60;

/** Draws one rung for this person: weak side where it is, helper in place, weight, outline and the joint that works hardest. */
export function drawRung(person: PersonToday, today: RungToday, request: PictureRequest): Picture {
  const figure = figureInput(person, today, request);
  if (figure === null)
    return { svg: "", text: `No picture: ${today.out[0]?.detail ?? "this body cannot take the position."}` };
  if (request.kind === "above") {
    const centre = today.prepared?.pose.centre ?? ZERO;
    const ways = waysOutOf(person.drawnBody, figure.configuration, turned(person, centre), today.activity.position);
    const above = drawFromAbove({
      ...figure,
      ...(ways.planned === null ? {} : { wayOut: ways.planned }),
      ...(ways.hurry === null ? {} : { wayOutHurry: ways.hurry }),
      words: {
        hands: "your hands",
        knees: HALF_KNEE.test(today.rung.helper.pose) ? "your knees" : "your feet",
        feet: "your feet",
        wayOut: "way out",
        wayOutHurry: "in a hurry",
      },
    });
    return {
      svg: above.svg,
      text: aboveText(person, today),
      marks: above.marks.map(({ id, x, y }) => ({ id, x: Math.round(x), y: Math.round(y) })),
    };
  }
  const drawn = drawFigure(
    request.kind === "hands"
      ? { ...figure, closeUp: 0 }
      : request.kind === "line"
        ? { ...figure, view: LEVEL_VIEW }
        : figure,
  );
  const text = figureText(today, drawn);
  if (request.kind !== "line") return { svg: drawn.svg, text };
  return { svg: bodyAlone(drawn), text, scale: scaleOf(drawn, person.drawnBody.weakAt === -1) };
}

/** From the weak side, nearly level: the body as it rides on the session line. */
const LEVEL_VIEW = { azimuthDeg: 90, elevationDeg: 3 } as const;
const LINE_SIZE = { width: 280, height: 260, zoom: SESSION_ZOOM };

/** The person without ground, things and marks. */
function bodyAlone({ bodyLayer: { width, height, people } }: Figure): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">${people}</svg>`;
}

/** Height of a pose's picture over its width: lying and standing fit the same place, their lines equally strong. */
const POSE_HEIGHT = 0.42;

/** A pose that is no rung: a resting position, or a task of the look. */
export function drawPose(
  person: PersonToday,
  specification: PoseSpecification,
  words: string,
  width: number,
  theme: "screen" | "paper",
): Picture {
  const prepared = person.drawn.prepare(specification);
  if (!prepared.possible) return { svg: "", text: words };
  const figure = drawFigure({
    body: person.drawnBody,
    configuration: prepared.pose.configuration,
    specification,
    size: { width, height: Math.round(width * POSE_HEIGHT) },
    theme,
    look: lookFor(person, specification),
  });
  return { svg: figure.svg, text: words, joints: jointsOf(figure, person.drawnBody.weakAt === -1) };
}

function figureInput(person: PersonToday, today: RungToday, request: PictureRequest): FigureInput | null {
  const { rung } = today;
  const specification = poseOf(rung);
  const prepared = person.drawn.prepare(specification);
  if (!prepared.possible) return null;
  const withHelper = request.kind !== "body" && request.kind !== "line";
  const start = rung.start === undefined ? null : person.drawn.prepare(rung.start);
  return {
    body: person.drawnBody,
    configuration: prepared.pose.configuration,
    // On the line the body stands alone: nothing it rests on may cut it.
    ...(request.kind === "line" ? {} : { specification }),
    size:
      request.kind === "line"
        ? LINE_SIZE
        : { width: request.width, ...(request.height === undefined ? {} : { height: request.height }) },
    theme: request.theme,
    density: request.kind === "line" ? 3 : request.theme === "paper" ? 2 : 1.5,
    look: lookFor(person, specification),
    ...(withHelper
      ? {
          helper: {
            pose: rung.helper.pose,
            at: rung.helper.at,
            hands: rung.helper.hands.map(({ site, does }) => ({ site, does })),
            knee: rung.helper.knee,
            people: rung.helpersNeeded,
          },
        }
      : {}),
    ...(start?.possible === true && rung.limbFree !== null && request.kind !== "line"
      ? { start: { configuration: start.pose.configuration, moves: rung.limbFree } }
      : {}),
    marks: marksOf(person, today, request.kind),
  };
}

/** Shoes where the floor is stood on, bare feet on the mat; older from sixty. */
export function lookFor(person: PersonToday, specification: PoseSpecification) {
  const standing = specification.contacts.some((contact) => contact.on === "floor");
  return {
    older: person.findings.ageYears >= LOOKS_OLD_FROM,
    footwear: standing ? ("shoes" as const) : ("bare" as const),
  };
}

/** Computed on a body weak on its right: y is turned over for someone weak on the left. */
export const turned = (person: PersonToday, v: Vector): Vector =>
  person.laterality.weak === "left" ? [v[0], -v[1], v[2]] : v;

function marksOf(person: PersonToday, today: RungToday, kind: PictureRequest["kind"]): Marks {
  const { asks, prepared } = today;
  if (asks === null || prepared === null || kind === "hands" || kind === "line") return {};
  const outline = kind === "above" ? outlineOf(person.keeper, today) : null;
  const centre = prepared.pose.centre;
  const effort = hardestSegment(today);
  return {
    discs: discsOf(asks.loads).map(({ at, share }) => ({ at: turned(person, at), share })),
    ...(kind === "above" ? { centre: turned(person, centre) } : {}),
    ...(outline === null ? {} : { outline: outlineMark(person, outline, centre) }),
    ...(kind === "item" && effort !== null && asks.cautious > 0.4
      ? { effort: { segment: effort, level: asks.cautious > 0.6 ? ("thick" as const) : ("thin" as const) } }
      : {}),
  };
}

export const discsOf = (loads: readonly ContactLoad[]) =>
  loads
    .filter((load) => load.share > 0.02 && !load.patch.startsWith("grip"))
    .map((load) => ({ at: load.at, share: load.share }));

function outlineMark(person: PersonToday, outline: BalanceOutline, centre: Vector): NonNullable<Marks["outline"]> {
  const corners = outline.directions.map(
    (way): Vector =>
      turned(person, [centre[0] + way.direction[0] * way.metres, centre[1] + way.direction[1] * way.metres, 0]),
  );
  return { points: corners, short: Math.max(0, outline.directions.indexOf(outline.least)) };
}

const SEGMENT_OF: Readonly<Record<string, string>> = {
  hip: "thigh",
  knee: "shank",
  ankle: "foot",
  shoulder: "upperArm",
  "shoulder girdle": "girdle",
  elbow: "forearm",
  wrist: "hand",
};

const hardestSegment = (today: RungToday): SegmentId | null =>
  today.asks === null ? null : segmentOf(today.asks.limiting);

/** The part of the body a joint's ring is drawn on. */
export function segmentOf(limiting: PoseAsks["limiting"]): SegmentId | null {
  if (limiting.joint === "none") return null;
  if (limiting.side === null) return limiting.joint === "neck" ? "head" : "abdomen";
  const part = SEGMENT_OF[limiting.joint];
  return part === undefined ? null : (`${part}.${limiting.side}` as SegmentId);
}

const weightWords = (today: RungToday): string[] => (today.asks === null ? [] : loadWords(today.asks.loads));

/** The parts that carry most, with how much of a hundred. */
export function loadWords(loads: readonly ContactLoad[]): string[] {
  return [...loads]
    .filter((load) => load.share > 0.04)
    .sort((a, b) => b.share - a.share || (a.patch < b.patch ? -1 : 1))
    .slice(0, 4)
    .map(
      (load) =>
        `the ${load.side === null ? "" : `${load.side} `}${PATCH_WORDS[load.patch.split(".")[0] ?? ""] ?? load.patch} (${Math.round(load.share * 100)} in a hundred)`,
    );
}

function figureText(today: RungToday, figure: Figure): string {
  const { rung, activity } = today;
  const moves =
    rung.limbFree === null
      ? null
      : `The ${rung.limbFree.split(".")[1]} ${rung.limbFree.split(".")[0]} is off its support`;
  return textAlternative(figure, {
    lies: `${positionRow(activity.position).plainName}: ${lowerFirst(rung.name)}`,
    moves,
    helper: `The helper: ${lowerFirst(rung.helper.place).replace(/\.$/, "")}`,
    hands: rung.helper.hands.map((hand) => lowerFirst(hand.words).replace(/\.$/, "")),
    support: rung.helper.knee,
    weight: weightWords(today),
    and: "and",
    weightIsOn: "Most weight is on",
  }).join(" ");
}

function aboveText(person: PersonToday, today: RungToday): string {
  const outline = outlineOf(person.keeper, today);
  const { rung, activity } = today;
  const position = positionRow(activity.position);
  return [
    `${position.plainName}, seen from above.`,
    `Your place: ${lowerFirst(rung.helper.place)}`,
    outline === null
      ? ""
      : `The weight has least to go ${outline.least.towards.replace(/([A-Z])/g, " $1").toLowerCase()}: ${Math.round(outline.least.metres * 100)} cm, held still.`,
    `Way out: ${position.wayOut.planned[0] ?? ""}`,
    `In a hurry: ${position.wayOut.hurry[0] ?? ""}`,
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}
