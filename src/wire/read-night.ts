import { z } from "zod";
import {
  type Evening,
  type Moment,
  minutes,
  moment,
  type Progress,
  progressAt,
  type Task,
  type TaskId,
} from "#engine/index.ts";
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
const names = z.array(z.string("text"), "list").optional();
const atTimes = z.record(z.string(), z.string("course-time"), "map");
const nightSchema = strictMap({
  now: z.string("course-time"),
  late: minutesMap.optional(),
  "not begun": names,
  done: z.union([z.array(z.string("text"), "list"), atTimes], "list").optional(),
  skipped: names,
  "made anew": names,
  away: z.union([z.array(z.string("text"), "list"), atTimes], "list").optional(),
  lost: z
    .union(
      [
        z.array(z.string("text"), "list"),
        z.record(z.string(), z.number("how-many").positive("how-many"), "map"),
      ],
      "list",
    )
    .optional(),
  later: z
    .record(z.string(), z.number("later-minutes").min(-240, "later-minutes").max(240, "later-minutes"), "map")
    .optional(),
});

/** How far a night is, or why that cannot be read. */
export type NightRead = { readonly progress: Progress | null; readonly problems: readonly Problem[] };

/**
 * Reads how far a night is. What the plan would have done by `now` is done, and what it would have running runs, except
 * what the file says. Tasks go by their id, or by the words of the list as `textOf` gives them; cooks, courses and
 * equipment by their names.
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
  type Path = readonly (string | number)[];
  const wrong: Problem[] = [];
  const timeAt = (words: string, path: Path): Moment | null => {
    const at = momentFromText(words, menu.sitting.date);
    if (at !== null) return moment(at);
    const facts = { key: String(path.at(-1)), found: words, wanted: "course-time" } as const;
    wrong.push(makeProblem("value-bad", file.placeOf(path), facts));
    return null;
  };
  const now = timeAt(value.now, ["now"]);
  const texts = new Map(prep.tasks.map((task) => [task.id, textOf(task).toLowerCase()]));
  const unknown = (words: string, path: Path, near: readonly string[], known: readonly string[]): null => {
    const facts = { key: words, near: nearestName(words, near), known };
    wrong.push(makeProblem("key-unknown", file.placeOf(path), facts));
    return null;
  };
  const find = (words: string, path: Path): TaskId | null => {
    if (texts.has(words)) return words;
    const wanted = words.toLowerCase();
    const found = [...texts].filter(([, own]) => own.startsWith(wanted));
    if (found.length === 1) return found[0]?.[0] ?? null;
    return unknown(
      words,
      path,
      [...texts.keys(), ...texts.values()],
      found.map(([id]) => id),
    );
  };
  const named = <N extends string>(words: string, path: Path, known: readonly N[]): N | null =>
    known.find((own) => own.toLowerCase() === words.toLowerCase()) ?? unknown(words, path, known, known);
  const tasksIn = (key: "not begun" | "skipped" | "made anew"): readonly TaskId[] =>
    (value[key] ?? []).flatMap((words, i) => find(words, [key, i]) ?? []);
  /** A list of names, or names with a value each. */
  const entriesOf = <V>(
    key: "done" | "away" | "lost",
    given: readonly string[] | Readonly<Record<string, V>> | undefined,
  ): readonly { readonly words: string; readonly value: V | null; readonly path: Path }[] =>
    Array.isArray(given)
      ? given.map((words: string, i) => ({ words, value: null, path: [key, i] }))
      : Object.entries(given ?? {}).map(([words, own]) => ({ words, value: own as V, path: [key, words] }));
  const late = new Map(
    Object.entries(value.late ?? {}).flatMap(([words, minutes]): [TaskId, number][] => {
      const id = find(words, ["late", words]);
      return id === null ? [] : [[id, minutes]];
    }),
  );
  const done = new Map(
    entriesOf("done", value.done).flatMap(({ words, value: at, path }): [TaskId, Moment | null][] => {
      const id = find(words, path);
      return id === null ? [] : [[id, at === null ? null : timeAt(at, path)]];
    }),
  );
  const notBegun = new Set(tasksIn("not begun"));
  for (const [i, words] of (value["not begun"] ?? []).entries()) {
    const id = texts.has(words)
      ? words
      : [...texts].find(([, own]) => own.startsWith(words.toLowerCase()))?.[0];
    if (id === undefined || !done.has(id)) continue;
    const facts = { key: "not begun", found: words, wanted: "task-not-done" } as const;
    wrong.push(makeProblem("value-bad", file.placeOf(["not begun", i]), facts));
  }
  const away = entriesOf("away", value.away).flatMap(({ words, value: at, path }) => {
    const cook = named(
      words,
      path,
      prep.crew.map((c) => c.name),
    );
    const from = at === null ? now : timeAt(at, path);
    return cook === null || from === null ? [] : [{ cook, from }];
  });
  const kit = [...prep.ovens.map((oven) => oven.id), ...prep.resources.map((resource) => resource.id)];
  const lost = entriesOf("lost", value.lost).flatMap(({ words, value: amount, path }) => {
    const resource = named(words, path, kit);
    return resource === null ? [] : [{ resource, amount: amount ?? 1 }];
  });
  const asked = Object.entries(value.later ?? {}).flatMap(([words, by]) => {
    const course = named(
      words,
      ["later", words],
      prep.courses.map((goal) => goal.name),
    );
    const goal = prep.courses.find((own) => own.name === course);
    return goal === undefined ? [] : [{ course: goal.course, minutes: minutes(by) }];
  });
  const skipped = tasksIn("skipped");
  const anew = tasksIn("made anew");
  if (now === null || wrong.length > 0) return { progress: null, problems: wrong };
  const told = { now, late, notBegun, done, skipped, anew, away, lost, asked };
  return { progress: progressAt(prep, plan, told), problems: [] };
};
