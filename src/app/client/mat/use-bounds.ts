import { useMemo } from "react";
import { type AssistantBounds, helpOutOf, liftedBy, rungOutOf, sayBounds } from "../../../session/bounds.ts";
import type { SessionState } from "../../../session/state.ts";
import type { CatalogueAnswer } from "../../contract/catalogue-answer.ts";
import type { RungName } from "../../engine/engine.ts";
import { type HelpWord, sayHelp } from "../words/dose-words.ts";
import { nameOfRungAlone } from "../plan/plan-words.ts";
import { ladderOf, neighbour } from "./next-set.ts";
import type { Next } from "./not-quite.tsx";

export interface Limits {
  /** The bounds in one line. */
  readonly words: string;
  /** Why the rung itself is out of bounds; null where it is not. */
  readonly out: string | null;
  /** Why something wished for is out of bounds; null where it is not. */
  readonly outOf: (wish: { readonly next: Next; readonly help: HelpWord | null }) => string | null;
}

/** The bounds of an item as they hold now: lifted for this session once the therapist was called and let it go on. */
export function useBounds({
  bounds,
  catalogue,
  state,
  of: { activity, rung },
}: {
  readonly bounds: AssistantBounds | null;
  readonly catalogue: CatalogueAnswer | null;
  readonly state: SessionState;
  readonly of: RungName;
}): Limits {
  return useMemo(() => {
    const name = (id: string) => {
      const words = nameOfRungAlone(catalogue, activity, id);
      return words.charAt(0).toLowerCase() + words.slice(1);
    };
    const lifted = bounds === null || liftedBy(state, activity);
    const rungOut = (id: string | null) => {
      const side = id === null || lifted ? null : rungOutOf(bounds, ladderOf(catalogue, activity), id);
      return id === null || side === null ? null : `${name(id)} is ${side} the bounds`;
    };
    return {
      words:
        bounds === null
          ? ""
          : `${lifted ? "Bounds, lifted by the therapist today: " : "Bounds: "}${sayBounds(bounds, name)}`,
      out: rungOut(rung),
      outOf: ({ next, help }) => {
        if (!lifted && help !== null && helpOutOf(bounds, help))
          return `${sayHelp(help)} is more help than the bounds allow`;
        if (next === "rungDown") return rungOut(neighbour(catalogue, activity, rung, -1));
        return next === "rungUp" ? rungOut(neighbour(catalogue, activity, rung, 1)) : null;
      },
    };
  }, [bounds, catalogue, state, activity, rung]);
}
