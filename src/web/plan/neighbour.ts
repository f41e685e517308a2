import type { BarKey } from "./chart.tsx";
import type { Bar, Row } from "./rows.ts";

/** A bar in the row it is drawn in. */
type ShownBar = { readonly row: Row; readonly bar: Bar; readonly key: BarKey };

/**
 * The bar that an arrow key leads to: left and right along the row, up and down to the bar of the next row that
 * begins nearest in time, Home and End to the ends of the row. Undefined where there is none.
 */
export const neighbour = (shown: readonly ShownBar[], now: ShownBar, key: string): ShownBar | undefined => {
  const own = shown.filter((s) => s.row.id === now.row.id);
  const at = own.findIndex((s) => s.key === now.key);
  switch (key) {
    case "ArrowRight":
      return own[at + 1];
    case "ArrowLeft":
      return own[at - 1];
    case "Home":
      return own[0];
    case "End":
      return own.at(-1);
    case "ArrowDown":
    case "ArrowUp": {
      const rows = [...new Set(shown.map((s) => s.row.id))];
      const row = rows[rows.indexOf(now.row.id) + (key === "ArrowDown" ? 1 : -1)];
      return shown
        .filter((s) => s.row.id === row)
        .sort((a, b) => Math.abs(a.bar.from - now.bar.from) - Math.abs(b.bar.from - now.bar.from))[0];
    }
    default:
      return undefined;
  }
};
