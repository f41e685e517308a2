/** JSON as pages hold it, or the offset where it cannot be read on. */
export type JsonRead = { readonly json: unknown } | { readonly brokenAt: number };

/**
 * Reads JSON. Pages break two rules so often that both are forgiven: a comment or CDATA mark around the whole, and bare
 * line breaks and tabs inside strings.
 */
export const parseJson = (text: string): JsonRead => {
  const start = /^(?:\ufeff|\s|<!--|\/\*|\/\/)*(?:<!\[CDATA\[(?:\s|\*\/)*)?/.exec(text)?.[0].length ?? 0;
  const inside = text.slice(start).replace(/(?:\s|\/\/|\/\*|\]\]>|\*\/|-->|;)*$/, "");
  try {
    return { json: JSON.parse(inside) };
  } catch (first) {
    try {
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for.
      return { json: JSON.parse(inside.replace(/[\u0000-\u001f]/g, " ")) };
    } catch {
      const at = /position (\d+)/.exec(first instanceof Error ? first.message : "");
      return { brokenAt: start + (at === null ? inside.length : Number(at[1])) };
    }
  }
};
