/** The word of an effort, as its sentence says it. */
const WORDS = ["would fold", "at the edge", "hard", "steady work", "easy"] as const;
const WIDEST = 1.5;

/** An effort as a bar against all that the part has. */
export function EffortBar({
  peak,
  sentence,
}: {
  readonly peak: { readonly low: number; readonly middle: number; readonly high: number };
  readonly sentence: string;
}) {
  const word = WORDS.find((each) => sentence.toLowerCase().includes(each)) ?? "";
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
