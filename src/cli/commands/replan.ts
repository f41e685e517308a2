import { replan } from "#engine/index.ts";
import { isoMoment, planNames } from "#wire/plan-json.ts";
import { printJson } from "#wire/print-json.ts";
import { readNight } from "#wire/read-night.ts";
import { clockText } from "#words/clock.ts";
import { taskText, unplacedHeading } from "#words/plan-text.ts";
import { durationText } from "#words/quantity-text.ts";
import { changeText, overrunText, overtimeText, replanHeadings } from "#words/replan-text.ts";
import { type Command, commonOptions } from "../command.ts";
import { loadSitting, readInput, troubleText } from "../load-sitting.ts";
import { remarkOfProblem, showRemarks } from "../show/remarks.ts";
import { tableText, wrap } from "../show/table.ts";
import { exitCodes } from "../world.ts";

const toldInText: ReadonlySet<string> = new Set(["waits-over", "course-slips", "stays-on"]);

/** Plans the rest of a night from how far it is. */
export const replanCommand: Command = {
  name: "replan",
  summary: "plan the rest of a night from how far it is, changing as little as can be",
  takes: "SITTING NIGHT",
  least: 2,
  most: 2,
  options: commonOptions,
  about:
    "NIGHT is a YAML file with `now`, and what stands otherwise than planned: `late` (minutes a task goes on longer),\n" +
    "`not begun`, `done`, `skipped`, `made anew`, `away` (cooks), `lost` (equipment) and `later` (minutes a course is\n" +
    "asked for later). Tasks go by the first words of the list, or by their id.",
  examples: ["tamis replan demo/lantern-supper demo/lantern-supper/night.yaml"],
  run: async ({ args, flag, world, paint, errPaint }) => {
    const [path = "", nightPath = ""] = args;
    const loaded = await loadSitting(path, world);
    if (typeof loaded === "string")
      return { stdout: "", stderr: `tamis: ${loaded}\n`, code: exitCodes.unusable };
    const { evening } = loaded;
    if (evening === null) {
      const stops = loaded.remarks.filter((remark) => remark.severity === "stop");
      return {
        stdout: "",
        stderr: showRemarks(stops, loaded.textOf, false, errPaint),
        code: exitCodes.stopped,
      };
    }
    const found = await readInput(nightPath, world);
    if (typeof found === "string")
      return { stdout: "", stderr: `tamis: ${troubleText(nightPath, found)}\n`, code: exitCodes.unusable };
    const { progress, problems } = readNight(nightPath, found.text, evening, taskText);
    if (progress === null)
      return {
        stdout: "",
        stderr: showRemarks(problems.map(remarkOfProblem), () => found.text, true, errPaint),
        code: exitCodes.stopped,
      };
    const { value, findings } = replan(evening, progress);
    const { names, date } = planNames(evening);
    const remarks = findings.map(loaded.remarkOf);
    const stopped = remarks.some((remark) => remark.severity === "stop");
    const code = stopped ? exitCodes.stopped : exitCodes.fine;
    // The text itself tells which courses slip and what waits.
    const besides = flag("json") ? remarks : remarks.filter(({ code }) => !toldInText.has(code));
    const stderr = showRemarks(besides, loaded.textOf, flag("notes"), errPaint);
    if (flag("json")) {
      const at = (moment: number) => ({ at: isoMoment(date, moment), moment });
      return {
        stdout: printJson({
          replan: {
            now: at(progress.now),
            courses: value.plan.courses,
            changes: value.changes,
            overruns: value.overruns,
            overtime: value.overtime,
            stuck: value.stuck,
            held: value.held,
            unplaced: value.plan.unplaced,
            placed: value.plan.placed,
            violations: value.plan.violations,
          },
        }),
        stderr,
        code,
      };
    }
    const courses = tableText(
      value.plan.courses.map((course) => [
        course.name,
        `due ${clockText(course.due)}`,
        course.whole ? `lands ${clockText(course.lands)}` : "does not land whole",
        course.lateMinutes > 0 ? `${durationText(course.lateMinutes)} late` : "",
      ]),
      ["left", "left", "left", "left"],
      "  ",
    );
    const changes = value.changes.map((change) =>
      wrap(`${names.task(change.task)}: ${changeText(change, date)}`, "  ", "    "),
    );
    const missing = value.plan.unplaced.map((task) => wrap(names.task(task), "  ", "    "));
    const overtime = value.overtime.map((entry) => wrap(overtimeText(entry), "  ", "    "));
    const overruns = value.overruns.map((overrun) => wrap(overrunText(overrun, names.task), "  ", "    "));
    return {
      stdout:
        `${paint.bold(replanHeadings.courses)}\n${courses === "" ? `  ${replanHeadings.over}\n` : courses}` +
        (missing.length === 0 ? "" : `\n${paint.stop(unplacedHeading)}\n${missing.join("")}`) +
        `\n${paint.bold(replanHeadings.changes)}\n${changes.length === 0 ? `  ${replanHeadings.nothing}\n` : changes.join("")}` +
        (overruns.length === 0 ? "" : `\n${paint.bold(replanHeadings.overruns)}\n${overruns.join("")}`) +
        (overtime.length === 0 ? "" : `\n${paint.bold(replanHeadings.overtime)}\n${overtime.join("")}`),
      stderr,
      code,
    };
  },
};
