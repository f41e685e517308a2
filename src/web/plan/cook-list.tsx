import type { Plan, Prep } from "#engine/index.ts";
import { clockText, dayText } from "#words/clock.ts";
import { attentionLabels, stationLabels } from "#words/labels.ts";
import { capital } from "#words/number-text.ts";
import { taskText } from "#words/plan-text.ts";
import { celsiusText, durationText } from "#words/quantity-text.ts";
import { versionText } from "#words/version-text.ts";
import { AttentionMark } from "../parts/marks.tsx";
import type { PlanNames } from "./names.ts";
import { attended, attentionOf, type Bar, barsOf } from "./rows.ts";

/** Stretches of one cook's work: segments of a task that follow without a break are one. */
type Stretch = { readonly bars: readonly Bar[]; readonly again: boolean };

const stretchesOf = (bars: readonly Bar[]): readonly Stretch[] => {
  const stretches: { bars: Bar[]; again: boolean }[] = [];
  for (const bar of bars) {
    if (!attended(bar)) continue;
    const last = stretches.at(-1);
    if (last !== undefined && last.bars.at(-1)?.segment === bar.segment - 1) last.bars.push(bar);
    else stretches.push({ bars: [bar], again: last !== undefined });
  }
  return stretches;
};

/** What one cook does, in order, as a list to print and carry. */
export const CookList = ({
  cook,
  prep,
  plan,
  names,
}: {
  cook: string;
  prep: Prep;
  plan: Plan;
  names: PlanNames;
}) => {
  const tasks = new Map(prep.tasks.map((t) => [t.id, t]));
  const stretches = plan.placed
    .filter((p) => p.cook === cook)
    .flatMap((p) => {
      const task = tasks.get(p.task);
      return task === undefined ? [] : stretchesOf(barsOf(p, task)).map((s) => ({ ...s, oven: p.oven }));
    })
    .sort((a, b) => (a.bars[0]?.from ?? 0) - (b.bars[0]?.from ?? 0));
  const days = [...new Set(stretches.map((s) => Math.floor((s.bars[0]?.from ?? 0) / 1440)))];
  const load = plan.load.find((l) => l.cook === cook);
  return (
    <article class="cook-list">
      <h3>
        {cook}
        {load !== undefined && <span class="soft small"> {durationText(load.handsMinutes)} hands on</span>}
      </h3>
      {days.map((day) => (
        <table key={day}>
          <caption>{dayText(names.date, day * 1440)}</caption>
          <thead>
            <tr>
              <th scope="col">At</th>
              <th scope="col">Takes</th>
              <th scope="col">Do</th>
              <th scope="col">For</th>
              <th scope="col">How</th>
            </tr>
          </thead>
          <tbody>
            {stretches
              .filter((s) => Math.floor((s.bars[0]?.from ?? 0) / 1440) === day)
              .map((s) => (
                <StretchRow key={`${s.bars[0]?.task.id}${s.bars[0]?.segment}`} {...s} names={names} />
              ))}
          </tbody>
        </table>
      ))}
      {days.length === 0 && <p class="soft">Nothing is placed with {cook}.</p>}
    </article>
  );
};

const StretchRow = ({ bars, again, oven, names }: Stretch & { oven: string | null; names: PlanNames }) => {
  const first = bars[0];
  const last = bars.at(-1);
  if (first === undefined || last === undefined) return null;
  const { task } = first;
  const most = bars.some((b) => attentionOf(b) === "hands") ? "hands" : "mind";
  const next = task.segments[last.segment + 1];
  const stations = [...new Set(bars.map((b) => task.segments[b.segment]?.station ?? "hands"))]
    .filter((s) => s !== "hands")
    .map((s) => stationLabels[s]);
  const celsius = task.segments.flatMap((s) => s.uses).find((u) => u.celsius !== null)?.celsius ?? null;
  return (
    <tr class={`course-${task.course % 8}`}>
      <th scope="row">{clockText(first.from)}</th>
      <td>{durationText(last.to - first.from)}</td>
      <td>
        {again ? `Back to: ${taskText(task)}` : taskText(task)}
        {versionText(task.version) !== "" && <span class="tag">{versionText(task.version)}</span>}
        {next !== undefined && next.attention === "none" && (
          <span class="soft small">
            then {durationText(next.minutes.likely)} {stationLabels[next.station]}, alone
          </span>
        )}
      </td>
      <td>
        {names.dishes(task)}
        <span class="soft small">{names.course(task.course)}</span>
      </td>
      <td class="how">
        <AttentionMark of={most} /> {attentionLabels[most]}
        {(stations.length > 0 || celsius !== null) && (
          <span class="soft small">
            {capital(
              [...stations, oven, celsius === null ? null : celsiusText(celsius)]
                .filter((w) => w !== null)
                .join(", "),
            )}
          </span>
        )}
      </td>
    </tr>
  );
};
