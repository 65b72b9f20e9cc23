import { useEffect, useState } from "react";
import { ask } from "./ask.ts";
import type { Answerer, Method } from "./questions.ts";

export type Answer<T> =
  | { readonly state: "waiting"; readonly last: T | null }
  | { readonly state: "there"; readonly value: T }
  | { readonly state: "failed"; readonly because: string };

const kept = new WeakMap<object, Map<string, Promise<unknown>>>();
const everyone = {};

/** Asks once for each question about the same case; `subject` is what the answer rests on. */
export function askOnce<K extends Method>(
  subject: object,
  method: K,
  ...args: Parameters<Answerer[K]>
): Promise<ReturnType<Answerer[K]>> {
  let answers = kept.get(subject);
  if (answers === undefined) {
    answers = new Map();
    kept.set(subject, answers);
  }
  const key = JSON.stringify([method, ...args.map((arg) => (arg === subject ? 0 : arg))]);
  const there = answers.get(key);
  if (there !== undefined) return there as Promise<ReturnType<Answerer[K]>>;
  const asked = ask(method, ...args);
  answers.set(key, asked);
  asked.catch(() => answers.delete(key));
  return asked;
}

/** The answer to a question, with the last one shown until the new one is there. Null asks nothing. */
export function useAnswer<K extends Method>(
  subject: object | null,
  method: K,
  args: Parameters<Answerer[K]> | null,
): Answer<ReturnType<Answerer[K]>> {
  const [answer, setAnswer] = useState<Answer<ReturnType<Answerer[K]>>>({ state: "waiting", last: null });
  const key = args === null ? null : JSON.stringify(args);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the arguments are compared by what they say
  useEffect(() => {
    if (args === null) return;
    let current = true;
    setAnswer((before) =>
      before.state === "there"
        ? { state: "waiting", last: before.value }
        : { state: "waiting", last: before.state === "waiting" ? before.last : null },
    );
    askOnce(subject ?? everyone, method, ...args).then(
      (value) => current && setAnswer({ state: "there", value }),
      (error: unknown) =>
        current && setAnswer({ state: "failed", because: error instanceof Error ? error.message : "unknown" }),
    );
    return () => {
      current = false;
    };
  }, [subject, method, key]);
  return answer;
}

/** What can be shown now: the answer, or the last one. */
export function shown<T>(answer: Answer<T>): T | null {
  return answer.state === "there" ? answer.value : answer.state === "waiting" ? answer.last : null;
}
