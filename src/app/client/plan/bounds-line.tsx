import { lazy, Suspense, useState } from "react";
import { Button } from "react-aria-components";
import { boundsOf, sayBounds } from "../../../session/bounds.ts";
import type { KeptPerson } from "../record/database.ts";
import { nameOfRungAlone } from "./plan-words.ts";
import { useCatalogue } from "./use-plan.ts";

const BoundsLeaf = lazy(async () => ({ default: (await import("./bounds-leaf.tsx")).BoundsLeaf }));

/** The bounds of one ladder, or of the whole session, in one line, and the way to set them. */
export function BoundsLine({ person, activity }: { readonly person: KeptPerson; readonly activity: string | null }) {
  const catalogue = useCatalogue(person);
  const [setting, setSetting] = useState(false);
  const all = person.case.bounds ?? [];
  const own = all.some((each) => (each.activity ?? null) === activity);
  const bounds = boundsOf(
    activity === null ? all.filter((each) => each.activity === undefined) : all,
    activity ?? "the whole session",
  );
  const name = (rung: string) => {
    const words = nameOfRungAlone(catalogue, activity ?? "", rung);
    return words.charAt(0).toLowerCase() + words.slice(1);
  };
  return (
    <>
      {bounds === null ? "No bounds set. " : `${sayBounds(bounds, name)} `}
      <Button className="textlink" onPress={() => setSetting(true)}>
        {own ? "Change" : "Set bounds"}
        <span className="unseen">{activity === null ? " for the whole session" : " for an assistant"}</span>
      </Button>
      {setting && (
        <Suspense>
          <BoundsLeaf person={person} activity={activity} onClose={() => setSetting(false)} />
        </Suspense>
      )}
    </>
  );
}
