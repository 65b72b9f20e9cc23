import type { Fault } from "../../contract/faults.ts";

/** What was refused: the field, what was found, what it may be. */
export function FaultList({ faults, title }: { readonly faults: readonly Fault[]; readonly title: string }) {
  if (faults.length === 0) return null;
  return (
    <section className="stopbox" role="alert">
      <p className="said">{title}</p>
      <ul>
        {faults.map(({ path, found, expected }) => (
          <li key={path}>
            <strong>{path}</strong>: found {found}. It may be: {expected}.
          </li>
        ))}
      </ul>
    </section>
  );
}
