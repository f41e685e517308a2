import { expect, it } from "vitest";
import { cardFromText } from "#engine/card-from-text/card-from-text.ts";
import { dishFromCard } from "#engine/dish-from-card/dish-from-card.ts";

it("boils the rest of what only a bit was taken of, with the zest and juice of a fruit listed for both", () => {
  const card = cardFromText(
    "Orange sauce\n\nServes 6\n\n3 oranges, zest and juice\n80g caster sugar\n20g cornflour\n300ml milk\n\nMix the cornflour with a bit of the milk, boil the rest with the zest, juice and sugar.\n",
    "c",
  ).value;
  const { value: dish, findings } = dishFromCard(card, "uk");
  const boil = dish.steps.flatMap((s) => s.actions).find((a) => /boil/.test(a.technique ?? ""));
  const names = boil?.uses.flatMap((u) =>
    u.ingredient === null ? [] : [dish.ingredients[u.ingredient]?.name],
  );
  expect(names?.toSorted()).toEqual(["caster sugar", "milk", "oranges"]);
  expect(findings.map((f) => f.code)).not.toContain("listed-not-used");
});
