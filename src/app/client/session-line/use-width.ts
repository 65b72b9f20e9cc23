import { type RefObject, useEffect, useState } from "react";

/** The width of an element as it is shown [px], never under the least. */
export function useWidth(of: RefObject<HTMLElement | null>, least: number): number {
  const [width, setWidth] = useState(Math.max(900, least));
  useEffect(() => {
    const element = of.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => setWidth(Math.max(element.clientWidth, least)));
    watch.observe(element);
    return () => watch.disconnect();
  }, [of, least]);
  return width;
}
