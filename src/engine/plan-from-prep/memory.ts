import { nowhere, put, type Schedule, setSlip, take } from "./schedule.ts";

/** A copy of where everything stands, to come back to. */
export type Memory = {
  readonly start: Int32Array;
  readonly cook: Int16Array;
  readonly oven: Int16Array;
  readonly slip: Int32Array;
};

export const remember = (schedule: Schedule): Memory => ({
  start: schedule.start.slice(),
  cook: schedule.cook.slice(),
  oven: schedule.oven.slice(),
  slip: schedule.slip.slice(),
});

/** Brings a memory up to date. */
export const rememberIn = (schedule: Schedule, memory: Memory): void => {
  memory.start.set(schedule.start);
  memory.cook.set(schedule.cook);
  memory.oven.set(schedule.oven);
  memory.slip.set(schedule.slip);
};

/** Puts everything back where the memory has it. Windows must be opened anew before anything is placed by them. */
export const restore = (schedule: Schedule, memory: Memory): void => {
  const { model, start, cook, oven } = schedule;
  const moved: number[] = [];
  for (let n = 0; n < model.taskCount; n++) {
    if (start[n] === memory.start[n] && cook[n] === memory.cook[n] && oven[n] === memory.oven[n]) continue;
    moved.push(n);
    take(schedule, n);
  }
  for (let g = 0; g < schedule.slip.length; g++) {
    if (schedule.slip[g] !== memory.slip[g]) setSlip(schedule, g, memory.slip[g] as number);
  }
  for (const n of moved) {
    const at = memory.start[n] as number;
    if (at !== nowhere) put(schedule, n, at, memory.cook[n] as number, memory.oven[n] as number);
  }
};
