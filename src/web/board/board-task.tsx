import { clockText } from "#words/clock.ts";
import { durationText } from "#words/quantity-text.ts";
import type { PlanNames } from "../plan/names.ts";
import type { Night } from "../state/night.ts";
import type { BoardRow } from "./board-rows.ts";

/** Minutes that one touch of "Late" adds. */
const step = 5;

type Props = {
  readonly row: BoardRow;
  readonly night: Night;
  readonly now: number;
  readonly names: PlanNames;
  readonly mark: (change: (night: Night) => Night, says: string) => void;
};

const withoutKey = <V,>(record: Readonly<Record<string, V>>, key: string): Readonly<Record<string, V>> =>
  Object.fromEntries(Object.entries(record).filter(([own]) => own !== key));

/** One task on the board: what, who, when, and the marks that can be set on it. */
export const BoardTask = ({ row, night, now, names, mark }: Props) => {
  const { placed, standing, start, end } = row;
  const id = placed.task;
  const text = names.task(id);
  const late = night.late[id] ?? 0;
  const marked = night.done[id] !== undefined;
  const due = standing === "next" && start < now;
  const finished = standing === "done" || standing === "skipped";
  const setLate = (minutes: number): void =>
    mark(
      (was) => ({ ...was, late: minutes <= 0 ? withoutKey(was.late, id) : { ...was.late, [id]: minutes } }),
      minutes <= 0 ? `${text}: as planned` : `${text}: ${durationText(minutes)} late`,
    );
  return (
    <li class={`board-task stands-${standing}`}>
      <p class="board-when">
        <b>{clockText(start)}</b>–{clockText(end)}
        <span class="soft">{placed.cook ?? "goes by itself"}</span>
      </p>
      <p class="board-what" id={`board-${id}`}>
        {text}
        {late > 0 && <strong class="late"> {durationText(late)} late</strong>}
        {due && <strong class="late"> not begun</strong>}
        {standing === "skipped" && <strong> left out</strong>}
      </p>
      <fieldset class="board-marks" aria-labelledby={`board-${id}`}>
        {!finished && (
          <>
            <button
              type="button"
              onClick={() =>
                mark(
                  (was) => ({ ...was, done: { ...was.done, [id]: now }, late: withoutKey(was.late, id) }),
                  `${text}: done`,
                )
              }
            >
              Done
            </button>
            <button type="button" onClick={() => setLate(late + step)}>
              +{step} min late
            </button>
            {late > 0 && (
              <button type="button" onClick={() => setLate(late - step)}>
                −{step} min
              </button>
            )}
            {standing !== "running" && standing !== "over" ? (
              <button
                type="button"
                onClick={() =>
                  mark((was) => ({ ...was, skipped: [...was.skipped, id] }), `${text}: left out`)
                }
              >
                Leave out
              </button>
            ) : (
              <button
                type="button"
                onClick={() =>
                  mark((was) => ({ ...was, notBegun: [...was.notBegun, id] }), `${text}: not begun`)
                }
              >
                Not begun
              </button>
            )}
          </>
        )}
        {(marked || standing === "skipped" || night.notBegun.includes(id)) && (
          <button
            type="button"
            onClick={() =>
              mark(
                (was) => ({
                  ...was,
                  done: withoutKey(was.done, id),
                  skipped: was.skipped.filter((own) => own !== id),
                  notBegun: was.notBegun.filter((own) => own !== id),
                }),
                `${text}: mark taken back`,
              )
            }
          >
            Take back
          </button>
        )}
      </fieldset>
    </li>
  );
};
