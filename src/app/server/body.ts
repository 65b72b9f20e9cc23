import type { Context } from "hono";
import { z } from "zod";
import { WISHES } from "../contract/argument.ts";
import { listFaults, sayFault } from "../contract/faults.ts";
import { group, words } from "../contract/fields.ts";
import { readJson } from "../contract/parse-case.ts";
import type { Kept } from "../store/store.ts";

const AT = z.iso.datetime({ offset: true, error: "time: such as 2026-03-16T09:30:00Z" });
const ID = z
  .string({ error: "identifier: text" })
  .regex(/^[\w-]{1,100}$/, { error: "identifier: 1 to 100 letters, digits, - or _" });
const ANYTHING = z.unknown().refine((value) => value !== undefined, { error: "something" });

/** What the page sends, by what it is for. */
export const WRITE_CASE = group("request", { id: ID, at: AT, case: ANYTHING });
export const WRITE_PLAN = group("request", { at: AT, caseVersion: ID, plan: ANYTHING });
export const ADD_EVENTS = group("request", {
  events: z.array(z.unknown(), { error: "events: a list" }).max(5000, { error: "events: a list of at most 5000" }),
});
export const MAKE_PLAN = group("request", {
  minutes: z
    .number({ error: "minutes: a number from 0 to 600" })
    .min(0, { error: "minutes: a number from 0 to 600" })
    .max(600, { error: "minutes: a number from 0 to 600" }),
  wishes: z.exactOptional(WISHES),
  case: z.exactOptional(z.unknown()),
  note: z.exactOptional(words("note", 500)),
});

export type Body<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly response: Response };

/** Reads what was sent, or answers with every fault of it. */
export async function readBody<T extends z.ZodType>(c: Context, schema: T): Promise<Body<z.infer<T>>> {
  const type = (c.req.header("content-type") ?? "").split(";")[0]?.trim();
  if (type !== "application/json") return { ok: false, response: refuse(c, 415, "This address takes JSON only.") };
  const json = readJson(await c.req.text());
  if (!json.ok) return { ok: false, response: refuse(c, 400, `What was sent is ${json.found}.`) };
  const result = schema.safeParse(json.value);
  if (result.success) return { ok: true, value: result.data };
  const faults = listFaults(result.error.issues, json.value).map((fault) =>
    fault.path === "the file" ? { ...fault, path: "the request" } : fault,
  );
  return { ok: false, response: c.json({ ok: false, because: faults.map(sayFault).join("\n"), faults }, 400) };
}

export function refuse(c: Context, status: 400 | 404 | 409 | 415 | 422 | 507, because: string): Response {
  return c.json({ ok: false, because }, status);
}

/** The answer to a writing: confirmed only when it is on the disk. */
export function answerKept(c: Context, kept: Kept): Response {
  if (kept.ok) return c.json({ ok: true, added: kept.added });
  return refuse(c, kept.trouble === "conflict" ? 409 : 507, kept.because);
}
