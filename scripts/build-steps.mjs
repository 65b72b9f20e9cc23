import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { bundleForNode } from "./bundle.mjs";
import { root, runTool } from "./install.mjs";

const always = ["package-lock.json", "scripts/bundle.mjs", "scripts/build-steps.mjs"];

function filesUnder(folder) {
  return readdirSync(root + folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.test\.tsx?$/.test(entry.name))
    .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll("\\", "/").slice(root.length))
    .sort();
}

function hashOf(files) {
  const hash = createHash("sha256");
  for (const file of files)
    hash
      .update(file)
      .update("\0")
      .update(readFileSync(root + file))
      .update("\0");
  return hash.digest("hex");
}

/** Does the work only when an input changed or the result is gone. */
async function whenChanged(name, inputs, result, work) {
  const stampFile = `${root}build/stamps/${name}`;
  const stamp = hashOf(inputs);
  const fresh = existsSync(root + result) && existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp;
  if (fresh) return true;
  console.log(`Building the ${name} …`);
  if (!(await work())) return false;
  mkdirSync(dirname(stampFile), { recursive: true });
  writeFileSync(stampFile, stamp);
  return true;
}

/** Type-checks the given projects, or all with the tests. @returns the number of type errors */
export function checkTypes(projects = []) {
  const done = runTool("typescript/bin/tsc", ["-b", ...projects], { stdio: "pipe", encoding: "utf8" });
  process.stdout.write(done.stdout);
  process.stderr.write(done.stderr);
  const errors = done.stdout.split("\n").filter((line) => /error TS\d+/.test(line)).length;
  return done.status === 0 ? 0 : Math.max(1, errors);
}

export function buildPage() {
  const inputs = filesUnder("src").filter((file) => !/^src\/app\/(store|server|command-line)\//.test(file));
  return whenChanged("page", [...inputs, ...always, "vite.config.ts"], "dist/page/index.html", () => {
    return runTool("vite/bin/vite.js", ["build", "--logLevel", "warn"]).status === 0;
  });
}

export function buildCommand() {
  const inputs = filesUnder("src").filter((file) => !file.startsWith("src/app/client/"));
  return whenChanged("command", [...inputs, ...always], "dist/matside.js", async () => {
    try {
      await bundleForNode("src/app/command-line/main.ts", "dist", "matside.js");
      return true;
    } catch (error) {
      console.error(error instanceof Error ? error.message : error);
      return false;
    }
  });
}
