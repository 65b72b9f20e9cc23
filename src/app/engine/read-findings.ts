import type { Approach, Limb } from "../../practice/codes.ts";
import type { PrecautionFinding } from "../../practice/precautions/precaution.ts";
import { type BodySide, type Laterality, otherBodySide, type Side, sideOf, SIDES } from "../../quantity/sides.ts";
import type { Findings, LookEntry, PreviousSession, StrengthEntry, StrengthReading } from "../../plan/findings.ts";
import { gradeRank } from "../../plan/person/grade-rank.ts";
import { LIMB_KEYS, TRUNK_KEYS } from "../../plan/person/slots.ts";
import type { CaseFile } from "../contract/case-file.ts";
import { notASecondHelper } from "./family-helper.ts";

/** A case file read into weak and strong words, and which side is which. */
export interface ReadCase {
  readonly findings: Findings;
  readonly laterality: Laterality;
}

/** Which body side counts as the weak one; null where both are alike, so that nothing is given a side. */
export function lateralityOf(file: CaseFile): Laterality {
  if (file.weakSide === "left" || file.weakSide === "right") return { weak: file.weakSide };
  const left = strengthSum(file, "left");
  const right = strengthSum(file, "right");
  if (left === null || right === null || Math.abs(left - right) < 1e-9) return { weak: null };
  return { weak: left < right ? "left" : "right" };
}

/**
 * Which side is filed as the weak one. Where neither is the weaker that must not follow from a side being the left one, so
 * what is known of each side decides; where that is the same too, it makes no difference.
 */
export function filingOf(file: CaseFile, laterality: Laterality): Laterality {
  if (laterality.weak !== null) return laterality;
  const legs = (file.precautions ?? []).flatMap((each) =>
    typeof each === "string" ? [] : [each.orders?.weightBearing ?? null],
  );
  const known = (side: BodySide): string =>
    JSON.stringify([
      file.strength?.[side],
      file.rangeDeg?.[side],
      file.tone?.[side],
      file.sensation?.[side],
      legs.map((each) => (each?.leg === side ? each.percent : null)),
    ]);
  return { weak: known("left") <= known("right") ? "left" : "right" };
}

/** Sum of what is known of a side; null where nothing is. */
function strengthSum(file: CaseFile, side: BodySide): number | null {
  const own = file.strength?.[side];
  const other = file.strength?.[otherBodySide(side)];
  if (own === undefined || other === undefined) return null;
  let sum = 0;
  for (const key of LIMB_KEYS) {
    const a = own[key];
    const b = other[key];
    if (a === undefined || b === undefined) continue;
    sum += typeof a === "string" ? gradeRank(a) : "newtonMetres" in a ? a.newtonMetres : a.newtons;
  }
  return sum;
}

/** Reads a checked case file into the plan's own words. */
export function readFindings(file: CaseFile): ReadCase {
  const laterality = lateralityOf(file);
  const filing = filingOf(file, laterality);
  const body = (side: Side): BodySide => (sideOf("left", filing) === side ? "left" : "right");
  const assumed: string[] = [];
  const known = <T>(value: T | undefined | null, path: string, fallback: T): T => {
    if (value !== undefined && value !== null) return value;
    assumed.push(path);
    return fallback;
  };
  const signs = file.signs ?? {};
  for (const sign of ["pushing", "neglect", "impulsive", "faints"] as const)
    if (signs[sign] === undefined) assumed.push(`signs.${sign}`);
  if (file.shoulder === undefined) assumed.push("shoulder");
  if (file.vitals === undefined) assumed.push("vitals");
  const approach = (limb: Limb, fallback: Approach): Approach =>
    known(file.approach?.[limb], `approach.${limb}`, fallback);
  const findings: Findings = {
    size: { sex: file.person.sex, height: file.person.heightCm / 100, mass: file.person.massKg },
    ageYears: file.person.ageYears,
    pattern: file.weakSide === "both" ? "both" : file.weakSide === "neither" ? "neither" : "oneSide",
    daysSinceOnset: file.daysSinceOnset,
    stroke: file.cause?.kind === undefined ? file.daysSinceOnset !== null : file.cause.kind === "stroke",
    date: file.date ?? null,
    look: (file.look ?? []).map(readLook),
    strength: readStrength(file, filing),
    loadShareWeak: file.loadShareWeak ?? {},
    rangeDeg: { weak: { ...file.rangeDeg?.[body("weak")] }, strong: { ...file.rangeDeg?.[body("strong")] } },
    tone: { weak: { ...file.tone?.[body("weak")] }, strong: { ...file.tone?.[body("strong")] } },
    sensation: { weak: { ...file.sensation?.[body("weak")] }, strong: { ...file.sensation?.[body("strong")] } },
    shoulder: {
      painAtRest: file.shoulder?.painAtRest ?? null,
      painOnMovement: file.shoulder?.painOnMovement ?? null,
      gapFingers: file.shoulder?.gapFingers ?? null,
    },
    balance: { sitting: file.balance?.sitting ?? null, standing: file.balance?.standing ?? null },
    signs: {
      pushing: signs.pushing ?? null,
      neglect: signs.neglect ?? null,
      impulsive: signs.impulsive ?? null,
      faints: signs.faints ?? null,
      fallSeen: signs.fallSeen ?? null,
    },
    communication: { aphasia: file.communication?.aphasia ?? null, follows: file.communication?.follows ?? null },
    precautions: (file.precautions ?? []).map((each) => readPrecaution(each, filing)),
    medicines: file.medicines ?? [],
    vitals: { ...file.vitals },
    place: file.place ?? null,
    equipment: file.equipment ?? [],
    helpers: {
      // The therapist is one of them: nobody is treated at the mat with nobody there.
      count: Math.max(1, known(file.helpers?.count, "helpers.count", 1) - (notASecondHelper(file) === null ? 0 : 1)),
      canKneel: known(file.helpers?.canKneel, "helpers.canKneel", true),
      backTrouble: file.helpers?.family?.backTrouble === true && file.helpers.count === 1,
    },
    approach: { arm: approach("arm", "lend"), leg: approach("leg", "train"), trunk: approach("trunk", "train") },
    assumed,
    goals: file.goals ?? [],
    home: file.home === undefined ? null : { livesWith: file.home.livesWith ?? null },
    previous: (file.previous ?? []).map(readPrevious),
  };
  if (file.place === undefined) assumed.push("place");
  if (file.equipment === undefined) assumed.push("equipment");
  if (file.look === undefined && file.strength === undefined) assumed.push("look");
  return { findings, laterality };
}

