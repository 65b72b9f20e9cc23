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

/** Pointers to reading that libraries print in their own error messages; allowed in what is built, not in what is written. */
const PRINTED_BY_LIBRARIES = new Set(["web.mit.edu", "bit.ly", "github.com"]);

const address = /\b(?:https?|wss?):\/\/([\w.-]+|\[[\da-f:]+\])/gi;

function hostsIn(text: string, allowed: ReadonlySet<string> = NAMES_ONLY): string[] {
  return [...text.matchAll(address)].map(([, host = ""]) => host.toLowerCase()).filter((host) => !allowed.has(host));
}

const found = (files: readonly string[], read: (file: string) => string, allowed?: ReadonlySet<string>) =>
  files.flatMap((file) => hostsIn(read(file), allowed).map((host) => `${file}: ${host}`));

describe("no call to an outside host", () => {
  it("stands in the source", () => {
    const code = sourceFiles().filter((file) => !file.startsWith("src/sources/") && !file.endsWith(".data.ts"));
    expect(found(code, (file) => withoutComments(textOf(file)))).toEqual([]);
  });

  it.skipIf(!existsSync(`${root}dist/page`))("stands in the built page", () => {
    const page = filesUnder("dist/page").filter((file) => /\.(html|js|css|webmanifest|svg)$/.test(file));
    expect(page.length).toBeGreaterThan(2);
    expect(found(page, textOf, new Set([...NAMES_ONLY, ...PRINTED_BY_LIBRARIES]))).toEqual([]);
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
