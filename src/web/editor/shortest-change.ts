/** A stretch to replace, and with what. */
type TextChange = { readonly from: number; readonly to: number; readonly insert: string };

/** The shortest single stretch that turns one text into another, so that the cursor and the marks stay put. */
export const shortestChange = (before: string, after: string): TextChange => {
  const most = Math.min(before.length, after.length);
  let head = 0;
  while (head < most && before.charCodeAt(head) === after.charCodeAt(head)) head += 1;
  let tail = 0;
  while (
    tail < most - head &&
    before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)
  )
    tail += 1;
  return { from: head, to: before.length - tail, insert: after.slice(head, after.length - tail) };
};

/** A text after edits that do not overlap. */
export const withEdits = (
  text: string,
  edits: readonly {
    readonly span: { readonly start: number; readonly end: number };
    readonly text: string;
  }[],
): string =>
  [...edits]
    .sort((a, b) => b.span.start - a.span.start || b.span.end - a.span.end)
    .reduce((words, { span, text: put }) => words.slice(0, span.start) + put + words.slice(span.end), text);
