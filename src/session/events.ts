import { z } from "zod";
import { EXCEPTION_KINDS, NEXT_STEPS, STOP_REASONS } from "./codes.ts";

/** Number of the stored form. Every form that was ever stored stays readable. */
export const STORED_FORMAT = 1;

const identifier = z.string().min(1).max(100);
const freeWords = z.string().min(1).max(4000);
const rungName = { activity: identifier, rung: identifier };
const tenth = z.number().min(0).max(10);
/** Words of help, least first. */
export const HELP_WORDS = [
  "alone",
  "setUp",
  "standBy",
  "touching",
  "minimal",
  "moderate",
  "maximal",
  "dependent",
] as const;
const helpWord = z.enum(HELP_WORDS);
export type HelpWord = (typeof HELP_WORDS)[number];

const GAVE_WAY = z.strictObject({
  joint: z.enum(["shoulder", "elbow", "wrist", "trunk", "hip", "knee", "ankle"]),
  side: z.exactOptional(z.enum(["weak", "strong"])),
  how: z.exactOptional(z.enum(["folds", "snapsBack", "turns", "drops"])),
});

/** How far an assistant may go without calling, kept with the session as it was when it began. */
const BOUNDS = z.strictObject({
  fromRung: z.exactOptional(identifier),
  toRung: z.exactOptional(identifier),
  mostHelp: z.exactOptional(helpWord),
  stopIf: z.exactOptional(z.array(z.string().min(1).max(200)).max(20)),
});

/** What the plan asked of one item, kept with the session so that the record stands by itself. */
export const PLANNED_ITEM = z.strictObject({
  ...rungName,
  sets: z.number().int().min(1).max(50),
  repetitions: z.exactOptional(z.number().int().min(1).max(500)),
  holdSeconds: z.exactOptional(z.number().min(0).max(3600)),
  help: z.exactOptional(helpWord),
  bounds: z.exactOptional(BOUNDS),
});
export type PlannedItem = z.infer<typeof PLANNED_ITEM>;

/** What every event has: its own identifier, its place in the session, the time told from outside, the knowledge used. */
const head = {
  id: identifier,
  session: identifier,
  sequence: z.number().int().min(1).max(100_000),
  at: z.iso.datetime({ offset: true }),
  knowledge: identifier,
};

const event = <const K extends string, T extends z.core.$ZodLooseShape>(kind: K, shape: T) =>
  z.strictObject({ ...head, kind: z.literal(kind), ...shape });

/** One thing that happened or was said in a session. Events are only ever added; a mistake is undone by a further event. */
export const SESSION_EVENT = z.discriminatedUnion("kind", [
  event("sessionStarted", { person: identifier, plan: identifier, items: z.array(PLANNED_ITEM).max(60) }),
  event("vitalSigns", {
    when: z.enum(["before", "during", "after"]),
    systolic: z.exactOptional(z.number().min(40).max(300)),
    diastolic: z.exactOptional(z.number().min(20).max(200)),
    heartRate: z.exactOptional(z.number().min(20).max(250)),
    oxygenSaturation: z.exactOptional(z.number().min(40).max(100)),
    respiratoryRate: z.exactOptional(z.number().min(2).max(80)),
    temperatureC: z.exactOptional(z.number().min(30).max(44)),
    painNow: z.exactOptional(tenth),
    lastMealMinutesAgo: z.exactOptional(z.number().min(0).max(10_080)),
  }),
  event("setDone", {
    ...rungName,
    asPlanned: z.boolean(),
    repetitions: z.exactOptional(z.number().int().min(0).max(500)),
    help: z.exactOptional(helpWord),
    pain: z.exactOptional(tenth),
    exertion: z.exactOptional(tenth),
  }),
  event("setException", {
    ...rungName,
    what: z.enum(EXCEPTION_KINDS),
    /** Identifier of the fault, word of help, or what it was. */
    which: z.exactOptional(z.string().min(1).max(200)),
    howOften: z.exactOptional(z.number().int().min(1).max(100)),
    /** Repetitions done, or pain or exertion of 10. */
    value: z.exactOptional(z.number().min(0).max(500)),
    gaveWay: z.exactOptional(GAVE_WAY),
    next: z.exactOptional(z.enum(NEXT_STEPS)),
  }),
  event("itemSkipped", { ...rungName, because: freeWords }),
  event("stopped", {
    because: z.enum(STOP_REASONS),
    activity: z.exactOptional(identifier),
    rung: z.exactOptional(identifier),
    words: z.exactOptional(freeWords),
  }),
  /** The therapist was called from the mat: about what, whether it may go on so, and what was said. */
  event("therapistCalled", {
    activity: z.exactOptional(identifier),
    rung: z.exactOptional(identifier),
    about: freeWords,
    allowed: z.boolean(),
    said: z.exactOptional(freeWords),
  }),
  event("settled", { words: z.exactOptional(freeWords) }),
  /** What the person said on the day after; about one ladder where it names one. */
  event("nextDay", {
    activity: z.exactOptional(identifier),
    pain: z.exactOptional(tenth),
    tired: z.exactOptional(z.enum(["no", "sleptOff", "stillThere"])),
  }),
  event("said", { words: freeWords }),
  event("judgement", { words: freeWords }),
  event("signed", { by: freeWords }),
  event("incident", { what: freeWords, done: z.exactOptional(freeWords) }),
  event("undone", { event: identifier }),
]);
export type SessionEvent = z.infer<typeof SESSION_EVENT>;
export type SessionEventKind = SessionEvent["kind"];
export type EventOf<K extends SessionEventKind> = Extract<SessionEvent, { kind: K }>;

/** A whole session as it is stored or handed over. */
export const STORED_SESSION = z.strictObject({
  format: z.literal(STORED_FORMAT),
  session: identifier,
  events: z.array(SESSION_EVENT).max(20_000),
});
export type StoredSession = z.infer<typeof STORED_SESSION>;
