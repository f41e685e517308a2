import type { CriticalLimit, Evening, SafetyPoint } from "#engine/index.ts";
import { hazardCautions, hazardLabels } from "#words/labels.ts";
import { capital, listText } from "#words/number-text.ts";
import { deferral, limitText, sourcesNote } from "#words/safety-text.ts";
import { heading, titlesOf } from "../show/heading.ts";
import type { Paint } from "../show/paint.ts";
import { wrap } from "../show/table.ts";
import { sittingCommand } from "../sitting-command.ts";

/** Shows what could make someone ill, and the limits that rule books set. */
export const safetyCommand = sittingCommand({
  name: "safety",
  topics: ["guests", "work"],
  summary: "show what could make someone ill, with the limits that rule books set",
  about: "Cautions by dish, with limits and their sources. Local codes and licensed practice decide.",
  examples: ["tamis safety demo/lantern-supper/sitting.yaml"],
  text: (evening, paint) => safetyText(evening, paint),
  json: (evening) => ({ safety: evening.safety, deferral }),
});

const cautions: Readonly<Record<string, string>> = hazardCautions;

const safetyText = (evening: Evening, paint: Paint): string => {
  const { safety } = evening;
  const title = titlesOf(evening);
  const dishes = [...new Set(safety.points.map((point) => point.dish))].map((source) => {
    // The same is true of each version and each wait; it is said once.
    const points = new Set(
      safety.points
        .filter((point) => point.dish === source)
        .map((point) => pointText(point, safety.region, paint)),
    );
    return `\n${paint.bold(title(source))}\n${[...points].join("")}`;
  });
  return `${heading(evening, paint)}${dishes.join("")}\n${wrap(`${deferral} ${sourcesNote}`, "")}`;
};

const pointText = (point: SafetyPoint, region: string, paint: Paint): string => {
  const names = point.names.length === 0 ? "" : `: ${listText(point.names)}`;
  const broken = point.broken ? ` ${paint.stop("The plan breaks a limit here.")}` : "";
  const guests = point.guests.length === 0 ? "" : ` Graver for ${listText(point.guests)}.`;
  const caution = cautions[point.hazard] ?? "";
  // Core temperatures with their times are ways to the same end: any one of them is the limit.
  const cores = point.limits.filter((limit) => limit.quantity === "core");
  const others = point.limits.filter((limit) => limit.quantity !== "core");
  const told = (limit: CriticalLimit): string => `${limitText(limit, region)} (${limit.source})`;
  const lines = [...(cores.length === 0 ? [] : [cores.map(told).join(", or ")]), ...others.map(told)];
  return (
    wrap(`${capital(hazardLabels[point.hazard])}${names}.${broken}${guests} ${caution}`, "  ") +
    lines.map((line) => wrap(capital(line), "      ", "        ")).join("")
  );
};
