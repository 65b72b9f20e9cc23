import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { filesUnder, root, textOf } from "../support/project-files.ts";

interface Refusal {
  readonly file: string;
  readonly line: number;
  readonly code: string;
}

const snippets = filesUnder("test/compile-time/snippets");

function expectedRefusals(): Refusal[] {
  return snippets.flatMap((file) =>
    textOf(file)
      .split("\n")
      .flatMap((text, index) => {
        const code = /\/\/ error (TS\d+)$/.exec(text)?.[1];
        return code ? [{ file, line: index + 1, code }] : [];
      }),
  );
}

function compile(): Refusal[] {
  const compiler = `${root}node_modules/typescript/bin/tsc`;
  const args = [compiler, "-p", "test/compile-time", "--pretty", "false"];
  const { stdout } = spawnSync(process.execPath, args, { cwd: root, encoding: "utf8" });
  return stdout.split("\n").flatMap((text) => {
    const [, file, line, code] = /^(\S+)\((\d+),\d+\): error (TS\d+)/.exec(text) ?? [];
    return file && code ? [{ file: file.replaceAll("\\", "/"), line: Number(line), code }] : [];
  });
}

describe("misuse that must not compile", () => {
  it("has snippets with expected refusals", () => {
    expect(snippets).toContain("test/compile-time/snippets/sides.snippet.ts");
    expect(expectedRefusals().length).toBeGreaterThan(10);
  });

  it("is refused line by line, and nothing else is", () => {
    const byPlace = (a: Refusal, b: Refusal) => a.file.localeCompare(b.file) || a.line - b.line;
    expect(compile().sort(byPlace)).toEqual(expectedRefusals().sort(byPlace));
  }, 60_000);
});
