import { createCell } from "../state/cell.ts";

export type Theme = "light" | "dark";
const KEY = "matside-theme";
const system = matchMedia("(prefers-color-scheme: dark)");

function chosen(): Theme | null {
  const kept = localStorage.getItem(KEY);
  return kept === "light" || kept === "dark" ? kept : null;
}

export const theme = createCell<Theme>(chosen() ?? (system.matches ? "dark" : "light"));

function apply(): void {
  document.documentElement.dataset.theme = theme.get();
}

/** Follows the device until somebody chooses. */
export function startTheme(): void {
  theme.subscribe(apply);
  system.addEventListener("change", () => {
    if (chosen() === null) theme.set(system.matches ? "dark" : "light");
  });
  apply();
}

export function switchTheme(): void {
  const next = theme.get() === "dark" ? "light" : "dark";
  localStorage.setItem(KEY, next);
  theme.set(next);
}
