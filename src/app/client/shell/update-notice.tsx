import { useEffect, useState } from "react";
import { Button } from "react-aria-components";
import { registerSW } from "virtual:pwa-register";

/** A newer version waits until somebody takes it: never in the middle of a session by itself. */
export function UpdateNotice() {
  const [take, setTake] = useState<(() => void) | null>(null);
  useEffect(() => {
    const update = registerSW({ immediate: true, onNeedRefresh: () => setTake(() => () => void update(true)) });
  }, []);
  if (take === null) return null;
  return (
    <p className="sendline no-print" role="status">
      A newer version is here.{" "}
      <Button className="textlink" onPress={take}>
        Take it now
      </Button>
    </p>
  );
}
