import type { Kitchen, Sitting } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { clockText, dayText, momentText } from "#words/clock.ts";
import { countText, numberText, percentText } from "#words/number-text.ts";
import { durationText } from "#words/quantity-text.ts";
import { needsText } from "#words/version-text.ts";
import { cardTitleOf } from "../editor/card-names.ts";
import { ScreenHead } from "../parts/screen-head.tsx";
import type { DeskDocument } from "../state/desk.ts";
import { hashOf } from "../state/route.ts";
import { valueAt, withValue } from "./edit-yaml.ts";

type Props = {
  readonly book: string;
  /** The sitting's own words; the controls on the page write into them. */
  readonly text: string;
  readonly value: Sitting | null;
  /** Not read yet, rather than not readable. */
  readonly waiting: boolean;
  readonly cardPaths: ReadonlyMap<string, string>;
  readonly cards: readonly DeskDocument[];
  readonly write: (text: string) => void;
};

/** The sitting as people read it. */
export const SittingPage = ({ book, text, value, waiting, cardPaths, cards, write }: Props) => {
  if (waiting) return <ScreenHead title="Sitting" lead="Reading…" />;
  if (value === null)
    return (
      <ScreenHead title="Sitting" lead="The words beside are not yet a sitting; see what is to settle." />
    );
  const put = (path: readonly (string | number)[], words: string) => {
    const next = withValue(text, path, words);
    if (next !== null) write(next);
  };
  const titleOf = (source: string): string => {
    const card = cards.find((c) => c.path === cardPaths.get(source) || cardNameOf(c.path) === source);
    return card === undefined ? source : cardTitleOf(card.text, card.path);
  };
  return (
    <>
      <ScreenHead
        title={value.title}
        lead={`${dayText(value.date, 0)}${value.place === "" ? "" : `, ${value.place}`}`}
      />
      <p class="covers">
        <label>
          <span>Covers</span>
          <input
            type="number"
            min="1"
            step="1"
            value={valueAt(text, ["covers"])?.text ?? value.covers}
            onChange={(e) => put(["covers"], e.currentTarget.value)}
          />
        </label>
        <span class="soft">
          and {percentText(value.spare)} spare; food at {percentText(value.foodCostTarget)} of the price; tax{" "}
          {percentText(value.taxRate)}
        </span>
      </p>
      <h2>Courses</h2>
      <ol class="courses">
        {value.courses.map((course, i) => (
          <li key={course.name}>
            <label class="course-time">
              <span class="hidden">{course.name} lands at</span>
              <input
                type="time"
                value={clockText(course.at)}
                onChange={(e) => put(["courses", i, "at"], e.currentTarget.value)}
              />
            </label>
            <div>
              <h3>{course.name}</h3>
              <ul class="plain">
                {course.dishes.map((d) => (
                  <li key={d}>
                    <a href={hashOf({ book, screen: "cards", path: cardPaths.get(d) ?? null })}>
                      {titleOf(d)}
                    </a>
                  </li>
                ))}
              </ul>
            </div>
          </li>
        ))}
      </ol>
      <h2>Guests with needs</h2>
      {value.guests.length === 0 ? (
        <p class="soft">None named.</p>
      ) : (
        <dl class="pairs">
          {value.guests.map((g) => (
            <div key={g.name}>
              <dt>{g.name}</dt>
              <dd>{needsText(g.needs) || "no need stated"}</dd>
            </div>
          ))}
        </dl>
      )}
      <h2>Crew</h2>
      <dl class="pairs">
        {value.crew.map((c) => (
          <div key={c.name}>
            <dt>{c.name}</dt>
            <dd>
              <ul class="plain">
                {c.shifts.map((s) => (
                  <li key={s.from}>
                    {momentText(value.date, s.from)} to {clockText(s.to)}{" "}
                    <span class="soft">({durationText(s.to - s.from)})</span>
                  </li>
                ))}
              </ul>
            </dd>
          </div>
        ))}
      </dl>
      <KitchenPart kitchen={value.kitchen} packs={value.packs.length} />
    </>
  );
};

const KitchenPart = ({ kitchen, packs }: { kitchen: Kitchen; packs: number }) => (
  <>
    <h2>Kitchen</h2>
    <p>{kitchen.name}</p>
    <dl class="pairs">
      <div>
        <dt>Burners</dt>
        <dd>
          {kitchen.burners} of {numberText(kitchen.burnerKilowatts, 1)} kW
        </dd>
      </div>
      {kitchen.ovens.map((o) => (
        <div key={o.name}>
          <dt>{o.name}</dt>
          <dd>
            {countText(o.shelves, "shelf", "shelves")}, {o.fan ? "fan" : "no fan"}
          </dd>
        </div>
      ))}
      <div>
        <dt>Pans</dt>
        <dd>
          {kitchen.pans.map((p) => `${p.count} × ${p.name} ${numberText(p.litres, 1)} l`).join(", ") || "–"}
        </dd>
      </div>
      <div>
        <dt>Cold</dt>
        <dd>
          fridge {kitchen.fridgeLitres} l, freezer {kitchen.freezerLitres} l
        </dd>
      </div>
      <div>
        <dt>Machines</dt>
        <dd>{kitchen.machines.map((m) => `${m.count} × ${m.name}`).join(", ") || "–"}</dd>
      </div>
      <div>
        <dt>Price lists</dt>
        <dd>{countText(packs, "pack", "packs")}</dd>
      </div>
    </dl>
  </>
);
