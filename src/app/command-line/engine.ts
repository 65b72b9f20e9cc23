import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { Engine } from "./engine-form.ts";

const notWired = (): never => {
  throw new ProgrammingError("this part is not wired");
};

/** The parts that compute, as the commands and the server use them. */
export const ENGINE: Engine = {
  version: { product: "0.1.0", knowledge: "0.1.0" },
  makePlan: notWired,
  effort: notWired,
  catalogue: notWired,
  checkCase: notWired,
  sayPlan: notWired,
  sayEffort: notWired,
  planSheet: notWired,
  makeSheet: notWired,
};
