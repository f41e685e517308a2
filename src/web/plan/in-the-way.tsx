import { useEffect, useState } from "preact/hooks";
import type { Plan, Prep } from "#engine/index.ts";
import { afterText, changeText, clashText, demandTexts } from "#words/clash-text.ts";
import { whyLine } from "../state/engine-client.ts";
import type { PlanNames } from "./names.ts";

type State = { readonly of: Plan; readonly found: Plan | null; readonly failed: boolean };

/** Why a course is late or work has no place, and what was tried and helps. Nothing for a plan that is on time. */
export const InTheWay = ({ prep, plan, names }: { prep: Prep; plan: Plan; names: PlanNames }) => {
  const [state, setState] = useState<State>({ of: plan, found: null, failed: false });
  const due = plan.status !== "on-time";
  useEffect(() => {
    if (!due) return;
    setState({ of: plan, found: null, failed: false });
    whyLine.ask(
      { ask: "why", prep, plan },
      (found) => setState({ of: plan, found, failed: false }),
      () => setState({ of: plan, found: null, failed: true }),
    );
  }, [prep, plan, due]);
  if (!due) return null;
  const found = state.of === plan ? state.found : null;
  return (
    <section class="in-the-way" aria-labelledby="in-the-way-head" aria-live="polite">
      <h2 id="in-the-way-head">What stands in the way</h2>
      {found === null ? (
        <p class="soft">{state.failed ? "It could not be worked out." : "Being worked out …"}</p>
      ) : (
        <Found plan={found} names={names} />
      )}
    </section>
  );
};

const Found = ({ plan: { clashes = [], waysOut = [] }, names: all }: { plan: Plan; names: PlanNames }) => {
  const names = { ...all, task: all.brief };
  return (
    <div class="plan-top">
      <div>
        {clashes.length === 0 && <p class="soft">No smallest cause was proved.</p>}
        {clashes.map((clash) => (
          <div key={JSON.stringify(clash.demands)}>
            <p>{clashText(clash, names)}</p>
            <ul>
              {demandTexts(clash, names).map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </div>
        ))}
      </div>
      <div>
        <h3>What would help</h3>
        {waysOut.length === 0 ? (
          <p class="soft">No single change that was tried helps.</p>
        ) : (
          <ul>
            {waysOut.map((way) => (
              <li key={JSON.stringify(way.change)}>
                <b>{changeText(way.change, names)}</b>
                <span class="soft"> {afterText(way, names)}</span>
              </li>
            ))}
          </ul>
        )}
      </div>
    </div>
  );
};
