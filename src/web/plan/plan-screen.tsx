import { useMemo, useState } from "preact/hooks";
import type { Code, Evening, Finding, Plan, PlanFacts, Risk, TaskId } from "#engine/index.ts";
import { durationText } from "#words/quantity-text.ts";
import { spaced } from "#words/version-text.ts";
import { FindingList } from "../parts/finding-list.tsx";
import { SeverityMark } from "../parts/marks.tsx";
import { ScreenHead } from "../parts/screen-head.tsx";
import type { DeskDocument } from "../state/desk.ts";
import { useNarrow } from "../state/narrow.ts";
import { CookList } from "./cook-list.tsx";
import { DayChart } from "./day-chart.tsx";
import { InTheWay } from "./in-the-way.tsx";
import { LandingTable } from "./landing-table.tsx";
import { namesOf } from "./names.ts";
import { rowsOf } from "./rows.ts";
import { Sureness } from "./sureness.tsx";
import { TaskDetails } from "./task-details.tsx";
import { TightChains } from "./tight-chains.tsx";
import { VesselsInUse } from "./vessels-in-use.tsx";
import { WhatIfPart } from "./what-if.tsx";

/** Findings that belong beside the plan; what was assumed for single steps is said on their cards. */
const ofPlan: ReadonlySet<Code> = new Set<keyof PlanFacts>([
  "station-missing",
  "nobody-on-shift",
  "course-late",
  "task-unplaced",
  "tasks-unplaced",
  "limits-clash",
  "plan-broken",
  "station-in-turns",
]);

const leads: { readonly [S in Plan["status"]]: string } = {
  "on-time": "Every course lands on time.",
  late: "Not every course lands on time.",
  partial: "Some work found no place; the plan is not whole.",
};

type Props = {
  readonly evening: Evening;
  readonly risk: Risk | null;
  readonly findings: readonly Finding[];
  readonly documents: readonly DeskDocument[];
};

/** The work of the sitting in time: as a chart, and as a list for each cook; and how sure it is. */
export const PlanScreen = ({ evening, risk, findings, documents }: Props) => {
  const { prep, plan } = evening;
  const names = useMemo(() => namesOf(evening), [evening]);
  const rows = useMemo(() => rowsOf(prep, plan), [prep, plan]);
  const [task, setTask] = useState<TaskId | null>(null);
  const narrow = useNarrow();
  const landing = (
    <div class="landing-part" key="landing">
      <LandingTable plan={plan} names={names} />
    </div>
  );
  const chart = (
    <section class="chart-part no-print" aria-labelledby="chart-head" key="chart">
      <h2 id="chart-head">Chart</h2>
      <div class="plan-top">
        {!narrow && landing}
        <TaskDetails plan={plan} task={task} names={names} />
      </div>
      <DayChart rows={rows} landings={plan.courses} names={names} select={setTask} />
    </section>
  );
  const lists = (
    <section aria-labelledby="lists-head" key="lists" class="lists">
      <h2 id="lists-head" class="no-print">
        Lists
      </h2>
      {prep.crew.map((c) => (
        <CookList key={c.name} cook={c.name} prep={prep} plan={plan} names={names} />
      ))}
    </section>
  );
  return (
    <div class="screen plan">
      <ScreenHead
        title="Plan"
        lead={`${leads[plan.status]}${plan.objective.lateMinutes > 0 ? ` ${durationText(plan.objective.lateMinutes)} late in all.` : ""}`}
      >
        <button type="button" onClick={() => print()}>
          Print the lists
        </button>
      </ScreenHead>
      {plan.violations.length > 0 && (
        <div class="remark remark-stop" role="alert">
          <SeverityMark of="stop" />
          <div>
            <p>The checker does not pass this plan:</p>
            <ul>
              {plan.violations.map((v) => (
                <li key={v.rule + v.detail}>
                  {spaced(v.rule)}: {v.detail}
                </li>
              ))}
            </ul>
          </div>
        </div>
      )}
      <FindingList findings={findings.filter((f) => ofPlan.has(f.code))} />
      <InTheWay prep={prep} plan={plan} names={names} />
      {narrow ? [landing, lists, chart] : chart}
      <VesselsInUse prep={prep} plan={plan} names={names} />
      <TightChains prep={prep} plan={plan} names={names} />
      {risk !== null && risk.courses.length > 0 && <Sureness risk={risk} names={names} />}
      <WhatIfPart sitting={evening.menu.sitting} documents={documents} />
      {!narrow && lists}
    </div>
  );
};
