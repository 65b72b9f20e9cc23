#!/usr/bin/env node
import { buildCommand, buildPage, checkTypes } from "./build-steps.mjs";
import { ensureInstalled } from "./install.mjs";

ensureInstalled();
const good =
  checkTypes(["src/app/command-line", "src/app/client"]) === 0 && (await buildPage()) && (await buildCommand());
process.exit(good ? 0 : 1);
