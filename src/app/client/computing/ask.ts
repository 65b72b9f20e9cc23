import type { Answerer, Method, Reply } from "./questions.ts";

type Settle = { readonly resolve: (value: unknown) => void; readonly reject: (error: Error) => void };
/** Given in place of an answer to a question that a newer one overtook. */
const OVERTAKEN = Symbol("overtaken");

/** One computing side in a worker of its own, started when first asked. */
interface Computer {
  readonly ask: (method: Method, args: readonly unknown[], newestOnly: boolean) => Promise<unknown>;
  readonly end: () => void;
}

function createComputer(): Computer {
  let worker: Worker | null = null;
  let lastId = 0;
  const waiting = new Map<number, Settle>();
  const start = (): Worker => {
    if (worker !== null) return worker;
    worker = new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<Reply>) => {
      const settle = waiting.get(data.id);
      waiting.delete(data.id);
      if (!data.ok) settle?.reject(new Error(data.because));
      else settle?.resolve("overtaken" in data ? OVERTAKEN : data.value);
    });
    worker.addEventListener("error", () => {
      for (const settle of waiting.values()) settle.reject(new Error("The computing side did not start."));
      waiting.clear();
      worker = null;
    });
    return worker;
  };
  return {
    ask: (method, args, newestOnly) => {
      lastId += 1;
      const id = lastId;
      return new Promise((resolve, reject) => {
        waiting.set(id, { resolve, reject });
        start().postMessage({ id, method, args, newestOnly });
      });
    },
    end: () => {
      worker?.terminate();
      worker = null;
      waiting.clear();
    },
  };
}

const usual = createComputer();
/** Beside the usual one, so that a moving hand never waits behind a plan; it lives as long as somebody moves something. */
const beside = createComputer();

/** Asks the computing side; the page stays free meanwhile. */
export function ask<K extends Method>(method: K, ...args: Parameters<Answerer[K]>): Promise<ReturnType<Answerer[K]>> {
  return usual.ask(method, args, false).then((value) => trust<ReturnType<Answerer[K]>>(value));
}

/** Asks beside the usual questions. */
export function askBeside<K extends Method>(
  method: K,
  ...args: Parameters<Answerer[K]>
): Promise<ReturnType<Answerer[K]>> {
  return beside.ask(method, args, false).then((value) => trust<ReturnType<Answerer[K]>>(value));
}

/** Asks what follows from the newest value of something that is being moved. @returns null where a newer one overtook it */
export function askNewest<K extends Method>(
  method: K,
  ...args: Parameters<Answerer[K]>
): Promise<ReturnType<Answerer[K]> | null> {
  return beside
    .ask(method, args, true)
    .then((value) => (value === OVERTAKEN ? null : trust<ReturnType<Answerer[K]>>(value)));
}

export function endBeside(): void {
  beside.end();
}

/** What the worker answers has the form its types say: both ends are compiled from the same file. */
function trust<T>(value: unknown): T {
  return value as T;
}
