import type { Risk } from "#engine/index.ts";
import { clockText } from "#words/clock.ts";
import {
  bringsText,
  chanceText,
  latenessText,
  riskHeadings,
  riskPolicy,
  spareText,
} from "#words/risk-text.ts";
import type { PlanNames } from "./names.ts";

/** How sure each course is to land in time: a bar and its figure, and the tasks to watch. */
export const Sureness = ({ risk, names }: { risk: Risk; names: PlanNames }) => (
  <section aria-labelledby="sure-head" class="sureness no-print">
    <h2 id="sure-head">{riskHeadings.courses}</h2>
    <table>
      <thead>
        <tr>
          <th scope="col">{riskHeadings.course}</th>
          <th scope="col">Due</th>
          <th scope="col">{riskHeadings.withinFive}</th>
          <th scope="col">{riskHeadings.expected}</th>
          <th scope="col">{riskHeadings.nineInTen}</th>
        </tr>
      </thead>
      <tbody>
        {risk.courses.map((course) => (
          <tr key={course.course} class={`course-${course.course % 8}`}>
            <th scope="row">{course.name}</th>
            <td>{clockText(course.due)}</td>
            <td>
              <span class="chance" aria-hidden="true">
                <span style={{ width: `${Math.round(course.withinFive * 100)}%` }} />
              </span>{" "}
              {chanceText(course.withinFive)}
            </td>
            <td>{latenessText(course.expectedLate)}</td>
            <td>{latenessText(course.nineInTen)}</td>
          </tr>
        ))}
      </tbody>
    </table>
    <p>{spareText(risk)}</p>
    {risk.watch.length > 0 && (
      <>
        <h3>{riskHeadings.watch}</h3>
        <ul>
          {risk.watch.map((task) => (
            <li key={task.task}>
              {names.task(task.task)}: {bringsText(task.brings, task.share)}
            </li>
          ))}
        </ul>
      </>
    )}
    <p class="soft small">{riskPolicy(risk)}</p>
  </section>
);
