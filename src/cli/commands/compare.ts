import { type Evening, firstEffort, weighPlan } from "#engine/index.ts";
import { printJson } from "#wire/print-json.ts";
import { filesWith, readVariants, type Variant } from "#wire/variants.ts";
import { momentText } from "#words/clock.ts";
import { moneyText } from "#words/money-text.ts";
import { countText } from "#words/number-text.ts";
import { durationText } from "#words/quantity-text.ts";
import { chanceText } from "#words/risk-text.ts";
import { type Command, commonOptions } from "../command.ts";
import { loadSitting, readInput, troubleText } from "../load-sitting.ts";
import { type Remark, remarkOfProblem, showRemarks } from "../show/remarks.ts";
import { tableText } from "../show/table.ts";
import { exitCodes } from "../world.ts";

/** Compares a sitting with variants of it. */
export const compareCommand: Command = {
  name: "compare",
  summary: "compare variants of a sitting: kitchen, crew, times, covers, menu, in one table",
  takes: "SITTING VARIANTS",
  least: 2,
  most: 2,
  options: { json: commonOptions.json },
  about:
    "VARIANTS is a YAML list; each entry has a name and the keys of the sitting that it changes. A kitchen may\n" +
    "be another file, or only the keys of the kitchen file that change. The sitting as it is comes first.",
  examples: ["tamis compare demo/lantern-supper demo/lantern-supper/what-if.yaml"],
  run: async ({ args, flag, world, errPaint }) => {
    const [path = "", variantsPath = ""] = args;
    const found = await readInput(variantsPath, world);
    if (typeof found === "string")
      return { stdout: "", stderr: `tamis: ${troubleText(variantsPath, found)}\n`, code: exitCodes.unusable };
    const { variants, problems } = readVariants(variantsPath, found.text);
    if (problems.length > 0)
      return {
        stdout: "",
        stderr: showRemarks(problems.map(remarkOfProblem), () => found.text, true, errPaint),
        code: exitCodes.stopped,
      };
    const rows: Row[] = [];
    let stderr = "";
    let stopped = false;
    const all: readonly Variant[] = [{ name: "as it is", changes: {} }, ...variants];
    for (const [k, variant] of all.entries()) {
      world.tell(`\r${k + 1} of ${all.length}  `);
      const loaded = await loadSitting(path, world, firstEffort, (files) => filesWith(files, variant));
      if (typeof loaded === "string")
        return { stdout: "", stderr: `tamis: ${loaded}\n`, code: exitCodes.unusable };
      if (loaded.evening === null) {
        stopped = true;
        stderr += `${variant.name}:\n${whyNot(loaded.remarks, k > 0)}`;
      } else {
        // Work without a place is counted in the table; whatever else stops, such as a missing oven, is said.
        const why = whyNot(
          loaded.remarks.filter(({ code }) => code !== "task-unplaced" && code !== "tasks-unplaced"),
          k > 0,
        );
        if (why !== "") stderr += `${variant.name}:\n${why}`;
        stopped ||= why !== "";
        rows.push(rowOf(variant.name, loaded.evening));
      }
    }
    world.tell("\r\u001b[K");
    return {
      stdout: flag("json") ? printJson({ variants: rows }) : tableOf(rows),
      stderr,
      code: stopped ? exitCodes.stopped : exitCodes.fine,
    };
  },
};

/** What stops a variant; in a file that was changed for it, lines and columns are not those of the file as it is. */
const whyNot = (remarks: readonly Remark[], changed: boolean): string =>
  remarks
    .filter((remark) => remark.severity === "stop")
    .map(({ place, message }) =>
      changed && /\.ya?ml$/.test(place.file)
        ? `  ${place.file}, as changed: ${message}\n`
        : `  ${place.file}:${place.line}:${place.column}: ${message}\n`,
    )
    .join("");

/** One variant in figures: minutes, shares from 0 to 1, minor units of the currency. */
type Row = {
  readonly name: string;
  readonly covers: number;
  readonly lateMinutes: number;
  readonly unplaced: number;
  /** Of the least sure course; null when none lands whole. */
  readonly withinFive: number | null;
  readonly busiest: { readonly from: number; readonly handsMinutes: number } | null;
  readonly handsMinutes: number;
  readonly perCover: number;
  readonly purchaseTotal: number;
  readonly currency: string;
  readonly date: string;
};

const rowOf = (name: string, evening: Evening): Row => {
  const { risk, load } = weighPlan(evening);
  return {
    name,
    covers: evening.menu.sitting.covers,
    lateMinutes: evening.plan.courses.reduce((sum, course) => sum + course.lateMinutes, 0),
    unplaced: evening.plan.unplaced.length,
    withinFive:
      risk.courses.length === 0 || evening.plan.unplaced.length > 0
        ? null
        : Math.min(...risk.courses.map((course) => course.withinFive)),
    busiest: load.busiest,
    handsMinutes: load.handsMinutes,
    perCover: evening.cost.perCover,
    purchaseTotal: evening.purchase.total,
    currency: evening.cost.currency,
    date: evening.menu.sitting.date,
  };
};

const tableOf = (rows: readonly Row[]): string =>
  tableText(
    [
      ["", "covers", "late", "least sure", "busiest hour", "hands-on", "per cover", "purchase"],
      ...rows.map((row) => [
        row.name,
        String(row.covers),
        row.unplaced > 0
          ? `${countText(row.unplaced, "task", "tasks")} without a place`
          : row.lateMinutes > 0
            ? durationText(row.lateMinutes)
            : "on time",
        row.withinFive === null ? "–" : chanceText(row.withinFive),
        row.busiest === null
          ? "–"
          : `${momentText(row.date, row.busiest.from)}, ${durationText(row.busiest.handsMinutes)}`,
        durationText(row.handsMinutes),
        moneyText(row.perCover, row.currency),
        moneyText(row.purchaseTotal, row.currency),
      ]),
    ],
    ["left", "right", "left", "right", "left", "right", "right", "right"],
  );
