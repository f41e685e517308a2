import { expect, it } from "vitest";
import { hashOf, routeOf } from "./route.ts";

it.each([
  ["", { book: null, screen: "cards", path: null }],
  ["#/supper/plan", { book: "supper", screen: "plan", path: null }],
  ["#/supper/cards/cards/soup.txt", { book: "supper", screen: "cards", path: "cards/soup.txt" }],
  ["#/supper/nowhere", { book: "supper", screen: "cards", path: null }],
  ["#/%E0%A4%A/plan", { book: "%E0%A4%A", screen: "plan", path: null }],
] as const)("reads %j", (hash, route) => {
  expect(routeOf(hash)).toEqual(route);
});

it("writes addresses that it reads back", () => {
  const route = { book: "a b", screen: "cards", path: "cards/crème & co.txt" } as const;
  expect(routeOf(hashOf(route))).toEqual(route);
});
