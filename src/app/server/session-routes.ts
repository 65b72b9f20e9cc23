import type { Hono } from "hono";
import { foldSession } from "../../session/fold-session.ts";
import type { SessionEvent } from "../../session/events.ts";
import { previousEntry } from "../../session/previous-entry.ts";
import { readEvent } from "../../session/stored-form.ts";
import { ADD_EVENTS, answerKept, readBody, refuse } from "./body.ts";
import { SHEET_POLICY } from "./guard.ts";
import type { ServerParts, SheetRequest } from "./parts.ts";
import { NAMED, NO_PERSON } from "./people-routes.ts";

const FORMS: readonly SheetRequest["form"][] = ["html", "pdf", "json", "text"];

/** Sessions as events, and the papers made of them. */
export function addSessionRoutes(app: Hono, { store, makeSheet }: ServerParts): void {
  const person = `/api/people/:person{${NAMED}}` as const;
  const session = `${person}/sessions/:session{${NAMED}}` as const;

  app.get(`${person}/sessions`, async (c) =>
    c.json({ ok: true, sessions: await store.listSessions(c.req.param("person")) }),
  );

  app.get(`${session}/events`, async (c) => {
    const events = await store.readEvents(c.req.param("session"));
    return c.json({ ok: true, events: belongTo(c.req.param("person"), events) ? events : [] });
  });

  app.post(`${session}/events`, async (c) => {
    const body = await readBody(c, ADD_EVENTS);
    if (!body.ok) return body.response;
    const events: SessionEvent[] = [];
    for (const [index, value] of body.value.events.entries()) {
      const read = readEvent(value);
      if (!read.ok) return refuse(c, 400, `events[${index}]: ${read.because}`);
      if (read.value.session !== c.req.param("session"))
        return refuse(c, 400, `events[${index}].session: is not the session of this address.`);
      events.push(read.value);
    }
    return answerKept(c, await store.appendEvents(c.req.param("person"), events));
  });

  /** The session as the next case file carries it. */
  app.get(`${session}/previous-entry`, async (c) => {
    const events = await store.readEvents(c.req.param("session"));
    if (events.length === 0 || !belongTo(c.req.param("person"), events))
      return refuse(c, 404, "No session is kept under this name.");
    return c.json({ ok: true, previous: previousEntry(foldSession(events)) });
  });

  app.get(`${person}/sheets/:sheet{[a-z-]{1,40}}`, async (c) => {
    const kept = await store.readCase(c.req.param("person"));
    if (kept === null) return refuse(c, 404, NO_PERSON);
    const { form: wanted = "html", session: id, plan: planId, ...wishes } = c.req.query();
    const form = FORMS.find((one) => one === wanted);
    if (form === undefined)
      return refuse(c, 400, `form: found "${wanted.slice(0, 40)}"; expected one of ${FORMS.join(", ")}`);
    const plan = planId === undefined ? await store.readNewestPlan(kept.person) : await store.readPlan(planId);
    const events = id === undefined ? [] : await store.readEvents(id);
    const own = {
      plan: plan?.person === kept.person ? plan.plan : null,
      events: belongTo(kept.person, events) ? events : [],
    };
    const sheet = await makeSheet({ sheet: c.req.param("sheet"), form, case: kept.case, wishes, ...own });
    if (sheet === null) return refuse(c, 404, "There is no such sheet.");
    return c.body(sheet.body, 200, { "Content-Type": sheet.type, "Content-Security-Policy": SHEET_POLICY });
  });
}

function belongTo(person: string, events: readonly SessionEvent[]): boolean {
  const state = foldSession(events);
  return events.length === 0 || state.person === person;
}
