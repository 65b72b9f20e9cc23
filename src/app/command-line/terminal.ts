import type { Fault } from "../contract/faults.ts";
import { sayFault } from "../contract/faults.ts";

/** Where a command writes. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** Exit statuses: good, our own fault, bad input. */
export const GOOD = 0;
export const OUR_FAULT = 1;
export const BAD_INPUT = 2;

/** Tells every fault on standard error, one a line, or as JSON where the caller reads JSON. @returns bad input */
export function refuseFaults(terminal: Terminal, faults: readonly Fault[], asJson: boolean): typeof BAD_INPUT {
  const message = faults.map(sayFault).join("\n");
  terminal.err(asJson ? `${JSON.stringify({ ok: false, message, faults })}\n` : `${message}\n`);
  return BAD_INPUT;
}

/** Tells one sentence on standard error. @returns bad input */
export function refuseSentence(terminal: Terminal, message: string, asJson: boolean): typeof BAD_INPUT {
  terminal.err(asJson ? `${JSON.stringify({ ok: false, message, faults: [] })}\n` : `${message}\n`);
  return BAD_INPUT;
}

export function writeJson(terminal: Terminal, value: unknown): void {
  terminal.out(`${JSON.stringify(value, null, 2)}\n`);
}
