import { useEffect, useRef } from "react";
import { PAPER_STYLE } from "../../../sheets/paper/paper-style.ts";

/** One paper with its own style, kept apart from the page's. */
export function PaperSheet({ title, fragment }: { readonly title: string; readonly fragment: string }) {
  const host = useRef<HTMLElement>(null);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const root = element.shadowRoot ?? element.attachShadow({ mode: "open" });
    const style = new CSSStyleSheet();
    style.replaceSync(PAPER_STYLE);
    root.adoptedStyleSheets = [style];
    const holder = document.createElement("template");
    holder.innerHTML = fragment.replaceAll(' style="', ' data-style="');
    root.replaceChildren(holder.content.cloneNode(true));
    // The page's rule against inline styles passes over attributes; set one by one they count.
    for (const styled of root.querySelectorAll<HTMLElement>("[data-style]"))
      styled.style.cssText = styled.dataset.style ?? "";
  }, [fragment]);
  return <section className="paper" aria-label={title} ref={host} />;
}
