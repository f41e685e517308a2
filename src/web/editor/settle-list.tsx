import { useState } from "preact/hooks";
import type { Severity } from "#engine/index.ts";
import { severityLabels } from "#words/en.ts";
import { countText } from "#words/number-text.ts";
import { SeverityMark } from "../parts/marks.tsx";
import type { Linking } from "./link.tsx";
import { OwnFoodForm } from "./own-food-form.tsx";
import type { OwnFoodEntry } from "./own-foods.ts";
import type { Remark } from "./remarks.ts";

const groups: readonly { readonly severity: Severity; readonly title: string; readonly open: boolean }[] = [
  { severity: "stop", title: "Stands in the way", open: true },
  { severity: "warn", title: "May be wrong", open: true },
  { severity: "note", title: "Was assumed", open: false },
];

/** Writes a food of the cook's own into the list of the sitting; says what keeps it from being used, or null. */
export type AddFood = (entry: OwnFoodEntry) => Promise<string | null>;

type ItemProps = {
  readonly remark: Remark;
  readonly text: string;
  readonly linking: Linking;
  readonly addFood: AddFood | null;
};

const Item = ({ remark, text, linking, addFood }: ItemProps) => {
  const [asking, setAsking] = useState(false);
  const words = text.slice(remark.start, remark.end).split("\n")[0]?.slice(0, 60) ?? "";
  return (
    <li class={`remark remark-${remark.severity}`}>
      <SeverityMark of={remark.severity} />
      <div>
        <p>
          <span class="hidden">{severityLabels[remark.severity]}: </span>
          {remark.says} {remark.write !== null && <span class="write">{remark.write}</span>}
        </p>
        <p class="buttons">
          <button
            type="button"
            class="quiet"
            onClick={() => linking.goTo({ start: remark.start, end: remark.end })}
          >
            Go to {words === "" ? "the place" : <q>{words}</q>}
          </button>
          {remark.fixes.map((fix) => (
            <button type="button" key={fix.title} class="fix" onClick={fix.apply}>
              {fix.title}
            </button>
          ))}
          {addFood !== null && remark.unknownFood !== null && !asking && (
            <button type="button" onClick={() => setAsking(true)}>
              It is a food of my own
            </button>
          )}
        </p>
        {addFood !== null && remark.unknownFood !== null && asking && (
          <OwnFoodForm name={remark.unknownFood} save={addFood} close={() => setAsking(false)} />
        )}
      </div>
    </li>
  );
};

/** Everything that is said about the words, the gravest first. */
export const SettleList = ({
  remarks,
  text,
  linking,
  addFood,
}: {
  remarks: readonly Remark[];
  text: string;
  linking: Linking;
  /** Null where no card is read. */
  addFood: AddFood | null;
}) => {
  if (remarks.length === 0) return <p class="soft">Nothing to settle.</p>;
  return (
    <>
      {groups.map(({ severity, title, open }) => {
        const own = remarks.filter((r) => r.severity === severity);
        if (own.length === 0) return null;
        return (
          <details key={severity} open={open}>
            <summary>
              <h3>
                {title} <span class="count">{countText(own.length, "place", "places")}</span>
              </h3>
            </summary>
            <ul class="plain">
              {own.map((r) => (
                <Item
                  key={`${r.start}-${r.says}`}
                  remark={r}
                  text={text}
                  linking={linking}
                  addFood={addFood}
                />
              ))}
            </ul>
          </details>
        );
      })}
    </>
  );
};
