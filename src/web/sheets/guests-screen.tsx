import type { Code, Evening, Finding } from "#engine/index.ts";
import { countText } from "#words/number-text.ts";
import { allergenDeferral } from "#words/safety-text.ts";
import { FindingList } from "../parts/finding-list.tsx";
import { ScreenHead } from "../parts/screen-head.tsx";
import { DishSheet } from "./dish-declaration.tsx";
import { GuestGrid } from "./guest-grid.tsx";

/** Findings that turn on a guest, or on what somebody stated of a food of the cook's own. */
const ofGuests: ReadonlySet<Code> = new Set<Code>([
  "swap-missing",
  "need-unknown",
  "pregnancy-caution",
  "allergens-unstated",
  "own-food-stated",
]);

const leadOf = (named: number, toSwap: number): string => {
  if (named === 0) return "No guest with a need is named yet; the sitting has a place for them.";
  if (toSwap === 0) return "No guest was found to need a swap, a question or another dish.";
  return `${countText(toSwap, "guest needs", "guests need")} a swap, a question or another dish.`;
};

/** Who may be offered what, and what is stated about each dish. */
export const GuestsScreen = ({ evening, findings }: { evening: Evening; findings: readonly Finding[] }) => {
  const { declaration } = evening;
  return (
    <div class="screen guests">
      <ScreenHead
        title="Guests and allergens"
        lead={leadOf(evening.menu.sitting.guests.length, declaration.guestsToSwap.length)}
      >
        <button type="button" onClick={() => print()}>
          Print
        </button>
      </ScreenHead>
      <p class="deferral">{allergenDeferral}</p>
      <FindingList findings={findings.filter((f) => ofGuests.has(f.code))} />
      <h2>Guest by dish</h2>
      <GuestGrid evening={evening} />
      <h2>What is stated, dish by dish</h2>
      <div class="sheets">
        {declaration.dishes.map((d) => (
          <DishSheet key={`${d.dish}|${d.version}`} of={d} region={evening.menu.sitting.region} />
        ))}
      </div>
    </div>
  );
};
