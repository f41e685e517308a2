import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bareAction } from "../../../test/help/bare.ts";
import { sitting } from "../../../test/help/dishes.ts";
import { type CardTins, tinFrom } from "../heat/card-tins.ts";
import { tinsTaken } from "../heat/tins-taken.ts";
import { techniqueById } from "../larder/techniques.ts";
import { exactly } from "../measure/estimate.ts";
import { celsius, grams, minutes } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import { actionTime } from "./action-minutes.ts";
import type { Lot } from "./lot.ts";

const kitchen = { ...sitting([], 4).kitchen, burnerKilowatts: 2.5 };

const lot = (kilos: number, more: Partial<Lot> = {}): Lot => ({
  factor: 1,
  portions: 4,
  kilos,
  coldKilos: kilos,
  wet: false,
  batches: null,
  contents: [{ food: "water", grams: kilos * 1000 }],
  water: 0,
  pieces: null,
  ovenInAll: 0,
  tins: null,
  taken: null,
  ...more,
});

const stated = (n: number): Partial<Action> => ({ minutes: { ...exactly(minutes(n)), assumed: false } });

const time = (
  technique: string,
  amount: Lot,
  more: Partial<Action> = {},
  burners = 1,
  loads: readonly number[] = [],
) => {
  const row = techniqueById(technique)!;
  const action = bareAction("a", technique, { station: row.station, attention: row.attention, ...more });
  return actionTime(action, row, amount, { rounds: 1, burners, loads }, kitchen);
};

const beef = (kilos: number, factor: number) =>
  lot(kilos * factor, {
    factor,
    contents: [{ food: "beef-topside", grams: kilos * factor * 1000 }],
    pieces: { grams: grams(kilos * 1000), count: 1, counted: false },
  });

describe("bringing to the boil", () => {
  it("takes mass × heat × rise ÷ power that arrives", () => {
    // 5 kg × 4.18 kJ/(kg·K) × 85 K ÷ (2.5 kW × 0.4) = 1777 s.
    const { minutes: length, because, kilowatts } = time("bring-to-boil", lot(5));
    expect(length.likely).toBeCloseTo(29.6, 0);
    expect(length.low).toBeLessThan(length.likely / 2);
    expect([because, kilowatts]).toEqual(["burner-power", 2.5]);
  });

  it("counts the water that no line lists, and two burners", () => {
    const dry = lot(2, { contents: [{ food: "potato", grams: 2000 }], water: 2.4 });
    expect(time("bring-to-boil", dry).minutes.likely).toBeGreaterThan(20);
    expect(time("bring-to-boil", dry, {}, 2).minutes.likely).toBeCloseTo(
      time("bring-to-boil", dry).minutes.likely / 2,
      6,
    );
  });

  it("keeps what the card states at its size, and carries it by the mass on each burner", () => {
    expect(time("bring-to-boil", lot(2), stated(12)).minutes.likely).toBe(12);
    expect(time("bring-to-boil", lot(6, { factor: 3 }), stated(12)).minutes.likely).toBe(36);
    expect(time("bring-to-boil", lot(6, { factor: 3 }), stated(12), 3).minutes.likely).toBe(12);
    expect(time("bring-to-boil", lot(1, { factor: 0.5 }), stated(12)).minutes.likely).toBe(6);
  });

  it("never goes below what the best burner could do with more than the card has", () => {
    // 20 kg × 4.18 × 85 ÷ (2.5 × 0.84) is 56 minutes, whatever the card hoped.
    expect(time("bring-to-boil", lot(20, { factor: 10 }), stated(2)).minutes.likely).toBeGreaterThan(50);
  });
});

describe("a joint", () => {
  const roast = { station: "oven", attention: "none", celsius: celsius(180) } as const;
  const roasting = (kilos: number, factor: number, n: number | null = 120) =>
    time("roast", beef(kilos, factor), { ...roast, ...(n === null ? {} : stated(n)) }, 1, [1]).minutes.likely;

  it("takes longer as it gets thicker, between the thickness and its square", () => {
    expect(roasting(2, 1)).toBe(120);
    const larger = roasting(2, 1.5) / 120;
    expect(larger).toBeGreaterThan(1.5 ** (1 / 3));
    expect(larger).toBeLessThan(1.5 ** (2 / 3));
    expect(roasting(2, 0.5)).toBeLessThan(120);
  });

  it("becomes two of the card's size at twice the covers", () => {
    expect(roasting(2, 2)).toBeCloseTo(120, 6);
  });

  it("without a time is reckoned by conduction", () => {
    const found = time("roast", beef(2, 1), { ...roast, core: celsius(60) }, 1, [1]);
    expect(found.because).toBe("thickness");
    expect(found.millimetres).toBeGreaterThan(90);
    expect(found.minutes.likely).toBeGreaterThan(60);
    expect(found.minutes.likely).toBeLessThan(150);
  });

  it("thaws for longer than a layer", () => {
    const frozen = time("defrost", beef(4, 1), { station: "fridge", attention: "none" });
    expect(frozen.because).toBe("thickness");
    expect(frozen.minutes.likely).toBeGreaterThan(24 * 60);
  });
});

