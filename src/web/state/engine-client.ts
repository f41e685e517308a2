import type { Plan } from "#engine/index.ts";
import type {
  Ask,
  CardAnswer,
  EveningAnswer,
  FoodsAnswer,
  NightAnswer,
  SheetAnswer,
  SittingAnswer,
  Told,
  VariantAnswer,
  WriteUpAnswer,
} from "./engine-talk.ts";

type Question<A> = A extends unknown ? Omit<A, "id"> : never;

/** One worker with one question at a time. A newer question replaces the one that waits. */
type EngineLine<A extends Ask, R> = {
  /** Asks. The answer of a question that was overtaken is never handed on. */
  readonly ask: (question: Question<A>, answered: (answer: R) => void, failed: (why: string) => void) => void;
  /** Drops the question that is being answered and the one that waits: neither is answered. */
  readonly stop: () => void;
};

/** Milliseconds after which an overtaken question is stopped rather than waited for. */
const patience = 1500;

const makeLine = <A extends Ask, R>(): EngineLine<A, R> => {
  type Waiting = {
    readonly message: Ask;
    readonly answered: (answer: R) => void;
    readonly failed: (why: string) => void;
  };
  let worker: Worker | null = null;
  let busy: (Waiting & { readonly since: number }) | null = null;
  let next: Waiting | null = null;
  let count = 0;

  const send = (): void => {
    if (next === null) return;
    worker ??= hired();
    busy = { ...next, since: performance.now() };
    next = null;
    worker.postMessage(busy.message);
  };

  const stop = (): void => {
    worker?.terminate();
    worker = null;
    busy = null;
  };

  const hired = (): Worker => {
    const fresh = new Worker(new URL("engine-worker.js", document.baseURI), { type: "module" });
    fresh.onmessage = ({ data }: MessageEvent<Told>) => {
      const done = busy;
      busy = null;
      if (done !== null && next === null && data.id === done.message.id) {
        if (data.told === "failed") done.failed(data.why);
        else done.answered(data.answer as R);
      }
      send();
    };
    fresh.onerror = (event) => {
      const done = busy;
      stop();
      done?.failed(event.message);
      send();
    };
    return fresh;
  };

  return {
    ask: (question, answered, failed) => {
      count += 1;
      next = { message: { ...question, id: count } as unknown as Ask, answered, failed };
      if (busy !== null && performance.now() - busy.since > patience) stop();
      if (busy === null) send();
    },
    stop: () => {
      next = null;
      stop();
    },
  };
};

/** Reads the card that is being written. */
export const cardLine = makeLine<Extract<Ask, { ask: "card" }>, CardAnswer>();
/** Tries a list of own foods before it is written. */
export const foodsLine = makeLine<Extract<Ask, { ask: "foods" }>, FoodsAnswer>();
/** Works out the whole evening; apart from the card's line, so that a long plan never holds up typing. */
export const eveningLine = makeLine<Extract<Ask, { ask: "evening" }>, EveningAnswer>();
/** Looks for what stands in the way of a plan; apart, since that takes longer than the plan. */
export const whyLine = makeLine<Extract<Ask, { ask: "why" }>, Plan>();
/** Plans the rest of a night anew. */
export const nightLine = makeLine<Extract<Ask, { ask: "night" }>, NightAnswer>();
/** Writes a card up as a document. */
export const writeUpLine = makeLine<Extract<Ask, { ask: "write-up" }>, WriteUpAnswer>();
/** Reads the sitting alone. */
export const sittingLine = makeLine<Extract<Ask, { ask: "sitting" }>, SittingAnswer>();
/** Works out a card at another size. */
export const sheetLine = makeLine<Extract<Ask, { ask: "sheet" }>, SheetAnswer>();
/** Works out variants of the sitting, one at a time. */
export const variantLine = makeLine<Extract<Ask, { ask: "variant" }>, VariantAnswer>();
