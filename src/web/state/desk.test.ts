import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StoredDocument } from "#wire/documents.ts";
import {
  added,
  arrived,
  type Desk,
  keyOf,
  laidOut,
  saveAnswered,
  saveBegun,
  settled,
  takenAway,
  typed,
} from "./desk.ts";

const stored = (text: string, revision = 1): StoredDocument => ({
  book: "b",
  path: "cards/soup.txt",
  kind: "card",
  title: "Soup",
  text,
  revision,
  savedAt: "2026-05-09T10:00:00.000Z",
});
const key = keyOf("b", "cards/soup.txt");
const at = (desk: Desk) => desk.documents.get(key);
const open = (text = "one") => laidOut([stored(text)], new Map(), true);

describe("the desk", () => {
  it("saves what was typed and says so", () => {
    const typing = typed(open(), key, "two");
    expect(at(typing)).toMatchObject({ text: "two", state: "waiting", basedOn: 1 });
    const done = saveAnswered(saveBegun(typing, key), key, "two", { kind: "saved", revision: 2 });
    expect(at(done)).toMatchObject({ text: "two", base: "two", state: "saved", basedOn: 2 });
  });
  it("waits again when more was typed during the save", () => {
    const more = typed(saveBegun(typed(open(), key, "two"), key), key, "three");
    expect(at(saveAnswered(more, key, "two", { kind: "saved", revision: 2 }))).toMatchObject({
      text: "three",
      state: "waiting",
      basedOn: 2,
    });
  });
  it("keeps the words here when the server is not reached", () => {
    const lost = saveAnswered(typed(open(), key, "two"), key, "two", { kind: "unreached" });
    expect(at(lost)).toMatchObject({ text: "two", state: "kept-here" });
    expect(lost.online).toBe(false);
  });
  it("lets untouched words follow another hand", () => {
    expect(at(arrived(open(), stored("theirs", 2)))).toMatchObject({
      text: "theirs",
      state: "saved",
      basedOn: 2,
    });
  });
  it("puts both versions side by side when both were edited", () => {
    const both = arrived(typed(open(), key, "mine"), stored("theirs", 2));
    expect(at(both)).toMatchObject({
      text: "mine",
      state: "conflict",
      theirs: { text: "theirs", revision: 2 },
    });
    expect(at(settled(both, key, "mine"))).toMatchObject({ text: "mine", state: "waiting", basedOn: 2 });
    expect(at(settled(both, key, "theirs"))).toMatchObject({ text: "theirs", state: "saved", basedOn: 2 });
  });
  it("sees no conflict where both hands wrote the same", () => {
    const same = saveAnswered(typed(open(), key, "two"), key, "two", {
      kind: "conflict",
      current: { text: "two", revision: 5 },
    });
    expect(at(same)).toMatchObject({ state: "saved", basedOn: 5 });
  });
  it("takes up a draft that was left behind, and asks when the server has moved on", () => {
    const draft = new Map([[key, { text: "left", basedOn: 1, kind: "card" as const }]]);
    expect(at(laidOut([stored("one", 1)], draft, true))).toMatchObject({ text: "left", state: "waiting" });
    expect(at(laidOut([stored("two", 2)], draft, true))).toMatchObject({
      text: "left",
      state: "conflict",
      theirs: { text: "two", revision: 2 },
    });
    expect(at(laidOut([], draft, false))).toMatchObject({ text: "left", state: "waiting", basedOn: 0 });
  });
  it("lets a document go when it is taken away, but not words in writing", () => {
    expect(at(takenAway(open(), key))).toBeUndefined();
    expect(at(takenAway(typed(open(), key, "mine"), key))).toMatchObject({ text: "mine", basedOn: 0 });
  });
  it("does not overwrite a card that is there with a new one", () => {
    expect(at(added(open(), "b", "cards/soup.txt", "card", "new"))?.text).toBe("one");
  });
  it("never loses the last words typed, whatever answers and arrivals come between", () => {
    const event = fc.oneof(
      fc.record({ do: fc.constant("type" as const), text: fc.string() }),
      fc.record({ do: fc.constant("begin" as const) }),
      fc.record({ do: fc.constant("saved" as const) }),
      fc.record({ do: fc.constant("unreached" as const) }),
      fc.record({ do: fc.constant("arrive" as const), text: fc.string() }),
    );
    fc.assert(
      fc.property(fc.array(event, { maxLength: 30 }), (events) => {
        let desk: Desk = open();
        let revision = 1;
        let mine: string | null = null;
        let onServer = "one";
        let sent: string | null = null;
        for (const e of events) {
          if (e.do === "type") {
            desk = typed(desk, key, e.text);
            if (at(desk)?.state !== "saved") mine = e.text;
          } else if (e.do === "begin" && at(desk)?.state === "waiting") {
            sent = at(desk)?.text ?? null;
            desk = saveBegun(desk, key);
          } else if (e.do === "saved" && sent !== null) {
            revision += 1;
            desk = saveAnswered(desk, key, sent, { kind: "saved", revision });
            onServer = sent;
            sent = null;
          } else if (e.do === "unreached" && sent !== null) {
            desk = saveAnswered(desk, key, sent, { kind: "unreached" });
            sent = null;
          } else if (e.do === "arrive") {
            revision += 1;
            onServer = e.text;
            desk = arrived(desk, stored(e.text, revision));
          }
          const now = at(desk);
          if (mine !== null && now?.text !== mine)
            // Only words that the server had, and that nobody has touched since, may give way.
            expect(now?.text).toBe(onServer);
          if (now?.state === "saved") mine = null;
        }
      }),
    );
  });
});
