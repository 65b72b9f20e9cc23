import type { Basis } from "../../engine/engine.ts";
import { sayPath } from "../words/person-words.ts";

/** What a figure rests on: formula, what went in and how it is known, where it comes from, what it does not know. */
export function BasisView({ basis }: { readonly basis: Basis }) {
  const assumed = (known: string) => /assumed|not given/i.test(known);
  return (
    <div className="basis">
      <p className="formula">{basis.formula}</p>
      <dl className="pairs">
        {basis.inputs.map(({ name, value, known }) => (
          <div key={`${name}-${value}`} className="basis-row">
            <dt>{name}</dt>
            <dd>
              <span className={assumed(known) ? "assumed" : ""}>
                {name === "assumed" ? value.split(", ").map(sayPath).join(", ") : value}
              </span>{" "}
              <span className="least">{known}</span>
            </dd>
          </div>
        ))}
        {basis.sources.map(({ id, title, seen }) => (
          <div key={id} className="basis-row">
            <dt>source</dt>
            <dd>
              {title} <span className="least">({seen.replace("-", " ")})</span>
            </dd>
          </div>
        ))}
      </dl>
      {basis.wouldChangeMost !== null && (
        <p className="said">
          Would change it most: <strong>{basis.wouldChangeMost}</strong>
        </p>
      )}
      {basis.doesNotKnow.length > 0 && (
        <details>
          <summary className="textlink">What this does not know</summary>
          <ul>
            {basis.doesNotKnow.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
