import { makeStore } from "./store.ts";

/** The screens, in the order of the menu. */
export const screens = [
  "cards",
  "sitting",
  "plan",
  "board",
  "buying",
  "cost",
  "guests",
  "safety",
  "sheet",
  "write-up",
] as const;
/** One of the screens. */
export type Screen = (typeof screens)[number];

/** Where the reader is: a book, a screen, and for some a document. */
type Route = { readonly book: string | null; readonly screen: Screen; readonly path: string | null };

/** Reads "#/book/screen/path/of/document". Whatever is not understood leads to the cards. */
export const routeOf = (hash: string): Route => {
  const [book, screen, ...path] = hash.replace(/^#\/?/, "").split("/").map(decoded);
  return {
    book: book === undefined || book === "" ? null : book,
    screen: screens.find((s) => s === screen) ?? "cards",
    path: path.length === 0 || path[0] === "" ? null : path.join("/"),
  };
};

const decoded = (part: string): string => {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
};

/** The address of a route. */
export const hashOf = ({ book, screen, path }: Route): string =>
  `#/${[book ?? "", screen, ...(path ?? "").split("/")]
    .map(encodeURIComponent)
    .join("/")
    .replace(/\/+$/, "")}`;

/** Where the reader is now. */
export const routeStore = makeStore<Route>(routeOf(""));

/** Follows the address bar. */
export const followAddress = (): void => {
  const look = () => routeStore.update(() => routeOf(location.hash));
  addEventListener("hashchange", look);
  look();
};
