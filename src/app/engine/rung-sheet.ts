import type { RungToday } from "../../plan/assess/rung-today.ts";
import { outlineOf, positionRow } from "../../plan/session/session-plan.ts";
import { effortSentence, figureOf, loadSentence, partName, upper } from "../../plan/session/sentences.ts";
import { wordsOf } from "../../plan/guard.ts";
import { SLOTS } from "../../plan/person/slots.ts";
import { ACTIVITIES } from "../../practice/catalogue.ts";
import { stopSignsFor } from "../../practice/precautions/cautions.ts";
import { BIBLIOGRAPHY, type SourceId } from "../../sources/bibliography.ts";
import type { Activity } from "../../practice/activities/activity.ts";
import type { Ask, Basis, RungName, RungSheet } from "./engine.ts";
import type { PersonToday } from "./person-today.ts";
import { lowerFirst } from "./words.ts";

const HELP_WORDS = {
  standBy: "Stand by; no hand is needed.",
  touching: "A touch is enough.",
  minimal: "A little help.",
  moderate: "Help with up to half of the work.",
  maximal: "Help with more than half of the work.",
  dependent: "Two people, or nearly all of the work.",
} as const;

/** All that the page shows of one rung for this person. */
export function rungSheet(person: PersonToday, today: RungToday): RungSheet {
  const { activity, rung, index } = today;
  const position = positionRow(activity.position);
  const named = (at: number): (RungName & { readonly name: string }) | null => {
    const other = activity.rungs[at];
    return other === undefined ? null : { activity: activity.id, rung: other.id, name: other.name };
  };
  return {
    activity: activity.id,
    rung: rung.id,
    name: `${activity.name}: ${lowerFirst(rung.name)}`,
    plainName: rung.plainName,
    position: activity.position,
    positionName: position.name,
    purpose: activity.purposeWords,
    changes: rung.changes,
    movesFirst: rung.movesFirst,
    yourPlace: rung.helper.place,
    yourHands: rung.helper.hands.map((hand) => hand.words),
    yourKnee: rung.helper.knee,
    say: rung.words,
    cue: rung.cue,
    good: rung.good,
    faults: rung.faults.map(({ id, fault, do: mend }) => ({ id, fault, do: mend })),
    stopSigns: [...rung.stopSigns, ...stopSignsFor(person.precautions).map((each) => each.text)],
    wayOut: { planned: position.wayOut.planned, hurry: position.wayOut.hurry },
    notAtHome: rung.notAtHome,
    rungDown: named(index - 1),
    rungUp: named(index + 1),
    substitutes: rung.substitutes.map((each) => ({ ...each, ...nameOf(each) })),
    asks: asksOf(person, today),
  };
}

function nameOf(name: RungName): { readonly name: string; readonly position: string } {
  const activity: Activity | undefined = ACTIVITIES.find((each) => each.id === name.activity);
  const rung = activity?.rungs.find((each) => each.id === name.rung);
  return {
    name: `${activity?.name ?? name.activity}: ${lowerFirst(rung?.name ?? name.rung)}`,
    position: activity === undefined ? "" : positionRow(activity.position).name,
  };
}

