import { useMemo } from "preact/hooks";
import { chainOf, type Plan, type Station, type TaskId } from "#engine/index.ts";
import { linkTexts } from "#words/chain-text.ts";
import { clockText, endText, momentText } from "#words/clock.ts";
import { attentionLabels, stationLabels } from "#words/labels.ts";
import { causeText, taskText } from "#words/plan-text.ts";
import { celsiusText, durationText } from "#words/quantity-text.ts";
import { versionText } from "#words/version-text.ts";
import { AttentionMark } from "../parts/marks.tsx";
import type { PlanNames } from "./names.ts";
import { attentionOf, barsOf } from "./rows.ts";

/** A task, its segments, and why it stands where it stands. */
export const TaskDetails = ({
  plan,
  task: id,
  names,
}: {
  plan: Plan;
  task: TaskId | null;
  names: PlanNames;
}) => {
  const task = id === null ? null : names.taskOf(id);
  const words = task === null ? null : names.words(task);
  const placed = plan.placed.find((p) => p.task === id);
  const chain = useMemo(() => (id === null ? [] : chainOf(plan, id)), [plan, id]);
  return (
    <section class="task-details" aria-live="polite" aria-label="The task that is chosen">
      {task === null || placed === undefined ? (
        <p class="soft">Choose a task in the chart to see when, who and why.</p>
      ) : (
        <>
          <h3>{taskText(task)}</h3>
          <p>
            {names.dishes(task)}
            {versionText(task.version) !== "" && <span class="tag">{versionText(task.version)}</span>}
            <span class="soft"> for {names.course(task.course)}</span>
          </p>
          {words !== null && <blockquote class="card-words">{words}</blockquote>}
          <ul class="plain segments">
            {barsOf(placed, task).map((bar) => (
              <li key={bar.segment}>
                <AttentionMark of={attentionOf(bar)} />
                <span>
                  <b>
                    {bar.segment === 0 ? momentText(names.date, bar.from) : clockText(bar.from)} to{" "}
                    {endText(names.date, bar.from, bar.to)}
                  </b>{" "}
                  {[
                    durationText(bar.to - bar.from),
                    stationText(task.segments[bar.segment]?.station ?? "hands", bar.celsius),
                    attentionLabels[attentionOf(bar)],
                  ]
                    .filter((words) => words !== "")
                    .join(", ")}
                </span>
              </li>
            ))}
          </ul>
          <p>
            {placed.cook === null ? "Nobody is needed." : `${placed.cook} does it.`}
            {placed.oven === null ? "" : ` In the ${placed.oven}.`}
          </p>
          <h4>Why then</h4>
          <ul>
            {placed.because.map((cause) => (
              <li key={JSON.stringify(cause)}>{causeText(cause, names, placed.start)}</li>
            ))}
          </ul>
          {chain.length > 1 && (
            <details>
              <summary>What pins that in turn</summary>
              <ol>
                {linkTexts(chain.slice(1), names).map((text) => (
                  <li key={text}>{text}</li>
                ))}
              </ol>
            </details>
          )}
        </>
      )}
    </section>
  );
};

/** Where a segment is done and how hot; nothing for hands, which its attention says already. */
const stationText = (station: Station, celsius: number | null): string =>
  station === "hands"
    ? ""
    : `${stationLabels[station]}${celsius === null ? "" : ` at ${celsiusText(celsius)}`}`;
