import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { checksReadme, checksTable, readChecks, withTable } from "./checks-table.ts";
import { knowledgePage } from "./knowledge.ts";

const root = `${process.cwd()}/`;
const checks = readChecks(root);

writeFileSync(`${root}README.md`, withTable(readFileSync(`${root}README.md`, "utf8"), checksTable(checks, "checks/")));
mkdirSync(`${root}checks`, { recursive: true });
writeFileSync(`${root}checks/README.md`, checksReadme(checks));
writeFileSync(`${root}docs/knowledge.md`, knowledgePage());
console.log(`${checks.length} outside checks listed in README.md and checks/README.md; docs/knowledge.md counted anew`);