function asksOf(person: PersonToday, today: RungToday): Ask[] {
  const { asks, help } = today;
  if (asks === null) return [];
  const joint = asks.efforts.find(
    (each) =>
      each.counted &&
      each.joint === asks.limiting.joint &&
      each.side === asks.limiting.side &&
      each.direction === asks.limiting.direction,
  );
  const { size, ageYears } = person.findings;
  const body = [
    { name: "body", value: `${Math.round(size.height * 100)} cm, ${size.mass} kg, ${ageYears} years`, known: "given" },
    { name: "pose", value: today.rung.name, known: "as drawn, contacts closed to a millimetre" },
  ];
  const strengthInputs = evidenceFor(person, today);
  const effort: Ask = {
    sentence: effortSentence(asks),
    figure: `${upper(partName(asks.limiting))}: ${figureOf(asks.peak)}.`,
    basis: {
      formula: "effort = asked / has",
      inputs: [
        ...(joint === undefined
          ? []
          : [
              {
                name: "asked",
                value: `${Math.round(Math.abs(joint.moment))} newton-metres`,
                known: "computed from this body in this pose",
              },
              {
                name: "has",
                value: `${Math.round(joint.capacity.low)} to ${Math.round(joint.capacity.high)} newton-metres, about ${Math.round(joint.capacity.middle)}`,
                known: "from the findings below",
              },
            ]),
        ...body,
        ...strengthInputs,
        ...(person.findings.assumed.length === 0
          ? []
          : [{ name: "assumed", value: person.findings.assumed.join(", "), known: "not given" }]),
      ],
      sources: sourcesOf(["deleva1996", "common-practice", "judgement"]),
      wouldChangeMost: "A grade or a dynamometer reading of the muscle group named.",
      doesNotKnow: [
        "A joint that buckles suddenly.",
        "Tone, fear and attention on the day.",
        "Muscles that stiffen against each other.",
      ],
    },
  };
  const load = loadSentence(asks);
  const carries: Ask = {
    sentence: load.sentence,
    figure: `${upper(load.figure)}.`,
    basis: {
      formula:
        "least sum of cubed efforts over all ways of sharing the load, friction at the low end of what is published",
      inputs: body,
      sources: sourcesOf(["deleva1996", "judgement"]),
      wouldChangeMost: "The share of weight seen on the weak side.",
      doesNotKnow: ["Habits: people carry more on the strong side than they need."],
    },
  };
  const lines: Ask[] = [effort, carries];
  if (help !== null) {
    lines.push({
      ...sayHelpOf(help),
      basis: {
        formula: "least newtons over the places a hand may go that bring every joint under what it has",
        inputs: [
          { name: "limit of one helper here", value: `${Math.round(help.limit)} newtons`, known: help.limitBecause },
          {
            name: "strength taken",
            value: "from the weaker end of what is believed",
            known: "one draw in five is weaker",
          },
        ],
        sources: sourcesOf(["waters-2007", "judgement"]),
        wouldChangeMost: "How much help was really given, logged.",
        doesNotKnow: ["A sudden give loads the helper more than this.", "Somebody who pushes or pulls away."],
      },
    });
  }
  const outline = outlineOf(person.keeper, today);
  if (outline !== null) {
    const across = outline.directions.reduce((most, each) => (each.metres > most.metres ? each : most));
    lines.push({
      sentence: `Tips first ${wordsOf(outline.least.towards)}, held still.`,
      figure: `${Math.max(1, Math.round(outline.least.metres * 100))} cm there, ${Math.round(across.metres * 100)} ${wordsOf(across.towards)}.`,
      basis: {
        formula: "how far the weight can go slowly with hands, knees and feet staying put",
        inputs: outline.directions.map((way) => ({
          name: wordsOf(way.towards),
          value: `${Math.round(way.metres * 100)} cm`,
          known: `ended by ${ENDED[way.endedBy]}: ${way.what}`,
        })),
        sources: sourcesOf(["judgement"]),
        wouldChangeMost: null,
        doesNotKnow: [
          "Real falls come from a sudden give, pushing, fainting, a slipping foot or an impulse: guard by the rule, not by this figure.",
        ],
      },
    });
  }
  return lines;
}

/** The help a rung takes today, as a sentence with its line of figures; null where none is worked out. */
export function helpSentence({ help }: RungToday): { readonly sentence: string; readonly figure: string } | null {
  return help === null ? null : sayHelpOf(help);
}

function sayHelpOf(help: NonNullable<RungToday["help"]>): { readonly sentence: string; readonly figure: string } {
  return {
    sentence:
      help.newtons < 20 && help.words !== "dependent" && help.words !== "maximal"
        ? HELP_WORDS[help.words === "standBy" ? "standBy" : "touching"]
        : HELP_WORDS[help.words],
    figure:
      help.newtons < 1
        ? "No push is worked out as needed."
        : `About ${Math.round(help.newtons / 5) * 5} newtons ${help.siteWords ?? ""}${help.direction === null ? "" : `, pushing ${help.direction}`}.`,
  };
}

const ENDED = {
  contact: "the edge of what bears",
  friction: "a contact slipping",
  jointRange: "a joint's range",
  muscle: "a muscle",
} as const;

/** The findings that moved the limiting joint's strength most. */
function evidenceFor(person: PersonToday, today: RungToday): Basis["inputs"] {
  const joint = today.asks?.limiting;
  if (joint === undefined) return [];
  const slots = SLOTS.map((slot, i) => ({ slot, i })).filter(({ slot }) =>
    joint.side === null
      ? slot.side === null
      : slot.side === joint.side && slot.key.toLowerCase().startsWith(joint.joint.split(" ")[0] ?? ""),
  );
  const own = new Set(slots.map(({ i }) => i));
  const entries = person.model.trail
    .filter((entry) => entry.mostMoved !== null && own.has(entry.mostMoved.slot))
    .slice(0, 4);
  if (entries.length === 0)
    return [{ name: "strength", value: "from what is published of weakness after stroke", known: "assumed, wide" }];
  return entries.map((entry) => ({
    name: entry.words,
    value:
      entry.mostMoved === null
        ? ""
        : `about ${Math.round(entry.mostMoved.to * 100)} in a hundred of normal, ${Math.round(entry.mostMoved.from * 100)} without it`,
    known: entry.seenInFunction ? "seen in function" : "tested",
  }));
}

function sourcesOf(ids: readonly SourceId[]): Basis["sources"] {
  return ids.map((id) => ({
    id,
    title: `${BIBLIOGRAPHY[id].authors}${BIBLIOGRAPHY[id].year === null ? "" : ` ${BIBLIOGRAPHY[id].year}`}: ${BIBLIOGRAPHY[id].title}`,
    seen: BIBLIOGRAPHY[id].seen,
  }));
}
