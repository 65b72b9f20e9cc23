#!/usr/bin/env node
// Types, build, lint and every test; ends in one line with the sums over all of them.
import { existsSync, readFileSync, rmSync } from "node:fs";
import { buildCommand, buildPage, checkTypes } from "./build-steps.mjs";
import { findChromium } from "./chromium.mjs";
import { ensureInstalled, environmentWithoutNpm, root, runTool } from "./install.mjs";

const sums = { passed: 0, failed: 0, skipped: 0 };

function count(name, failures) {
  if (failures === 0) sums.passed += 1;
  else {
    sums.failed += failures;
    console.error(`FAILED: ${name}`);
  }
}

function countTests(status, reportFile) {
  if (!existsSync(reportFile)) return count("test run wrote no report", 1);
  const report = JSON.parse(readFileSync(reportFile, "utf8"));
  const unreadable = report.testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.length === 0,
  );
  const failed = report.numFailedTests + unreadable.length;
  sums.passed += report.numPassedTests;
  sums.failed += failed;
  sums.skipped += report.numPendingTests + report.numTodoTests;
  if (status !== 0 && failed === 0) count("test run ended with an error outside any test", 1);
}

ensureInstalled();
const chromium = findChromium();
if (!chromium) console.error("No browser for the tests: install Chromium, or name one in MATSIDE_CHROMIUM.");
count("a browser for the browser tests", chromium ? 0 : 1);

count("types", checkTypes());
count("build of the page", (await buildPage()) ? 0 : 1);
count("build of the command", (await buildCommand()) ? 0 : 1);
count(
  "lint",
  runTool("@biomejs/biome/bin/biome", ["check", "--error-on-warnings", "--max-diagnostics=20"]).status === 0 ? 0 : 1,
);

const reportFile = `${root}build/test-report.json`;
rmSync(reportFile, { force: true });
const tests = runTool(
  "vitest/vitest.mjs",
  [
    "run",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${reportFile}`,
    ...(chromium ? [] : ["--project=main"]),
    ...process.argv.slice(2),
  ],
  { env: { ...environmentWithoutNpm(), MATSIDE_NO_OPEN: "1", ...(chromium ? { MATSIDE_CHROMIUM: chromium } : {}) } },
);
countTests(tests.status, reportFile);

console.log(`${sums.passed} passed, ${sums.failed} failed${sums.skipped > 0 ? `, ${sums.skipped} skipped` : ""}`);
process.exit(sums.failed > 0 ? 1 : 0);
