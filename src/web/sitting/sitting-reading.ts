import { useEffect, useState } from "preact/hooks";
import type { DeskDocument } from "../state/desk.ts";
import { sittingLine } from "../state/engine-client.ts";
import type { SittingAnswer } from "../state/engine-talk.ts";

/** An answer with the texts it was read from, so that marks are drawn only where they belong. */
type SittingReading = { readonly answer: SittingAnswer; readonly of: ReadonlyMap<string, string> };

/** Milliseconds without a key before the sitting is read. */
const pause = 60;

/** The sitting as it is read from its words while they are typed; null until the first answer. */
export const useSittingReading = (
  documents: readonly DeskDocument[],
  sitting: string | null,
): SittingReading | null => {
  const [reading, setReading] = useState<SittingReading | null>(null);
  const texts = JSON.stringify(documents.map((d) => [d.path, d.text]));
  useEffect(() => {
    if (sitting === null) return undefined;
    const files = documents.map(({ path, text }) => ({ path, text }));
    const timer = setTimeout(
      () =>
        sittingLine.ask(
          { ask: "sitting", sitting, files },
          (answer) => setReading({ answer, of: new Map(files.map((f) => [f.path, f.text])) }),
          () => undefined,
        ),
      reading === null ? 0 : pause,
    );
    return () => clearTimeout(timer);
  }, [texts, sitting]);
  return reading;
};
