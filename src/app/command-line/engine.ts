import { answerCatalogue } from "../engine/answer-catalogue.ts";
import { createEngine } from "../engine/create-engine.ts";
import type { Engine as Computing, Wishes } from "../engine/engine.ts";
import { VERSION } from "../engine/version.ts";
import type { Engine } from "./engine-form.ts";
import { makeSheet, planSheet } from "./papers.ts";
import { sayEffort, sayPlan } from "./say.ts";

let loading: Promise<Computing> | null = null;
const computing = (): Promise<Computing> => {
  loading ??= createEngine();
  return loading;
};

/** The parts that compute, as the commands and the server use them; loaded at the first question. */
export const ENGINE: Engine = {
  version: VERSION,
  makePlan: async (file, options) => (await computing()).plan(file, options.minutes, (options.wishes ?? {}) as Wishes),
  effort: async (file, activity, rung) => {
    const answers = (await computing()).effort(file, activity, rung);
    const first = answers[0];
    return rung !== undefined && first !== undefined ? first : [...answers];
  },
  catalogue: answerCatalogue,
  checkCase: async (file) => {
    const { contradictions, assumed } = (await computing()).check(file);
    return { contradictions, assumed };
  },
  sayPlan,
  sayEffort,
  planSheet: async (file, plan, form) => planSheet(await computing(), file, plan, form),
  makeSheet: async (request) => makeSheet(await computing(), request),
};
