import { useMemo } from "preact/hooks";
import { courseChains, type Plan, type Prep } from "#engine/index.ts";
import { courseChainTexts } from "#words/chain-text.ts";
import type { PlanNames } from "./names.ts";

/** The tightest chain of each course, and what may overrun before it. */
export const TightChains = ({ prep, plan, names }: { prep: Prep; plan: Plan; names: PlanNames }) => {
  const chains = useMemo(
    () => courseChains(prep, plan).filter((chain) => chain.links.length > 0),
    [prep, plan],
  );
  if (chains.length === 0) return null;
  return (
    <section class="tight-chains no-print" aria-labelledby="tight-chains-head">
      <h2 id="tight-chains-head">Tightest chains</h2>
      <p class="soft">What makes each course late if it overruns, from its first task to the pass.</p>
      {chains.map((chain) => (
        <details key={chain.course}>
          <summary>{names.course(chain.course)}</summary>
          <ol>
            {courseChainTexts(chain, names).map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ol>
        </details>
      ))}
    </section>
  );
};
