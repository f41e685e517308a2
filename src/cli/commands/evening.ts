import { type Evening, whyPlan } from "#engine/index.ts";
import { planJson, planNames } from "#wire/plan-json.ts";
import { moneyText } from "#words/money-text.ts";
import { listText } from "#words/number-text.ts";
import { clashesText } from "../show/clashes.ts";
import { heading, titlesOf } from "../show/heading.ts";
import type { Paint } from "../show/paint.ts";
import { type Remark, tallyOf } from "../show/remarks.ts";
import { tableText, wrap } from "../show/table.ts";
import { sittingCommand } from "../sitting-command.ts";
import { landingsText } from "./plan.ts";

/** Shows the whole evening in one screen. */
export const eveningCommand = sittingCommand({
  name: "evening",
  topics: ["work", "prices", "guests"],
  summary: "show the whole sitting in one screen: courses, purchase, cost, guests",
  about:
    "When each course is due and lands and what its first task is, what is bought, and who needs a swap.",
  examples: ["tamis evening demo/lantern-supper/sitting.yaml"],
  tellsFindings: true,
  text: (evening, paint, _flag, remarks) => eveningText(evening, paint) + remarksText(remarks, paint),
  json: (evening) => ({
    evening: {
      courses: planJson(evening).courses,
      currency: evening.cost.currency,
      purchaseTotal: evening.purchase.total,
      perCover: evening.cost.perCover,
      guestsToSwap: evening.declaration.guestsToSwap,
    },
  }),
});

const eveningText = (evening: Evening, paint: Paint): string => {
  const { currency } = evening.cost;
  const { names } = planNames(evening);
  const unpriced = evening.purchase.lines.filter((line) => line.packs.length === 0 && !line.free).length;
  return (
    `${heading(evening, paint)}\n${paint.bold("Courses")}\n${landingsText(evening)}${clashesText(whyPlan(evening), { ...names, task: names.brief }, paint)}\n` +
    tableText(
      [
        [
          "Purchase",
          moneyText(evening.purchase.total, currency),
          unpriced > 0 ? `${unpriced} on no price list` : "",
        ],
        ["Cost per cover", moneyText(evening.cost.perCover, currency), ""],
      ],
      ["left", "right", "left"],
    ) +
    guestsText(evening, paint)
  );
};

const guestsText = (evening: Evening, paint: Paint): string => {
  const { grid, guestsToSwap } = evening.declaration;
  if (guestsToSwap.length === 0) return "";
  const title = titlesOf(evening);
  const answers = { swap: "swap", check: "ask", no: "nothing serves" } as const;
  const lines = guestsToSwap.map((guest) => {
    const needs = evening.menu.sitting.guests.find((g) => g.name === guest)?.needs ?? [];
    const dishes = grid.flatMap((v) =>
      v.guest === guest && v.answer !== "yes" ? [`${title(v.dish)} (${answers[v.answer]})`] : [],
    );
    return wrap(`${guest} (${listText(needs)}): ${listText(dishes)}`, "  ");
  });
  return `\n${paint.bold("Guests who need another version, or must be asked")}\n${lines.join("")}`;
};

/** How many remarks are told in one screen. */
const toldAtOnce = 6;

/** How many findings there are, and the gravest of them. */
const remarksText = (remarks: readonly Remark[], paint: Paint): string => {
  const grave = (["stop", "warn"] as const).flatMap((severity) =>
    remarks.filter((r) => r.severity === severity),
  );
  const first = grave.slice(0, toldAtOnce).map(({ place, severity, message }) => {
    const mark = severity === "stop" ? paint.stop(severity) : paint.warn(severity);
    return `  ${place.file}:${place.line} ${mark}\n${wrap(message, "    ")}`;
  });
  const rest = grave.length > toldAtOnce ? `  and ${grave.length - toldAtOnce} more\n` : "";
  return `\n${paint.bold("To settle")} (${tallyOf(remarks)})\n${first.join("")}${rest}`;
};
