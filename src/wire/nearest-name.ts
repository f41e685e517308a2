/** Letters to add, drop, change or swap to get from one word to the other. */
const distance = (a: string, b: string): number => {
  const rows = a.length + 1;
  const columns = b.length + 1;
  const table = Array.from({ length: rows }, (_, i) =>
    Array.from({ length: columns }, (_, j) => (i === 0 ? j : j === 0 ? i : 0)),
  );
  const at = (i: number, j: number): number => table[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i < rows; i++) {
    for (let j = 1; j < columns; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, at(i - 2, j - 2) + 1);
      const row = table[i];
      if (row !== undefined) row[j] = best;
    }
  }
  return at(rows - 1, columns - 1);
};

/** The known name that is most like the one written, or "" when none is near: up to a third of its letters may differ. */
export const nearestName = (written: string, known: readonly string[]): string => {
  const word = written.toLowerCase().slice(0, 80);
  let best = "";
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const name of known) {
    const d = distance(word, name.toLowerCase());
    if (d < least) {
      best = name;
      least = d;
    }
  }
  return best;
};
