/** Orders texts by UTF-16 code units, the same on every machine. Negative when a comes first. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
