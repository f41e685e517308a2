import { useEffect, useRef, useState } from "preact/hooks";
import type { Sitting } from "#engine/index.ts";
import type { Variant } from "#wire/variants.ts";
import { compareCells, compareHeadings } from "#words/compare-text.ts";
import { capital } from "#words/number-text.ts";
import type { DeskDocument } from "../state/desk.ts";
import { variantLine } from "../state/engine-client.ts";
import type { VariantAnswer } from "../state/engine-talk.ts";
import { variantsOf, type WhatIf } from "./what-if-variants.ts";

/** The evening as its words have it, to compare with. */
const asItIs: Variant = { name: "as it is", changes: {} };

type Row = { readonly name: string; readonly answer: VariantAnswer };

/** The evening otherwise: covers, hands, heat and hours changed, each by itself and all together, in one table. */
export const WhatIfPart = ({
  sitting,
  documents,
}: {
  sitting: Sitting;
  documents: readonly DeskDocument[];
}) => {
  const [wish, setWish] = useState<WhatIf>({
    covers: sitting.covers,
    cookLike: null,
    ovenLike: null,
    burners: 0,
    course: 0,
    later: 0,
  });
  const { rows, total, failure, begin, stop } = useVariants(documents);
  const file = documents.find((d) => d.kind === "sitting");
  const folder = file?.path.replace(/[^/]*$/, "") ?? "";
  const variants = variantsOf(
    wish,
    file?.text ?? "",
    (name) => documents.find((d) => d.path === folder + name)?.text ?? "",
  );
  const working = total > 0;
  const set = (change: Partial<WhatIf>): void => setWish({ ...wish, ...change });
  const ask = (event: Event): void => {
    event.preventDefault();
    if (file !== undefined && variants.length > 0) begin(file.path, [asItIs, ...variants]);
  };
  const [cook] = sitting.crew;
  const [oven] = sitting.kitchen.ovens;
  return (
    <section class="what-if no-print" aria-labelledby="what-if-head">
      <h2 id="what-if-head">What if</h2>
      <p class="soft">Your words stay as they are; this only reckons.</p>
      <form onSubmit={ask}>
        <label class="field">
          <span>Covers</span>
          <input
            type="number"
            min={1}
            max={10_000}
            value={wish.covers}
            onInput={(e) => set({ covers: Math.max(0, Math.floor(e.currentTarget.valueAsNumber || 0)) })}
          />
        </label>
        <label class="field">
          <span>Course</span>
          <select
            value={String(wish.course)}
            onChange={(e) => set({ course: Number(e.currentTarget.value) })}
          >
            {sitting.courses.map((course, i) => (
              <option key={i} value={String(i)}>
                {course.name}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>Later by, min</span>
          <input
            type="number"
            min={-600}
            max={600}
            step={5}
            value={wish.later}
            onInput={(e) => set({ later: Math.floor(e.currentTarget.valueAsNumber || 0) })}
          />
        </label>
        {cook !== undefined && (
          <Tick
            says={`Another cook, in ${cook.name}'s hours`}
            on={wish.cookLike !== null}
            set={(on) => set({ cookLike: on ? cook.name : null })}
          />
        )}
        {oven !== undefined && (
          <Tick
            says={`Another oven like the ${oven.name}`}
            on={wish.ovenLike !== null}
            set={(on) => set({ ovenLike: on ? oven.name : null })}
          />
        )}
        <Tick says="Another burner" on={wish.burners > 0} set={(on) => set({ burners: on ? 1 : 0 })} />
        <span class="buttons">
          <button type="submit" disabled={working || variants.length === 0}>
            Work it out
          </button>
          <button type="button" disabled={!working} onClick={stop}>
            Stop
          </button>
        </span>
      </form>
      <p role="status" class="soft">
        {working
          ? `Working out ${rows.length + 1} of ${total}…`
          : variants.length === 0
            ? "Change something to see what it would do."
            : ""}
      </p>
      {failure !== null && <p role="alert">It could not be worked out ({failure}).</p>}
      {rows.length > 0 && <Rows rows={rows} />}
    </section>
  );
};

const Tick = ({ says, on, set }: { says: string; on: boolean; set: (on: boolean) => void }) => (
  <label class="tick-field">
    <input type="checkbox" checked={on} onChange={(e) => set(e.currentTarget.checked)} />
    <span>{says}</span>
  </label>
);

const Rows = ({ rows }: { rows: readonly Row[] }) => (
  <div class="wide">
    <table>
      <thead>
        <tr>
          <th scope="col">What if</th>
          {compareHeadings.map((head) => (
            <th key={head} scope="col">
              {capital(head)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, answer: { row, stops } }) => (
          <tr key={name}>
            <th scope="row">{capital(name)}</th>
            {row === null ? (
              <td colSpan={compareHeadings.length}>{stops.join(" ")}</td>
            ) : (
              compareCells(row).map((cell, i) => (
                <td key={compareHeadings[i]} data-head={capital(compareHeadings[i] ?? "")}>
                  {cell}
                </td>
              ))
            )}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

/** Works variants out one after the other; what the words were when it began is what counts. */
const useVariants = (documents: readonly DeskDocument[]) => {
  const [rows, setRows] = useState<readonly Row[]>([]);
  const [total, setTotal] = useState(0);
  const [failure, setFailure] = useState<string | null>(null);
  const words = documents.map((d) => `${d.path}\u0000${d.text}`).join("\u0000");
  const stop = (): void => {
    variantLine.stop();
    setTotal(0);
  };
  // Figures of other words than those that stand there now would mislead; and nobody waits for them on another screen.
  const first = useRef(true);
  useEffect(() => {
    if (!first.current) {
      stop();
      setRows([]);
    }
    first.current = false;
  }, [words]);
  useEffect(() => () => variantLine.stop(), []);
  const begin = (sitting: string, variants: readonly Variant[]): void => {
    const files = documents.map(({ path, text }) => ({ path, text }));
    setRows([]);
    setFailure(null);
    setTotal(variants.length);
    const next = (k: number): void => {
      const variant = variants[k];
      if (variant === undefined) {
        setTotal(0);
        return;
      }
      variantLine.ask(
        { ask: "variant", sitting, files, variant },
        (answer) => {
          setRows((done) => [...done, { name: variant.name, answer }]);
          next(k + 1);
        },
        (why) => {
          setFailure(why);
          setTotal(0);
        },
      );
    };
    next(0);
  };
  return { rows, total, failure, begin, stop };
};
