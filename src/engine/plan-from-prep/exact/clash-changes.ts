import { celsius, count, minutes, moment } from "../../measure/units.ts";
import type { Easing } from "../../model/clash.ts";
import type { CrewMember, Prep } from "../../model/prep.ts";
import type { Shift } from "../../model/sitting.ts";

/** The name of hands that are not there yet. */
export const otherHands = "another cook";
/** The name of an oven that is not there yet. */
export const otherOven = "another oven";

/** The prep with one thing done differently. */
export const withChange = (prep: Prep, change: Easing): Prep => {
  switch (change.kind) {
    case "lag":
      return {
        ...prep,
        lags: prep.lags.map((lag, l) => (l === change.lag ? { ...lag, [change.side]: change.minutes } : lag)),
      };
    case "resource": {
      // One more of a size is one more of each smaller size that it may stand in for.
      const also = prep.resources.find((r) => r.id === change.resource)?.alsoIn ?? [];
      return {
        ...prep,
        resources: prep.resources.map((r) =>
          r.id === change.resource || also.includes(r.id) ? { ...r, capacity: r.capacity + change.more } : r,
        ),
      };
    }
    case "oven":
      return { ...prep, ovens: [...prep.ovens, { id: otherOven, shelves: change.shelves, ...coldOf(prep) }] };
    case "hands": {
      const hours = [{ from: change.from, to: change.to }];
      // Whoever comes to help knows how to do what the others know.
      const tasks = prep.tasks.map((t) => (t.cooks ? { ...t, cooks: [...t.cooks, otherHands] } : t));
      return { ...prep, tasks, crew: [...prep.crew, { name: otherHands, shifts: hours }] };
    }
    case "shift":
      return withShifts(prep, change.cook, (shifts) =>
        shifts.map((s, i) => (i === change.shift ? { ...s, [change.end]: change.at } : s)),
      );
    case "day-before":
      return withShifts(prep, change.cook, (shifts) => [{ from: change.from, to: change.to }, ...shifts]);
    case "course":
      return {
        ...prep,
        courses: prep.courses.map((goal) =>
          goal.course === change.course ? { ...goal, due: moment(goal.due + change.minutes) } : goal,
        ),
      };
  }
};

const coldOf = (prep: Prep) => {
  const cold = prep.ovens[0]?.cold;
  return cold === undefined ? {} : { cold: celsius(cold) };
};

const withShifts = (
  prep: Prep,
  cook: string,
  change: (shifts: readonly Shift[]) => readonly Shift[],
): Prep => ({
  ...prep,
  crew: prep.crew.map(
    (member): CrewMember => (member.name === cook ? { ...member, shifts: change(member.shifts) } : member),
  ),
});

/** A change that comes in sizes, whole numbers from 1 to `most`; more of it never does less. */
export type Sized = { readonly most: number; readonly at: (size: number) => Easing };

/** A lag's side, let out or taken in by so many minutes. */
export const lagChange = (prep: Prep, lag: number, side: "least" | "most", most: number): Sized | null => {
  const given = prep.lags[lag];
  const was = given?.[side] ?? null;
  if (!given || was === null) return null;
  const whole = side === "most" ? Math.floor(was) : Math.ceil(was);
  return {
    most,
    at: (size) => ({
      kind: "lag",
      lag,
      side,
      before: given.before,
      after: given.after,
      was: minutes(whole),
      minutes: minutes(side === "most" ? whole + size : whole - size),
    }),
  };
};

/** So many more of something that there are some of. */
export const resourceChange = (resource: string, step: number): Sized => ({
  most: 4,
  at: (size) => ({ kind: "resource", resource, more: size * step }),
});

/** One more oven like the largest there is. */
export const ovenChangeOf = (prep: Prep): Sized => {
  const shelves = Math.max(1, ...prep.ovens.map((oven) => oven.shelves));
  return { most: 1, at: () => ({ kind: "oven", shelves: count(shelves) }) };
};

/** Longest that a shift is stretched by at one end, minutes. */
const mostStretch = 240;
/** Hours offered on the day before a cook begins: so many minutes at most, until six in the evening. */
const mostBefore = 8 * 60;
const dayBeforeEnds = 18 * 60;
const day = 24 * 60;

/** Each end of each shift of a cook, as far as the next shift lets it move, and the day before when they are free. */
export const shiftChanges = (prep: Prep, cook: string): readonly Sized[] => {
  const shifts = prep.crew.find((member) => member.name === cook)?.shifts ?? [];
  const stretched = shifts.flatMap((own, shift): Sized[] => {
    const before = Math.max(...shifts.filter((s) => s.to <= own.from).map((s) => s.to as number), -Infinity);
    const after = Math.min(...shifts.filter((s) => s.from >= own.to).map((s) => s.from as number), Infinity);
    const room = { from: own.from - before, to: after - own.to };
    return (["from", "to"] as const).flatMap((end): Sized[] => {
      const most = Math.floor(Math.min(mostStretch, room[end]));
      if (most < 1) return [];
      return [
        {
          most,
          at: (size) => ({
            kind: "shift",
            cook,
            shift,
            end,
            was: own[end],
            at: moment(end === "from" ? own.from - size : own.to + size),
          }),
        },
      ];
    });
  });
  const first = Math.min(...shifts.map((s) => s.from as number));
  if (!Number.isFinite(first)) return stretched;
  const ends = (Math.floor(first / day) - 1) * day + dayBeforeEnds;
  const before: Sized = {
    most: mostBefore,
    at: (size) => ({ kind: "day-before", cook, from: moment(ends - size), to: moment(ends) }),
  };
  return [...stretched, before];
};

/** A course due so many minutes later. */
export const courseChange = (course: number, most: number): Sized => ({
  most,
  at: (size) => ({ kind: "course", course, minutes: minutes(size) }),
});
