/** The words of an effort; a range across a border takes the harder one. */
const STEPS = [
  { below: 0.4, word: "easy" },
  { below: 0.6, word: "steady work" },
  { below: 0.85, word: "hard" },
  { below: 1, word: "at the edge" },
] as const;
const WIDEST = 1.5;

/** An effort as a bar against all that the part has. */
export function EffortBar({
  peak,
}: {
  readonly peak: { readonly low: number; readonly middle: number; readonly high: number };
}) {
  const word = STEPS.find(({ below }) => peak.high < below)?.word ?? "would fold";
  const end = Math.max(WIDEST, Math.min(peak.high * 1.1, 4));
  const at = (value: number) => `${(100 * Math.min(value, end)) / end}%`;
  const tenths = (value: number) => String(Math.round(value * 10));
  return (
    <div
      className="effort"
      role="img"
      aria-label={`${word}: ${tenths(peak.low)} to ${tenths(peak.high)} tenths of all it has, most likely ${tenths(peak.middle)}`}
    >
      <div className="effort-line" />
      <div
        className="effort-range"
        style={{ insetInlineStart: at(peak.low), inlineSize: `calc(${at(peak.high)} - ${at(peak.low)} + 10px)` }}
      />
      <div className="effort-dot" style={{ insetInlineStart: at(peak.middle) }} />
      <div className="effort-all" style={{ insetInlineStart: at(1) }} />
      <span style={{ insetInlineStart: 0 }}>rest</span>
      <span className="effort-word" style={{ insetInlineStart: `min(${at(peak.low)}, calc(100% - 90px))` }}>
        {word}
      </span>
      <span style={{ insetInlineStart: at(1) }}>all it has</span>
    </div>
  );
}
