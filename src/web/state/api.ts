import {
  type DocumentChange,
  type DocumentSummary,
  type SaveConflict,
  type SaveRequest,
  type StoredDocument,
  tabHeader,
} from "#wire/documents.ts";

/** A text with the number it is kept under. */
export type Version = { readonly text: string; readonly revision: number };

/** What came of a save. "unreached" may be tried again; "refused" may not. */
export type SaveAnswer =
  | { readonly kind: "saved"; readonly revision: number }
  | { readonly kind: "conflict"; readonly current: Version }
  | { readonly kind: "unreached" }
  | { readonly kind: "refused"; readonly status: number };

/** Names this tab to the server, so that it is not told of its own saves. */
const tabName = crypto.randomUUID?.() ?? String(Math.random()).slice(2);

const addressOf = (book: string, path: string): string =>
  `/api/documents/${encodeURIComponent(book)}/${path.split("/").map(encodeURIComponent).join("/")}`;

/** All documents with their texts; null when the server is not reached or refuses. */
export const fetchDocuments = async (): Promise<readonly StoredDocument[] | null> => {
  try {
    const answer = await fetch("/api/documents");
    if (!answer.ok) return null;
    const listed = (await answer.json()) as readonly DocumentSummary[];
    const whole = await Promise.all(listed.map(({ book, path }) => fetchDocument(book, path)));
    return whole.every((d) => d !== null) ? whole : null;
  } catch {
    return null;
  }
};

/** One document; null when it is not there or the server is not reached. */
export const fetchDocument = async (book: string, path: string): Promise<StoredDocument | null> => {
  try {
    const answer = await fetch(addressOf(book, path));
    return answer.ok ? ((await answer.json()) as StoredDocument) : null;
  } catch {
    return null;
  }
};

/** Saves a text that was written on top of the revision `basedOn`; 0 for a new document. */
export const saveDocument = async (
  book: string,
  path: string,
  text: string,
  basedOn: number,
): Promise<SaveAnswer> => {
  try {
    const answer = await fetch(addressOf(book, path), {
      method: "PUT",
      headers: { "Content-Type": "application/json", [tabHeader]: tabName },
      body: JSON.stringify({ text, basedOn } satisfies SaveRequest),
    });
    if (answer.status === 409) {
      const { current } = (await answer.json()) as SaveConflict;
      return { kind: "conflict", current };
    }
    if (answer.ok) {
      const { revision } = (await answer.json()) as { revision: number };
      return { kind: "saved", revision };
    }
    return answer.status >= 500 || answer.status === 429
      ? { kind: "unreached" }
      : { kind: "refused", status: answer.status };
  } catch {
    return { kind: "unreached" };
  }
};

/** Listens for what others write, for as long as the page is open. The browser reaches again by itself. */
export const listenForChanges = (
  heard: (change: DocumentChange) => void,
  reached: (online: boolean) => void,
): void => {
  const events = new EventSource("/api/changes");
  events.onopen = () => reached(true);
  events.onerror = () => reached(false);
  const read = (event: MessageEvent<string>) => {
    const change = JSON.parse(event.data) as DocumentChange;
    if (change.tab !== tabName) heard(change);
  };
  events.addEventListener("change", read);
};
