import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../../", import.meta.url));

export const textOf = (file: string): string => readFileSync(root + file, "utf8");

/** Every file under a folder, by its path from the project's root with forward slashes. */
export function filesUnder(folder: string): string[] {
  return readdirSync(root + folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll("\\", "/").slice(root.length))
    .sort();
}

export const isTest = (file: string): boolean => /\.test\.tsx?$/.test(file);

/** The TypeScript of the product, without its tests. */
export function sourceFiles(): string[] {
  return filesUnder("src").filter((file) => /\.tsx?$/.test(file) && !isTest(file));
}

/** What belongs to the project: the files git knows or would take, or the tree itself where there is no git. */
export function projectFiles(): string[] {
  try {
    const listed = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard", "-z"], {
      cwd: root,
      encoding: "utf8",
      stdio: ["ignore", "pipe", "ignore"],
    });
    const gone = execFileSync("git", ["ls-files", "--deleted", "-z"], { cwd: root, encoding: "utf8" });
    const deleted = new Set(gone.split("\0"));
    return listed.split("\0").filter((file) => file !== "" && !deleted.has(file));
  } catch {
    const folders = ["src", "test", "checks", "bench", "scripts", "docs", "examples", "schema"];
    const top = readdirSync(root, { withFileTypes: true }).filter((entry) => entry.isFile());
    const inFolders = folders.flatMap((folder) => {
      try {
        return filesUnder(folder);
      } catch {
        return [];
      }
    });
    return [...top.map((entry) => entry.name), ...inFolders];
  }
}

/** The code with comments blanked; texts stay. Line numbers are kept. */
export function withoutComments(code: string): string {
  const pattern = /("(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`)|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g;
  return code.replace(pattern, (found, text: string | undefined) => text ?? found.replace(/[^\n]/g, " "));
}

/** The code with comments and the contents of texts blanked. */
export function withoutTexts(code: string): string {
  return withoutComments(code).replace(/"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, '""');
}
