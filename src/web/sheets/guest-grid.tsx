import type { Evening, GuestVerdict } from "#engine/index.ts";
import { answerLabels, gradeLabels } from "#words/labels.ts";
import { needsText } from "#words/version-text.ts";
import { AnswerMark } from "../parts/marks.tsx";
import { useNarrow } from "../state/narrow.ts";

/** One answer: a shape, a word, and what stands against it. */
const Answer = ({ verdict }: { verdict: GuestVerdict | undefined }) => {
  if (verdict === undefined) return <span class="soft">–</span>;
  const reasons = [...new Set(verdict.because.map((b) => `${b.name}: ${gradeLabels[b.grade]}`))];
  return (
    <span class={`answer answer-${verdict.answer}`}>
      <span class="answer-word">
        <AnswerMark of={verdict.answer} />
        {answerLabels[verdict.answer]}
      </span>
      {reasons.slice(0, 3).map((r) => (
        <span key={r} class="because">
          {r}
        </span>
      ))}
      {reasons.length > 3 && <span class="because">and {reasons.length - 3} more</span>}
    </span>
  );
};

/** May this guest be offered this dish? Guests down, dishes across; on a phone a list for each guest. */
export const GuestGrid = ({ evening }: { evening: Evening }) => {
  const narrow = useNarrow();
  const { declaration, menu } = evening;
  const { guests } = menu.sitting;
  const dishes = menu.dishes.map((d) => ({ source: d.dish.source, title: d.dish.title }));
  const find = (guest: string, dish: string) =>
    declaration.grid.find((v) => v.guest === guest && v.dish === dish);
  if (guests.length === 0) return <p class="soft">No guest with a need is named in the sitting.</p>;
  if (narrow)
    return (
      <>
        {guests.map((g) => (
          <section key={g.name} class="guest-list">
            <h3>
              {g.name} <span class="soft small">{needsText(g.needs)}</span>
            </h3>
            <dl>
              {dishes.map((d) => (
                <div key={d.source}>
                  <dt>{d.title}</dt>
                  <dd>
                    <Answer verdict={find(g.name, d.source)} />
                  </dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </>
    );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table must be scrollable by keyboard.
    <section class="wide" tabIndex={0} aria-label="Guests and dishes">
      <table class="grid">
        <thead>
          <tr>
            <th scope="col">Dish</th>
            {guests.map((g) => (
              <th key={g.name} scope="col">
                {g.name}
                <span class="soft small">{needsText(g.needs)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {dishes.map((d) => (
            <tr key={d.source}>
              <th scope="row">{d.title}</th>
              {guests.map((g) => (
                <td key={g.name}>
                  <Answer verdict={find(g.name, d.source)} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
