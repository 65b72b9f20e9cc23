import type { Engine } from "../../src/app/command-line/engine-form.ts";
import type { CatalogueAnswer } from "../../src/app/contract/catalogue-answer.ts";
import { EMPTY_PLAN } from "./invented-session.ts";

const RUNG = {
  changes: "",
  demands: [],
  helper: {},
  words: "",
  cue: "",
  good: "",
  faults: [],
  purpose: "",
  icf: "d4104",
  substitutes: [],
  dose: {},
  notAtHome: null,
  sources: [],
};
const CATALOGUE: CatalogueAnswer = {
  version: EMPTY_PLAN.version,
  positions: [{ id: "hook-lying", name: "Hook-lying" }],
  transitions: [],
  activities: [
    { id: "bridge", name: "Bridge", position: "hook-lying", rungs: [{ id: "both-feet", name: "Both feet", ...RUNG }] },
  ],
};

/** Answers of the right form, for tests of what lies around the computation. */
export const INVENTED_ENGINE: Engine = {
  version: { product: "0", knowledge: "k1" },
  makePlan: async (_file, { minutes }) => ({ ...EMPTY_PLAN, workingMinutes: minutes - 12 }),
  effort: async (_file, activity, rung = "both-feet") => ({
    version: EMPTY_PLAN.version,
    activity,
    rung,
    keyPoses: [],
    help: null,
    guard: null,
    evidence: [],
    basis: [],
  }),
  catalogue: () => CATALOGUE,
  checkCase: async () => ({ contradictions: [], assumed: ["helpers.count"] }),
  sayPlan: () => "Nothing today.",
  sayEffort: () => "Easy.",
  planSheet: async (_file, _plan, form) =>
    form === "html" ? "<!doctype html><title>Plan</title>" : new Uint8Array([0x25, 0x50, 0x44, 0x46]),
  makeSheet: async ({ sheet, form }) =>
    sheet === "home" ? { type: "text/html; charset=utf-8", body: `<p>${form}</p>` } : null,
};
