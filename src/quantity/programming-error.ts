/** Thrown where the program itself is at fault; never for bad input and never for a clinical or mechanical "no". */
export class ProgrammingError extends Error {
  override readonly name = "ProgrammingError";
}
