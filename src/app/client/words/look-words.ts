import type { CaseFile } from "../../contract/case-file.ts";

export type LookEntry = NonNullable<CaseFile["look"]>[number];
export type Task = LookEntry["task"];
export type Result = Exclude<LookEntry["result"], "notTried">;
export type GaveWay = NonNullable<LookEntry["gaveWay"]>;
export type StoppedBy = NonNullable<LookEntry["stoppedBy"]>;

/** The twelve in their order, with what they are called and how they are asked about. */
export const TASKS: readonly { readonly id: Task; readonly name: string; readonly asked: string }[] = [
  { id: "rollToStrong", name: "Roll to the strong side", asked: "the roll to the strong side" },
  { id: "rollToWeak", name: "Roll to the weak side", asked: "the roll to the weak side" },
  { id: "bridge", name: "Bridge", asked: "the bridge" },
  { id: "bridgeLiftWeakFoot", name: "Bridge, weak foot up", asked: "the bridge with the weak foot up" },
  { id: "lieToSit", name: "Lie to sit", asked: "coming up to sit" },
  { id: "sitThirtySeconds", name: "Sit thirty seconds", asked: "sitting" },
  { id: "propOnForearms", name: "Prop on forearms", asked: "the prop on forearms" },
  { id: "handsAndKnees", name: "Hands and knees", asked: "hands and knees" },
  { id: "tallKneel", name: "Tall kneel", asked: "tall kneeling" },
  { id: "standUp", name: "Stand up", asked: "standing up" },
  { id: "standThirtySeconds", name: "Stand thirty seconds", asked: "standing" },
  { id: "step", name: "Step, either foot", asked: "the step" },
];

export const RESULTS: readonly { readonly id: Result; readonly name: string }[] = [
  { id: "cannot", name: "cannot" },
  { id: "withHelp", name: "help" },
  { id: "withTouch", name: "touch" },
  { id: "alone", name: "alone" },
  { id: "aloneWell", name: "well" },
];

export const HOW = [
  { id: "folds", name: "folds", past: "folded" },
  { id: "snapsBack", name: "snaps back", past: "snapped back" },
  { id: "turns", name: "turns", past: "turned" },
  { id: "drops", name: "drops", past: "dropped" },
] as const;

export const JOINTS: readonly GaveWay["joint"][] = ["shoulder", "elbow", "wrist", "trunk", "hip", "knee", "ankle"];

export const STOPPED: readonly { readonly id: StoppedBy; readonly name: string }[] = [
  { id: "pain", name: "pain" },
  { id: "dizziness", name: "dizziness" },
  { id: "breath", name: "breath" },
  { id: "fear", name: "fear" },
  { id: "understanding", name: "understanding" },
  { id: "attention", name: "attention" },
  { id: "tone", name: "tone" },
  { id: "equipment", name: "equipment" },
  { id: "other", name: "something else" },
];

/** "gave way: weak hip turned", "stopped by attention", or null where it is still to be asked. */
export function sayWhat({ gaveWay, stoppedBy }: LookEntry): string | null {
  if (stoppedBy !== undefined) return `stopped by ${STOPPED.find(({ id }) => id === stoppedBy)?.name ?? stoppedBy}`;
  if (gaveWay === undefined) return null;
  const how = HOW.find(({ id }) => id === gaveWay.how)?.past ?? "";
  const side = gaveWay.side === undefined || gaveWay.joint === "trunk" ? "" : `${gaveWay.side} `;
  return `gave way: ${side}${gaveWay.joint} ${how}`.trim();
}