const round: CardTins = { tin: tinFrom("23 cm round tin")!, loaf: false, count: 1, name: "23 cm round tin" };

describe("a cake in tins", () => {
  const cake = (factor: number) =>
    time(
      "bake",
      lot(1.2 * factor, { factor, tins: round, taken: tinsTaken(round, factor, {}) }),
      { station: "oven", attention: "none", celsius: celsius(170), ...stated(40) },
      1,
      [1],
    );

  it.each([
    ["23 cm round tin", { form: "round", diameter: 0.23 }],
    ["20cm square cake", { form: "rectangle", long: 0.2, wide: 0.2 }],
    ["33 x 23 cm tin", { form: "rectangle", long: 0.33, wide: 0.23 }],
    ["9-inch tin", { form: "round", diameter: 9 * 0.0254 }],
    ["small pots", null],
  ])("of %s is read", (words, tin) => {
    expect(tinFrom(words)).toEqual(tin);
  });

  it("is as long as the card says in tins of the card's depth", () => {
    for (const factor of [1, 2, 5]) expect(cake(factor).minutes.likely).toBeCloseTo(40, 6);
  });

  it("takes longer where it stands deeper, and less where it does not", () => {
    expect(tinsTaken(round, 1.4, {})).toMatchObject({ tins: 1, deeper: 1.4 });
    const deeper = cake(1.4).minutes.likely / 40;
    expect(deeper).toBeGreaterThan(1.4);
    expect(deeper).toBeLessThan(1.4 ** 2);
    expect(cake(2.5).minutes.likely).toBeLessThan(40);
    expect(cake(1.4).because).toBe("thickness");
  });
});

describe("what boils away", () => {
  it("takes longer in a fuller pot, by the cube root, but not below the burner's power", () => {
    expect(time("reduce", lot(1), stated(10)).minutes.likely).toBe(10);
    expect(time("reduce", lot(0.5, { factor: 0.5 }), stated(10)).minutes.likely).toBeCloseTo(
      10 * Math.cbrt(0.5),
      6,
    );
    // Half of 8 kg by 2.5 kW × 0.84: 4 × 2257 ÷ 2.1 s.
    expect(time("reduce", lot(8, { factor: 8 }), stated(10)).minutes.likely).toBeCloseTo(
      (4 * 2257) / 2.1 / 60,
      0,
    );
  });

  it("carries a simmer only where its end is a thickness", () => {
    const twice = lot(4, { factor: 8 });
    expect(time("simmer", twice, stated(20)).minutes.likely).toBe(20);
    expect(
      time("simmer", twice, { ...stated(20), cue: "until it coats a spoon" }).minutes.likely,
    ).toBeCloseTo(40, 6);
  });
});

describe("the cold", () => {
  it("takes longer for a bigger pot in iced water, less for two", () => {
    const pot = (kilos: number) =>
      time("cool-quickly", lot(kilos, { coldKilos: kilos / 4 }), { station: "ice-bath", attention: "mind" });
    expect(pot(2.4).because).toBe("ice-bath");
    expect(pot(2.4).minutes.likely).toBeGreaterThan(30);
    expect(pot(2.4).minutes.likely).toBeLessThan(75);
    expect(pot(5).minutes.likely).toBeGreaterThan(pot(2.4).minutes.likely);
  });

  it("stays within what a cook means by the word", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("cool", "chill", "set-gel", "freeze"),
        fc.double({ min: 0.05, max: 60, noNaN: true }),
        (id, kilos) => {
          const row = techniqueById(id)!;
          const { minutes: length } = time(id, lot(kilos, { coldKilos: kilos / 4 }));
          expect(length.low).toBeGreaterThanOrEqual(row.minutes.low);
          expect(length.high).toBeLessThanOrEqual(row.minutes.high);
          expect(length.low).toBeLessThanOrEqual(length.likely);
          expect(length.likely).toBeLessThanOrEqual(length.high);
        },
      ),
    );
  });
});
