import { ProgrammingError } from "./programming-error.ts";

/** Returns the number, or stops the program where a computation has lost its value. */
export function requireFinite(value: number, what: string): number {
  if (!Number.isFinite(value)) throw new ProgrammingError(`${what} is not a finite number`);
  return value;
}
