import { describe, expect, it } from "vitest";
import { readCard } from "#engine/index.ts";
import { cardsFromFile } from "#wire/bring/cards-from-file.ts";
import { minutesOfDuration } from "#wire/bring/iso-duration.ts";

const textOf = (path: string, text: string): string => cardsFromFile(path, text).cards[0]?.text ?? "";
const recipe = (more: Readonly<Record<string, unknown>>): string =>
  JSON.stringify({
    "@context": "https://schema.org",
    "@type": "Recipe",
    name: "Plum sponge",
    recipeIngredient: ["400 g plums, halved"],
    recipeInstructions: "Bake the plums for 20 minutes.",
    ...more,
  });
const page = (json: string): string =>
  `<!doctype html><html><head><script type="application/ld+json">${json}</script></head><body><nav>Shop</nav><p>Words</p></body></html>`;

// ISO 8601-1:2019, 5.5.2: durations by designators; the last two are how programs pad them.
describe("ISO 8601 durations", () => {
  it.each([
    ["PT30M", 30],
    ["PT1H30M", 90],
    ["P1DT2H", 1560],
    ["PT0.5H", 30],
    ["PT0,5H", 30],
    ["P1W", 10_080],
    ["PT90S", 1.5],
    ["P0Y0M0DT0H35M0S", 35],
    ["P1M", null],
    ["30 minutes", null],
    ["P", null],
  ])("%s is %s minutes", (text, minutes) => expect(minutesOfDuration(text)).toBe(minutes));
});

// schema.org/Recipe, /HowToStep, /HowToSection, /HowToTip, /QuantitativeValue: the shapes that the vocabulary allows.
describe("schema.org Recipe", () => {
  it.each([
    ["plain", recipe({})],
    ["in a list", `[${recipe({})}]`],
    ["in a graph", JSON.stringify({ "@graph": [{ "@type": "WebSite", name: "x" }, JSON.parse(recipe({}))] })],
    ["with its type spelt out", recipe({ "@type": ["https://schema.org/Recipe", "Thing"] })],
    ["as what a page is about", JSON.stringify({ "@type": "WebPage", mainEntity: JSON.parse(recipe({})) })],
  ])("is found %s", (_, json) => {
    for (const text of [textOf("a.json", json), textOf("a.html", page(json))]) {
      expect(text).toMatch(/^Plum sponge\n/);
      expect(text).toContain("\nIngredients\n400 g plums, halved\n");
      expect(text).toContain("\nMethod\n1. Bake the plums for 20 minutes.\n");
    }
  });

  it.each([
    ["6", "Serves 6"],
    [6, "Serves 6"],
    [["6", "6 generous servings"], "6 generous servings"],
    ["24 buns", "Makes 24 buns"],
    [{ "@type": "QuantitativeValue", value: 8, unitText: "portions" }, "8 portions"],
  ])("reads the yield %j as %s", (recipeYield, line) =>
    expect(textOf("a.json", recipe({ recipeYield }))).toContain(`\n${line}\n`),
  );

  it("keeps sections and steps, however they nest", () => {
    const text = textOf(
      "a.json",
      recipe({
        recipeInstructions: {
          "@type": "ItemList",
          itemListElement: [
            {
              "@type": "HowToSection",
              name: "Sponge",
              itemListElement: [
                { "@type": "HowToStep", text: "<p>Whisk the eggs &amp; sugar.</p>" },
                {
                  "@type": "HowToStep",
                  itemListElement: [
                    { "@type": "HowToDirection", text: "Fold in the flour." },
                    { "@type": "HowToTip", text: "Be quick." },
                  ],
                },
              ],
            },
            { "@type": "HowToStep", name: "Bake", text: "Bake until golden.", performTime: "PT25M" },
          ],
        },
      }),
    );
    expect(text).toContain(
      "Method\nSponge:\n1. Whisk the eggs & sugar.\n2. Fold in the flour. Be quick.\n1. Bake until golden (25 min).\n",
    );
  });

  it("follows what is only pointed to", () => {
    const graph = {
      "@graph": [
        {
          "@type": "Recipe",
          name: "Tea loaf",
          recipeIngredient: ["1 egg"],
          recipeInstructions: [{ "@id": "#s1" }],
        },
        { "@id": "#s1", "@type": "HowToStep", text: "Beat the egg." },
      ],
    };
    expect(textOf("a.json", JSON.stringify(graph))).toContain("1. Beat the egg.");
  });

  it("gives a dish with its times and amounts", () => {
    const text = textOf(
      "a.json",
      recipe({
        recipeYield: "8",
        totalTime: "PT1H10M",
        recipeIngredient: ["1⁄2 cup sugar", "2 &frac12; tsp salt"],
      }),
    );
    expect(text).toContain("Total time: 1 h 10 min");
    const { value: dish } = readCard(text, "a", "us");
    expect(dish.ingredients.map((i) => [i.amounts[0]?.likely, i.food])).toEqual([
      [0.5, expect.stringContaining("sugar")],
      [2.5, expect.stringContaining("salt")],
    ]);
    expect(dish.steps.flatMap((s) => s.actions).find((a) => a.verb === "bake")?.minutes?.likely).toBe(20);
  });

  it("of several in a page makes several cards, named by their titles", () => {
    const two = `[${recipe({})},${recipe({ name: "Crème caramel" })}]`;
    expect(cardsFromFile("p.html", page(two)).cards.map((c) => c.name)).toEqual([
      "plum-sponge",
      "creme-caramel",
    ]);
  });
});

