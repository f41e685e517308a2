import { chanceFrom } from "../search/chance.ts";
import type { Network } from "../sequence/network.ts";
import { drawLength, drawPace } from "./spread.ts";

/** One night: when each stage starts and how long it takes, and the stage whose end or start made it wait (-1: none). */
export type Night = {
  readonly start: Float64Array;
  readonly length: Float64Array;
  readonly heldBy: Int32Array;
};

/** Passes at most; waits that point backwards in the order of the plan ask for another, and few do. */
const mostPasses = 40;

/**
 * Runs one night. The policy: everybody keeps the plan's order; who is free begins the next task a little before its hour
 * (`Network.ahead`) when what it waits for is there; what runs late pushes what hangs on it. `sooner` starts all stages but those of plates so much earlier.
 * The same seed and run draw the same lengths.
 */
export const runNight = (
  network: Network,
  plates: ReadonlySet<string>,
  cooks: readonly string[],
  seed: number,
  run: number,
  sooner: number,
  night: Night,
): void => {
  const { stages, into, span, ahead } = network;
  const { start, length, heldBy } = night;
  const ofTonight = Math.imul(seed, 0x2545f491) + Math.imul(run + 1, 0x5bd1e995);
  const paces = chanceFrom(ofTonight);
  const pace = new Map(cooks.map((cook) => [cook, drawPace(paces)]));
  for (const [k, stage] of stages.entries()) {
    const { segment, cook } = stage;
    // Each stage has a stream of its own, so that plans can be compared draw by draw.
    const chance = chanceFrom(ofTonight ^ streamOf(stage.task.id, stage.place));
    length[k] = drawLength(segment, cook === null ? 1 : (pace.get(cook) ?? 1), chance);
  }
  for (const [k, { task, planned, place }] of stages.entries()) {
    // Only the first stage of a task has an hour of its own; the others follow on.
    start[k] =
      place === 0 ? planned - (ahead[k] ?? 0) - (plates.has(task.id) ? 0 : sooner) : Number.NEGATIVE_INFINITY;
    heldBy[k] = -1;
  }
  for (let pass = 0; pass < mostPasses; pass += 1) {
    let moved = false;
    for (const [k, stage] of stages.entries()) {
      for (const wait of into[k] ?? []) {
        let at = (start[wait.from] ?? 0) + (wait.ofEnd ? (length[wait.from] ?? 0) : 0) + wait.lag;
        if (wait.untilEnd) {
          const last = span.get(stage.task.id)?.last ?? k;
          for (let j = k; j <= last; j += 1) if (stages[j]?.task === stage.task) at -= length[j] ?? 0;
        }
        if (at > (start[k] ?? 0) + 1e-9) {
          start[k] = at;
          heldBy[k] = wait.from;
          moved = true;
        }
      }
    }
    if (!moved) return;
  }
};

/** A number for each segment of each task, the same in every plan (FNV-1a of its name). */
const streamOf = (task: string, place: number): number => {
  const name = `${task}#${place}`;
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i += 1) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return hash;
};
