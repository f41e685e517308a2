import { type LabelRow, labelRows, type NutritionFacts, type Region, type WriteUp } from "#engine/index.ts";
import { allergenLabels, hazardCautions } from "#words/labels.ts";
import { listText } from "#words/number-text.ts";
import { allergenDeferral, deferral } from "#words/safety-text.ts";
import {
  containsLabel,
  couldHoldLabel,
  energyLine,
  labelFigureText,
  noneFound,
  notConfirmedLabel,
  nutrientLabels,
  optionalMark,
  partHeading,
  timeLine,
  writeUpHeadings,
  yieldLine,
} from "#words/write-up-text.ts";
import { writeUpStyle } from "./write-up-style.ts";

/** What a printed card can show beyond its own words. */
type HtmlExtras = {
  readonly language?: string;
  readonly region?: Region;
  /** Nutrition of a portion and of 100 g, when it is to be printed. */
  readonly nutrition?: { readonly perPortion: NutritionFacts; readonly per100g: NutritionFacts };
  /** A script element's text of type application/ld+json. */
  readonly jsonLd?: string;
};

/** A write-up as one HTML file that needs nothing else: semantic, to be printed and read at arm's length. */
export const htmlFromWriteUp = (writeUp: WriteUp, extras: HtmlExtras = {}): string =>
  [
    "<!doctype html>",
    `<html lang="${escapeHtml(extras.language ?? "en-GB")}">`,
    "<head>",
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeHtml(writeUp.title)}</title>`,
    `<style>${writeUpStyle}</style>`,
    ...(extras.jsonLd === undefined
      ? []
      : [`<script type="application/ld+json">${escapeScript(extras.jsonLd)}</script>`]),
    "</head>",
    "<body>",
    "<main>",
    ...articleLines(writeUp, extras),
    "</main>",
    "</body>",
    "</html>",
    "",
  ].join("\n");

/** The five characters that mean something in HTML, as references. */
export const escapeHtml = (text: string): string =>
  text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");

// Inside a script element nothing is unescaped, so that the text may not end it; JSON can say "<" in another way.
const escapeScript = (json: string): string => json.replace(/</g, "\\u003c");

const articleLines = (writeUp: WriteUp, extras: HtmlExtras): readonly string[] => {
  const facts = [yieldLine(writeUp), timeLine(writeUp)].filter((line) => line !== null);
  return [
    "<article>",
    `<h1>${escapeHtml(writeUp.title)}</h1>`,
    ...(facts.length === 0 ? [] : [`<p class="facts">${facts.map(escapeHtml).join(" · ")}</p>`]),
    ...allergenLines(writeUp),
    ...section(writeUpHeadings.ingredients, writeUp.parts.flatMap(partLines)),
    ...section(writeUpHeadings.method, stepLines(writeUp.steps.filter((s) => s.phase === "method"))),
    ...section(writeUpHeadings.toServe, stepLines(writeUp.steps.filter((s) => s.phase === "to-serve"))),
    ...section(writeUpHeadings.keeping, paragraphs(writeUp.keeping)),
    ...section(writeUpHeadings.swaps, paragraphs(writeUp.swaps)),
    ...cautionLines(writeUp),
    ...nutritionLines(writeUp, extras),
    "</article>",
  ];
};

const section = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ["<section>", `<h2>${escapeHtml(heading)}</h2>`, ...lines, "</section>"];

const paragraphs = (texts: readonly string[]): readonly string[] =>
  texts.map((text) => `<p>${escapeHtml(text)}</p>`);

const partLines = ({ name, ingredients }: WriteUp["parts"][number]): readonly string[] => [
  ...(name === null ? [] : [`<h3>${escapeHtml(partHeading(name))}</h3>`]),
  "<ul>",
  ...ingredients.map(({ text, optional }) => {
    const mark = optional && !/optional/i.test(text) ? ` <small>${escapeHtml(optionalMark)}</small>` : "";
    return `<li>${escapeHtml(text)}${mark}</li>`;
  }),
  "</ul>",
];

// One list for each run of steps of one part; the numbers run through.
const stepLines = (steps: WriteUp["steps"]): readonly string[] =>
  steps.flatMap((step, i) => {
    const opens = i === 0 || steps[i - 1]?.part !== step.part;
    const closes = i === steps.length - 1 || steps[i + 1]?.part !== step.part;
    return [
      ...(opens && step.part !== null ? [`<h3>${escapeHtml(partHeading(step.part))}</h3>`] : []),
      ...(opens ? [`<ol start="${i + 1}">`] : []),
      `<li>${escapeHtml(step.text)}</li>`,
      ...(closes ? ["</ol>"] : []),
    ];
  });

const allergenLines = (writeUp: WriteUp): readonly string[] => {
  const named = (check: boolean): string =>
    writeUp.allergens
      .filter((a) => (a.grade === "check") === check)
      .map(
        (a) => `<strong>${escapeHtml(allergenLabels[a.group])}</strong> (${escapeHtml(listText(a.names))})`,
      )
      .join("; ");
  const rows = [
    [containsLabel, named(false)],
    [notConfirmedLabel, named(true)],
    [couldHoldLabel, escapeHtml(listText(writeUp.unknown))],
  ].filter(([, text]) => text !== "");
  return [
    '<section class="allergens">',
    `<h2>${escapeHtml(writeUpHeadings.allergens)}</h2>`,
    ...(rows.length === 0 ? [`<p>${escapeHtml(noneFound)}</p>`] : []),
    ...rows.map(([label, text]) => `<p>${escapeHtml(label ?? "")}: ${text}.</p>`),
    `<p class="small">${escapeHtml(allergenDeferral)}</p>`,
    "</section>",
  ];
};

const cautionLines = (writeUp: WriteUp): readonly string[] =>
  section(
    writeUpHeadings.cautions,
    writeUp.cautions.length === 0
      ? []
      : [
          "<ul>",
          ...[...new Set(writeUp.cautions.map((hazard) => hazardCautions[hazard]))].map(
            (text) => `<li>${escapeHtml(text)}</li>`,
          ),
          "</ul>",
          `<p class="small">${escapeHtml(deferral)}</p>`,
        ],
  );

const nutritionLines = (writeUp: WriteUp, { nutrition, region = "uk" }: HtmlExtras): readonly string[] => {
  if (nutrition === undefined)
    return writeUp.kilocaloriesPerPortion === null
      ? []
      : [`<p class="small">${escapeHtml(energyLine(writeUp.kilocaloriesPerPortion))}</p>`];
  const per100 = labelRows(nutrition.per100g, region);
  const cell = ({ figure, complete, unit }: LabelRow): string =>
    `<td>${escapeHtml(labelFigureText(figure, complete))} ${unit}</td>`;
  return section(writeUpHeadings.nutrition, [
    "<table>",
    '<thead><tr><th scope="col"></th><th scope="col">100 g</th><th scope="col">Portion</th></tr></thead>',
    "<tbody>",
    ...labelRows(nutrition.perPortion, region).map((row, i) => {
      const other = per100[i];
      return `<tr><th scope="row">${escapeHtml(nutrientLabels[row.nutrient])}</th>${other === undefined ? "<td></td>" : cell(other)}${cell(row)}</tr>`;
    }),
    "</tbody>",
    "</table>",
  ]);
};
