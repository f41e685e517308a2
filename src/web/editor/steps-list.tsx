import type { Action, Dish, Region, Step, Use } from "#engine/index.ts";
import { attentionLabels, stationLabels } from "#words/labels.ts";
import { capital, numberText, percentText } from "#words/number-text.ts";
import { celsiusText, durationText } from "#words/quantity-text.ts";
import { AttentionMark } from "../parts/marks.tsx";
import { FromWords, isAt, type Linking } from "./link.tsx";

type Shown = { readonly dish: Dish; readonly region: Region; readonly linking: Linking };

/** A length as a cook says it: whole minutes, and a range only where it is one. */
const minutesText = ({ low, likely, high }: NonNullable<Action["minutes"]>): string => {
  const least = numberText(low);
  const most = numberText(high);
  return low < 1 || high >= 90 || least === most ? durationText(likely) : `${least}–${most} min`;
};

/** What an action takes, in words: foods by their names, products by what they are, and how much of them. */
const useText = (use: Use, dish: Dish): string => {
  const made = dish.steps.flatMap((s) => s.actions).find((a) => a.id === use.product);
  const name =
    use.ingredient === null ? (made?.makes ?? null) : (dish.ingredients[use.ingredient]?.name ?? null);
  if (name === null) return "";
  return use.share < 0.995 ? `${percentText(use.share, 0)} of ${name}` : name;
};

const ActionItem = ({ action, dish, region, linking }: Shown & { action: Action }) => {
  const takes = [...new Set(action.uses.filter((u) => !u.implied).map((u) => useText(u, dish)))].filter(
    (t) => t !== "",
  );
  return (
    <li class="action" data-here={isAt(linking.at, action.span)}>
      <AttentionMark of={action.attention} />
      <div>
        <FromWords span={action.span} linking={linking}>
          {capital(action.verb)}
          {action.technique === null && <span class="unknown small"> (verb not understood)</span>}
        </FromWords>
        {takes.length > 0 && <span> {takes.join(", ")}</span>}
        <span class="facts">
          {action.minutes !== null && (
            <span>
              {action.minutes.assumed ? "≈ " : ""}
              {minutesText(action.minutes)}
              {action.minutes.assumed && <span class="assumed">usual time</span>}
            </span>
          )}
          {action.station !== "hands" && <span>{stationLabels[action.station]}</span>}
          <span>{attentionLabels[action.attention]}</span>
          {action.celsius !== null && <span>{celsiusText(action.celsius, region)}</span>}
          {action.heat !== null && <span>{action.heat} heat</span>}
          {action.core !== null && <span>middle {celsiusText(action.core, region)}</span>}
          {action.vessel !== null && <span>{action.vessel}</span>}
          {action.batches !== null && <span>{action.batches} batches</span>}
          {action.alongside && <span>meanwhile</span>}
          {action.leastWait !== null && <span>after {durationText(action.leastWait)}</span>}
          {action.cue !== null && <span>{action.cue}</span>}
        </span>
      </div>
    </li>
  );
};

const StepItem = ({ step, ...shown }: Shown & { step: Step }) => (
  <li class="step" data-here={isAt(shown.linking.at, step.span)}>
    {step.actions.length === 0 ? (
      <FromWords span={step.span} linking={shown.linking}>
        <span class="unknown">No action understood</span>
      </FromWords>
    ) : (
      <ul class="plain">
        {step.actions.map((a) => (
          <ActionItem key={a.id} action={a} {...shown} />
        ))}
      </ul>
    )}
  </li>
);

/** What is done, step by step, as it was understood. */
export const StepsList = (shown: Shown) => {
  const method = shown.dish.steps.filter((s) => s.phase === "method");
  const pass = shown.dish.steps.filter((s) => s.phase === "to-serve");
  return (
    <>
      <ol class="steps">
        {method.map((s) => (
          <StepItem key={s.index} step={s} {...shown} />
        ))}
      </ol>
      {pass.length > 0 && (
        <>
          <h3>At the pass</h3>
          <ol class="steps">
            {pass.map((s) => (
              <StepItem key={s.index} step={s} {...shown} />
            ))}
          </ol>
        </>
      )}
    </>
  );
};
