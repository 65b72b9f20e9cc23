import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "vite";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** The whole program as one file for plain Node, as it is delivered. */
export async function bundleProgram(): Promise<string> {
  const name = `program-${process.pid}.js`;
  await build({
    root: ROOT,
    configFile: false,
    logLevel: "error",
    publicDir: false,
    ssr: { noExternal: true, external: ["better-sqlite3", "highs", "pdfkit", "svg-to-pdfkit"], target: "node" },
    build: {
      ssr: `${ROOT}src/app/command-line/main.ts`,
      target: "node20",
      outDir: `${ROOT}build/test-program`,
      emptyOutDir: false,
      minify: false,
      rolldownOptions: { output: { entryFileNames: name, codeSplitting: false } },
    },
  });
  return `${ROOT}build/test-program/${name}`;
}

export interface Program {
  readonly child: ChildProcess;
  /** Ends with the exit status, or null where the program was killed. */
  readonly ended: Promise<number | null>;
  readonly said: () => { readonly out: string; readonly err: string };
}

/** Starts the program; `user` is another account of this computer to run it as. */
export function startProgram(bundle: string, typed: readonly string[], user?: number): Program {
  const child = spawn(process.execPath, [bundle, ...typed], {
    stdio: ["ignore", "pipe", "pipe"],
    ...(user === undefined ? {} : { uid: user, gid: user }),
  });
  let out = "";
  let err = "";
  child.stdout.on("data", (chunk) => {
    out += chunk;
  });
  child.stderr.on("data", (chunk) => {
    err += chunk;
  });
  const ended = new Promise<number | null>((resolve) => child.once("close", (status) => resolve(status)));
  return { child, ended, said: () => ({ out, err }) };
}

/** Starts the server on any free port. @returns it with its address, once it answers */
export async function startServing(
  bundle: string,
  folder: string,
): Promise<Program & { readonly address: string; readonly startSeconds: number }> {
  const before = performance.now();
  const program = startProgram(bundle, ["serve", "--port", "0", "--data", folder, "--json"]);
  const address = await new Promise<string>((resolve, reject) => {
    program.child.stdout?.on("data", () => {
      const { out } = program.said();
      if (out.includes("\n")) resolve(JSON.parse(out).address);
    });
    program.child.once("close", () => reject(new Error(program.said().err)));
  });
  return { ...program, address, startSeconds: (performance.now() - before) / 1000 };
}
