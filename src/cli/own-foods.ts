import type { Food } from "#engine/index.ts";
import { readFoods } from "#wire/read-foods.ts";
import { troubleText } from "./load-sitting.ts";
import type { Paint } from "./show/paint.ts";
import { type Remark, remarkOfProblem, showRemarks } from "./show/remarks.ts";
import type { World } from "./world.ts";

/** The option that names the list, alike in every command that reads cards. */
export const foodsOption = {
  type: "string",
  value: "FILE",
  help: "a list of foods of your own (see docs/formats.md)",
} as const;

/** A list of the cook's own foods as it was found; no foods when it cannot be used. */
export type ListedFoods = {
  readonly foods: readonly Food[] | null;
  readonly text: string;
  readonly remarks: readonly Remark[];
  readonly trouble: string;
};

/** Reads the list that an option names; an empty list when none does. */
export const foodsFrom = (path: string | null, world: World): ListedFoods => {
  if (path === null) return { foods: [], text: "", remarks: [], trouble: "" };
  const found = world.read(path);
  if (typeof found === "string")
    return { foods: null, text: "", remarks: [], trouble: `tamis: ${troubleText(path, found)}\n` };
  const { foods, problems } = readFoods(path, found.text);
  const stopped = problems.some((p) => p.severity === "stop");
  return {
    foods: stopped ? null : foods,
    text: found.text,
    remarks: problems.map(remarkOfProblem),
    trouble: "",
  };
};

/** What there is to say about the list. */
export const showListed = (listed: ListedFoods, notes: boolean, paint: Paint): string =>
  listed.trouble + showRemarks(listed.remarks, () => listed.text, notes, paint);
