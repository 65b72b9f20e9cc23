import { existsSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { root, textOf } from "./support/project-files.ts";

const MOST_KILOBYTES = 250;

describe.skipIf(!existsSync(`${root}dist/page/index.html`))("the first view of the page", () => {
  it(`is at most ${MOST_KILOBYTES} kB of script and style, compressed, fonts apart`, () => {
    const html = textOf("dist/page/index.html");
    const files = [...html.matchAll(/(?:src|href)="\/?([^"]+\.(?:js|css))"/g)].map(([, file = ""]) => file);
    expect(files.length).toBeGreaterThan(0);
    const sizes = files.map((file) => gzipSync(readFileSync(`${root}dist/page/${file}`)).length);
    const kilobytes = sizes.reduce((sum, size) => sum + size, 0) / 1000;
    console.log(`first view: ${kilobytes.toFixed(1)} kB in ${files.length} files`);
    expect(kilobytes).toBeLessThanOrEqual(MOST_KILOBYTES);
  });
});
