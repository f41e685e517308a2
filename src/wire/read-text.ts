/** A text, and whether it had to be read by another encoding than UTF-8. */
export type ReadText = { readonly text: string; readonly encoding: "utf-8" | "utf-16" | "windows-1252" };

/** Bytes as text: UTF-8, UTF-16 by its mark, else Windows-1252, which has a character for nearly every byte. */
export const decode = (bytes: Uint8Array): ReadText => {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    const label = bytes[0] === 0xff ? "utf-16le" : "utf-16be";
    return { text: new TextDecoder(label).decode(bytes), encoding: "utf-16" };
  }
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), encoding: "utf-8" };
  } catch {
    // Bytes with zeros are no text in any encoding that people save cards in; the engine says so.
    return bytes.includes(0)
      ? { text: new TextDecoder("utf-8").decode(bytes), encoding: "utf-8" }
      : { text: new TextDecoder("windows-1252").decode(bytes), encoding: "windows-1252" };
  }
};
