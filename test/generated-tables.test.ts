import { describe, expect, it } from "vitest";
import { checksReadme, checksTable, readChecks, withTable } from "../scripts/checks-table.ts";
import { knowledgePage } from "../scripts/knowledge.ts";
import { root, textOf } from "./support/project-files.ts";

const checks = readChecks(root);

describe("the tables of outside checks (npm run tables writes them)", () => {
  it("stand in README.md as the folders are", () => {
    const readme = textOf("README.md");
    expect(readme).toContain("<!-- checks:start -->");
    expect(withTable(readme, checksTable(checks, "checks/"))).toBe(readme);
  });

  it.skipIf(checks.length === 0)("stand in checks/README.md", () => {
    expect(textOf("checks/README.md")).toBe(checksReadme(checks));
  });

  it.skipIf(checks.length === 0)("name a source for every check", () => {
    expect(checks.filter(({ source, title }) => source.length < 20 || title.length < 5)).toEqual([]);
  });

  it("replace only what stands between the markers", () => {
    const text = "a\n<!-- checks:start -->\nold\n<!-- checks:end -->\nb";
    expect(withTable(text, "new")).toBe("a\n<!-- checks:start -->\nnew\n<!-- checks:end -->\nb");
    expect(withTable("no markers", "new")).toBe("no markers");
  });
});

describe("docs/knowledge.md (npm run tables writes it)", () => {
  it("is what the tables hold now", () => {
    expect(textOf("docs/knowledge.md")).toBe(knowledgePage());
  });
});
