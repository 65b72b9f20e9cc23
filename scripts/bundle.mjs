import { root } from "./install.mjs";

/** Packages that bring files of their own (binaries, fonts) and are therefore loaded from node_modules. */
const external = ["@mujoco/mujoco", "better-sqlite3", "highs", "pdfkit", "svg-to-pdfkit"];

/** Bundles a TypeScript entry and everything it imports into one file that plain Node runs. */
export async function bundleForNode(entry, directory, name) {
  const { build } = await import("vite");
  await build({
    root,
    configFile: false,
    logLevel: "warn",
    publicDir: false,
    ssr: { noExternal: true, external, target: "node" },
    build: {
      ssr: `${root}${entry}`,
      target: "node20",
      outDir: `${root}${directory}`,
      emptyOutDir: false,
      minify: false,
      rolldownOptions: { output: { entryFileNames: name, codeSplitting: false } },
    },
  });
  return `${root}${directory}/${name}`;
}
