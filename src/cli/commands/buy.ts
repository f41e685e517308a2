import type { Evening, PurchaseLine } from "#engine/index.ts";
import { shelfLabels } from "#words/labels.ts";
import { moneyText } from "#words/money-text.ts";
import { countText, numberText } from "#words/number-text.ts";
import { massText } from "#words/quantity-text.ts";
import { heading } from "../show/heading.ts";
import type { Paint } from "../show/paint.ts";
import { tableText } from "../show/table.ts";
import { sittingCommand } from "../sitting-command.ts";

/** Shows what to buy. */
export const buyCommand = sittingCommand({
  name: "buy",
  topics: ["prices"],
  summary: "show what to buy, in packs, by supplier and shelf",
  about:
    "Prints one list for the whole menu: what is needed as purchased, the packs, what is left over, the price.",
  examples: ["tamis buy demo/lantern-supper/sitting.yaml", "tamis buy --json sitting.yaml"],
  text: (evening, paint) => buyText(evening, paint),
  json: (evening) => ({ purchase: evening.purchase, currency: evening.menu.sitting.currency }),
});

const shelves = Object.keys(shelfLabels) as readonly (keyof typeof shelfLabels)[];

const buyText = (evening: Evening, paint: Paint): string => {
  const { purchase } = evening;
  const { currency } = evening.menu.sitting;
  const bought = purchase.lines.filter((line) => line.packs.length > 0);
  const unpriced = purchase.lines.filter((line) => line.packs.length === 0 && !line.free);
  const free = purchase.lines.filter((line) => line.free);
  const suppliers = purchase.suppliers.map((supplier) => {
    const own = bought.filter((line) => line.supplier === supplier.name);
    const list = tableText(
      own.map((line) => lineCells(line, currency)),
      ["left", "right", "right", "right"],
      "    ",
    );
    const total = `${countText(supplier.lines, "line", "lines")}, ${moneyText(supplier.total, currency)}`;
    return `\n${paint.bold(supplier.name)} (${total})\n${underShelves(own, list.split("\n"))}`;
  });
  const rest = (title: string, lines: readonly PurchaseLine[]): string =>
    lines.length === 0
      ? ""
      : `\n${paint.bold(title)}\n${tableText(
          lines.map((line) => [
            line.name,
            line.needed > 0 ? `need ${massText(line.needed)}` : "amount not known",
          ]),
          ["left", "left"],
          "    ",
        )}`;
  return (
    heading(evening, paint) +
    suppliers.join("") +
    rest("On no price list", unpriced) +
    rest("Not bought", free) +
    `\n${paint.bold("Total")} ${moneyText(purchase.total, currency)}${
      unpriced.length > 0 ? `, without ${countText(unpriced.length, "line", "lines")} that no list has` : ""
    }\n`
  );
};

const lineCells = (line: PurchaseLine, currency: string): readonly string[] => [
  line.packs.map(({ pack, count }) => `${numberText(count)} × ${pack.item}`).join(" + "),
  `need ${massText(line.needed)}`,
  `left ${massText(line.leftOver)}`,
  moneyText(line.cost, currency),
];

/** The rows of a list, each shelf's under its name; the columns stand under each other across shelves. */
const underShelves = (lines: readonly PurchaseLine[], rows: readonly string[]): string =>
  shelves
    .map((shelf) => {
      const own = rows.filter((_, i) => lines[i]?.shelf === shelf);
      return own.length === 0 ? "" : `  ${shelfLabels[shelf]}\n${own.map((row) => `${row}\n`).join("")}`;
    })
    .join("");
