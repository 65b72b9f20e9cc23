import { type ReactNode, useMemo, useRef } from "react";
import { Tab, TabList, TabPanel, Tabs } from "react-aria-components";
import type { Picture } from "../../engine/engine.ts";
import { LineDrawing } from "./line-drawing.tsx";
import type { Stretch } from "./stretches.ts";
import { useWidth } from "./use-width.ts";
import "./session-line.css";

export interface StretchWords {
  /** Tells the stretches apart. */
  readonly id: string;
  /** Under the band. */
  readonly name: string;
  /** Heard: "Bridge, minutes 5 to 11, on the back, two sets of eight, changed." */
  readonly heard: string;
  readonly changed: boolean;
}

/** The session as a level strip: the mat is its base, the line the body's trace. A touched stretch opens below. */
export function SessionLine({
  stretches,
  words,
  minutes,
  summary,
  touched,
  onTouch,
  body,
  before = null,
  floorMat = false,
  children,
}: {
  readonly stretches: readonly Stretch[];
  readonly words: readonly StretchWords[];
  /** The whole slot. */
  readonly minutes: number;
  readonly summary: string;
  readonly touched: number;
  readonly onTouch: (index: number) => void;
  readonly body: Picture | null;
  /** The order before, shown dashed until the new one is taken. */
  readonly before?: readonly Stretch[] | null;
  readonly floorMat?: boolean;
  readonly children: ReactNode;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, LEAST_WIDTH);
  const columns = useMemo(() => {
    const end = stretches.at(-1)?.toMinute ?? 0;
    return [
      ...stretches.map(({ fromMinute, toMinute }) => `minmax(0, ${Math.max(toMinute - fromMinute, 0.5)}fr)`),
      ...(minutes - end > 0.25 ? [`minmax(0, ${minutes - end}fr)`] : []),
    ].join(" ");
  }, [stretches, minutes]);
  return (
    <Tabs
      className="line-tabs"
      selectedKey={words[touched]?.id ?? ""}
      onSelectionChange={(key) => onTouch(words.findIndex(({ id }) => id === key))}
    >
      <p className="unseen">{summary}</p>
      <div className="line-frame" ref={frame}>
        <div className="line" style={{ minInlineSize: LEAST_WIDTH }}>
          <LineDrawing
            stretches={stretches}
            before={before}
            changed={words.map(({ changed }) => changed)}
            minutes={minutes}
            touched={touched}
            width={width}
            body={body}
            floorMat={floorMat}
          />
          <TabList
            className="line-list"
            aria-label="The session, stretch by stretch"
            style={{ gridTemplateColumns: columns }}
          >
            {words.map(({ id, name, heard, changed }) => (
              <Tab key={id} id={id} className="line-tab" aria-label={heard}>
                <span className="line-name">{name}</span>
                {changed && <span className="line-changed">changed</span>}
              </Tab>
            ))}
          </TabList>
          <div className="line-minutes" aria-hidden="true">
            {[0, 15, 30, 45, 60, 75, 90]
              .filter((minute) => minute < minutes - 4)
              .map((minute) => (
                <span key={minute} style={{ insetInlineStart: `${(100 * minute) / minutes}%` }}>
                  {minute === 0 ? "0 minutes" : minute}
                </span>
              ))}
            <span className="line-end">{minutes}</span>
          </div>
        </div>
      </div>
      {words.map(({ id }, index) => (
        <TabPanel key={id} id={id} className="line-panel">
          {index === touched ? children : null}
        </TabPanel>
      ))}
    </Tabs>
  );
}

/** Narrower than this the line scrolls. */
const LEAST_WIDTH = 600;
