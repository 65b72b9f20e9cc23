import { createCell } from "../state/cell.ts";
import { database, type Waiting } from "./database.ts";

export interface SendingState {
  readonly waiting: number;
  readonly reached: boolean;
  /** What the record did not take, in its own words. */
  readonly refused: string | null;
}

export const sending = createCell<SendingState>({ waiting: 0, reached: true, refused: null });

/** Seconds until the record is tried again. */
const AGAIN = 10;
let running: Promise<void> | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;

/** Writes a request down on this device, then sends what can be sent. */
export async function enqueue(entry: Waiting): Promise<void> {
  const db = await database();
  await db.add("waiting", entry);
  await countWaiting();
  void sendAll();
}

/** Sends everything in order. The record takes a repeated request once, so a lost answer does no harm. */
export function sendAll(): Promise<void> {
  running ??= sendInOrder().finally(() => {
    running = null;
  });
  return running;
}

async function sendInOrder(): Promise<void> {
  clearTimeout(timer);
  const db = await database();
  for (;;) {
    const cursor = await db.transaction("waiting").store.openCursor();
    if (cursor === null) break;
    const { key, value } = cursor;
    const answer = await sendEntry(value);
    if (answer === "unreached") {
      sending.set({ ...sending.get(), reached: false });
      timer = setTimeout(() => void sendAll(), AGAIN * 1000);
      await countWaiting();
      return;
    }
    await db.delete("waiting", key);
    sending.set({ ...sending.get(), reached: true, refused: answer ?? sending.get().refused });
  }
  await countWaiting();
}

/** What to send in place of an entry the record refused because another device was quicker; null where nothing can be. */
export type Replace = (refused: Waiting) => Promise<Waiting | null>;
let replace: Replace = async () => null;
let current: (entry: Waiting) => Promise<Waiting> = async (entry) => entry;

/** Lets those who keep the events say how an entry reads now, and how it is put behind what another device wrote. */
export function followEvents(now: (entry: Waiting) => Promise<Waiting>, behind: Replace): void {
  current = now;
  replace = behind;
}

async function sendEntry(entry: Waiting): Promise<string | null> {
  const answer = await sendOne(await current(entry));
  if (answer === null || answer === "unreached") return answer;
  const other = await replace(entry);
  return other === null ? answer : sendOne(other);
}

/** @returns null when taken, "unreached" to try again later, else why it was refused. */
async function sendOne({ method, path, body }: Waiting): Promise<string | null> {
  try {
    const response = await fetch(path, {
      method,
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    if (response.ok) return null;
    if (response.status >= 500) return "unreached";
    const answer: unknown = await response.json().catch(() => null);
    return isRefusal(answer) ? answer.because : `The record answered ${response.status}.`;
  } catch {
    return "unreached";
  }
}

function isRefusal(value: unknown): value is { because: string } {
  return typeof value === "object" && value !== null && "because" in value && typeof value.because === "string";
}

async function countWaiting(): Promise<void> {
  const db = await database();
  sending.set({ ...sending.get(), waiting: await db.count("waiting") });
}

/** Tries again when the network says it is back, and at the start. */
export function watchNetwork(): void {
  addEventListener("online", () => void sendAll());
  addEventListener("offline", () => sending.set({ ...sending.get(), reached: false }));
  void sendAll();
}
