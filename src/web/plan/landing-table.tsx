import type { CourseLanding, Plan } from "#engine/index.ts";
import { clockText, momentText } from "#words/clock.ts";
import { durationText } from "#words/quantity-text.ts";
import type { PlanNames } from "./names.ts";

const Landing = ({ course }: { course: CourseLanding }) => {
  if (!course.whole) return <strong class="late">does not land whole</strong>;
  const late = course.lateMinutes > 0;
  return (
    <>
      {clockText(course.lands)}{" "}
      {late ? (
        <strong class="late">{durationText(course.lateMinutes)} late</strong>
      ) : (
        <span class="soft">on time</span>
      )}
    </>
  );
};

/** When each course is due at the pass, and when its last plate is there. */
export const LandingTable = ({ plan, names }: { plan: Plan; names: PlanNames }) => (
  <table class="landing">
    <caption>Courses at the pass</caption>
    <thead>
      <tr>
        <th scope="col">Course</th>
        <th scope="col">Due</th>
        <th scope="col">Lands</th>
        <th scope="col">Work from</th>
      </tr>
    </thead>
    <tbody>
      {plan.courses.map((c) => (
        <tr key={c.course} class={`course-${c.course % 8}`}>
          <th scope="row">
            <span class="course-number">{c.course + 1}</span> {c.name}
          </th>
          <td>{clockText(c.due)}</td>
          <td>
            <Landing course={c} />
          </td>
          <td class="nowrap">{c.firstStart === null ? "–" : momentText(names.date, c.firstStart)}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
