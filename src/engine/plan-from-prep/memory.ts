import { put, type Schedule, type Spot, setSlip, take } from "./schedule.ts";

/** A copy of where everything stands, to come back to. */
export type Memory = { readonly spots: readonly (Spot | null)[]; readonly slip: readonly number[] };

export const remember = (schedule: Schedule): Memory => ({
  spots: [...schedule.spots],
  slip: [...schedule.slip],
});

/** Puts everything back where the memory has it. */
export const restore = (schedule: Schedule, memory: Memory): void => {
  const { model, spots } = schedule;
  const moved: number[] = [];
  for (let node = 0; node < model.taskCount; node++) {
    if (spots[node] === memory.spots[node]) continue;
    moved.push(node);
    take(schedule, node);
  }
  memory.slip.forEach((slip, g) => {
    if (schedule.slip[g] !== slip) setSlip(schedule, g, slip);
  });
  for (const node of moved) {
    const spot = memory.spots[node];
    if (spot) put(schedule, node, spot);
  }
};
