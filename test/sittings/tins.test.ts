import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { count, type Kitchen, type KitchenTin, moment, readCard, scaleCard } from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { sitting } from "../help/dishes.ts";

const tins: readonly KitchenTin[] = [
  { name: "20 cm round tin", form: "round", wideCm: 20, longCm: 20, count: count(4) },
  { name: "21 × 11 cm loaf tin", form: "loaf", wideCm: 11, longCm: 21, count: count(6) },
];
const plain: Kitchen = sitting([], 1).kitchen;
const kitchen: Kitchen = { ...plain, tins };

const cake = (tin: string): string =>
  `Seed cake\n\nServes 8\n\n225 g butter\n225 g caster sugar\n4 eggs\n225 g self-raising flour\n\nMethod\n1. Beat everything together for 3 minutes. Spoon into a ${tin} and bake at 170°C for 45 minutes. Cool in the tin for 20 minutes and turn out.\n`;

const scaled = (tin: string, covers: number, where: Kitchen = kitchen) => {
  const { value, findings } = scaleCard(cake(tin), "card", covers, where);
  if (value.sheet === null) throw new Error("no sheet");
  const needs = value.sheet.equipment.filter((e) => e.kind === "tin" || e.kind === "own");
  return { needs, codes: findings.map((f) => f.code), sheet: value.sheet };
};

describe("a card that is baked in a tin", () => {
  it("goes into the kitchen's, where it has them", () => {
    const { needs, codes } = scaled("20 cm round tin", 24);
    expect(needs).toEqual([{ kind: "tin", name: "20 cm round tin", count: 3, has: 4 }]);
    expect(codes).not.toContain("tin-instead");
  });

  it("goes in turns where there are too few", () => {
    const few = scaled("20 cm round tin", 24).sheet;
    const many = scaled("20 cm round tin", 64);
    expect(many.needs[0]).toMatchObject({ count: 8, has: 4 });
    expect(many.sheet.steps[0]?.minutes?.likely ?? 0).toBeGreaterThan(
      (few.steps[0]?.minutes?.likely ?? 0) + 40,
    );
  });

  it("goes into the nearest else, and says so with the time", () => {
    const { needs, codes } = scaled("23 cm round tin", 8);
    expect(needs).toMatchObject([{ kind: "tin", name: "20 cm round tin", insteadOf: "23 cm round tin" }]);
    expect(codes).toContain("tin-instead");
    expect(codes).toContain("time-carried");
  });

  it("is told as missing where none is near", () => {
    const { needs, codes } = scaled("30 cm round tin", 8);
    expect(needs).toMatchObject([{ kind: "tin", has: 0 }]);
    expect(codes).toContain("tin-missing");
  });

  it("has its own where the kitchen lists none", () => {
    const { needs, codes } = scaled("23 cm round tin", 8, plain);
    expect(needs).toMatchObject([{ kind: "own", has: null }]);
    expect(codes.filter((code) => code.startsWith("tin-"))).toEqual([]);
  });
});

describe("the tins of a kitchen in the plan", () => {
  const crew = [{ name: "Ada", shifts: [{ from: moment(6 * 60), to: moment(22 * 60) }] }];
  const baked = (covers: number, where: Kitchen) => {
    const dishes = ["one", "two"].map((id) => readCard(cake("20 cm round tin"), id, "uk").value);
    const at = sitting(
      dishes.map((d) => d.source),
      covers,
      { crew, kitchen: where },
    );
    const prep = prepFromMenu(menuFromDishes(at, dishes).value).value;
    return { prep, plan: planFromPrep(prep, { tries: 20, seed: 1 }).value };
  };

  it("are in use from the oven until they are turned out, no more at once than there are", () => {
    const ovens = [{ name: "big", shelves: count(6), fan: true, kilowatts: 6 }];
    const { prep, plan } = baked(24, { ...kitchen, ovens });
    const stays = (prep.stays ?? []).filter((s) => s.resource === "20 cm round tin");
    expect(stays.map((s) => s.amount)).toEqual([3, 3]);
    expect(prep.resources.find((r) => r.id === "20 cm round tin")?.capacity).toBe(4);
    // Three and three of four: the first three are washed up before the second go in.
    expect(stays.some((s) => s.to !== null)).toBe(true);
    expect(plan.unplaced).toEqual([]);
    expect(checkFromPlan(prep, plan)).toEqual([]);
  });

  it("share a shelf by their floor", () => {
    const shelves = (covers: number): number =>
      Math.max(
        ...baked(covers, plain).prep.tasks.flatMap((t) =>
          t.segments.flatMap((s) => s.uses.filter((u) => u.resource === "oven").map((u) => u.amount)),
        ),
      );
    expect(shelves(16)).toBe(1);
    expect(shelves(24)).toBe(2);
  });
});

it("pastry is bound by the bowl, and meat by the piece", () => {
  const hands = (text: string, covers: number): number =>
    scaleCard(text, "card", covers, null).value.sheet?.steps[0]?.handsMinutes ?? 0;
  const pastry =
    "Pastry\n\nServes 8\n\n200 g plain flour\n100 g butter\n1 egg\n\nMethod\n1. Bind the flour and butter with the egg.\n";
  const joints = "Rolled pork\n\nServes 8\n\n2 kg pork loin\n\nMethod\n1. Bind the pork with string.\n";
  expect(hands(pastry, 120)).toBeLessThan(30);
  expect(hands(joints, 120)).toBeGreaterThan(30);
});

it("pastry by the kilo is rubbed in by the mixer, bowl by bowl, and never in less time for more", () => {
  const card =
    "Pastry\n\nServes 8\n\n200 g plain flour\n100 g butter\n\nMethod\n1. Rub the butter into the flour.\n";
  const mixer: Kitchen = { ...plain, machines: [{ name: "mixer", count: count(1) }] };
  const hands = (covers: number, where: Kitchen): number =>
    scaleCard(card, "card", covers, where).value.sheet?.steps[0]?.handsMinutes ?? 0;
  expect(hands(8, mixer)).toBe(hands(8, plain));
  expect(hands(600, mixer)).toBeLessThan(hands(600, plain) / 3);
  let before = 0;
  for (let covers = 1; covers < 600; covers += 7) {
    expect(hands(covers, mixer)).toBeGreaterThanOrEqual(before);
    before = hands(covers, mixer);
  }
});
