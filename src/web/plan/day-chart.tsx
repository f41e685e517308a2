import { useState } from "preact/hooks";
import type { CourseLanding, TaskId } from "#engine/index.ts";
import { dayText } from "#words/clock.ts";
import type { PlanNames } from "./names.ts";
import { OneDay } from "./one-day.tsx";
import { dayWindows, type Row } from "./rows.ts";

type Props = {
  readonly rows: readonly Row[];
  readonly landings: readonly CourseLanding[];
  readonly names: PlanNames;
  readonly select: (task: TaskId) => void;
};

/** The chart, with the days to choose from; the sitting's own day comes first. */
export const DayChart = ({ rows, landings, names, select }: Props) => {
  const days = dayWindows(
    rows,
    landings.map((l) => l.due),
  );
  const [day, setDay] = useState(0);
  const window = days.find((d) => d.day === day) ?? days.at(-1);
  if (window === undefined) return <p class="soft">No work is placed yet.</p>;
  return (
    <div class="day-chart">
      <fieldset class="choices">
        <legend class="hidden">Day</legend>
        {days.map((d) => (
          <button key={d.day} type="button" aria-pressed={d.day === window.day} onClick={() => setDay(d.day)}>
            {dayText(names.date, d.day * 1440)}
          </button>
        ))}
      </fieldset>
      <OneDay
        key={window.day}
        rows={rows}
        window={window}
        landings={landings}
        names={names}
        select={select}
      />
    </div>
  );
};
