import { addEstimates, type Estimate } from "../measure/estimate.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { Segment, Task } from "../model/prep.ts";
import type { Kitchen } from "../model/sitting.ts";
import { soils, thenCleaned } from "./clean-down.ts";
import type { DraftLag } from "./draft-lag.ts";
import { leastTask, mostTask } from "./kitchen-rates.ts";
import { estimateOf, type Mise, miseOf } from "./mise.ts";
import type { Cut } from "./share-mise.ts";
import { asWritten, type Work } from "./work.ts";

/** Cutting and cleaning of a dish as tasks: long jobs alone, short ones together. */
export const miseTasks = (
  work: Work,
  kitchen: Kitchen,
  takers: ReadonlyMap<number, readonly string[]>,
  otherwise: string | null,
  id: (name: string) => string,
): { readonly tasks: readonly Task[]; readonly lags: readonly DraftLag[]; readonly cuts: readonly Cut[] } => {
  const all = miseOf(work, kitchen);
  const groups = groupMise(all);
  const tasks: Task[] = [];
  const lags: DraftLag[] = [];
  const cuts: Cut[] = [];
  groups.forEach((group, g) => {
    const own = id(`mise.${g + 1}`);
    const main = group.reduce((a, b) => (b.minutes.likely > a.minutes.likely ? b : a));
    const soiled = soils(group.map((m) => m.ingredient.food));
    const length = group.map((m) => estimateOf(m.minutes)).reduce(addEstimates);
    tasks.push({
      id: own,
      kind: "mise",
      dish: work.dish.source,
      version: main.version ?? asWritten,
      course: work.course,
      verb: [...new Set(main.verbs)].slice(0, 2).join(", "),
      objects: [...new Set(group.map((m) => m.ingredient.name))],
      amount: { value: Math.round(group.reduce((sum, m) => sum + m.grams, 0)), unit: "g" },
      segments: soiled ? thenCleaned([byHand(length)]) : [byHand(length)],
      ...(soiled ? { thenClean: true } : {}),
      finishing: false,
      span: main.ingredient.span,
    });
    const [only] = group;
    if (group.length === 1 && only !== undefined && !soiled && only.ingredient.food !== null)
      cuts.push({
        task: own,
        food: only.ingredient.food,
        verbs: only.verbs.join(" "),
        setUp: only.setUp,
      });
    const after = new Set(group.flatMap((m) => takers.get(m.ingredient.index) ?? []));
    if (after.size === 0 && otherwise !== null) after.add(otherwise);
    const most = Math.min(...group.map((m) => m.most));
    for (const taker of after) {
      lags.push({
        before: own,
        beforeEdge: "end",
        after: taker,
        afterEdge: "start",
        least: minutes(0),
        most: minutes(most),
        reason: "fridge-limit",
        soft: true,
      });
    }
  });
  return { tasks, lags, cuts };
};

const byHand = (length: Estimate<Minutes>): Segment => ({
  minutes: length,
  attention: "hands",
  station: "hands",
  uses: [],
});

/** Jobs of a quarter of an hour and more stand alone; the rest fill tasks up to a length that a cook takes on in one go. */
const groupMise = (all: readonly Mise[]): readonly (readonly Mise[])[] => {
  const long = leastTask * 4;
  const groups: Mise[][] = all.filter((m) => m.minutes.likely >= long).map((m) => [m]);
  // Fruit browns, so it is not cut with what can be cut the day before; what comes for a need is cut on its own.
  // Raw meat and fish are not cut in one go with what is eaten raw.
  const kindOf = (m: Mise): string => `${m.version ?? ""}|${m.most < 24 * 60}|${soils([m.ingredient.food])}`;
  for (const kind of new Set(all.map(kindOf))) {
    let group: Mise[] = [];
    let sum = 0;
    for (const m of all) {
      if (m.minutes.likely >= long || kindOf(m) !== kind) continue;
      if (sum + m.minutes.likely > mostTask) {
        groups.push(group);
        group = [];
        sum = 0;
      }
      group.push(m);
      sum += m.minutes.likely;
    }
    if (group.length > 0) groups.push(group);
  }
  return groups;
};
