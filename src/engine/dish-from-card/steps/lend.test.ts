import { expect, it } from "vitest";
import { actions } from "../../../../test/help/read-method.ts";

const told = (...method: string[]): string =>
  actions("plums, sugar", ...method)
    .map((a) => {
      const m = a.minutes;
      const heat = `${a.celsius === null ? "" : ` c${a.celsius}`}${a.core === null ? "" : ` core ${a.core}`}`;
      return `${a.technique}${m === null || m.assumed ? "" : ` ${m.likely}`}${heat}`;
    })
    .join("; ");

it.each<[method: readonly string[], expected: string]>([
  [["Boil the plums fast.", "After 12 minutes, taste it."], "boil 12; taste"],
  [["Boil the sugar.", "Start testing: it sets at 105."], "boil c105; taste c105"],
  [["Boil the sugar.", "Check with a thermometer: 105."], "boil; taste"],
  [["Leave the plums in the sugar for a year."], "stand 525600"],
])("a time or a heat told afterwards is that of what went on: %s", (method, expected) => {
  expect(told(...method)).toBe(expected);
});
