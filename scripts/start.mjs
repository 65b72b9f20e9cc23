#!/usr/bin/env node
// Installs what is missing, builds what changed, and opens the page on an invented person.
import { spawn } from "node:child_process";
import { buildCommand, buildPage, checkTypes } from "./build-steps.mjs";
import { ensureInstalled, environmentWithoutNpm, root } from "./install.mjs";

ensureInstalled();
const built =
  checkTypes(["src/app/command-line", "src/app/client"]) === 0 && (await buildPage()) && (await buildCommand());
if (!built) {
  console.error("Matside could not be built; the message above says where.");
  process.exit(1);
}

const mayOpen = !process.env.CI && process.env.MATSIDE_NO_OPEN !== "1";
const args = ["serve", "--demo", ...(mayOpen ? ["--open"] : []), ...process.argv.slice(2)];
const server = spawn(process.execPath, [`${root}dist/matside.js`, ...args], {
  cwd: root,
  stdio: "inherit",
  env: environmentWithoutNpm(),
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
server.on("exit", (status) => process.exit(status ?? 0));
