import { readFile } from "node:fs/promises";
import { extname, normalize, resolve, sep } from "node:path";
import type { Context } from "hono";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".wasm": "application/wasm",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".ttf": "font/ttf",
  ".txt": "text/plain; charset=utf-8",
  ".map": "application/json; charset=utf-8",
};

/** A file of the built page; an address without a file belongs to the page itself, which knows its own places. */
export async function servePage(c: Context, folder: string): Promise<Response> {
  const path = decodePath(c.req.path);
  if (path === null) return c.json({ ok: false, because: "There is nothing at this address." }, 404);
  const wanted = resolve(folder, `.${normalize(`/${path}`)}`);
  const inside = wanted === resolve(folder) || wanted.startsWith(resolve(folder) + sep);
  const file = extname(wanted) === "" ? resolve(folder, "index.html") : wanted;
  const body = inside ? await readIfThere(file) : null;
  if (body === null) {
    const because =
      extname(wanted) === "" ? "The page has not been built yet: npm run build." : "There is nothing at this address.";
    return c.json({ ok: false, because }, 404);
  }
  const kept = /\/assets\/[^/]+-[\w-]{8,}\.\w+$/.test(file.replaceAll(sep, "/"));
  return c.body(body, 200, {
    "Content-Type": TYPES[extname(file)] ?? "application/octet-stream",
    "Cache-Control": kept ? "public, max-age=31536000, immutable" : "no-cache",
  });
}

function decodePath(path: string): string | null {
  try {
    const decoded = decodeURIComponent(path);
    return decoded.includes("\0") ? null : decoded;
  } catch {
    return null;
  }
}

async function readIfThere(file: string): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    return new Uint8Array(await readFile(file));
  } catch {
    return null;
  }
}
