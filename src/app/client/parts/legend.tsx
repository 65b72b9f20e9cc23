/** What the signs of a drawing mean. */
export function Legend({ marks = true }: { readonly marks?: boolean }) {
  return (
    <ul className="legend">
      <li>
        <svg viewBox="0 0 40 20" aria-hidden="true">
          <rect x="1" y="1" width="38" height="18" rx="9" fill="none" stroke="currentColor" strokeWidth="1.6" />
          <path d="M8 17 16 3M15 17 23 3M22 17 30 3M29 16 34 6" stroke="currentColor" strokeWidth="1.2" />
        </svg>
        weaker arm and leg
      </li>
      {marks && (
        <li>
          <svg viewBox="0 0 40 20" aria-hidden="true">
            <ellipse cx="20" cy="10" rx="14" ry="8" fill="currentColor" fillOpacity="0.4" stroke="currentColor" />
          </svg>
          weight
        </li>
      )}
      {marks && (
        <li>
          <svg viewBox="0 0 40 20" aria-hidden="true">
            <path d="M4 15V4h32v11" fill="none" stroke="currentColor" strokeWidth="1.8" strokeDasharray="5 3" />
            <path d="M3 16h34" stroke="currentColor" strokeWidth="5" />
          </svg>
          how far the weight can go, thick: tips first
        </li>
      )}
      {marks && (
        <li>
          <svg viewBox="0 0 40 20" aria-hidden="true">
            <path d="M3 10h26" stroke="currentColor" strokeWidth="3" strokeLinecap="round" strokeDasharray=".1 5.6" />
            <path d="m38 10-9-5v10z" fill="currentColor" />
          </svg>
          way out, planned
        </li>
      )}
      {marks && (
        <li>
          <svg viewBox="0 0 40 20" aria-hidden="true">
            <path d="M3 10h26" stroke="currentColor" strokeWidth="3.4" strokeLinecap="round" strokeDasharray="8 5" />
            <path d="m38 10-9-5v10z" fill="currentColor" />
          </svg>
          way out in a hurry
        </li>
      )}
    </ul>
  );
}
