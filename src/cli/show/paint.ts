/** Marks text on a terminal; leaves it alone elsewhere. */
export type Paint = {
  readonly bold: (text: string) => string;
  readonly faint: (text: string) => string;
  readonly stop: (text: string) => string;
  readonly warn: (text: string) => string;
};

const plain = (text: string): string => text;
const sgr = (code: number) => (text: string) => `\u001b[${code}m${text}\u001b[0m`;

/** Colour only for a person at a terminal who has not set NO_COLOR (no-color.org: any value but the empty one counts). */
export const paintFor = (terminal: boolean, env: Readonly<Record<string, string | undefined>>): Paint =>
  terminal && (env["NO_COLOR"] ?? "") === "" && env["TERM"] !== "dumb"
    ? { bold: sgr(1), faint: sgr(2), stop: sgr(31), warn: sgr(33) }
    : { bold: plain, faint: plain, stop: plain, warn: plain };
