import highsLoader from "highs";
import type { GoalLevel, Prep, Segment, Task } from "#engine/index.ts";

/**
 * The planner's problem as an integer programme, one 0-1 unknown for each task, cook, oven and start
 * (the time-indexed form of Pritsker, Watters, Wolfe 1969), solved level by level by HiGHS. It knows nothing of the planner:
 * it is written from the meaning of a prep alone, for small problems with a span, ovens that are cold once, and quiet hours.
 * Null when nothing satisfies it.
 */
export const optimumByProgramme = async (prep: Prep): Promise<readonly number[] | null> => {
  const highs = await loaded;
  const { unknowns, rows, sums } = programmeOf(prep);
  const fixed: string[] = [];
  const values: number[] = [];
  for (const level of prep.levels ?? []) {
    const sum = sums[level];
    const text = [
      "Minimize",
      ` obj: ${linear(sum.terms) || `0 ${unknowns[0]}`}`,
      "Subject To",
      ...[...rows, ...fixed].map((row, i) => ` r${i}: ${row}`),
      "Binary",
      ` ${unknowns.join(" ")}`,
      "End",
    ].join("\n");
    const found = highs.solve(text, { mip_rel_gap: 0, mip_abs_gap: 0.5, output_flag: false });
    if (found.Status === "Infeasible") return null;
    if (found.Status !== "Optimal") throw new Error(`the programme ended as ${found.Status}`);
    const value = Math.round(found.ObjectiveValue);
    values.push(value + sum.constant);
    if (sum.terms.length > 0) fixed.push(`${linear(sum.terms)} <= ${value}`);
  }
  return values;
};

const loaded = highsLoader();

type Term = readonly [number, string];
type Sum = { readonly terms: readonly Term[]; readonly constant: number };

const linear = (terms: readonly Term[]): string => {
  const together = new Map<string, number>();
  for (const [by, name] of terms) together.set(name, (together.get(name) ?? 0) + by);
  return [...together]
    .filter(([, by]) => by !== 0)
    .map(([name, by]) => `${by < 0 ? "-" : "+"} ${Math.abs(by)} ${name}`)
    .join(" ");
};

type Choice = {
  readonly name: string;
  readonly task: Task;
  readonly cook: number;
  readonly oven: number;
  readonly start: number;
};

const units = (prep: Prep, segment: Segment): number =>
  segment.attention === "hands"
    ? prep.attention.hands
    : segment.attention === "mind"
      ? prep.attention.mind
      : 0;

const lengthOf = (task: Task): number => task.segments.reduce((sum, s) => sum + s.minutes.likely, 0);

/** Each segment with its place in the task. */
const laid = (task: Task) => {
  let at = 0;
  return task.segments.map((segment) => {
    const from = at;
    at += segment.minutes.likely;
    return { segment, from, to: at };
  });
};

const programmeOf = (prep: Prep) => {
  const span = prep.span ?? { from: 0, to: 0 };
  const choices = prep.tasks.map((task, t) => choicesOf(prep, task, t));
  const all = choices.flat();
  const byTask = new Map(prep.tasks.map((task, t) => [task.id, choices[t] ?? []]));
  const start = (id: string): Term[] => (byTask.get(id) ?? []).map((c) => [c.start, c.name]);
  const minus = (terms: readonly Term[]): Term[] => terms.map(([by, name]) => [-by, name]);
  const length = new Map(prep.tasks.map((task) => [task.id, lengthOf(task)]));
  const rows: string[] = [];
  const names = all.map((c) => c.name);
  const never = "nothing";
  const unknowns = [...names, never];
  rows.push(`+ 1 ${never} <= 0`);
  for (const own of choices) rows.push(`${linear(own.map((c): Term => [1, c.name])) || `+ 1 ${never}`} = 1`);

  const limit = (taken: (c: Choice, from: number, segment: Segment) => number, most: number): void => {
    for (let minute = span.from; minute < span.to; minute++) {
      const terms = all.flatMap((c): Term[] => {
        const part = laid(c.task).find((l) => c.start + l.from <= minute && minute < c.start + l.to);
        const amount = part ? taken(c, part.from, part.segment) : 0;
        return amount > 0 ? [[amount, c.name]] : [];
      });
      if (terms.length > 0) rows.push(`${linear(terms)} <= ${most}`);
    }
  };
  prep.crew.forEach((_, cook) => {
    limit((c, _from, segment) => (c.cook === cook ? units(prep, segment) : 0), prep.attention.capacity);
  });
  for (const resource of prep.resources) {
    limit(
      (_c, _from, segment) =>
        segment.uses.filter((u) => u.resource === resource.id).reduce((sum, u) => sum + u.amount, 0),
      resource.capacity,
    );
  }
  prep.ovens.forEach((oven, o) => {
    limit(
      (c, _from, segment) =>
        c.oven === o
          ? segment.uses.filter((u) => u.resource === "oven").reduce((sum, u) => sum + u.amount, 0)
          : 0,
      oven.shelves,
    );
  });
  rows.push(...ovenRows(prep, choices));
  for (const lag of prep.lags) {
    const shift =
      (lag.afterEdge === "end" ? (length.get(lag.after) ?? 0) : 0) -
      (lag.beforeEdge === "end" ? (length.get(lag.before) ?? 0) : 0);
    const gap = linear([...start(lag.after), ...minus(start(lag.before))]);
    if (gap === "") continue;
    rows.push(`${gap} >= ${lag.least - shift}`);
    if (lag.most !== null) rows.push(`${gap} <= ${lag.most - shift}`);
  }
  const attended = new Set(
    prep.tasks.filter((t) => t.segments.some((s) => s.attention !== "none")).map((t) => t.id),
  );
  for (const tied of prep.sameCook ?? []) {
    const group = tied.filter((id) => attended.has(id));
    for (const other of group.slice(1)) {
      prep.crew.forEach((_, cook) => {
        const of = (id: string, by: number): Term[] =>
          (byTask.get(id) ?? []).filter((c) => c.cook === cook).map((c) => [by, c.name]);
        const row = linear([...of(group[0] ?? "", 1), ...of(other, -1)]);
        if (row !== "") rows.push(`${row} = 0`);
      });
    }
  }
  const late: Term[] = [];
  let due = 0;
  for (const goal of prep.courses) {
    const plate = goal.plateTasks[0] ?? "";
    due += goal.due - (length.get(plate) ?? 0);
    late.push(...start(plate));
    rows.push(`${linear(start(plate)) || `+ 1 ${never}`} >= ${goal.due - (length.get(plate) ?? 0)}`);
  }
  const waits = (hot: boolean): Sum => {
    const own = prep.holds.filter((h) => h.hot === hot);
    return {
      terms: own.flatMap((h) => [
        ...start(h.plate).map(([by, name]): Term => [by * h.weight, name]),
        ...start(h.task).map(([by, name]): Term => [-by * h.weight, name]),
      ]),
      constant: -own.reduce((sum, h) => sum + h.weight * (length.get(h.task) ?? 0), 0),
    };
  };
  const wrong = (prep.freeFrom ?? []).map((pair, i): Term => {
    const name = `wrong${i}`;
    unknowns.push(name);
    const gap = linear([...start(pair.after), ...minus(start(pair.before)), [10_000, name]]);
    rows.push(`${gap} >= ${length.get(pair.before) ?? 0}`);
    return [1, name];
  });
  const sums: { readonly [L in GoalLevel]: Sum } = {
    late: { terms: late, constant: -due },
    hold: waits(true),
    freshness: waits(false),
    "free-from": { terms: wrong, constant: 0 },
    calm: { terms: all.flatMap((c) => calmOf(prep, c)), constant: 0 },
    service: { terms: [], constant: 0 },
  };
  return { unknowns, rows, sums };
};

