/** Why a session was stopped. The codes stay stable: the case file uses them too. */
export const STOP_REASONS = [
  "dizziness",
  "pain",
  "breath",
  "tired",
  "tone",
  "fear",
  "understanding",
  "other",
  "newSign",
] as const;
export type StopReason = (typeof STOP_REASONS)[number];

/** What was other than planned in a set. */
export const EXCEPTION_KINDS = [
  "fault",
  "gaveWay",
  "help",
  "fewer",
  "more",
  "pain",
  "exertion",
  "refused",
  "other",
] as const;
export type ExceptionKind = (typeof EXCEPTION_KINDS)[number];

/** What was decided after an exception. */
export const NEXT_STEPS = ["goOn", "rest", "rungDown", "rungUp", "leaveItem", "callTherapist"] as const;
export type NextStep = (typeof NEXT_STEPS)[number];
