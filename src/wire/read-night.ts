import { z } from "zod";
import { type Evening, moment, type Progress, type Task } from "#engine/index.ts";
import { checked } from "./checked.ts";
import { nearestName } from "./nearest-name.ts";
import { makeProblem, type Problem } from "./problem.ts";
import { momentFromText } from "./read-times.ts";
import { strictMap } from "./schema-parts.ts";
import { yamlFile } from "./yaml-file.ts";

// The messages are words of `Wanted`, which src/words phrases.
const minutesMap = z.record(
  z.string(),
  z.number("late-minutes").min(0, "late-minutes").max(1440, "late-minutes"),
  "map",
);
const nightSchema = strictMap({
  now: z.string("course-time"),
  late: minutesMap.optional(),
  "not begun": z.array(z.string("text"), "list").optional(),
  done: z.array(z.string("text"), "list").optional(),
});

/** How far a night is, or why that cannot be read. */
export type NightRead = { readonly progress: Progress | null; readonly problems: readonly Problem[] };

/**
 * Reads how far a night is. What the plan would have done by `now` is done, and what it would have running runs, except
 * what the file says: `late` gives the minutes that a running task goes on longer, `not begun` and `done` name tasks that
 * stand otherwise than planned. Tasks go by their id, or by the words of the list as `textOf` gives them.
 */
export const readNight = (
  name: string,
  text: string,
  { prep, plan, menu }: Pick<Evening, "prep" | "plan" | "menu">,
  textOf: (task: Task) => string,
): NightRead => {
  const file = yamlFile(name, text);
  const { value, problems } = checked(file, nightSchema);
  if (value === null) return { progress: null, problems };
  const now = momentFromText(value.now, menu.sitting.date);
  const wrong: Problem[] = [];
  if (now === null)
    wrong.push(
      makeProblem("value-bad", file.placeOf(["now"]), {
        key: "now",
        found: value.now,
        wanted: "course-time",
      }),
    );
  const texts = new Map(prep.tasks.map((task) => [task.id, textOf(task).toLowerCase()]));
  const find = (words: string, path: readonly (string | number)[]): string | null => {
    if (texts.has(words)) return words;
    const wanted = words.toLowerCase();
    const found = [...texts].filter(([, own]) => own.startsWith(wanted));
    if (found.length === 1) return found[0]?.[0] ?? null;
    const known = [...texts.keys(), ...texts.values()];
    wrong.push(
      makeProblem("key-unknown", file.placeOf(path), {
        key: words,
        near: nearestName(words, known),
        known: found.map(([id]) => id),
      }),
    );
    return null;
  };
  const late = new Map(
    Object.entries(value.late ?? {}).flatMap(([words, minutes]): [string, number][] => {
      const id = find(words, ["late", words]);
      return id === null ? [] : [[id, minutes]];
    }),
  );
  const done = new Set((value.done ?? []).flatMap((words, i) => find(words, ["done", i]) ?? []));
  const notBegun = new Set<string>();
  for (const [i, words] of (value["not begun"] ?? []).entries()) {
    const path = ["not begun", i];
    const id = find(words, path);
    if (id === null) continue;
    notBegun.add(id);
    if (done.has(id))
      wrong.push(
        makeProblem("value-bad", file.placeOf(path), {
          key: "not begun",
          found: words,
          wanted: "task-not-done",
        }),
      );
  }
  if (now === null || wrong.length > 0) return { progress: null, problems: wrong };
  return {
    progress: {
      now: moment(now),
      done: plan.placed
        .filter((p) => done.has(p.task) || (p.end + (late.get(p.task) ?? 0) <= now && !notBegun.has(p.task)))
        .map(({ task, start, end }) => ({ task, start, end: moment(Math.min(now, end)) })),
      running: plan.placed
        .filter(
          (p) =>
            p.start < now &&
            p.end + (late.get(p.task) ?? 0) > now &&
            !notBegun.has(p.task) &&
            !done.has(p.task),
        )
        .map(({ task, start, end }) => ({ task, start, ends: moment(end + (late.get(task) ?? 0)) })),
    },
    problems: [],
  };
};
