import { useEffect, useState } from "preact/hooks";
import type { Evening } from "#engine/index.ts";

/** What time the board shows, in minutes from midnight at the start of the sitting's date. */
export type BoardTime = {
  readonly now: number;
  /** True when the clock says that the sitting is today, or its work has begun and is not over. */
  readonly ownDay: boolean;
  /** True when it was set by hand. */
  readonly isSet: boolean;
  /** Sets it by hand; null goes by the clock. */
  readonly set: (now: number | null) => void;
};

/** Minutes on the clock since midnight of a date, as the sitting counts them. */
const clockOn = (date: string): number => {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
  const today = new Date();
  const days =
    (Date.UTC(today.getFullYear(), today.getMonth(), today.getDate()) - Date.UTC(year, month - 1, day)) /
    86_400_000;
  return days * 1440 + today.getHours() * 60 + today.getMinutes();
};

/** By the clock while the sitting's work goes on; on other days the hour before the first course, to try it out. */
export const useBoardTime = ({ prep, plan, menu }: Evening): BoardTime => {
  const [clock, setClock] = useState(() => clockOn(menu.sitting.date));
  const [set, setOwn] = useState<number | null>(null);
  useEffect(() => {
    const timer = setInterval(() => setClock(clockOn(menu.sitting.date)), 15_000);
    return () => clearInterval(timer);
  }, [menu.sitting.date]);
  const first = Math.min(...plan.placed.map((placed) => placed.start));
  const last = Math.max(...plan.placed.map((placed) => placed.end));
  const ownDay = clock >= first - 60 && clock <= last + 180;
  const fallback = Math.min(...prep.courses.map((goal) => goal.due as number), 1140) - 60;
  return { now: set ?? (ownDay ? clock : fallback), ownDay, isSet: set !== null, set: setOwn };
};
