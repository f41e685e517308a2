import { useMemo } from "preact/hooks";
import type { Plan, Prep } from "#engine/index.ts";
import { clockText, momentText } from "#words/clock.ts";
import { equipmentName } from "#words/equipment-text.ts";
import { numberText } from "#words/number-text.ts";
import type { PlanNames } from "./names.ts";
import { vesselsInUse } from "./vessels-of-plan.ts";

/** Which pan, tray or container is in use when, and for what. */
export const VesselsInUse = ({ prep, plan, names }: { prep: Prep; plan: Plan; names: PlanNames }) => {
  const used = useMemo(() => vesselsInUse(prep, plan), [prep, plan]);
  if (used.length === 0) return null;
  return (
    <section class="vessels no-print" aria-labelledby="vessels-head">
      <h2 id="vessels-head">Pans and trays in use</h2>
      <details>
        <summary>From the task that fills them until they are washed up</summary>
        <div class="wide">
          <table>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">From</th>
                <th scope="col">Until</th>
                <th scope="col">With</th>
              </tr>
            </thead>
            <tbody>
              {used.map((one) => (
                <tr key={JSON.stringify(one)}>
                  <th scope="row">
                    {numberText(one.amount)} {equipmentName(one.resource, one.amount !== 1)}
                  </th>
                  <td>{momentText(names.date, one.from)}</td>
                  <td>
                    {one.to === null
                      ? "after service"
                      : Math.floor(one.to / 1440) === Math.floor(one.from / 1440)
                        ? clockText(one.to)
                        : momentText(names.date, one.to)}
                  </td>
                  <td>{names.brief(one.task)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </section>
  );
};
