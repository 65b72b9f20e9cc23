import { accessSync, constants, existsSync } from "node:fs";
import { delimiter } from "node:path";
import { run } from "./install.mjs";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "msedge"];

const usualPlaces = [
  "/snap/bin/chromium",
  "/opt/google/chrome/chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:/Program Files/Google/Chrome/Application/chrome.exe",
  "C:/Program Files (x86)/Google/Chrome/Application/chrome.exe",
  "C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe",
];

function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function search() {
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => names.map((name) => `${folder}/${name}`));
  return [...onPath, ...usualPlaces].find((file) => existsSync(file) && isProgram(file));
}

/** The browser for the tests: the named one, an installed one, or Debian's package where we may install it. */
export function findChromium() {
  const named = process.env.MATSIDE_CHROMIUM;
  if (named) return isProgram(named) ? named : undefined;
  const found = search();
  if (found) return found;
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log("Installing Chromium for the browser tests …");
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"]);
  }
  return search();
}
