import type { Evening, SafetyPoint } from "#engine/index.ts";
import { hazardCautions, hazardLabels } from "#words/labels.ts";
import { capital, listText } from "#words/number-text.ts";
import { taskText } from "#words/plan-text.ts";
import { deferral, limitText, sourcesNote } from "#words/safety-text.ts";
import { SeverityMark } from "../parts/marks.tsx";
import { ScreenHead } from "../parts/screen-head.tsx";
import { namesOf, type PlanNames } from "../plan/names.ts";

const cautionOf = (point: SafetyPoint): string | null =>
  (hazardCautions as Readonly<Record<string, string>>)[point.hazard] ?? null;

/** Hazards dish by dish, with the limits that the rule books set. */
export const SafetyScreen = ({ evening }: { evening: Evening }) => {
  const { safety, dishes } = evening;
  const names = namesOf(evening);
  const sources = [...new Set(safety.points.map((p) => p.dish))];
  const broken = safety.points.filter((p) => p.broken);
  return (
    <div class="screen safety">
      <ScreenHead title="Safety" lead="What can make someone ill here, and the limits that are usually set.">
        <button type="button" onClick={() => print()}>
          Print
        </button>
      </ScreenHead>
      <p class="deferral">
        {deferral} {sourcesNote}
      </p>
      {broken.length > 0 && (
        <p class="remark remark-stop" role="alert">
          <SeverityMark of="stop" /> The plan breaks a limit in {broken.length} of the points below.
        </p>
      )}
      {sources.map((source) => (
        <section key={source} class="safety-dish">
          <h2>{dishes.find((d) => d.source === source)?.title ?? source}</h2>
          <ul class="plain">
            {safety.points
              .filter((p) => p.dish === source)
              .map((p) => (
                <Point key={JSON.stringify(p)} point={p} region={safety.region} names={names} />
              ))}
          </ul>
        </section>
      ))}
    </div>
  );
};

const Point = ({ point, region, names }: { point: SafetyPoint; region: string; names: PlanNames }) => {
  const caution = cautionOf(point);
  const task = point.task === null ? null : names.taskOf(point.task);
  return (
    <li class="safety-point" data-broken={point.broken}>
      <h3>
        {point.broken && <SeverityMark of="stop" />}
        {capital(hazardLabels[point.hazard])}
        {point.names.length > 0 && <span class="soft">: {listText(point.names)}</span>}
      </h3>
      {task !== null && <p class="soft small">At: {taskText(task)}</p>}
      {point.broken && (
        <p>
          <strong>The plan breaks a limit here.</strong>
        </p>
      )}
      {point.limits.length > 0 && (
        <ul>
          {point.limits.map((l) => (
            <li key={JSON.stringify(l)}>
              {capital(limitText(l, region))} <cite class="soft small">[{l.source}]</cite>
            </li>
          ))}
        </ul>
      )}
      {caution !== null && <p>{caution}</p>}
      {point.guests.length > 0 && (
        <p>
          <b>Graver for {listText(point.guests)}.</b>
        </p>
      )}
    </li>
  );
};
