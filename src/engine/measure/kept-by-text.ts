/**
 * The same function of a text, which keeps what it gave for the texts it was handed last: words of nobody's language are
 * not kept for ever. Only for work that depends on the text alone and gives no undefined.
 */
export const keptByText = <V>(work: (text: string) => V, most: number): ((text: string) => V) => {
  const kept = new Map<string, V>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known;
    if (kept.size >= most) kept.clear();
    const made = work(text);
    kept.set(text, made);
    return made;
  };
};
