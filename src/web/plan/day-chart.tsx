import { useEffect, useRef, useState } from "preact/hooks";
import type { CourseLanding, TaskId } from "#engine/index.ts";
import { dayText } from "#words/clock.ts";
import { attentionLabels } from "#words/labels.ts";
import { AttentionMark } from "../parts/marks.tsx";
import { type BarKey, Chart, chartHead, keyOfBar, rowHeight, shownBars } from "./chart.tsx";
import type { PlanNames } from "./names.ts";
import { dayWindows, lanesOf, type Row } from "./rows.ts";

const zooms = [1, 1.5, 2, 3, 4.5, 7] as const;

/** Pixels a minute below which bars and names run into each other; a narrow page scrolls instead. */
const leastScale = 1.5;

type Props = {
  readonly rows: readonly Row[];
  readonly landings: readonly CourseLanding[];
  readonly names: PlanNames;
  readonly select: (task: TaskId) => void;
};

/** The chart of one day, with the days to choose from and how near to look. */
export const DayChart = ({ rows, landings, names, select }: Props) => {
  const days = dayWindows(
    rows,
    landings.map((l) => l.due),
  );
  const [day, setDay] = useState<number | null>(null);
  const [zoom, setZoom] = useState(0);
  const [key, setKey] = useState<BarKey | null>(null);
  const frame = useRef<HTMLElement>(null);
  const [width, setWidth] = useState(900);
  useEffect(() => {
    if (frame.current === null) return undefined;
    const look = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width ?? 900));
    look.observe(frame.current);
    return () => look.disconnect();
  }, []);
  const window = days.find((d) => d.day === day) ?? days.find((d) => d.day === 0) ?? days.at(-1);
  if (window === undefined) return <p class="soft">No work is placed yet.</p>;
  const used = rows
    .map((r) => ({ ...r, lanes: lanesOf(shownBars(r, window)) }))
    .filter((r) => r.group === "hands" || r.lanes.length > 0);
  const shown = used.flatMap((row) =>
    shownBars(row, window).map((bar) => ({ row, bar, key: keyOfBar(row, bar) })),
  );
  const stop = shown.some((s) => s.key === key) ? key : (shown[0]?.key ?? null);
  const minutes = window.to - window.from;
  const pixelsPerMinute = (Math.max(width, minutes * leastScale) / minutes) * (zooms[zoom] ?? 1);

  const move = (from: BarKey, event: KeyboardEvent): void => {
    const now = shown.find((s) => s.key === from);
    if (now === undefined) return;
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      setKey(from);
      select(now.bar.task.id);
      return;
    }
    const next = neighbour(shown, now, event.key);
    if (next === undefined) return;
    event.preventDefault();
    setKey(next.key);
    select(next.bar.task.id);
    const shape = frame.current?.querySelector<SVGGElement>(`[data-key="${CSS.escape(next.key)}"]`);
    shape?.focus();
  };

  return (
    <div class="day-chart">
      <div class="chart-tools">
        <fieldset class="choices">
          <legend class="hidden">Day</legend>
          {days.map((d) => (
            <button
              key={d.day}
              type="button"
              aria-pressed={d.day === window.day}
              onClick={() => {
                setDay(d.day);
                setZoom(0);
              }}
            >
              {dayText(names.date, d.day * 1440)}
            </button>
          ))}
        </fieldset>
        <fieldset class="choices">
          <legend class="hidden">Nearness</legend>
          <button type="button" disabled={zoom === 0} onClick={() => setZoom(0)}>
            Whole day
          </button>
          <button type="button" disabled={zoom === 0} onClick={() => setZoom(zoom - 1)}>
            Farther
          </button>
          <button type="button" disabled={zoom === zooms.length - 1} onClick={() => setZoom(zoom + 1)}>
            Nearer
          </button>
        </fieldset>
        <p class="legend">
          {(["hands", "mind", "none"] as const).map((a) => (
            <span key={a}>
              <i class={`swatch swatch-${a}`} aria-hidden="true" />
              <AttentionMark of={a} /> {attentionLabels[a]}
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
    </div>
  );
};

type Shown = { readonly row: Row; readonly bar: Row["lanes"][number][number]; readonly key: BarKey };

/** The bar that an arrow key leads to. */
const neighbour = (shown: readonly Shown[], now: Shown, key: string): Shown | undefined => {
  const own = shown.filter((s) => s.row === now.row);
  const at = own.indexOf(now);
  if (key === "ArrowRight") return own[at + 1];
  if (key === "ArrowLeft") return own[at - 1];
  if (key === "Home") return own[0];
  if (key === "End") return own.at(-1);
  if (key !== "ArrowDown" && key !== "ArrowUp") return undefined;
  const rows = [...new Set(shown.map((s) => s.row))];
  const row = rows[rows.indexOf(now.row) + (key === "ArrowDown" ? 1 : -1)];
  return shown
    .filter((s) => s.row === row)
    .sort((a, b) => Math.abs(a.bar.from - now.bar.from) - Math.abs(b.bar.from - now.bar.from))[0];
};
