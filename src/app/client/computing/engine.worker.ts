/// <reference lib="webworker" />
import { createEngine } from "../../engine/create-engine.ts";
import type { Engine } from "../../engine/engine.ts";
import { homePaperOf, therapistPaperOf } from "../../engine/papers.ts";
import { writePaperFragment } from "../../../sheets/paper/paper-html.ts";
import { DESK } from "./desk.worker.ts";
import type { AnyCall, Answerer, Call, Method, Reply } from "./questions.ts";

/** Computes beside the page, so that the page answers a touch at once. */
type Answers = {
  readonly [K in Method]: (
    ...args: Parameters<Answerer[K]>
  ) => ReturnType<Answerer[K]> | Promise<ReturnType<Answerer[K]>>;
};

let started: Promise<Engine> | null = null;
function engine(): Promise<Engine> {
  started ??= createEngine();
  return started;
}

const ANSWERS: Answers = {
  ...DESK,
  version: async () => (await engine()).version,
  check: async (...args) => (await engine()).check(...args),
  plan: async (...args) => (await engine()).plan(...args),
  week: async (...args) => (await engine()).week(...args),
  effort: async (...args) => (await engine()).effort(...args),
  catalogue: async (...args) => (await engine()).catalogue(...args),
  absence: async (...args) => (await engine()).absence(...args),
  sheet: async (...args) => (await engine()).sheet(...args),
  picture: async (...args) => (await engine()).picture(...args),
  whatIfChoices: async (...args) => (await engine()).whatIfChoices(...args),
  weigh: async (...args) => (await engine()).weigh(...args),
  argue: async (...args) => (await engine()).argue(...args),
  compare: async (...args) => (await engine()).compare(...args),
  ownStart: async (...args) => (await engine()).ownStart(...args),
  tryOwnRung: async (...args) => (await engine()).tryOwnRung(...args),
  moveFinding: async (...args) => (await engine()).moveFinding(...args),
  learned: async (...args) => (await engine()).learned(...args),
  homeSheet: async (file, plan, form, shown) => {
    const made = homePaperOf(await engine(), file, plan, { form, shown });
    return "because" in made ? made : { title: made.paper.title, fragment: writePaperFragment(made.paper) };
  },
  therapistSheet: async (file, plan) => {
    const paper = therapistPaperOf(await engine(), file, plan);
    return { title: paper.title, fragment: writePaperFragment(paper) };
  },
  lookPicture: async (...args) => (await engine()).lookPicture(...args),
};

async function answer<K extends Method>({ id, method, args }: Call<K>): Promise<Reply> {
  try {
    const started = performance.now();
    const value = await ANSWERS[method](...args);
    return { id, ok: true, value, milliseconds: performance.now() - started };
  } catch (error) {
    return { id, ok: false, because: error instanceof Error ? error.message : "unknown" };
  }
}

/** Of questions that follow a moving hand only the newest is answered; those it overtook are told so. */
let newest: AnyCall | null = null;

function answerNewest(call: AnyCall): void {
  if (newest !== null) self.postMessage({ id: newest.id, ok: true, overtaken: true } satisfies Reply);
  else
    setTimeout(() => {
      const latest = newest;
      newest = null;
      if (latest !== null) void answer(latest).then((reply) => self.postMessage(reply));
    }, 0);
  newest = call;
}

self.addEventListener("message", ({ data }: MessageEvent<AnyCall>) => {
  if (data.newestOnly === true) return answerNewest(data);
  void answer(data).then((reply) => self.postMessage(reply));
});
