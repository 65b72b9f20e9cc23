import { Hono } from "hono";
import { addPeopleRoutes } from "./people-routes.ts";
import { addSessionRoutes } from "./session-routes.ts";
import { admitOwnPage, limitBody, setHeaders } from "./guard.ts";
import { servePage } from "./page.ts";
import type { ServerParts } from "./parts.ts";

/** The answers to the page: people, plans, sessions and papers under /api, the page itself everywhere else. */
export function createApplication(parts: ServerParts): Hono {
  const app = new Hono();
  app.onError((error, c) => {
    parts.report(error);
    return c.json(
      { ok: false, because: "Something went wrong in Matside itself. What was confirmed before is kept." },
      500,
    );
  });
  app.use(setHeaders, admitOwnPage, limitBody);
  app.get("/api/state", (c) => c.json({ ok: true, version: parts.version, people: "one user on this computer" }));
  addPeopleRoutes(app, parts);
  addSessionRoutes(app, parts);
  app.all("/api/*", (c) => c.json({ ok: false, because: "There is nothing at this address." }, 404));
  app.get("*", (c) => servePage(c, parts.pageFolder));
  app.all("*", (c) => c.json({ ok: false, because: "This address can only be read." }, 405));
  return app;
}
