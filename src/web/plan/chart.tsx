import type { CourseLanding } from "#engine/index.ts";
import { clockText, endText } from "#words/clock.ts";
import { attentionLabels } from "#words/labels.ts";
import { taskText } from "#words/plan-text.ts";
import { celsiusText, durationText } from "#words/quantity-text.ts";
import type { PlanNames } from "./names.ts";
import { attended, type Bar, type DayWindow, type Row } from "./rows.ts";

const rowPad = 8;
const headHeight = 58;

/** What only stands somewhere needs less room than what is worked on. */
const laneHeight = (row: Row): number => (row.group === "other" ? 22 : 30);

/** Height of a row in the chart, also of its label. */
export const rowHeight = (row: Row): number => Math.max(1, row.lanes.length) * laneHeight(row) + rowPad;

/** The height above the rows, where hours and courses are named. */
export const chartHead = headHeight;

/** The name of a bar on the chart. */
export type BarKey = string;
/** A bar by its row, its task and its segment; no two bars share it. */
export const keyOfBar = (row: Row, bar: Bar): BarKey => `${row.id}|${bar.task.id}|${bar.segment}`;

/** The bars of a row that the window shows, in order of time. */
export const shownBars = (row: Row, { from, to }: DayWindow): readonly Bar[] =>
  row.lanes
    .flat()
    .filter((b) => b.to > from && b.from < to)
    .sort((a, b) => a.from - b.from);

type Props = {
  readonly rows: readonly Row[];
  readonly window: DayWindow;
  readonly pixelsPerMinute: number;
  readonly landings: readonly CourseLanding[];
  readonly selected: BarKey | null;
  readonly stop: BarKey | null;
  readonly names: PlanNames;
  readonly select: (key: BarKey, bar: Bar) => void;
  readonly move: (key: BarKey, event: KeyboardEvent) => void;
};

/** The day as a drawing: time to the right, hands and equipment downward. */
export const Chart = (props: Props) => {
  const { rows, window, pixelsPerMinute } = props;
  const tops = rows.map((_, i) => headHeight + rows.slice(0, i).reduce((sum, r) => sum + rowHeight(r), 0));
  const height = headHeight + rows.reduce((sum, r) => sum + rowHeight(r), 0);
  const width = Math.ceil((window.to - window.from) * pixelsPerMinute);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing cannot be a fieldset.
    <svg class="chart" width={width} height={height} role="group" aria-label="Time chart">
      <Patterns />
      {rows.map((row, i) => (
        <rect
          key={row.id}
          class={i % 2 === 0 ? "band" : "band other"}
          x="0"
          y={tops[i]}
          width={width}
          height={rowHeight(row)}
        />
      ))}
      <Hours {...props} height={height} />
      <Landings {...props} height={height} />
      {rows.map((row, i) =>
        row.lanes.map((lane, l) =>
          lane
            .filter((b) => b.to > window.from && b.from < window.to)
            .map((bar) => (
              <BarShape
                key={keyOfBar(row, bar)}
                {...props}
                row={row}
                bar={bar}
                top={(tops[i] ?? 0) + rowPad / 2 + l * laneHeight(row)}
              />
            )),
        ),
      )}
    </svg>
  );
};

/** Full: hands on. Slanted lines: an eye on it. Bare: goes alone. */
const Patterns = () => (
  <defs>
    <pattern id="mind-lines" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width="2.4" height="7" class="mind-line" />
    </pattern>
  </defs>
);

const BarShape = ({
  row,
  bar,
  top,
  window,
  pixelsPerMinute,
  selected,
  stop,
  names,
  select,
  move,
}: Props & { row: Row; bar: Bar; top: number }) => {
  const key = keyOfBar(row, bar);
  const at = (moment: number): number =>
    (Math.min(Math.max(moment, window.from), window.to) - window.from) * pixelsPerMinute;
  const x = at(bar.from);
  const width = Math.max(3, at(bar.to) - x - 1);
  const heat = row.group === "ovens" && bar.celsius !== null ? celsiusText(bar.celsius) : "";
  const text = taskText(bar.task);
  const h = laneHeight(row) - 4;
  const attentions = [...new Set(bar.parts.map((p) => attentionLabels[p.attention]))].join(", then ");
  return (
    // biome-ignore lint/a11y/useSemanticElements: a shape in a drawing cannot be a button element.
    <g
      role="button"
      class={`bar${attended(bar) ? "" : " bar-alone"} course-${bar.task.course % 8}${row.group === "other" ? " row-small" : ""}`}
      data-key={key}
      tabindex={key === stop ? 0 : -1}
      aria-pressed={key === selected}
      aria-label={`${text}, ${names.dishes(bar.task)}, ${row.name}, ${clockText(bar.from)} to ${endText(names.date, bar.from, bar.to)} (${durationText(bar.to - bar.from)}), ${attentions}${heat === "" ? "" : `, ${heat}`}, for ${names.course(bar.task.course)}`}
      onClick={() => select(key, bar)}
      onKeyDown={(e) => move(key, e)}
    >
      <title>{`${clockText(bar.from)} ${text}`}</title>
      <rect class="ground" x={x} y={top} width={width} height={h} rx="4" />
      {bar.parts.map((part) => {
        if (part.attention === "none") return null;
        const from = at(part.from);
        const wide = Math.max(1, Math.min(at(part.to), x + width) - from);
        return (
          <rect
            key={part.from}
            class={`part-${part.attention}`}
            x={from}
            y={top}
            width={wide}
            height={h}
            {...(part.attention === "mind" ? { fill: "url(#mind-lines)" } : {})}
          />
        );
      })}
      <rect class="edge" x={x} y={top} width={width} height={h} rx="4" />
      {width > 26 && (
        <svg x={x} y={top} width={width - 3} height={h} aria-hidden="true">
          <text x="6" y={h / 2 + 5} class="bar-text">
            <tspan class="bar-course">{bar.task.course + 1}</tspan>
            <tspan dx="5">{heat === "" ? text : `${heat} ${text}`}</tspan>
          </text>
        </svg>
      )}
    </g>
  );
};

const Hours = ({ window, pixelsPerMinute, height }: Props & { height: number }) => {
  const every = pixelsPerMinute * 30 >= 52 ? 30 : pixelsPerMinute * 60 >= 52 ? 60 : 120;
  const first = Math.ceil(window.from / every) * every;
  const marks = Array.from(
    { length: Math.floor((window.to - first) / every) + 1 },
    (_, i) => first + i * every,
  );
  return (
    <g class="hours">
      {marks.map((m) => {
        const x = (m - window.from) * pixelsPerMinute;
        return (
          <g key={m}>
            <line x1={x} x2={x} y1={headHeight - 8} y2={height} />
            {m < window.to && (
              <text x={x + 4} y={headHeight - 10}>
                {clockText(m)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
};

const Landings = ({ window, pixelsPerMinute, landings, height }: Props & { height: number }) => (
  <g class="landings">
    {landings
      .filter((l) => l.due >= window.from && l.due <= window.to)
      .map((l, i) => {
        const x = (l.due - window.from) * pixelsPerMinute;
        return (
          <g key={l.course} class={`course-${l.course % 8}`}>
            <line x1={x} x2={x} y1={i % 2 === 0 ? 18 : 34} y2={height} />
            <text x={x - 4} y={i % 2 === 0 ? 14 : 30} text-anchor="end">
              {`${l.course + 1} ${l.name}`}
            </text>
          </g>
        );
      })}
  </g>
);
