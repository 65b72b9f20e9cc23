// Writes the published schemas of this folder from the code's own: node schema/write.mjs
import { writeFileSync } from "node:fs";
import { runnerImport } from "vite";

const { module } = await runnerImport(new URL("../src/app/contract/published-schemas.ts", import.meta.url).pathname, {
  configFile: false,
  logLevel: "error",
});
for (const [name, text] of module.writePublishedSchemas()) writeFileSync(new URL(name, import.meta.url), text);
