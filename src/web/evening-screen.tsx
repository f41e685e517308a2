import type { ComponentChildren } from "preact";
import type { Evening } from "#engine/index.ts";
import { BoardScreen } from "./board/board-screen.tsx";
import { screenNames } from "./parts/menu.tsx";
import { ScreenHead } from "./parts/screen-head.tsx";
import { PlanScreen } from "./plan/plan-screen.tsx";
import { BuyingScreen } from "./sheets/buying-screen.tsx";
import { CostScreen } from "./sheets/cost-screen.tsx";
import { GuestsScreen } from "./sheets/guests-screen.tsx";
import { SafetyScreen } from "./sheets/safety-screen.tsx";
import { SittingScreen } from "./sitting/sitting-screen.tsx";
import type { DeskDocument } from "./state/desk.ts";
import type { EveningView } from "./state/evening.ts";
import { hashOf, type Screen } from "./state/route.ts";

type Props = {
  readonly book: string;
  readonly screen: Exclude<Screen, "cards" | "sheet" | "write-up">;
  readonly path: string | null;
  readonly documents: readonly DeskDocument[];
  readonly evening: EveningView;
};

/** The screens that show what follows from the sitting and its cards. */
export const EveningScreen = ({ book, screen, path, documents, evening }: Props) => {
  if (screen === "sitting")
    return <SittingScreen book={book} path={path} documents={documents} evening={evening} />;
  if (!documents.some((d) => d.kind === "sitting"))
    return (
      <div class="screen narrow">
        <ScreenHead title={screenNames[screen]} lead="Not yet: this book has cards and no sitting." />
        <ToSitting book={book} />
      </div>
    );
  const value = evening.answer?.evening ?? null;
  if (value === null) return <Waiting book={book} title={screenNames[screen]} evening={evening} />;
  return (
    <>
      <p class="working" role="status">
        {evening.working ? "Working it out anew…" : ""}
      </p>
      {evening.failure !== null && <Failure why={evening.failure} before />}
      {screenOf(screen, value, evening, book, documents)}
    </>
  );
};

const screenOf = (
  screen: Exclude<Screen, "cards" | "sitting" | "sheet" | "write-up">,
  value: Evening,
  { answer }: EveningView,
  book: string,
  documents: readonly DeskDocument[],
): ComponentChildren => {
  const findings = answer?.findings ?? [];
  switch (screen) {
    case "plan":
      return (
        <PlanScreen evening={value} risk={answer?.risk ?? null} findings={findings} documents={documents} />
      );
    case "board":
      return <BoardScreen evening={value} book={book} />;
    case "buying":
      return <BuyingScreen evening={value} book={book} />;
    case "cost":
      return <CostScreen evening={value} />;
    case "guests":
      return <GuestsScreen evening={value} findings={findings} />;
    case "safety":
      return <SafetyScreen evening={value} />;
  }
};

const Failure = ({ why, before }: { why: string; before: boolean }) => (
  <p role="alert" class="remark remark-stop">
    The sitting could not be worked out, by a fault of the program itself: {why}.
    {before ? " What is shown is from before." : " Your words are not touched."}
  </p>
);

const Waiting = ({ book, title, evening }: { book: string; title: string; evening: EveningView }) => {
  if (evening.failure !== null)
    return (
      <div class="screen narrow">
        <ScreenHead title={title} />
        <Failure why={evening.failure} before={false} />
      </div>
    );
  if (evening.answer === null)
    return (
      <div class="screen narrow">
        <ScreenHead title={title} />
        <p role="status" class="lead">
          Working out the sitting…
        </p>
      </div>
    );
  return (
    <div class="screen narrow">
      <ScreenHead title={title} lead="Not yet: the sitting's own words must be readable first." />
      <ul>
        {evening.answer.remarks
          .filter((r) => r.severity === "stop")
          .map((r) => (
            <li key={`${r.path}${r.start}${r.says}`}>
              {r.path}: {r.says} {r.write}
            </li>
          ))}
      </ul>
      <ToSitting book={book} />
    </div>
  );
};

const ToSitting = ({ book }: { book: string }) => (
  <p>
    <a class="button" href={hashOf({ book, screen: "sitting", path: null })}>
      To the sitting
    </a>
  </p>
);
