import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Evening } from "#engine/index.ts";
import { clockText, dayText } from "#words/clock.ts";
import { countText } from "#words/number-text.ts";
import { ScreenHead } from "../parts/screen-head.tsx";
import { LandingTable } from "../plan/landing-table.tsx";
import { namesOf } from "../plan/names.ts";
import { nightLine } from "../state/engine-client.ts";
import type { NightAnswer } from "../state/engine-talk.ts";
import { type Night, nightStore, plainNight, planOfNight, progressOf, taking } from "../state/night.ts";
import { useStore } from "../state/store.ts";
import { type BoardRow, boardRows } from "./board-rows.ts";
import { BoardTask } from "./board-task.tsx";
import { NewPlan } from "./new-plan.tsx";
import { useBoardTime } from "./use-board-time.ts";

const nextShown = 8;

/** The night as it goes: what runs, what is next, marks on both, and the rest planned anew. */
export const BoardScreen = ({ evening, book }: { evening: Evening; book: string }) => {
  const store = nightStore(book);
  const night = useStore(store);
  const [said, setSaid] = useState("");
  const [answer, setAnswer] = useState<NightAnswer | null>(null);
  const [working, setWorking] = useState(false);
  const plan = useMemo(() => planOfNight(evening, night), [evening, night]);
  const names = useMemo(() => namesOf({ ...evening, plan }), [evening, plan]);
  const time = useBoardTime(evening);
  const { now } = time;
  const progress = useMemo(() => progressOf(evening, night, now), [evening, night, now]);
  const rows = useMemo(() => boardRows(plan, progress), [plan, progress]);
  const button = useRef<HTMLButtonElement>(null);
  const forget = (): void => {
    nightLine.stop();
    setWorking(false);
    setAnswer(null);
  };
  // A plan of other words, or for another moment, is not the one that was asked for.
  useEffect(forget, [evening, night]);
  useEffect(() => () => nightLine.stop(), []);
  // Taken or left, whoever was at the new plan is led back to where it was asked for.
  const shown = useRef(false);
  useEffect(() => {
    if (shown.current && answer === null) button.current?.focus();
    shown.current = answer !== null;
  }, [answer]);
  const mark = (change: (was: Night) => Night, says: string): void => {
    store.update(change);
    setSaid(says);
  };
  const ask = (): void => {
    setWorking(true);
    setAnswer(null);
    nightLine.ask(
      { ask: "night", prep: evening.prep, plan, progress },
      (found) => {
        setWorking(false);
        setAnswer(found);
        setSaid("");
      },
      (why) => {
        setWorking(false);
        setSaid(`It could not be worked out (${why}).`);
      },
    );
  };
  const take = (found: NightAnswer): void => {
    mark(
      (was) => taking(evening, was, found.progress, found.replanned.plan),
      "The new plan is on the board.",
    );
    button.current?.focus();
  };
  const of = (...standings: readonly BoardRow["standing"][]): readonly BoardRow[] =>
    rows.filter((row) => standings.includes(row.standing));
  const ahead = of("next", "later");
  const marks =
    Object.keys(night.late).length +
    Object.keys(night.done).length +
    night.notBegun.length +
    night.skipped.length;
  const part = (title: string, own: readonly BoardRow[], none: string) => (
    <section aria-label={title}>
      <h2>{title}</h2>
      {own.length === 0 ? (
        <p class="soft">{none}</p>
      ) : (
        <ul class="plain board-list">
          {own.map((row) => (
            <BoardTask key={row.placed.task} row={row} night={night} now={now} names={names} mark={mark} />
          ))}
        </ul>
      )}
    </section>
  );
  return (
    <div class="screen board">
      <ScreenHead
        title="Board"
        lead={`${dayText(names.date, now)}, ${clockText(now)}.${night.taken === null ? "" : " By the plan that was taken."}`}
      />
      <form class="board-time" onSubmit={(e) => e.preventDefault()}>
        <label class="field">
          <span>It is now</span>
          <input
            type="time"
            value={clockText(now)}
            onChange={(e) => {
              const [h = 0, m = 0] = e.currentTarget.value.split(":").map(Number);
              if (e.currentTarget.value !== "") time.set(Math.floor(now / 1440) * 1440 + h * 60 + m);
            }}
          />
        </label>
        {time.ownDay && time.isSet && (
          <button type="button" onClick={() => time.set(null)}>
            By the clock
          </button>
        )}
        <LandingTable plan={plan} names={names} />
      </form>
      {answer !== null && <NewPlan answer={answer} names={names} />}
      {part("Now", of("running", "over"), "Nothing is running.")}
      {part("Next", ahead.slice(0, nextShown), "Nothing is left to begin.")}
      {ahead.length > nextShown && (
        <details>
          <summary>{countText(ahead.length - nextShown, "task", "tasks")} after that</summary>
          {part("Later", ahead.slice(nextShown), "")}
        </details>
      )}
      {of("done", "skipped").length > 0 && (
        <details>
          <summary>{countText(of("done", "skipped").length, "task", "tasks")} done or left out</summary>
          {part("Done", of("done", "skipped").toReversed(), "")}
        </details>
      )}
      {(marks > 0 || night.taken !== null) && (
        <p>
          <button
            type="button"
            onClick={() => mark(() => plainNight, "The board is as the sitting was planned.")}
          >
            Clear the board
          </button>
        </p>
      )}
      <div class="board-bar no-print">
        <p role="status">{working ? "Planning the rest anew…" : said}</p>
        <div class="board-marks">
          {answer === null ? (
            <button type="button" class="strong" ref={button} disabled={working} onClick={ask}>
              Plan the rest anew
            </button>
          ) : (
            <>
              <button type="button" class="strong" onClick={() => take(answer)}>
                Take this plan
              </button>
              <button type="button" onClick={forget}>
                Keep the plan as it was
              </button>
            </>
          )}
        </div>
      </div>
    </div>
  );
};
