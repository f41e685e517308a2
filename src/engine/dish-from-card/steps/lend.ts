import { minutes } from "../../measure/units.ts";
import type { Action } from "../../model/dish.ts";
import type { Clause } from "./clauses.ts";

/** What goes on by itself for as long as no word has said yet. */
export const canLend = (action: Action | undefined): boolean =>
  action?.minutes?.assumed === true && action.attention !== "hands";

/** A sentence without a verb ("About 20 minutes, at 180 °C.") speaks of the action before it. */
export const lendTime = (clause: Clause, actions: Action[]): void => {
  const last = actions.at(-1);
  // "If you leave it for longer than ten minutes, it sinks" says nothing of how long to serve it.
  if (
    last === undefined ||
    /^(serve|plate)$/.test(last.technique ?? "") ||
    /^(if|best|better|good|keeps?|eat)$/.test(clause.tokens[0]?.text ?? "")
  )
    return;
  // "Forty minutes later it should be brown": so long it went on.
  const length = clause.times.find((t) => t.kind === "length" || (t.kind === "wait" && !t.long));
  const open = last.minutes === null || last.minutes.assumed;
  actions[actions.length - 1] = {
    ...last,
    minutes:
      length !== undefined && open
        ? { ...length.minutes, low: minutes(length.minutes.low), assumed: false }
        : last.minutes,
    cue: last.cue ?? clause.cue,
  };
  lendHeat(clause, actions);
};

const onHeat = /^(oven|burner|grill|fryer|machine)$/;

/** "Lamb is ready at 60", "don't let the oil go over 190": how hot what was cooked before may or must become. */
export const lendHeat = (clause: Clause, actions: Action[]): boolean => {
  const setting = clause.settings[0]?.celsius ?? null;
  if (setting === null && clause.core === null) return false;
  const cooked = actions.findLastIndex((a) => onHeat.test(a.station) && a.technique !== "preheat");
  const at =
    cooked < 0 || (clause.core === null && setting !== null && setting < 50) ? actions.length - 1 : cooked;
  const action = actions[at];
  if (action === undefined) return false;
  actions[at] = {
    ...action,
    celsius: clause.core === null ? (action.celsius ?? setting) : action.celsius,
    core: action.core ?? clause.core,
  };
  return true;
};
