import { type Browser, chromium } from "playwright-core";
import { findChromium } from "../../scripts/chromium.mjs";

/** Starts the installed browser without a window; it calls nobody on its own. */
export async function launchBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error("No browser: install Chromium, or name one in MATSIDE_CHROMIUM.");
  return chromium.launch({
    executablePath,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}