describe("other files", () => {
  it("forgives line breaks inside strings and comment marks", () => {
    const broken = `<!-- ${recipe({}).replace("for 20", "for\n20")} -->`;
    expect(textOf("a.html", page(broken))).toContain("Bake the plums for 20 minutes.");
  });

  it("says where JSON breaks, and takes the page's words instead", () => {
    const { cards, trouble } = cardsFromFile("a.html", page('{"@type":"Recipe",\n"name": oops}'));
    expect(trouble.map((t) => [t.code, t.place.line])).toEqual([
      ["json-broken", 2],
      ["page-as-text", 1],
    ]);
    expect(cards[0]?.text).toBe("Words\n");
  });

  it("takes the marks off Markdown", () => {
    const text = textOf(
      "oat.md",
      "---\ntitle: Oat biscuits\nservings: 12\n---\n## Ingredients\n\n| what | how much |\n|--|--|\n| Oats | 150 g |\n\n* 100 g **soft** [butter](http://a.b)\n- [ ] 1 egg\n\n## Method\n\n1. Melt the butter,\n   stir.\n2. Bake *15 minutes* at 180 &deg;C.\n",
    );
    expect(text).toBe(
      "Oat biscuits\n\nServes 12\n\n## Ingredients\n\nOats 150 g\n\n- 100 g soft butter\n\n- 1 egg\n\n## Method\n\n1. Melt the butter,\nstir.\n2. Bake 15 minutes at 180 °C.\n",
    );
  });

  it.each([
    ["a.json", "[1, 2]", "no-dish"],
    ["a.json", "{", "json-broken"],
    ["a.txt", "  \n", "empty"],
    ["a.txt", "a\0b", "binary"],
    ["a.html", "<html></html>", "no-dish"],
  ])("says why nothing came of %s %j", (path, text, code) => {
    const { cards, trouble } = cardsFromFile(path, text);
    expect(cards).toEqual([]);
    expect(trouble.map((t) => t.code)).toEqual([code]);
  });

  it.each([
    ["HTML", "a.html", "<div>".repeat(60_000)],
    ["JSON", "a.json", `${"[".repeat(60_000)}${"]".repeat(60_000)}`],
    ["Markdown", "a.md", `${">".repeat(3000)} egg`],
  ])("takes %s that nests without end", (_, path, text) => {
    expect(() => cardsFromFile(path, text)).not.toThrow();
  });
});

describe("hostile files", () => {
  it.each([
    ["a list in a list in a list", Array.from({ length: 2000 }, (_, k) => `${"  ".repeat(k)}- x`).join("\n")],
    ["marks in one line", `${"- ".repeat(5000)}x`],
    ["quotations", `${"> ".repeat(5000)}x`],
  ])("takes %s as it is, at once", (_, text) => {
    expect(textOf("deep.md", text)).toContain("x");
  });

  it("takes out codes that steer a terminal", () => {
    const text = textOf(
      "a.json",
      recipe({ name: "Plum\u001b[31m sponge\u0000", recipeIngredient: ["\u001b[2J2 eggs"] }),
    );
    expect(text).not.toMatch(/[^\P{Cc}\n]/u);
    expect(text).toContain("2 eggs");
  });
});