function readLook(entry: NonNullable<CaseFile["look"]>[number]): LookEntry {
  return {
    task: entry.task,
    result: entry.result,
    gaveWay:
      entry.gaveWay === undefined
        ? null
        : { joint: entry.gaveWay.joint, side: entry.gaveWay.side ?? null, how: entry.gaveWay.how ?? null },
    stoppedBy: entry.stoppedBy ?? null,
    seatHeight: entry.seatHeightCm === undefined ? null : entry.seatHeightCm / 100,
  };
}

function readStrength(file: CaseFile, laterality: Laterality): StrengthEntry[] {
  const entries: StrengthEntry[] = [];
  // Weak side first: the order, and with it the last digit of what is believed, must not follow a side of the body.
  for (const side of SIDES) {
    const own = file.strength?.[sideOf("left", laterality) === side ? "left" : "right"];
    if (own === undefined) continue;
    for (const key of LIMB_KEYS) {
      const value = own[key];
      if (value !== undefined) entries.push({ side, key, reading: readReading(value) });
    }
  }
  for (const key of TRUNK_KEYS) {
    const value = file.strength?.trunk?.[key];
    if (value !== undefined) entries.push({ side: null, key, reading: readReading(value) });
  }
  return entries;
}

type Reading = NonNullable<NonNullable<NonNullable<CaseFile["strength"]>["trunk"]>["flexion"]>;
function readReading(value: Reading): StrengthReading {
  if (typeof value === "string") return { grade: value };
  return "newtonMetres" in value
    ? { newtonMetres: value.newtonMetres }
    : { newtons: value.newtons, leverMetres: value.leverCm / 100 };
}

function readPrecaution(each: NonNullable<CaseFile["precautions"]>[number], laterality: Laterality): PrecautionFinding {
  if (typeof each === "string") return { code: each };
  const { weightBearing, ...rest } = each.orders ?? {};
  const leg = weightBearing?.leg;
  const side: Side | undefined =
    leg === undefined ? undefined : leg === "left" || leg === "right" ? sideOf(leg, laterality) : leg;
  return {
    code: each.code,
    ...(each.note === undefined ? {} : { note: each.note }),
    ...(each.orders === undefined
      ? {}
      : {
          orders: {
            ...rest,
            ...(side === undefined || weightBearing === undefined
              ? {}
              : { weightBearing: { leg: side, percent: weightBearing.percent } }),
          },
        }),
  };
}

function readPrevious(session: NonNullable<CaseFile["previous"]>[number]): PreviousSession {
  return {
    date: session.date ?? null,
    items: (session.items ?? []).map((item) => ({
      activity: item.activity,
      rung: item.rung,
      done: item.done,
      sets: item.sets ?? null,
      repetitions: item.repetitions ?? null,
      help: item.help ?? null,
      faults: item.faults ?? [],
      pain: item.pain ?? null,
      exertion: item.exertion ?? null,
      gaveWay:
        item.gaveWay === undefined
          ? null
          : { joint: item.gaveWay.joint, side: item.gaveWay.side ?? null, how: item.gaveWay.how ?? null },
      ...(item.worse === undefined ? {} : { worse: item.worse }),
    })),
    stopped: session.stopped === undefined ? null : { because: session.stopped.because },
    ...(session.nextDay === undefined
      ? {}
      : {
          nextDay: {
            activity: session.nextDay.activity ?? null,
            pain: session.nextDay.pain ?? null,
            tired: session.nextDay.tired ?? null,
          },
        }),
    ...(session.checkedBy === undefined ? {} : { checkedBy: session.checkedBy }),
  };
}
