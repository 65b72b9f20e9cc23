import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filesUnder, root, sourceFiles, textOf, withoutComments } from "./support/project-files.ts";

/**
 * Hosts that stand in the code as a name or a pointer for a programmer and are never called: name spaces of standards,
 * and the addresses libraries print beside their own error messages.
 */
const NAMES_ONLY = new Set([
  "www.w3.org",
  "json-schema.org",
  "hl7.org",
  "terminology.hl7.org",
  "loinc.org",
  "snomed.info",
  "unitsofmeasure.org",
  "ns.adobe.com",
  "react.dev",
  "localhost",
  "127.0.0.1",
  "[::1]",
]);

const address = /\b(?:https?|wss?):\/\/([\w.-]+|\[[\da-f:]+\])/gi;

function hostsIn(text: string): string[] {
  return [...text.matchAll(address)].map(([, host = ""]) => host.toLowerCase()).filter((host) => !NAMES_ONLY.has(host));
}

const found = (files: readonly string[], read: (file: string) => string) =>
  files.flatMap((file) => hostsIn(read(file)).map((host) => `${file}: ${host}`));

describe("no call to an outside host", () => {
  it("stands in the source", () => {
    const code = sourceFiles().filter((file) => !file.startsWith("src/sources/") && !file.endsWith(".data.ts"));
    expect(found(code, (file) => withoutComments(textOf(file)))).toEqual([]);
  });

  it.skipIf(!existsSync(`${root}dist/page`))("stands in the built page", () => {
    const page = filesUnder("dist/page").filter((file) => /\.(html|js|css|webmanifest|svg)$/.test(file));
    expect(page.length).toBeGreaterThan(2);
    expect(found(page, textOf)).toEqual([]);
  });

  it.skipIf(!existsSync(`${root}dist/page/index.html`))("is asked for by the page itself", () => {
    const html = textOf("dist/page/index.html");
    expect(
      [...html.matchAll(/(?:src|href)="([^"]+)"/g)]
        .map(([, target]) => target)
        .filter((target) => /^(\w+:)?\/\//.test(target ?? "")),
    ).toEqual([]);
  });

  it("would be noticed", () => {
    expect(hostsIn('fetch("https://example.org/x")')).toEqual(["example.org"]);
    expect(hostsIn('xmlns="http://www.w3.org/2000/svg"')).toEqual([]);
  });
});
