import { existsSync } from "node:fs";
import { basename } from "node:path";
import { bundleForNode } from "./bundle.mjs";
import { ensureInstalled, root, run } from "./install.mjs";

/** Bundles a TypeScript entry of this project and runs it with the caller's arguments. @returns never: ends the process */
export async function runTypeScript(entry) {
  ensureInstalled();
  if (!existsSync(root + entry)) {
    console.error(`${entry} is missing.`);
    process.exit(1);
  }
  const name = basename(entry).replace(/\.ts$/, ".js");
  const bundle = await bundleForNode(entry, "build/run", name);
  process.exit(run(process.execPath, [bundle, ...process.argv.slice(2)]).status ?? 1);
}
