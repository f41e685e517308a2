import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import type { CourseLanding, TaskId } from "#engine/index.ts";
import { attentionLabels } from "#words/labels.ts";
import { type BarKey, Chart, chartHead, keyOfBar, rowHeight, shownBars } from "./chart.tsx";
import type { PlanNames } from "./names.ts";
import { neighbour } from "./neighbour.ts";
import { type DayWindow, lanesOf, type Row } from "./rows.ts";

const zooms = [1, 1.5, 2, 3, 4.5, 7] as const;

/** Pixels a minute below which bars and names run into each other; a narrow page scrolls instead. */
const leastScale = 1.5;

type Props = {
  readonly rows: readonly Row[];
  readonly window: DayWindow;
  readonly landings: readonly CourseLanding[];
  readonly names: PlanNames;
  readonly select: (task: TaskId) => void;
};

/** The chart of one day, as near as one likes. */
export const OneDay = ({ rows, window, landings, names, select }: Props) => {
  const [zoom, setZoom] = useState(0);
  const [key, setKey] = useState<BarKey | null>(null);
  const frame = useRef<HTMLElement>(null);
  const width = useWidth(frame);
  const used = rows
    .map((r) => ({ ...r, lanes: lanesOf(shownBars(r, window)) }))
    .filter((r) => r.group === "hands" || r.lanes.length > 0);
  const shown = used.flatMap((row) =>
    shownBars(row, window).map((bar) => ({ row, bar, key: keyOfBar(row, bar) })),
  );
  const stop = shown.some((s) => s.key === key) ? key : (shown[0]?.key ?? null);
  const minutes = window.to - window.from;
  const pixelsPerMinute = (Math.max(width, minutes * leastScale) / minutes) * (zooms[zoom] ?? 1);

  // Coming nearer keeps what was chosen, or else the middle, in sight.
  const centre = useRef<number | null>(null);
  const look = (next: number): void => {
    const chosen = shown.find((s) => s.key === key)?.bar;
    const scroll = frame.current;
    if (chosen !== undefined) centre.current = (chosen.from + chosen.to) / 2 - window.from;
    else if (scroll !== null) centre.current = (scroll.scrollLeft + scroll.clientWidth / 2) / pixelsPerMinute;
    setZoom(next);
  };
  useLayoutEffect(() => {
    const scroll = frame.current;
    if (scroll !== null && centre.current !== null)
      scroll.scrollLeft = centre.current * pixelsPerMinute - scroll.clientWidth / 2;
  }, [zoom]);

  const move = (from: BarKey, event: KeyboardEvent): void => {
    const now = shown.find((s) => s.key === from);
    if (now === undefined) return;
    const next = event.key === "Enter" || event.key === " " ? now : neighbour(shown, now, event.key);
    if (next === undefined) return;
    event.preventDefault();
    setKey(next.key);
    select(next.bar.task.id);
    frame.current?.querySelector<SVGGElement>(`[data-key="${CSS.escape(next.key)}"]`)?.focus();
  };

  return (
    <>
      <div class="chart-tools">
        <fieldset class="choices">
          <legend class="hidden">Nearness</legend>
          <button type="button" disabled={zoom === 0} onClick={() => look(0)}>
            Whole day
          </button>
          <button type="button" disabled={zoom === 0} onClick={() => look(zoom - 1)}>
            Farther
          </button>
          <button type="button" disabled={zoom === zooms.length - 1} onClick={() => look(zoom + 1)}>
            Nearer
          </button>
        </fieldset>
        <p class="legend">
          {(["hands", "mind", "none"] as const).map((a) => (
            <span key={a}>
              <i class={`swatch swatch-${a}`} aria-hidden="true" /> {attentionLabels[a]}
            </span>
          ))}
        </p>
      </div>
      <div class="chart-frame">
        <div class="row-names" style={{ paddingTop: `${chartHead}px` }} aria-hidden="true">
          {used.map((r) => (
            <div key={r.id} class={`row-name row-${r.group}`} style={{ height: `${rowHeight(r)}px` }}>
              {r.name}
            </div>
          ))}
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide drawing must be scrollable by keyboard. */}
        <section class="chart-scroll" ref={frame} tabIndex={0} aria-label="Chart of the day">
          <Chart
            rows={used}
            window={window}
            pixelsPerMinute={pixelsPerMinute}
            landings={landings}
            names={names}
            selected={key}
            stop={stop}
            select={(k, bar) => {
              setKey(k);
              select(bar.task.id);
            }}
            move={move}
          />
        </section>
      </div>
      <p class="soft small">
        Numbers on the bars are courses. Left and right go along a row, up and down change rows.
      </p>
    </>
  );
};

/** The width that an element has on the page, followed as it changes. */
const useWidth = (element: { readonly current: HTMLElement | null }): number => {
  const [width, setWidth] = useState(900);
  useEffect(() => {
    if (element.current === null) return undefined;
    const look = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width ?? 900));
    look.observe(element.current);
    return () => look.disconnect();
  }, []);
  return width;
};
