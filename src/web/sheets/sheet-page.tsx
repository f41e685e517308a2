import type { Region, Sheet, SheetLine, SheetStep } from "#engine/index.ts";
import {
  amountText,
  equipmentText,
  lineName,
  piecesText,
  sheetHeadings,
  sheetSize,
  stepCountsText,
  stepTimeText,
  usMeasureText,
  vesselText,
  whyText,
} from "#words/sheet-text.ts";
import { partHeading } from "#words/write-up-text.ts";

/** One card's sheet. Amounts that are not card × factor bear a mark, and each says on a tap what it is made of. */
export const SheetPage = ({
  sheet,
  region,
  kitchenKnown,
}: {
  sheet: Sheet;
  region: Region;
  kitchenKnown: boolean;
}) => {
  const parts = [...new Set(sheet.lines.map((line) => line.part))];
  const steps = (phase: SheetStep["phase"]) => sheet.steps.filter((step) => step.phase === phase);
  return (
    <article class="sheet">
      <h2>{sheet.title}</h2>
      <p class="soft">{sheetSize(sheet)}</p>
      <h3>{sheetHeadings.ingredients}</h3>
      {sheet.lines.some((line) => line.adjusted.length > 0) && (
        <p class="soft small">* is not the card's amount times the factor. A line opens to say why.</p>
      )}
      {parts.map((part) => (
        <div key={part}>
          {part !== null && <h4>{partHeading(part)}</h4>}
          <ul class="plain weigh">
            {sheet.lines
              .filter((line) => line.part === part)
              .map((line, i) => (
                <li key={i}>
                  <Line line={line} factor={sheet.factor} region={region} />
                </li>
              ))}
          </ul>
        </div>
      ))}
      <Steps title={sheetHeadings.method} steps={steps("method")} />
      <Steps title={sheetHeadings.toServe} steps={steps("to-serve")} />
      {sheet.equipment.length > 0 && (
        <>
          <h3>{sheetHeadings.equipment}</h3>
          <ul>
            {sheet.equipment.map((e) => (
              <li key={`${e.kind}${e.name}`}>{equipmentText(e, kitchenKnown)}</li>
            ))}
          </ul>
        </>
      )}
    </article>
  );
};

const Line = ({ line, factor, region }: { line: SheetLine; factor: number; region: Region }) => {
  const pieces = piecesText(line);
  const words = (
    <>
      <b class="num">
        {amountText(line)}
        {usMeasureText(line, region)}
        {line.adjusted.length > 0 ? " *" : ""}
      </b>
      <span>
        {lineName(line)}
        {pieces !== "" && <span class="soft"> {pieces}</span>}
      </span>
    </>
  );
  const why = whyText(line, factor);
  if (why.length === 0) return <p class="weigh-line">{words}</p>;
  return (
    <details>
      <summary class="weigh-line">{words}</summary>
      <ul>
        {why.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  );
};

const Steps = ({ title, steps }: { title: string; steps: readonly SheetStep[] }) =>
  steps.length === 0 ? null : (
    <>
      <h3>{title}</h3>
      <ol>
        {steps.map((step) => (
          <li key={step.index} value={step.index + 1}>
            {step.text}
            {[
              ...stepCountsText(step),
              stepTimeText(step),
              ...step.vessels.map((vessel) => `${vessel.verb}: ${vesselText(vessel)}`),
            ]
              .filter((text) => text !== "")
              .map((text) => (
                <span key={text} class="soft small">
                  {text}
                </span>
              ))}
          </li>
        ))}
      </ol>
    </>
  );
