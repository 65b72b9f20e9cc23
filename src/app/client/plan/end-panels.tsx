import { Link } from "react-aria-components";
import type { PlanAnswer } from "../../contract/plan-answer.ts";
import type { KeptPerson } from "../record/database.ts";
import { pathOf } from "../shell/route.ts";

/** The minutes before the first item. */
export function ArrivePanel({ person, plan }: { readonly person: KeptPerson; readonly plan: PlanAnswer }) {
  const { vitals } = person.case;
  const move = plan.helperMoves.find(({ beforeItem }) => beforeItem === 0);
  return (
    <div className="end-panel">
      <h2>Arrive, belt, pressure</h2>
      <p className="said">
        Toilet, belt, shoes, glasses and hearing aid; then pressure, pulse and oxygen before the first move.
      </p>
      <p>
        {vitals === undefined ? (
          "No vital signs yet. "
        ) : (
          <>
            Last known:{" "}
            {vitals.systolic !== undefined && vitals.diastolic !== undefined
              ? `pressure ${vitals.systolic} over ${vitals.diastolic}, `
              : ""}
            {vitals.heartRate !== undefined ? `pulse ${vitals.heartRate}, ` : ""}
            {vitals.oxygenSaturation !== undefined ? `oxygen ${vitals.oxygenSaturation}. ` : ""}
          </>
        )}
        <Link className="textlink" href={pathOf({ view: "measured", person: person.id })}>
          Measure again
        </Link>
      </p>
      {move !== undefined && (
        <p>
          <strong>You</strong> {move.words}
        </p>
      )}
    </div>
  );
}

/** Down and to rest again, planned and in a hurry. */
export function BackPanel({
  plan,
  ways,
}: {
  readonly plan: PlanAnswer;
  readonly ways: readonly PlanAnswer["transitions"][number][];
}) {
  const { wayBack } = plan;
  return (
    <div className="end-panel">
      <h2>Way back, rest</h2>
      {wayBack !== null && (
        <>
          <p className="said">{wayBack.minutes} minutes are kept for it, and the strength it takes.</p>
          <h3>Planned</h3>
          <ol>
            {wayBack.planned.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <section className="stopbox">
            <p>
              <strong>In a hurry</strong> {wayBack.hurry.join(" ")}
            </p>
          </section>
        </>
      )}
      {ways.map(({ id, steps }) => (
        <ol key={id}>
          {steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      ))}
    </div>
  );
}
