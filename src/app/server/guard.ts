import type { MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { LARGEST_CASE } from "../contract/parse-case.ts";

/** This computer by the names it has for itself. */
const OWN_NAMES = ["127.0.0.1", "localhost", "[::1]"];

/** Only what the page itself asks is answered: no other host name, no other page. */
export const admitOwnPage: MiddlewareHandler = async (c, next) => {
  const host = c.req.header("host") ?? "";
  if (!OWN_NAMES.includes(host.replace(/:\d+$/, "")))
    return c.json({ ok: false, because: "This address is for the page on this computer only." }, 403);
  const origin = c.req.header("origin");
  const site = c.req.header("sec-fetch-site");
  const foreign =
    (origin !== undefined && origin !== `http://${host}`) || site === "cross-site" || site === "same-site";
  const opensPage =
    c.req.method === "GET" && c.req.header("sec-fetch-mode") === "navigate" && !c.req.path.startsWith("/api/");
  if (foreign && !opensPage) return c.json({ ok: false, because: "Another page may not ask this one." }, 403);
  return next();
};

const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "frame-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** A paper carries its own style and pictures, and runs nothing. */
export const SHEET_POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

/** Nothing is loaded from or sent to anywhere else, and nothing of a person stays in a cache. */
export const setHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  const headers = {
    "Content-Security-Policy": c.res.headers.get("Content-Security-Policy") ?? POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), microphone=(), geolocation=()",
  };
  for (const [name, value] of Object.entries(headers)) c.res.headers.set(name, value);
  if (c.req.path.startsWith("/api/")) c.res.headers.set("Cache-Control", "no-store");
};

/** A whole case with a little around it, and no more. */
export const limitBody: MiddlewareHandler = bodyLimit({
  maxSize: LARGEST_CASE + 100_000,
  onError: (c) =>
    c.json(
      {
        ok: false,
        because: `More than ${LARGEST_CASE / 1_000_000} million bytes were sent; a case file has a few thousand.`,
      },
      413,
    ),
});
