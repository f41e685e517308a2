import { useEffect, useRef } from "preact/hooks";
import { clockText } from "#words/clock.ts";
import { durationText } from "#words/quantity-text.ts";
import { changeText, overrunText, overtimeText, replanHeadings } from "#words/replan-text.ts";
import { FindingList } from "../parts/finding-list.tsx";
import type { PlanNames } from "../plan/names.ts";
import type { NightAnswer } from "../state/engine-talk.ts";

/** Told already by the lists below. */
const inLists: ReadonlySet<string> = new Set(["waits-over", "course-slips", "stays-on"]);

type Props = {
  readonly answer: NightAnswer;
  readonly names: PlanNames;
};

/** What the new plan changes, before it is taken. */
export const NewPlan = ({ answer, names }: Props) => {
  const { replanned, findings } = answer;
  const head = useRef<HTMLHeadingElement>(null);
  // Whoever asked for it is led to it, also without seeing the page.
  useEffect(() => head.current?.focus(), [answer]);
  const waits = replanned.overruns.map((overrun) => overrunText(overrun, names.task));
  return (
    <section class="new-plan" aria-labelledby="new-plan-head">
      <h2 id="new-plan-head" ref={head} tabIndex={-1}>
        The new plan
      </h2>
      <FindingList findings={findings.filter((f) => f.severity !== "note" && !inLists.has(f.code))} />
      <h3>{replanHeadings.courses}</h3>
      <ul class="plain">
        {replanned.plan.courses.map((course) => (
          <li key={course.course}>
            {course.name}:{" "}
            {course.whole ? (
              <>
                <b>{clockText(course.lands)}</b>{" "}
                {course.lateMinutes > 0 ? (
                  <strong class="late">{durationText(course.lateMinutes)} late</strong>
                ) : (
                  <span class="soft">on time</span>
                )}
              </>
            ) : (
              <strong class="late">does not land whole</strong>
            )}
          </li>
        ))}
      </ul>
      {waits.length > 0 && (
        <>
          <h3>{replanHeadings.overruns}</h3>
          <ul>
            {waits.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </>
      )}
      {replanned.overtime.length > 0 && (
        <>
          <h3>{replanHeadings.overtime}</h3>
          <ul>
            {replanned.overtime.map((entry) => (
              <li key={entry.cook}>{overtimeText(entry)}</li>
            ))}
          </ul>
        </>
      )}
      <h3>{replanHeadings.changes}</h3>
      {replanned.changes.length === 0 ? (
        <p>{replanHeadings.nothing}</p>
      ) : (
        <ul>
          {replanned.changes.map((change) => (
            <li key={change.task}>
              <b>{names.task(change.task)}</b>: {changeText(change, names.date)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};
