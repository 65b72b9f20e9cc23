import { describe, expect, it } from "vitest";
import { projectFiles, sourceFiles, textOf, withoutComments, withoutTexts } from "./support/project-files.ts";

const sources = sourceFiles();
const isData = (file: string): boolean => file.endsWith(".data.ts");

/** Lines of the given text on which the pattern is found, as `file:line: text`. */
function linesWith(file: string, text: string, pattern: RegExp): string[] {
  return text
    .split("\n")
    .flatMap((line, index) => (pattern.test(line) ? [`${file}:${index + 1}: ${line.trim().slice(0, 100)}`] : []));
}

const inCode = (files: readonly string[], pattern: RegExp): string[] =>
  files.flatMap((file) => linesWith(file, withoutTexts(textOf(file)), pattern));

describe("every source file", () => {
  it("is there to be judged", () => {
    expect(sources.length).toBeGreaterThan(50);
  });

  it("exports by name only", () => {
    expect(inCode(sources, /\bexport\s+default\b|\bas default\b/)).toEqual([]);
  });

  it("prints nothing below app/", () => {
    const core = sources.filter((file) => !file.startsWith("src/app/"));
    expect(inCode(core, /\bconsole\s*\./)).toEqual([]);
  });

  it("has no clock and no unseeded chance below app/", () => {
    const core = sources.filter((file) => !file.startsWith("src/app/"));
    expect(inCode(core, /\bMath\.random\b|\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b/)).toEqual([]);
  });

  it("stays under 400 lines unless it holds data; above 250 it is named", () => {
    const lengths = sources
      .filter((file) => !isData(file))
      .map((file) => ({ file, lines: textOf(file).split("\n").length - 1 }));
    const long = lengths.filter(({ lines }) => lines > 250 && lines <= 400);
    for (const { file, lines } of long) console.warn(`long: ${file} has ${lines} lines`);
    expect(lengths.filter(({ lines }) => lines > 400)).toEqual([]);
  });

  it("keeps the median file under 120 lines", () => {
    const lengths = sources.filter((file) => !isData(file)).map((file) => textOf(file).split("\n").length - 1);
    const median = lengths.sort((a, b) => a - b)[Math.floor(lengths.length / 2)] ?? 0;
    console.log(`${sources.length} files, median ${median} lines`);
    expect(median).toBeLessThan(120);
  });

  it("has a name in lower case with hyphens that says what is in it", () => {
    const names = sources.filter((file) => {
      const name = file.slice(file.lastIndexOf("/") + 1);
      return !/^[a-z0-9]+(-[a-z0-9]+)*(\.data|\.worker|\.d)?\.tsx?$/.test(name);
    });
    expect(names).toEqual([]);
    expect(projectFiles().filter((file) => /(^|\/)(utils?|misc)(\/|\.tsx?$)/.test(file))).toEqual([]);
  });
});

describe("data files", () => {
  it("hold no function", () => {
    const data = sources.filter(isData);
    expect(data.length).toBeGreaterThan(10);
    expect(inCode(data, /=>|\bfunction\b|\bclass\b|\bnew\s/)).toEqual([]);
  });
});

describe("what the trade knows", () => {
  const bodySide =
    /\b([Ll]eft|[Rr]ight)\b|\b(left|right)[A-Z]|[a-z](Left|Right)(?![a-z])|(?<![A-Z])(LEFT|RIGHT)(?![A-Z])/;

  it("is written weak and strong: no left and no right", () => {
    const practice = sources.filter((file) => file.startsWith("src/practice/"));
    expect(practice.flatMap((file) => linesWith(file, withoutComments(textOf(file)), bodySide))).toEqual([]);
  });

  it.each(["the left hand", "leftHand", "handLeft", "LEFT_HAND", "Right away"])("would notice: %s", (text) => {
    expect(text).toMatch(bodySide);
  });

  it.each(["upright", "cleft", "UPRIGHT", "Upright"])("lets pass: %s", (text) => {
    expect(text).not.toMatch(bodySide);
  });
});

describe("the two pairs of sides", () => {
  it("meet in one file only", () => {
    const mixing = sources.filter((file) => {
      const code = withoutComments(textOf(file));
      return /["']weak["']\s*\?\s*["'](left|right)["']|["'](left|right)["']\s*\?\s*["'](weak|strong)["']/.test(code);
    });
    expect(mixing.filter((file) => file !== "src/quantity/sides.ts")).toEqual([]);
  });
});

describe("the tracked files", () => {
  const texts = projectFiles()
    .filter((file) => /\.(tsx?|mjs|json|md|html|css|txt|ya?ml|svg)$|^\.[a-z]+(\/run)?$/.test(file))
    .filter((file) => !file.startsWith("test/conventions"))
    .map((file) => ({ file, text: textOf(file) }));

  it("name no folder of one machine", () => {
    const path = /(?<![\w.~-])\/(home|tmp|work|root|Users|mnt)\/[\w.-]+/;
    expect(texts.flatMap(({ file, text }) => linesWith(file, text, path))).toEqual([]);
  });

  it("name no package registry", () => {
    const host = /registry\.(npmjs|yarnpkg)|npm\.pkg\.|"resolved":/;
    expect(texts.flatMap(({ file, text }) => linesWith(file, text, host))).toEqual([]);
  });
});
