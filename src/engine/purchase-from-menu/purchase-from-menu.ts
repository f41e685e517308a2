import { combineFindings } from "../findings/combine.ts";
import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { foodById } from "../larder/foods.ts";
import { compareText } from "../measure/compare-text.ts";
import { count, grams, minor } from "../measure/units.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Purchase, PurchaseLine } from "../model/purchase.ts";
import { buy } from "./buy.ts";
import { consolidate } from "./consolidate.ts";
import { gatherWants, type Want } from "./gather-wants.ts";
import { orderLines } from "./order-lines.ts";
import { type Offered, readPacks } from "./read-packs.ts";

// Drawn from the tap, wherever the kitchen is.
const tapWater = "water";

/** One purchase list for the whole menu, in packs of the price lists. */
export const purchaseFromMenu = (menu: Menu): Outcome<Purchase, Finding> => {
  const { sitting } = menu;
  const lists = readPacks(sitting);
  const wants = gatherWants(menu, (key) => lists.value.has(key));
  const findings: Finding[] = [];
  const lines = [...wants].map(([key, wanted]) => {
    const line = lineOf(menu, wanted, lists.value.get(key) ?? []);
    const [first] = wanted;
    if (first !== undefined && isUnpriced(line) && sitting.packs.length > 0)
      findings.push(
        makeFinding("price-missing", first.dish, first.span, { name: line.name, grams: line.needed }),
      );
    return line;
  });
  const unpriced = lines.filter(isUnpriced).length;
  if (sitting.packs.length === 0 && unpriced > 0)
    findings.push(
      makeFinding(
        "prices-none",
        sitting.source,
        { start: 0, end: 0 },
        { foods: unpriced },
        { path: "prices" },
      ),
    );
  const suppliers = supplierTotals(lines);
  return {
    value: {
      lines: orderLines(lines),
      suppliers,
      total: minor(suppliers.reduce((sum, s) => sum + s.total, 0)),
    },
    findings: combineFindings(lists.findings, findings),
  };
};

const isUnpriced = (line: PurchaseLine): boolean => !line.free && line.supplier === null && line.needed > 0;

const lineOf = (menu: Menu, wants: readonly Want[], offered: readonly Offered[]): PurchaseLine => {
  const { region } = menu.sitting;
  const id = wants[0]?.food ?? null;
  const food = id === null ? null : foodById(id);
  const name = (region === "us" ? food?.nameUs : null) ?? food?.name ?? wants[0]?.measured.name ?? "";
  const need = consolidate(wants, region);
  const free = id === tapWater;
  const bought = free ? null : buy(need, offered);
  return {
    food: id,
    name,
    shelf: food?.shelf ?? "other",
    needed: need.needed,
    most: need.most,
    demands: need.demands,
    packs: bought?.packs ?? [],
    bought: bought?.bought ?? (free ? need.needed : grams(0)),
    leftOver: bought?.leftOver ?? grams(0),
    cost: bought?.cost ?? minor(0),
    supplier: bought?.supplier ?? null,
    partsOver: need.partsOver,
    free,
  };
};

const supplierTotals = (lines: readonly PurchaseLine[]): Purchase["suppliers"] => {
  const totals = new Map<string, { lines: number; total: number }>();
  for (const line of lines) {
    for (const name of new Set(line.packs.map((p) => p.pack.supplier))) {
      const before = totals.get(name) ?? { lines: 0, total: 0 };
      const paid = line.packs.reduce(
        (sum, p) => sum + (p.pack.supplier === name ? p.pack.price * p.count : 0),
        0,
      );
      totals.set(name, { lines: before.lines + 1, total: before.total + paid });
    }
  }
  return [...totals]
    .sort(([a], [b]) => compareText(a, b))
    .map(([name, t]) => ({ name, lines: count(t.lines), total: minor(t.total) }));
};
