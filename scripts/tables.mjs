#!/usr/bin/env node
import { runTypeScript } from "./run-typescript.mjs";

await runTypeScript("scripts/write-tables.ts");