/** Every cook, oven and start that shifts and the span leave a task. */
const choicesOf = (prep: Prep, task: Task, t: number): readonly Choice[] => {
  const span = prep.span ?? { from: 0, to: 0 };
  const attended = task.segments.some((s) => s.attention !== "none");
  const bakes = task.segments.some((s) => s.uses.some((u) => u.resource === "oven"));
  const found: Choice[] = [];
  const manned = (minute: number): boolean =>
    prep.crew.some((cook) => cook.shifts.some((s) => s.from <= minute && minute < s.to));
  for (const cook of attended ? prep.crew.keys() : [-1]) {
    const member = prep.crew[cook];
    if (member && task.cooks && !task.cooks.includes(member.name)) continue;
    for (const oven of bakes ? prep.ovens.keys() : [-1]) {
      for (let start = span.from as number; start + lengthOf(task) <= span.to; start++) {
        const fits = laid(task).every(({ segment, from, to }) => {
          const inShift = member?.shifts.some((s) => s.from <= start + from && start + to <= s.to) ?? true;
          if (segment.attention !== "none" && !inShift) return false;
          if (segment.manned) {
            for (let minute = start + from; minute < start + to; minute++) if (!manned(minute)) return false;
          }
          const hot = segment.uses.find((u) => u.resource === "oven");
          const cold = prep.ovens[oven]?.cold ?? 20;
          return !hot || start + from - span.from >= change(prep, cold, hot.celsius ?? 0);
        });
        if (fits) found.push({ name: `x${t}c${cook + 1}o${oven + 1}s${start}`, task, cook, oven, start });
      }
    }
  }
  return found;
};

/** Minutes an oven needs from one heat to another. */
const change = (prep: Prep, from: number, to: number): number =>
  Math.ceil((Math.abs(to - from) / 10) * (to > from ? (prep.ramp?.heat ?? 1) : (prep.ramp?.cool ?? 1)));

/** Two uses of one oven at different heats never stand nearer than the oven can change. */
const ovenRows = (prep: Prep, choices: readonly (readonly Choice[])[]): readonly string[] => {
  const bakes = (c: Choice) =>
    laid(c.task).flatMap(({ segment, from, to }) =>
      segment.uses
        .filter((u) => u.resource === "oven")
        .map((u) => ({ from: c.start + from, to: c.start + to, heat: u.celsius ?? 0 })),
    );
  const clash = (a: Choice, b: Choice): boolean =>
    bakes(a).some((x) =>
      bakes(b).some(
        (y) =>
          x.heat !== y.heat &&
          x.to + change(prep, x.heat, y.heat) > y.from &&
          y.to + change(prep, y.heat, x.heat) > x.from,
      ),
    );
  return choices.flatMap((own, i) =>
    choices.slice(i + 1).flatMap((others) =>
      own.flatMap((c) => {
        const against = others.filter((o) => o.oven >= 0 && o.oven === c.oven && clash(c, o));
        return against.length === 0
          ? []
          : [`${linear([[1, c.name], ...against.map((o): Term => [1, o.name])])} <= 1`];
      }),
    ),
  );
};

const calmOf = (prep: Prep, c: Choice): Term[] => {
  if (c.task.finishing) return [];
  let minutes = 0;
  for (const { segment, from, to } of laid(c.task)) {
    if (segment.attention !== "hands") continue;
    for (const hour of prep.calm ?? [])
      minutes += Math.max(0, Math.min(c.start + to, hour.to) - Math.max(c.start + from, hour.from));
  }
  return minutes > 0 ? [[minutes, c.name]] : [];
};
