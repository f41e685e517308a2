import { describe, expect, it } from "vitest";
import { type Clash, minutes, moment, type WayOut } from "#engine/index.ts";
import { afterText, changeText, clashText, demandTexts } from "./clash-text.ts";

const names = {
  task: (id: string) => ({ roast: "Roast the joint", carve: "Carve", gratin: "Bake the gratin" })[id] ?? id,
  course: () => "Main",
  date: "2026-10-17",
};

const clash: Clash = {
  lateCourse: null,
  demands: [
    {
      kind: "lag",
      lag: 1,
      side: "most",
      before: "roast",
      after: "carve",
      minutes: minutes(25),
      reason: "hold-limit",
    },
    { kind: "oven-heat" },
  ],
  tasks: ["roast", "gratin", "carve"],
  smallest: true,
  leastChange: [minutes(11), null],
};

const way = (change: WayOut["change"], after: Partial<WayOut["after"]> = {}, least = true): string => {
  const out: WayOut = {
    change,
    clash: 0,
    least,
    after: { status: "on-time", unplaced: 0, lateMinutes: minutes(0), tasks: [], ...after },
  };
  return `${changeText(out.change, names)}: ${afterText(out, names)}`;
};

describe("the words of a clash", () => {
  it("name the work and each demand, what there is before what waits", () => {
    expect(clashText(clash, names)).toBe(
      "There is no place for “Roast the joint”, “Bake the gratin” and “Carve” while all of this holds:",
    );
    expect(demandTexts(clash, names)).toEqual([
      "an oven has one heat at a time",
      "Roast the joint waits at most 25 min for: Carve",
    ]);
  });

  it("end without a colon where nothing else stands in the way", () => {
    expect(clashText({ ...clash, demands: [], tasks: ["roast"] }, names)).toBe(
      "There is no place for “Roast the joint”, whatever else is asked.",
    );
  });

  it.each([
    ["8 l pan", 5, "there are 5 pans of 8 l or more", "5 more pans of 8 l or more"],
    ["2.5 l frying pan", 1, "there is 1 frying pan of 2.5 l or more", "1 more frying pan of 2.5 l or more"],
    ["tray", 3, "there are 3 trays", "3 more trays"],
    ["burner", 1, "there is 1 burner", "1 more burner"],
    ["stick blender", 2, "there are 2 stick blenders", "2 more stick blenders"],
    ["grill", 0, "there is no grill", "0 more grills"],
    ["GN 1/2 65", 2, "there are 2 containers GN 1/2 65 or larger", "2 more containers GN 1/2 65 or larger"],
    ["fridge", 90, "the fridge has room for 90 l", "90 l more room in the fridge"],
    ["R1", 4, "there are 4 R1", "4 more R1"],
  ])("count a %s in words", (resource, n, there, more) => {
    expect(demandTexts({ ...clash, demands: [{ kind: "resource", resource, capacity: n }] }, names)).toEqual([
      there,
    ]);
    expect(changeText({ kind: "resource", resource, more: n }, names)).toBe(more);
  });

  it("say the hour of a course once when it may land neither before nor after it", () => {
    const at = moment(19 * 60 + 30);
    const dues: Clash["demands"] = [
      { kind: "due", course: 3, side: "least", at },
      { kind: "due", course: 3, side: "most", at },
    ];
    expect(demandTexts({ ...clash, demands: dues }, names)).toEqual(["Main lands at 19:30"]);
    expect(demandTexts({ ...clash, demands: dues.slice(1) }, names)).toEqual(["Main lands by 19:30"]);
  });

  it("say that a set is perhaps not the smallest, and which course it makes late", () => {
    expect(clashText({ ...clash, lateCourse: 3, smallest: false, tasks: ["carve"] }, names)).toBe(
      "Main cannot be on time, with “Carve” to do, while all of this holds (perhaps a part of it clashes already):",
    );
  });

  it("cut a long list of waits short, and say by how much", () => {
    const waits = Array.from({ length: 9 }, (_, lag) => ({
      ...clash.demands[0]!,
      lag,
      before: `wait ${lag}`,
    }));
    const texts = demandTexts({ ...clash, demands: waits as Clash["demands"] }, names);
    expect(texts).toHaveLength(5);
    expect(texts.at(-1)).toBe("and 5 more waits");
  });

  it("put each way out as something to do, with what comes of it", () => {
    expect(
      way({
        kind: "lag",
        lag: 1,
        side: "most",
        before: "roast",
        after: "carve",
        was: minutes(25),
        minutes: minutes(36),
      }),
    ).toBe(
      "Let it wait up to 36 min, 11 min longer: Roast the joint, before: Carve: then every course is on time",
    );
    expect(
      way(
        { kind: "hands", from: moment(18 * 60 + 51), to: moment(19 * 60 + 50) },
        { lateMinutes: minutes(10), tasks: ["carve"] },
        false,
      ),
    ).toBe(
      "Another pair of hands from Sat 17 Oct 18:51 to 19:50: then courses are 10 min late in all; what is done then: Carve (perhaps less would do)",
    );
    expect(way({ kind: "course", course: 3, minutes: minutes(20) }, { unplaced: 1 })).toBe(
      "Main 20 min later: then 1 task still has no place",
    );
  });
});
