import { expect, it } from "vitest";
import { valueAt, withItem, withValue } from "./edit-yaml.ts";

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

it.each([
  ["the key is made", "title: Tea\n", "title: Tea\nfoods:\n  - name: sloe paste\n"],
  ["no line end", "title: Tea", "title: Tea\nfoods:\n  - name: sloe paste\n"],
  [
    "behind the last, before what follows",
    "foods:\n- name: rowan jelly # ours\n\ntitle: Tea\n",
    "foods:\n- name: rowan jelly # ours\n- name: sloe paste\n\ntitle: Tea\n",
  ],
  [
    "as far in as the others",
    "foods:\n    - name: rowan jelly\n      diet: none\n",
    "foods:\n    - name: rowan jelly\n      diet: none\n    - name: sloe paste\n",
  ],
  ["an empty list", "foods: []\ntitle: Tea\n", "foods:\n  - name: sloe paste\ntitle: Tea\n"],
])("adds to a list: %s", (_, before, after) => {
  expect(withItem(before, "foods", { name: "sloe paste" })).toBe(after);
});

it("adds nothing where there is no list", () => {
  expect(withItem("foods: six\n", "foods", { name: "sloe paste" })).toBeNull();
  expect(withItem("foods: [", "foods", { name: "sloe paste" })).toBeNull();
});
