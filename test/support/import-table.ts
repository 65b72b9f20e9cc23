import { posix } from "node:path";
import { textOf, withoutComments } from "./project-files.ts";

export interface OutsideModule {
  readonly name: string;
  /** A sub-folder the module is bound to. */
  readonly within: string | null;
  readonly oneFile: boolean;
}

export interface FolderRule {
  readonly folder: string;
  readonly values: readonly string[];
  readonly types: readonly string[];
  readonly outside: readonly OutsideModule[];
}

export interface Import {
  readonly file: string;
  readonly target: string;
  readonly typeOnly: boolean;
}

function listOf(cell: string | undefined): string[] {
  return (cell ?? "").split(",").flatMap((item) => (item.trim() === "" ? [] : [item.trim()]));
}

function outsideModule(item: string): OutsideModule {
  const [, name = item, note = ""] = /^(\S+)(?: \((.+)\))?$/.exec(item) ?? [];
  return { name, within: note.startsWith("in ") ? note.slice(3) : null, oneFile: note === "one file" };
}

/** The table of src/README.md. */
export function readImportTable(): FolderRule[] {
  return textOf("src/README.md")
    .split("\n")
    .filter((line) => /^\| [a-z]/.test(line) && !line.startsWith("| folder"))
    .map((line) => {
      const [folder = "", values, types, outside] = line
        .split("|")
        .slice(1)
        .map((cell) => cell.trim());
      return { folder, values: listOf(values), types: listOf(types), outside: listOf(outside).map(outsideModule) };
    });
}

/** The folder of the table a file belongs to. */
export function folderOf(file: string): string {
  const [, first = "", second = ""] = file.split("/");
  return first === "app" ? `app/${second}` : first;
}

const statement = /^[ \t]*(?:import|export)\s+(type\s)?(?:[^"'`;]*?\sfrom\s*)?["']([^"']+)["']/gm;
const dynamic = /\bimport\(\s*["']([^"']+)["']/g;

/** Every import of a file; a path is given from the project's root, an outside module by its own name. */
export function importsOf(file: string, code: string = textOf(file)): Import[] {
  const plain = withoutComments(code);
  const resolve = (path: string) => (path.startsWith(".") ? posix.join(posix.dirname(file), path) : path);
  const written = [...plain.matchAll(statement)].map(([, type, path = ""]) => ({
    file,
    target: resolve(path),
    typeOnly: type !== undefined,
  }));
  const called = [...plain.matchAll(dynamic)].map(([, path = ""]) => ({
    file,
    target: resolve(path),
    typeOnly: false,
  }));
  return [...written, ...called];
}

const packageOf = (target: string): string =>
  target.startsWith("@") ? target.split("/").slice(0, 2).join("/") : (target.split("/")[0] ?? target);

const runsInWorker = (file: string): boolean =>
  file.startsWith("src/app/client/") && (file.endsWith(".worker.ts") || file.startsWith("src/app/client/worker/"));

/** What an import breaks, in words, or null. */
export function faultOf(found: Import, table: readonly FolderRule[]): string | null {
  const folder = folderOf(found.file);
  const rule = table.find((row) => row.folder === folder);
  if (!rule) return `${found.file}: the folder ${folder} is not in the table`;
  if (!found.target.startsWith("src/")) return outsideFault(found, rule);
  const target = folderOf(found.target);
  if (target === folder || rule.values.includes(target)) return null;
  if (rule.types.includes(target) && (found.typeOnly || runsInWorker(found.file))) return null;
  const how = rule.types.includes(target) ? " as a value" : "";
  return `${found.file} imports ${found.target}${how}: ${folder} may not import ${target}${how}`;
}

function outsideFault(found: Import, rule: FolderRule): string | null {
  const name = packageOf(found.target);
  const module = rule.outside.find((entry) =>
    entry.name === "node:" ? found.target.startsWith("node:") : entry.name === name || entry.name === found.target,
  );
  if (!module) return `${found.file} imports ${found.target}: not in the table for ${rule.folder}`;
  const inside = module.within === null || found.file.startsWith(`src/${rule.folder}/${module.within}`);
  return inside ? null : `${found.file} imports ${found.target} outside ${module.within}`;
}
