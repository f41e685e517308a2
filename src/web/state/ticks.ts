const nameOf = (book: string): string => `tamis:got:${book}`;

/** What is ticked as bought, kept in this browser alone. */
export const keptTicks = (book: string): ReadonlySet<string> => {
  try {
    return new Set(JSON.parse(localStorage.getItem(nameOf(book)) ?? "[]") as string[]);
  } catch {
    return new Set();
  }
};

/** Keeps the ticks; where the browser keeps nothing they last as long as the page. */
export const keepTicks = (book: string, ticks: ReadonlySet<string>): void => {
  try {
    localStorage.setItem(nameOf(book), JSON.stringify([...ticks]));
  } catch {
    // The page still shows them.
  }
};
