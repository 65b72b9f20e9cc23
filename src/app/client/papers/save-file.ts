import type { CaseFile } from "../../contract/case-file.ts";

/** Hands the findings out as one JSON file, the same form that can be opened again. */
export function saveCaseFile(caseFile: CaseFile): void {
  const address = URL.createObjectURL(
    new Blob([`${JSON.stringify(caseFile, null, 1)}\n`], { type: "application/json" }),
  );
  const link = document.createElement("a");
  link.href = address;
  link.download = `${(caseFile.label ?? "case").toLowerCase().replaceAll(/[^a-z0-9]+/g, "-")}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
