import type { Hono } from "hono";
import { sayFault } from "../contract/faults.ts";
import { validateCase } from "../contract/parse-case.ts";
import { isPlanAnswer } from "../contract/plan-answer.ts";
import { answerKept, MAKE_PLAN, readBody, refuse, WRITE_CASE, WRITE_PLAN } from "./body.ts";
import type { ServerParts } from "./parts.ts";

/** Letters, digits and dashes: what may name a person, a plan or a session in an address. */
export const NAMED = "[A-Za-z0-9_-]{1,100}";
export const NO_PERSON = "Nobody is known under this name.";

/** People, their findings in versions, and their plans. */
export function addPeopleRoutes(app: Hono, { store, version, computePlan }: ServerParts): void {
  const person = `/api/people/:person{${NAMED}}` as const;

  app.get("/api/people", async (c) => c.json({ ok: true, people: await store.listPeople() }));

  app.get(`${person}/case`, async (c) => {
    const kept = await store.readCase(c.req.param("person"));
    return kept === null ? refuse(c, 404, NO_PERSON) : c.json({ ok: true, ...kept });
  });

  app.put(`${person}/case`, async (c) => {
    const body = await readBody(c, WRITE_CASE);
    if (!body.ok) return body.response;
    const checked = validateCase(body.value.case);
    if (!checked.ok)
      return c.json({ ok: false, because: checked.faults.map(sayFault).join("\n"), faults: checked.faults }, 400);
    const { id, at } = body.value;
    return answerKept(
      c,
      await store.writeCase({
        id,
        at,
        person: c.req.param("person"),
        knowledge: version.knowledge,
        case: checked.value,
      }),
    );
  });

  /** Plans without keeping; with a case in the body that one is planned, else the newest kept. */
  app.post(`${person}/plan`, async (c) => {
    const body = await readBody(c, MAKE_PLAN);
    if (!body.ok) return body.response;
    const { minutes, wishes } = body.value;
    const kept = body.value.case ?? (await store.readCase(c.req.param("person")))?.case;
    if (kept === undefined) return refuse(c, 404, NO_PERSON);
    const checked = validateCase(kept);
    if (!checked.ok)
      return c.json({ ok: false, because: checked.faults.map(sayFault).join("\n"), faults: checked.faults }, 400);
    return c.json({
      ok: true,
      plan: await computePlan(checked.value, { minutes, ...(wishes === undefined ? {} : { wishes }) }),
    });
  });

  app.get(`${person}/plans/newest`, async (c) => {
    const kept = await store.readNewestPlan(c.req.param("person"));
    return kept === null ? refuse(c, 404, "No plan is kept for this person.") : c.json({ ok: true, ...kept });
  });

  app.get(`${person}/plans/:plan{${NAMED}}`, async (c) => {
    const kept = await store.readPlan(c.req.param("plan"));
    return kept === null || kept.person !== c.req.param("person")
      ? refuse(c, 404, "No plan is kept under this name.")
      : c.json({ ok: true, ...kept });
  });

  app.put(`${person}/plans/:plan{${NAMED}}`, async (c) => {
    const body = await readBody(c, WRITE_PLAN);
    if (!body.ok) return body.response;
    const { at, caseVersion, plan } = body.value;
    if (!isPlanAnswer(plan)) return refuse(c, 400, "plan: does not have the form of schema/plan.schema.json.");
    return answerKept(
      c,
      await store.writePlan({
        id: c.req.param("plan"),
        person: c.req.param("person"),
        caseVersion,
        at,
        knowledge: plan.version.knowledge,
        plan,
      }),
    );
  });
}
