import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "./project-files.ts";

export interface Served {
  readonly address: string;
  /** Ends the server and takes its records away. */
  readonly end: () => Promise<void>;
  /** Ends the server alone, as a network that is gone. */
  readonly stop: () => Promise<void>;
}

/** Starts the built server on a free port with a folder of its own. */
export async function servePage({ demo = false } = {}): Promise<Served> {
  if (!existsSync(`${root}dist/matside.js`) || !existsSync(`${root}dist/page/index.html`))
    throw new Error("Build it first: npm run build.");
  const folder = mkdtempSync(join(tmpdir(), "matside-page-"));
  const child = spawn(
    process.execPath,
    [`${root}dist/matside.js`, "serve", "--port", "0", "--data", folder, "--json", ...(demo ? ["--demo"] : [])],
    { stdio: ["ignore", "pipe", "inherit"] },
  );
  const address = await firstAddress(child);
  const stop = () =>
    new Promise<void>((resolve) => {
      if (child.exitCode !== null) return resolve();
      child.once("exit", () => resolve());
      child.kill("SIGTERM");
    });
  const end = async () => {
    await stop();
    rmSync(folder, { recursive: true, force: true });
  };
  return { address, end, stop };
}

function firstAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    child.stdout?.on("data", (chunk: Buffer) => {
      text += chunk.toString();
      const line = /^\{.*\}$/m.exec(text)?.[0];
      if (line === undefined) return;
      const answer: { address: string } = JSON.parse(line);
      resolve(answer.address.replace(/\/$/, ""));
    });
    child.once("exit", (code) => reject(new Error(`The server ended with ${code}: ${text}`)));
  });
}
