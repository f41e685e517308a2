import { firstEffort } from "#engine/index.ts";
import { printJson } from "#wire/print-json.ts";
import { type VariantRow, variantRow } from "#wire/variant-row.ts";
import { filesWith, readVariants, type Variant } from "#wire/variants.ts";
import { compareCells, compareHeadings } from "#words/compare-text.ts";
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
    const rows: VariantRow[] = [];
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
        rows.push(variantRow(variant.name, loaded.evening));
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

const tableOf = (rows: readonly VariantRow[]): string =>
  tableText(
    [["", ...compareHeadings], ...rows.map((row) => [row.name, ...compareCells(row)])],
    ["left", "right", "left", "right", "left", "right", "right", "right"],
  );
