import { type Evening, weighPlan } from "#engine/index.ts";
import { planNames } from "#wire/plan-json.ts";
import { riskJson } from "#wire/risk-json.ts";
import { clockText } from "#words/clock.ts";
import {
  bringsText,
  chanceText,
  latenessText,
  riskHeadings,
  riskPolicy,
  spareText,
} from "#words/risk-text.ts";
import { heading } from "../show/heading.ts";
import type { Paint } from "../show/paint.ts";
import { tableText, wrap } from "../show/table.ts";
import { sittingCommand } from "../sitting-command.ts";

/** Shows how sure the plan is. */
export const riskCommand = sittingCommand({
  name: "risk",
  topics: ["work"],
  summary: "show how sure each course is to land in time, and which tasks to watch",
  about:
    "Runs the plan for a thousand nights with lengths of work drawn by chance, the same each time it is asked.",
  examples: ["tamis risk demo/lantern-supper/sitting.yaml"],
  text: (evening, paint) => riskText(evening, paint),
  json: (evening) => ({ risk: riskJson(weighPlan(evening)) }),
});

const riskText = (evening: Evening, paint: Paint): string => {
  const { risk } = weighPlan(evening);
  if (risk.courses.length === 0) return `${heading(evening, paint)}\n${wrap(spareText(risk), "  ")}`;
  const { names } = planNames(evening);
  const rows = risk.courses.map((course) => [
    course.name,
    clockText(course.due),
    chanceText(course.withinFive),
    latenessText(course.expectedLate),
    latenessText(course.nineInTen),
  ]);
  const head = [
    riskHeadings.course,
    "Due",
    riskHeadings.withinFive,
    riskHeadings.expected,
    riskHeadings.nineInTen,
  ];
  const watch = risk.watch.map((task) =>
    wrap(`${names.task(task.task)}: ${bringsText(task.brings, task.share)}`, "  "),
  );
  return (
    `${heading(evening, paint)}\n${paint.bold(riskHeadings.courses)}\n` +
    tableText([head, ...rows], ["left", "left", "right", "right", "right"], "  ") +
    `\n${wrap(spareText(risk), "  ")}` +
    (watch.length === 0 ? "" : `\n${paint.bold(riskHeadings.watch)}\n${watch.join("")}`) +
    `\n${wrap(riskPolicy(risk), "  ")}`
  );
};
