import { parseDocument } from "yaml";
import { z } from "zod";
import { checked } from "./checked.ts";
import type { Problem } from "./problem.ts";
import type { SittingFiles } from "./sitting-from-files.ts";
import { yamlFile } from "./yaml-file.ts";

/** What a variant of a sitting changes: keys of the sitting; `kitchen` may be a map of keys of the kitchen file. */
export type Variant = { readonly name: string; readonly changes: Readonly<Record<string, unknown>> };

// The messages are words of `Wanted`, which src/words phrases.
const variantSchema = z
  .array(z.looseObject({ name: z.string("text").min(1, "text") }, "map"), "list")
  .min(1, "list");

/** Reads a file of variants; what the changes are worth is seen when the sitting is read with them. */
export const readVariants = (
  name: string,
  text: string,
): { readonly variants: readonly Variant[]; readonly problems: readonly Problem[] } => {
  const { value, problems } = checked(yamlFile(name, text), variantSchema);
  return {
    variants: (value ?? []).map(({ name: title, ...changes }) => ({ name: title, changes })),
    problems,
  };
};

/** The files of a sitting as they would be with the changes of a variant. */
export const filesWith = (files: SittingFiles, { changes }: Variant): SittingFiles => {
  const { kitchen, ...own } = changes;
  const sitting = {
    ...files.sitting,
    text: edited(files.sitting.text, typeof kitchen === "string" ? changes : own),
  };
  if (typeof kitchen !== "object" || kitchen === null) return { ...files, sitting };
  const kitchenFile = parseDocument(sitting.text).get("kitchen");
  return {
    ...files,
    sitting,
    read: (name) => {
      const text = files.read(name);
      return name === kitchenFile && text !== null ? edited(text, { ...kitchen }) : text;
    },
  };
};

const edited = (text: string, changes: Readonly<Record<string, unknown>>): string => {
  const doc = parseDocument(text);
  // A file that cannot be read stays as it is; reading it says why.
  if (doc.errors.length > 0 || Object.keys(changes).length === 0) return text;
  for (const [key, value] of Object.entries(changes)) {
    if (value === null) doc.delete(key);
    else doc.set(key, doc.createNode(value));
  }
  return String(doc);
};
