import { readCard } from "#engine/index.ts";
import { kindOfPath } from "#wire/documents.ts";

/** The name a document goes by in lists: a card's title, what a sitting or kitchen calls itself, else its file's name. */
export const titleOf = (path: string, text: string): string => {
  const stem = (path.split("/").at(-1) ?? path).replace(/\.\w+$/, "");
  const kind = kindOfPath(path);
  if (kind === "card") return readCard(text, stem).value.title;
  const key = kind === "sitting" ? "title" : "name";
  const line = kind === "prices" ? null : new RegExp(`^${key}:[ \\t]*(.+)$`, "m").exec(text);
  return (line?.[1] ?? stem).trim().replace(/^(["'])(.*)\1$/, "$2");
};
