import { useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";

/** Counts down from the given seconds by the clock, so that a screen asleep loses none. @returns null when nothing runs. */
export function useSeconds(from: number | null, onEnd: () => void): number | null {
  const [left, setLeft] = useState<number | null>(null);
  const end = useRef(onEnd);
  end.current = onEnd;
  useEffect(() => {
    if (from === null || from <= 0) {
      setLeft(null);
      return;
    }
    const until = Date.now() + from * 1000;
    setLeft(from);
    const timer = setInterval(() => {
      const seconds = Math.ceil((until - Date.now()) / 1000);
      if (seconds > 0) return setLeft(seconds);
      clearInterval(timer);
      setLeft(null);
      end.current();
    }, 250);
    return () => clearInterval(timer);
  }, [from]);
  return left;
}

/** A hold, counted down: touched it runs, touched again it stands. */
export function Timer({ seconds }: { readonly seconds: number }) {
  const [running, setRunning] = useState<number | null>(null);
  const left = useSeconds(running, () => setRunning(null));
  return (
    <Button
      className="mat-count"
      aria-label={left === null ? `Start the hold of ${seconds} seconds` : "Stop the timer"}
      onPress={() => setRunning(running === null ? seconds : null)}
    >
      <span>{left ?? seconds}</span> <small>seconds</small>
    </Button>
  );
}
