import type { Prep } from "../model/prep.ts";
import { drawLengths, emptyNight, eveningsOf, runNight } from "../sequence/night.ts";
import { orderOf } from "./order.ts";
import type { Schedule } from "./schedule.ts";

/** Nights that schedules are compared by: few, and the same for all; others than those that the risk of a plan is told by. */
const nights = { count: 40, seed: 0x5eed };
/** Guests do not notice less, minutes; of it so much counts. Common practice, no source. */
const grace = 5;
const ofGrace = 0.1;

/** How late the courses of a schedule are on the mean, all taken together, over a few nights; minutes. */
export const latenessOf = (prep: Prep, schedule: Schedule): number => {
  const { network } = orderOf(prep, schedule);
  const { stages, span, ahead } = network;
  const evenings = eveningsOf(prep, network);
  const cooks = prep.crew.map((member) => member.name);
  const ends = schedule.model.goals.map((goal, g) => ({
    due: goal.due + (schedule.slip[g] ?? 0),
    plates: goal.plateTasks.flatMap((id) => span.get(id)?.last ?? []),
  }));
  const soonest = Float64Array.from(stages, ({ planned, place }, k) =>
    place === 0 ? planned - (ahead[k] ?? 0) : Number.NEGATIVE_INFINITY,
  );
  const night = emptyNight(stages.length);
  let sum = 0;
  for (let run = 0; run < nights.count; run += 1) {
    drawLengths(network, cooks, nights.seed, run, night.length);
    runNight(evenings, soonest, night);
    for (const { due, plates } of ends) {
      let late = 0;
      for (const k of plates)
        late = Math.max(late, (night.start[k] as number) + (night.length[k] as number) - due);
      sum += ofGrace * Math.min(late, grace) + Math.max(0, late - grace);
    }
  }
  return sum / nights.count;
};
