import { describe, expect, it } from "vitest";
import { variantsOf, type WhatIf } from "./what-if-variants.ts";

const sitting = `title: Shearing lunch
kitchen: range.yaml
covers: 9
courses:
  - {name: Broth, at: "12:30", dishes: [broth]}
  - {name: Tart, at: "2026-06-14 23:50", dishes: [tart]}
crew:
  - name: Una
    shifts: ["2026-06-14 8:00-14:00"]
  - name: Another cook
    shifts: ["2026-06-14 9:00-10:00"]
`;
const kitchen = `name: Barn
burners: {count: 2, kilowatts: 3}
ovens:
  - {name: range, shelves: 2, fan: yes}
fridge litres: 90
`;
const nothing: WhatIf = { covers: 9, cookLike: null, ovenLike: null, burners: 0, course: 0, later: 0 };
const of = (wish: Partial<WhatIf>, words = sitting) =>
  variantsOf({ ...nothing, ...wish }, words, (name) => (name === "range.yaml" ? kitchen : ""));

describe("an evening that would go otherwise", () => {
  it("is nothing where nothing is changed, or where the words cannot be read", () => {
    expect(of({})).toEqual([]);
    expect(of({ later: 15, cookLike: "Una", ovenLike: "range" }, "covers: [")).toEqual([]);
  });

  it.each<[Partial<WhatIf>, string, object]>([
    [{ covers: 12 }, "12 covers", { covers: 12 }],
    [{ burners: 1 }, "1 more burner", { kitchen: { burners: { count: 3, kilowatts: 3 } } }],
    [
      { ovenLike: "range" },
      "another oven like the range",
      {
        kitchen: {
          ovens: [
            { name: "range", shelves: 2, fan: "yes" },
            { name: "another oven", shelves: 2, fan: "yes" },
          ],
        },
      },
    ],
  ])("has one change a variant: %o", (wish, name, changes) => {
    expect(of(wish)).toEqual([{ name, changes }]);
  });

  it("gives another cook the same hours and a name of their own", () => {
    const [variant] = of({ cookLike: "Una" });
    expect(variant?.changes["crew"]).toMatchObject([
      { name: "Una" },
      { name: "Another cook" },
      { name: "Another cook 2", shifts: ["2026-06-14 8:00-14:00"] },
    ]);
  });

  it("moves a course within its day, and leaves it where that would pass midnight", () => {
    expect(of({ later: 15 })[0]).toMatchObject({
      name: "Broth 15 min later",
      changes: { courses: [{ at: "12:45" }, { at: "2026-06-14 23:50" }] },
    });
    expect(of({ course: 1, later: -20 })[0]).toMatchObject({
      name: "Tart 20 min sooner",
      changes: { courses: [{ at: "12:30" }, { at: "2026-06-14 23:30" }] },
    });
    expect(of({ course: 1, later: 15 })).toEqual([]);
  });

  it("puts several together at the end, with both changes of the kitchen", () => {
    const all = of({ covers: 12, burners: 1, ovenLike: "range" });
    expect(all.map(({ name }) => name)).toEqual([
      "12 covers",
      "another oven like the range",
      "1 more burner",
      "all of these",
    ]);
    expect(all[3]?.changes).toMatchObject({
      covers: 12,
      kitchen: { burners: { count: 3 }, ovens: [{}, { name: "another oven" }] },
    });
  });
});
