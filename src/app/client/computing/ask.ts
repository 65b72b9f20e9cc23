import type { Answerer, Method, Reply } from "./questions.ts";

type Settle = { readonly resolve: (value: unknown) => void; readonly reject: (error: Error) => void };

let worker: Worker | null = null;
let lastId = 0;
const waiting = new Map<number, Settle>();

function computer(): Worker {
  if (worker !== null) return worker;
  worker = new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module", name: "computing" });
  worker.addEventListener("message", ({ data }: MessageEvent<Reply>) => {
    const settle = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.ok) settle?.resolve(data.value);
    else settle?.reject(new Error(data.because));
  });
  worker.addEventListener("error", () => {
    for (const settle of waiting.values()) settle.reject(new Error("The computing side did not start."));
    waiting.clear();
    worker = null;
  });
  return worker;
}

/** Asks the computing side; the page stays free meanwhile. */
export function ask<K extends Method>(method: K, ...args: Parameters<Answerer[K]>): Promise<ReturnType<Answerer[K]>> {
  lastId += 1;
  const id = lastId;
  return new Promise((resolve, reject) => {
    waiting.set(id, { resolve: (value) => resolve(trust<ReturnType<Answerer[K]>>(value)), reject });
    computer().postMessage({ id, method, args });
  });
}

/** What the worker answers has the form its types say: both ends are compiled from the same file. */
function trust<T>(value: unknown): T {
  return value as T;
}
