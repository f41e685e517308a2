import { expect, it } from "vitest";
import { valueAt, withValue } from "./edit-yaml.ts";

const text = `# for the roof
covers: 24 # paid
courses:
  - name: Soup
    at: "19:20"
`;

it("writes one value and leaves every other letter", () => {
  expect(withValue(text, ["covers"], "30")).toBe(text.replace("24", "30"));
  expect(withValue(text, ["courses", 0, "at"], "19:45")).toBe(text.replace("19:20", "19:45"));
});

it("finds values with their places", () => {
  expect(valueAt(text, ["courses", 0, "name"])).toMatchObject({ text: "Soup" });
});

it.each([
  ["no such key", ["tax"]],
  ["a list is no value", ["courses"]],
])("gives nothing: %s", (_, path) => {
  expect(valueAt(text, path)).toBeNull();
  expect(withValue(text, path, "1")).toBeNull();
});

it("gives nothing on marks that cannot be read", () => {
  expect(valueAt("covers: [", ["covers"])).toBeNull();
});
