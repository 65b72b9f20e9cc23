#!/usr/bin/env node
import { ENGINE } from "./engine.ts";
import { runCommand } from "./run-command.ts";

// A reader that closes early, such as `head`, is no fault.
process.stdout.on("error", () => process.exit(0));

const status = await runCommand(
  process.argv.slice(2),
  { out: (text) => void process.stdout.write(text), err: (text) => void process.stderr.write(text) },
  ENGINE,
);
process.exitCode = status;
