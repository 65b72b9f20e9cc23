import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";

interface StopSign {
  readonly id: string;
  readonly sign: string;
  readonly do: string;
  /** The emergency card it leads to; null where rest and telling are enough. */
  readonly card: "slides" | "collapses" | "seizure" | "newSign" | "chestPain" | null;
  readonly source: SourceId;
  readonly seen: Seen;
}

/** Signs that end any exercise, whoever it is. */
export const STOP_SIGNS = [
  { id: "asks", sign: "the person asks to stop, by word, hand or face", do: "Stop, rest, ask why.", card: null, source: "exercise-stop-symptoms", seen: "read" },
  { id: "chest", sign: "chest pain or pressure", do: "Stop at once.", card: "chestPain", source: "exercise-stop-symptoms", seen: "read" },
  { id: "breath", sign: "unusually short of breath", do: "Stop, sit up, measure oxygen.", card: "chestPain", source: "exercise-stop-symptoms", seen: "read" },
  { id: "faint", sign: "dizzy, near fainting, blank", do: "Lie down, measure.", card: "collapses", source: "exercise-stop-symptoms", seen: "read" },
  { id: "colour", sign: "pale, blue, cold and clammy", do: "Lie down, measure.", card: "collapses", source: "exercise-stop-symptoms", seen: "read" },
  { id: "newSign", sign: "new face droop, speech, sight, balance, weakness, confusion or worst headache", do: "Stop at once and note the time.", card: "newSign", source: "be-fast", seen: "read" },
  { id: "lessAlert", sign: "less alert than at the start", do: "Stop at once and note the time.", card: "newSign", source: "be-fast", seen: "read" },
  { id: "sweat", sign: "sweating, nausea, excessive tiredness or jerking eyes", do: "Stop, rest, measure.", card: null, source: "miranda-2021", seen: "quoted" },
  { id: "heldBreath", sign: "held breath that words do not end", do: "Rest; one rung down.", card: null, source: "common-practice", seen: "common-practice" },
  { id: "joint", sign: "a joint that gives way", do: "Down by the way out; one rung down.", card: null, source: "common-practice", seen: "common-practice" },
  { id: "pain", sign: "new pain, or pain that rises with the move", do: "Stop, support, ask where.", card: null, source: "common-practice", seen: "common-practice" },
  { id: "tone", sign: "the weak arm bends up hard, or a spasm that does not settle", do: "Rest long on a pillow; one rung down.", card: null, source: "common-practice", seen: "common-practice" },
] as const satisfies readonly StopSign[];
