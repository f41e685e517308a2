import { describe, expect, it } from "vitest";
import { count, type Kitchen, scaleCard } from "#engine/index.ts";
import { sitting } from "../../../test/help/dishes.ts";

const kitchen: Kitchen = { ...sitting([], 1).kitchen, fryers: count(0) };

const sheetOf = (text: string, covers: number) => {
  const { sheet } = scaleCard(text, "card", covers, kitchen).value;
  if (sheet === null) throw new Error("no sheet");
  return sheet;
};

const buns =
  "Seeded buns\n\nMakes 24\n\n500 g strong white flour\n7 g dried yeast\n300 ml milk\n\nMethod\n1. Knead everything for 10 minutes and prove for 1 hour.\n2. Cut it in 24, shape into rounds and lay on two lined trays. Bake at 200°C for 18 minutes.\n";
const creams =
  "Bay creams\n\nServes 6\n\n500 ml double cream\n3 leaves of gelatine\nzest of 1 lime\njuice of 1 lime\n4 peppercorns\na pinch of salt\n\nMethod\n1. Warm the cream with the zest, peppercorns and salt for 5 minutes and stir in the gelatine and the juice.\n2. Pour into six moulds and chill for 4 hours.\n";
const potatoes =
  "Plain potatoes\n\nServes 4\n\n1 kg potatoes\n\nMethod\n1. Put the potatoes in cold salted water, bring to the boil and simmer for 20 minutes. Drain.\n";

describe("the words of a step that count", () => {
  it.each([
    [
      "pieces and trays",
      buns,
      60,
      [
        ["24", 60],
        ["two lined trays", 5],
      ],
    ],
    [
      "never less than one",
      buns,
      1,
      [
        ["24", 1],
        ["two lined trays", 1],
      ],
    ],
    ["nothing at the card's own size", buns, 24, []],
    ["moulds", creams, 40, [["six moulds", 40]]],
    ["no sizes and no times", potatoes, 40, []],
  ] as const)("%s", (_, card, covers, expected) => {
    const { steps } = sheetOf(card, covers);
    expect(steps.flatMap((s) => s.counts.map((c) => [c.words, c.here]))).toEqual(expected);
  });
});

describe("a line", () => {
  it("says which part of a food it is where the words do not", () => {
    const { lines } = sheetOf(creams, 12);
    expect(lines.map((l) => l.portion)).toEqual([null, null, "zest", "juice", null, null]);
  });

  it("counts no peppercorns by the hundred", () => {
    const counted = (covers: number) =>
      sheetOf(creams, covers).lines.find((l) => l.name === "peppercorns")?.pieces?.value ?? null;
    expect(counted(12)).toBe(8);
    expect(counted(120)).toBeNull();
  });

  it("in step says what it is a share of", () => {
    const bases = sheetOf(creams, 12).lines.map((l) => l.base);
    expect(bases).toEqual([null, "what-it-sets", null, null, "taste", "taste"]);
  });
});

describe("what a dish needs of the kitchen", () => {
  it("has its own moulds in it, of which no kitchen tells", () => {
    const own = sheetOf(creams, 40).equipment.filter((e) => e.kind === "own");
    expect(own).toEqual([{ kind: "own", name: "mould", count: 40, has: null }]);
  });

  it("asks for no fryer where a pan of fat does", () => {
    const fritters =
      "Corn fritters\n\nServes 4\n\n300 g sweetcorn\n120 g plain flour\n1 litre sunflower oil, for deep-frying\n\nMethod\n1. Mix the sweetcorn and the flour.\n2. Heat the oil to 180°C in a deep pan and deep-fry spoonfuls in batches for 3 minutes.\n";
    const { equipment, steps } = sheetOf(fritters, 40);
    expect(equipment.map((e) => e.kind)).not.toContain("fryer");
    const [fried] = steps.flatMap((s) => s.vessels).filter((v) => v.verb.includes("fry"));
    expect(fried?.fillings).toBe(1);
  });
});

describe("water that no line lists", () => {
  it("covers what is in it, and its salt goes by the water", () => {
    const [water] = sheetOf(potatoes, 40).steps.flatMap((s) => s.water ?? []);
    // Ten kilos as bought are 7.5 peeled: USDA SR28, refuse 25 %.
    expect(water?.litres).toBeCloseTo(1.2 * 7.5, 6);
    expect(water?.saltGrams).toBeCloseTo(10 * 1.2 * 7.5, 6);
  });

  it("is none where a line lists it", () => {
    const card = potatoes.replace("1 kg potatoes\n", "1 kg potatoes\n2 litres water\n");
    expect(sheetOf(card, 40).steps.flatMap((s) => s.water ?? [])).toEqual([]);
  });
});

it("pours what a card tells by the bottle or the fruit, once there is a jug of it", () => {
  const pears =
    "Pears\n\nServes 6\n\n6 pears\n1 bottle of red wine\n1 tbsp cider vinegar\n\nMethod\n1. Bring the wine and vinegar to the boil and poach the pears in it for 25 minutes.\n";
  const units = (covers: number) => sheetOf(pears, covers).lines.map((l) => l.amount?.unit);
  expect(units(6)).toEqual(["g", "ml", "g"]);
  expect(units(120)).toEqual(["g", "ml", "ml"]);
});

it("tells no dishes of the card's where the kitchen's own trays do for them", () => {
  const plums =
    "Baked plums\n\nServes 12\n\n1.5 kg plums\n150 g light brown sugar\n\nMethod\n1. Lay the plums in two dishes with the sugar. Bake at 170°C for 35 minutes.\n";
  const own = (where: Kitchen | null) => {
    const { sheet } = scaleCard(plums, "card", 120, where).value;
    return [
      sheet?.equipment.some((e) => e.kind === "own"),
      sheet?.steps.some((s) => s.counts.length > 0),
      sheet?.equipment.some((e) => e.kind === "tray"),
    ];
  };
  expect(own(kitchen)).toEqual([false, false, true]);
  expect(own(null)).toEqual([true, true, false]);
});
