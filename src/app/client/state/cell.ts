import { useSyncExternalStore } from "react";

/** One value that several views look at. */
export interface Cell<T> {
  get(): T;
  set(value: T): void;
  subscribe(listener: () => void): () => void;
}

export function createCell<T>(first: T): Cell<T> {
  let value = first;
  const listeners = new Set<() => void>();
  return {
    get: () => value,
    set: (next) => {
      value = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

export function useCell<T>(cell: Cell<T>): T {
  return useSyncExternalStore(cell.subscribe, cell.get);
}
