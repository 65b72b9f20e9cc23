import { useSyncExternalStore } from "react";

const wide = matchMedia("(min-width: 1181px)");

/** Whether the basis has a column of its own. */
export function useWide(): boolean {
  return useSyncExternalStore(
    (listener) => {
      wide.addEventListener("change", listener);
      return () => wide.removeEventListener("change", listener);
    },
    () => wide.matches,
  );
}
