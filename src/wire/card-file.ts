const ending = /\.(txt|md)$/i;

/** True for a file that holds a card, by its ending in any case: `.txt` or `.md`. */
export const isCardFile = (path: string): boolean => ending.test(path);

/** The name a card goes by: its file's name without folder and ending. */
export const cardNameOf = (path: string): string => (path.split(/[\\/]/).at(-1) ?? path).replace(ending, "");
