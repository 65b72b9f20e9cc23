import { existsSync } from "node:fs";
import { posix } from "node:path";
import { describe, expect, it } from "vitest";
import { faultOf, folderOf, importsOf, readImportTable } from "./support/import-table.ts";
import { root, sourceFiles, textOf } from "./support/project-files.ts";

const table = readImportTable();
const imports = sourceFiles()
  .filter((file) => file.split("/").length > 2)
  .flatMap((file) => importsOf(file));

describe("the borders between folders", () => {
  it("finds the table and the imports it is to judge", () => {
    expect(table.map((row) => row.folder)).toContain("mechanics");
    expect(table).toHaveLength(16);
    expect(imports.length).toBeGreaterThan(100);
  });

  it("lets no folder import one that stands below it in the table", () => {
    const order = table.map((row) => row.folder);
    for (const row of table)
      for (const target of [...row.values, ...row.types])
        expect(order.indexOf(target), `${row.folder} imports ${target}`).toBeLessThan(order.indexOf(row.folder));
  });

  it("holds for every import of every file", () => {
    expect(imports.flatMap((found) => faultOf(found, table) ?? [])).toEqual([]);
  });

  it("keeps a library that belongs to one file in one file", () => {
    for (const row of table)
      for (const module of row.outside.filter((entry) => entry.oneFile)) {
        const users = imports.filter((found) => found.target === module.name && folderOf(found.file) === row.folder);
        expect(new Set(users.map((found) => found.file)).size, `${module.name} in ${row.folder}`).toBeLessThan(2);
      }
  });

  it("points every import at a file that exists, extension and all", () => {
    const missing = imports.filter((found) => {
      const path = found.target.replace(/\?.*$/, "");
      return path.startsWith("src/") && !existsSync(root + path);
    });
    expect(missing.map((found) => `${found.file} -> ${found.target}`)).toEqual([]);
  });

  it("is what the compiler is told: references and table agree", () => {
    for (const row of table) {
      const config: { references: { path: string }[] } = JSON.parse(textOf(`src/${row.folder}/tsconfig.json`));
      const referred = config.references.map(({ path }) => posix.join(row.folder, path)).sort();
      expect(referred, row.folder).toEqual([...row.values, ...row.types].sort());
    }
  });
});

describe("the judge of imports itself", () => {
  const faults = (file: string, code: string) => importsOf(file, code).map((found) => faultOf(found, table));

  it.each([
    ["src/mechanics/a.ts", 'import { x } from "../practice/b.ts";', "mechanics may not import practice"],
    ["src/practice/a.ts", 'import { x } from "../mechanics/b.ts";', "as a value"],
    ["src/mechanics/pose/a.ts", 'import highs from "highs";', "outside linear-program/"],
    ["src/figures/a.ts", 'import fs from "node:fs";', "not in the table"],
    ["src/plan/a.ts", 'export {\n  x,\n} from "../session/b.ts";', "plan may not import session"],
    ["src/plan/a.ts", 'const x = await import("../sheets/b.ts");', "plan may not import sheets"],
    ["src/app/client/a.ts", 'import { x } from "../../plan/b.ts";', "as a value"],
  ])("refuses in %s: %s", (file, code, fault) => {
    expect(faults(file, code)).toEqual([expect.stringContaining(fault)]);
  });

  it.each([
    ["src/practice/a.ts", 'import type { X } from "../mechanics/b.ts";'],
    ["src/mechanics/linear-program/a.ts", 'import highs from "highs";'],
    ["src/app/client/plan.worker.ts", 'import { x } from "../../plan/b.ts";'],
    ["src/app/store/a.ts", 'import { join } from "node:path";'],
    ["src/mechanics/a.ts", '// import { x } from "../practice/b.ts";\nexport const x = "y";'],
  ])("accepts in %s: %s", (file, code) => {
    expect(faults(file, code).filter((fault) => fault !== null)).toEqual([]);
  });
});
