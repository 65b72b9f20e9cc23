import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../", import.meta.url));

const stampFile = `${root}node_modules/.matside-stamp`;

/** The outer npm hands its own settings down as npm_*; an inner npm must not obey them. */
export function environmentWithoutNpm() {
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !name.toLowerCase().startsWith("npm_")));
}

export function run(command, args, options = {}) {
  return spawnSync(command, args, { cwd: root, stdio: "inherit", env: environmentWithoutNpm(), ...options });
}

/** Runs a tool of node_modules with this very Node, so that no shell and no path search is needed. */
export function runTool(script, args, options = {}) {
  return run(process.execPath, [`${root}node_modules/${script}`, ...args], options);
}

function installationStamp() {
  return createHash("sha256")
    .update(readFileSync(`${root}package-lock.json`))
    .update(`${process.versions.modules} ${process.platform} ${process.arch}`)
    .digest("hex");
}

/** True where a plain `npm ci` or `npm install` has already put exactly these versions in place. */
function holdsLockedVersions() {
  const installedFile = `${root}node_modules/.package-lock.json`;
  if (!existsSync(installedFile)) return false;
  const locked = JSON.parse(readFileSync(`${root}package-lock.json`, "utf8")).packages;
  const installed = JSON.parse(readFileSync(installedFile, "utf8")).packages;
  const same = Object.entries(locked).every(
    ([place, entry]) =>
      place === "" || (entry.optional && !installed[place]) || installed[place]?.version === entry.version,
  );
  return same && storeLoads();
}

function storeLoads() {
  const probe = 'new (require("better-sqlite3"))(":memory:").close()';
  return run(process.execPath, ["-e", probe], { stdio: "ignore" }).status === 0;
}

function explainMissingStore() {
  console.error(
    [
      "The database library better-sqlite3 could not be loaded.",
      "Where no ready-made binary can be fetched it is compiled, which needs Python 3, make and a C++20 compiler:",
      "  Debian or Ubuntu: apt-get install python3 make g++",
      "  macOS:            xcode-select --install",
      "  Windows:          Visual Studio Build Tools with the C++ workload",
      "Then delete node_modules and try again.",
    ].join("\n"),
  );
}

/** Installs the packages of the lock file when they, Node's binary interface or the machine changed. */
export function ensureInstalled() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`Matside needs Node 20.19 or newer; this is ${process.versions.node}.`);
    process.exit(1);
  }
  const stamp = installationStamp();
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return;
  if (!holdsLockedVersions()) {
    console.log("Installing packages (about a minute the first time) …");
    const npm = process.env.npm_execpath;
    const done = npm ? run(process.execPath, [npm, "ci"]) : run("npm", ["ci"], { shell: process.platform === "win32" });
    if (done.status !== 0) {
      console.error("The packages could not be installed; npm says above why.");
      explainMissingStore();
      process.exit(1);
    }
    if (!storeLoads()) {
      explainMissingStore();
      process.exit(1);
    }
  }
  writeFileSync(stampFile, stamp);
}
