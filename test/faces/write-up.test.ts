import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { WriteUp } from "#engine/index.ts";
import { count, exactly, minutes, writeUpCard } from "#engine/index.ts";
import { escapeHtml, htmlFromWriteUp } from "#wire/html-from-write-up.ts";
import { isoDuration, recipeJsonLd } from "#wire/recipe-json-ld.ts";

const writeUp: WriteUp = {
  title: "Plum & almond tart",
  portions: exactly(count(8)),
  yieldText: "Serves 8",
  handsMinutes: minutes(25),
  totalMinutes: minutes(95),
  parts: [
    { name: null, ingredients: [{ text: "8 plums", optional: false }] },
    {
      name: "pastry",
      ingredients: [
        { text: "200 g plain flour", optional: false },
        { text: "a scrape of nutmeg", optional: true },
      ],
    },
  ],
  steps: [
    { part: "pastry", phase: "method", text: "Rub in & chill.", minutes: minutes(30) },
    { part: null, phase: "method", text: "Fill <and> bake.", minutes: minutes(40) },
    { part: null, phase: "to-serve", text: "Cut into 8.", minutes: null },
  ],
  keeping: ["Keeps 2 days in a tin."],
  swaps: ["Without nuts: leave out the almonds."],
  allergens: [
    { group: "gluten", grade: "certain", names: ["plain flour"] },
    { group: "soya", grade: "check", names: ["dark chocolate"] },
  ],
  unknown: ["moon dust"],
  cautions: ["raw-egg"],
  kilocaloriesPerPortion: 312,
  diets: [],
};

describe("a write-up as HTML", () => {
  const html = htmlFromWriteUp(writeUp);

  it("has one main heading, sections, and lists that number through", () => {
    expect(html.match(/<h1>/g)).toHaveLength(1);
    for (const heading of ["Ingredients", "Method", "To serve", "Keeping", "Swaps", "Allergens", "Cautions"])
      expect(html).toContain(`<h2>${heading}</h2>`);
    expect(html).toContain('<ol start="2">');
    expect(html.match(/<ol/g)?.length).toBe(html.match(/<\/ol>/g)?.length);
    expect(html.match(/<ul/g)?.length).toBe(html.match(/<\/ul>/g)?.length);
  });

  it("escapes the cook's words", () => {
    expect(html).toContain("<title>Plum &amp; almond tart</title>");
    expect(html).toContain("Fill &lt;and&gt; bake.");
    fc.assert(
      fc.property(fc.string(), (title) => {
        const made = htmlFromWriteUp({
          ...writeUp,
          title,
          steps: [{ part: null, phase: "method", text: title, minutes: null }],
        });
        expect(made).toContain(`<h1>${escapeHtml(title)}</h1>`);
        expect(escapeHtml(title)).not.toMatch(/[<>"']/);
      }),
    );
  });

  it("cannot be ended by the text of its JSON-LD", () => {
    const made = htmlFromWriteUp(writeUp, {
      jsonLd: JSON.stringify({ name: "</script><script>alert(1)</script>" }),
    });
    expect(made.match(/<\/script>/g)).toHaveLength(1);
  });

  it("names what holds, what is not confirmed and what was not understood, and never promises absence", () => {
    expect(html).toContain("Contains: <strong>cereals with gluten</strong> (plain flour).");
    expect(html).toContain("Not confirmed, read the label: <strong>soya</strong> (dark chocolate).");
    expect(html).toContain("could hold anything: moon dust.");
    expect(html).toContain("no promise of absence");
    expect(html).not.toMatch(/\b\w+-free\b|\bis safe\b/i);
  });

  it("marks what is optional, once", () => {
    expect(html).toContain("a scrape of nutmeg <small>(optional)</small>");
    const said = htmlFromWriteUp({
      ...writeUp,
      parts: [{ name: null, ingredients: [{ text: "nutmeg (optional)", optional: true }] }],
    });
    expect(said.match(/optional/g)).toHaveLength(1);
  });
});

describe("a write-up as schema.org Recipe", () => {
  it("gives name, yield, ingredients, sections and steps", () => {
    expect(recipeJsonLd(writeUp)).toEqual({
      "@context": "https://schema.org",
      "@type": "Recipe",
      name: "Plum & almond tart",
      recipeYield: "Serves 8",
      totalTime: "PT1H35M",
      recipeIngredient: ["8 plums", "200 g plain flour", "a scrape of nutmeg"],
      recipeInstructions: [
        {
          "@type": "HowToSection",
          name: "For the pastry",
          itemListElement: [{ "@type": "HowToStep", text: "Rub in & chill." }],
        },
        { "@type": "HowToStep", text: "Fill <and> bake." },
        { "@type": "HowToStep", text: "Cut into 8." },
      ],
    });
  });

  // ISO 8601-1:2019, 5.5.2: durations with designators.
  it.each([
    [0, "PT0M"],
    [45, "PT45M"],
    [60, "PT1H"],
    [90, "PT1H30M"],
    [1440, "P1D"],
    [1500, "P1DT1H"],
    [2885, "P2DT5M"],
  ])("writes %i minutes as %s", (length, text) => {
    expect(isoDuration(length)).toBe(text);
  });

  it("leaves out nutrition that has a gap, and diets when anything is unknown", () => {
    const known = (value: number, complete = true) => ({
      value,
      complete,
      missing: complete ? [] : ["moon dust"],
    });
    const facts = {
      kilojoules: known(1000),
      kilocalories: known(239),
      fat: known(10),
      saturates: known(4, false),
      carbohydrate: known(30),
      sugars: known(12),
      fibre: known(2),
      protein: known(5),
      salt: known(0.5),
    };
    const declaration = writeUpCard("Soup\n\nServes 2\n\n500 g carrots\n", "soup").value.declaration;
    const made = recipeJsonLd(writeUp, {
      declaration: declaration === null ? null : { ...declaration, perPortion: facts },
    });
    expect(made["nutrition"]).toEqual({
      "@type": "NutritionInformation",
      calories: "239 kcal",
      fatContent: "10 g",
      carbohydrateContent: "30 g",
      sugarContent: "12 g",
      fiberContent: "2 g",
      proteinContent: "5 g",
      sodiumContent: "200 mg",
    });
    expect(made).not.toHaveProperty("suitableForDiet");
  });
});
