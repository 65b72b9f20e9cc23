import type { Hono } from "hono";
import { createAdaptorServer } from "@hono/node-server";

/** The only address that is listened on: this computer itself. */
const LOOPBACK = "127.0.0.1";

export interface RunningServer {
  readonly address: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

export type StartedServer =
  | { readonly ok: true; readonly server: RunningServer }
  | { readonly ok: false; readonly because: string };

/** Starts answering on a port of this computer; 0 takes any free one. @returns the server, or why it cannot start. */
export function startServer(app: Hono, port: number): Promise<StartedServer> {
  const server = createAdaptorServer({ fetch: app.fetch, hostname: LOOPBACK });
  return new Promise((resolve) => {
    server.once("error", (error: Error & { readonly code?: string }) =>
      resolve({ ok: false, because: sayPortTrouble(error.code, port) }),
    );
    server.listen(port, LOOPBACK, () => {
      const bound = server.address();
      const taken = typeof bound === "object" && bound !== null ? bound.port : port;
      const close = () =>
        new Promise<void>((done) => {
          server.close(() => done());
          if ("closeAllConnections" in server) server.closeAllConnections();
        });
      resolve({ ok: true, server: { address: `http://${LOOPBACK}:${taken}/`, port: taken, close } });
    });
  });
}

function sayPortTrouble(code: string | undefined, port: number): string {
  if (code === "EADDRINUSE")
    return `Port ${port} is already in use. Close what uses it, or give another one with --port.`;
  if (code === "EACCES")
    return `Port ${port} may not be used by this account. Give one from 1024 to 65535 with --port.`;
  return `Port ${port} cannot be used. Give another one with --port.`;
}
