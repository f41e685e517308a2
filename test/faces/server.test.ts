import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { makeApp } from "#server/app.ts";
import { loadFolder } from "#server/load-folder.ts";
import { serve } from "#server/serve.ts";
import { openStore, type Store } from "#server/store/store.ts";
import { titleOf } from "#server/title-of.ts";
import { smallSitting } from "./small-sitting.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "tamis-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

let tick = 0;
const clock = (): string => `2026-05-09T10:00:${String(tick++ % 60).padStart(2, "0")}.000Z`;
const newStore = (file = ":memory:"): Store => openStore(file, { now: clock, titleOf });

const home = "http://127.0.0.1:4870";
const appOn = (store: Store) => {
  const app = makeApp(store, join(folder, "web"));
  const put = (path: string, body: unknown, headers: Record<string, string> = {}) =>
    app.request(`${home}/api/documents/${path}`, {
      method: "PUT",
      body: typeof body === "string" ? body : JSON.stringify(body),
      headers: { "content-type": "application/json", "x-tamis-tab": "tab-1", ...headers },
    });
  const get = (path: string, headers: Record<string, string> = {}) =>
    app.request(`${home}${path}`, { headers });
  return { app, put, get };
};

/** Reads a stream of events until it has the text looked for. */
const readUntil = async (response: Response, wanted: string): Promise<string> => {
  const reader = response.body!.getReader();
  const decoder = new TextDecoder();
  let text = "";
  while (!text.includes(wanted)) {
    const { value, done } = await reader.read();
    if (done) break;
    text += decoder.decode(value, { stream: true });
  }
  await reader.cancel();
  return text;
};

describe("documents", () => {
  it("are saved, listed and read, with the title that their words give", async () => {
    const { put, get } = appOn(newStore());
    expect(
      await (await put("lunch/cards/soup.txt", { text: "Nettle soup\n\nServes 4\n", basedOn: 0 })).json(),
    ).toEqual({
      revision: 1,
    });
    await put("lunch/sitting.yaml", { text: "title: Lunch\n", basedOn: 0 });
    const list = await (await get("/api/documents")).json();
    expect(list).toMatchObject([
      { book: "lunch", path: "cards/soup.txt", kind: "card", title: "Nettle soup", revision: 1 },
      { book: "lunch", path: "sitting.yaml", kind: "sitting", title: "Lunch", revision: 1 },
    ]);
    const one = await (await get("/api/documents/lunch/cards/soup.txt")).json();
    expect(one).toMatchObject({ kind: "card", text: "Nettle soup\n\nServes 4\n", revision: 1 });
    expect((await get("/api/documents/lunch/cards/none.txt")).status).toBe(404);
  });

  it("take names with spaces and accents", async () => {
    const { put, get } = appOn(newStore());
    const path = `lunch/${encodeURIComponent("cards")}/${encodeURIComponent("crème brûlée.txt")}`;
    expect((await put(path, { text: "x", basedOn: 0 })).status).toBe(200);
    expect(await (await get(`/api/documents/${path}`)).json()).toMatchObject({
      path: "cards/crème brûlée.txt",
    });
  });

  it("lose nothing when two pages save: the second is told, and its words are kept", async () => {
    const { put, get } = appOn(newStore());
    await put("b/a.txt", { text: "one", basedOn: 0 });
    expect((await put("b/a.txt", { text: "two", basedOn: 1 })).status).toBe(200);
    const late = await put("b/a.txt", { text: "three", basedOn: 1 });
    expect(late.status).toBe(409);
    expect(await late.json()).toEqual({ current: { text: "two", revision: 2 }, kept: 3 });
    const revisions = await (await get("/api/revisions/b/a.txt")).json();
    expect(revisions.map((r: { text: string; origin: string }) => [r.text, r.origin])).toEqual([
      ["one", "saved"],
      ["two", "saved"],
      ["three", "aside"],
    ]);
    // Having seen what stands, the page saves on top of it.
    expect(await (await put("b/a.txt", { text: "two and three", basedOn: 2 })).json()).toEqual({
      revision: 4,
    });
    expect((await (await get("/api/documents/b/a.txt")).json()).text).toBe("two and three");
  });

  it("make no revision when nothing changed", async () => {
    const { put } = appOn(newStore());
    await put("b/a.txt", { text: "one", basedOn: 0 });
    expect(await (await put("b/a.txt", { text: "one", basedOn: 1 })).json()).toEqual({ revision: 1 });
    expect(await (await put("b/a.txt", { text: "one", basedOn: 0 })).json()).toEqual({ revision: 1 });
  });

  it("keep their revisions when they are deleted, and can come back", async () => {
    const { app, put, get } = appOn(newStore());
    await put("b/a.txt", { text: "one", basedOn: 0 });
    const gone = await app.request(`${home}/api/documents/b/a.txt`, { method: "DELETE" });
    expect(await gone.json()).toEqual({ revision: 2 });
    expect((await get("/api/documents/b/a.txt")).status).toBe(404);
    expect(await (await get("/api/documents")).json()).toEqual([]);
    expect(await (await get("/api/revisions/b/a.txt")).json()).toHaveLength(2);
    expect(await (await put("b/a.txt", { text: "two", basedOn: 0 })).json()).toEqual({ revision: 3 });
    expect((await app.request(`${home}/api/documents/b/none.txt`, { method: "DELETE" })).status).toBe(404);
  });

  it.each([
    ["a hidden file", "b/.a.txt"],
    ["a way upwards", `b/${encodeURIComponent("../a.txt")}`],
    ["an unknown ending", "b/a.exe"],
    ["a book that is a way upwards", `${encodeURIComponent("../b")}/a.txt`],
  ])("refuse %s", async (_, path) => {
    expect((await appOn(newStore()).put(path, { text: "x", basedOn: 0 })).status).toBe(400);
  });

  it.each([
    ["no JSON", "text"],
    ["no text", { basedOn: 0 }],
    ["an unknown key", { text: "x", basedOn: 0, more: 1 }],
    ["a revision that is none", { text: "x", basedOn: "1" }],
  ])("refuse a body with %s", async (_, body) => {
    expect((await appOn(newStore()).put("b/a.txt", body)).status).toBe(400);
  });

  it("refuse a body that is too long", async () => {
    const text = "x".repeat(2_000_001);
    expect((await appOn(newStore()).put("b/a.txt", { text, basedOn: 0 })).status).toBe(413);
  });

  it("outlive the process", () => {
    const file = join(folder, "tamis.sqlite");
    const first = newStore(file);
    first.save({ book: "b", path: "a.txt", text: "one", basedOn: 0, tab: null });
    first.close();
    const second = newStore(file);
    expect(second.get("b", "a.txt")).toMatchObject({ text: "one", revision: 1 });
    second.close();
  });
});

describe("the guard", () => {
  const save = { text: "x", basedOn: 0 };
  it.each([
    ["another host's name", { host: "kitchen.example" }, 403],
    ["another host's name with our port", { host: "kitchen.example:4870" }, 403],
    ["a page of another origin", { origin: "http://kitchen.example" }, 403],
    ["a page of another port", { origin: "http://127.0.0.1:9999" }, 403],
    ["no origin at all", { origin: "null" }, 403],
    ["a request from another site", { "sec-fetch-site": "cross-site" }, 403],
    ["a form", { "content-type": "text/plain" }, 415],
    ["its own page", { origin: home, "sec-fetch-site": "same-origin" }, 200],
    ["its own page by name", { host: "localhost:4870", origin: "http://localhost:4870" }, 200],
  ])("answers %s as it should", async (_, headers, status) => {
    const { put } = appOn(newStore());
    const response = await put("b/a.txt", save, { host: "127.0.0.1:4870", ...headers });
    expect(response.status).toBe(status);
  });

  it("sends headers that keep other pages and scripts out", async () => {
    const { headers } = await appOn(newStore()).get("/api/documents");
    expect(headers.get("content-security-policy")).toContain("default-src 'self'");
    expect(headers.get("content-security-policy")).not.toContain("script-src");
    expect(headers.get("content-security-policy")).toContain("frame-ancestors 'none'");
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("cache-control")).toBe("no-store");
    expect((await appOn(newStore()).get("/api/nothing")).status).toBe(404);
  });
});

describe("changes", () => {
  it("reach an open page, with the tab that made them", async () => {
    const { put, get } = appOn(newStore());
    const stream = await get("/api/changes");
    expect(stream.headers.get("content-type")).toContain("text/event-stream");
    const heard = readUntil(stream, "event: change");
    await put("b/a.txt", { text: "one", basedOn: 0 });
    const text = await heard;
    expect(text).toContain("event: ready");
    expect(text).toContain('data: {"book":"b","path":"a.txt","revision":1,"tab":"tab-1","deleted":false}');
  });

  it("that were missed come when the page is back; those kept aside are told to nobody", async () => {
    const store = newStore();
    const { put, get } = appOn(store);
    await put("b/a.txt", { text: "one", basedOn: 0 });
    const seen = store.lastChange();
    await put("b/a.txt", { text: "two", basedOn: 1 });
    await put("b/a.txt", { text: "late", basedOn: 1 });
    await put("b/c.txt", { text: "three", basedOn: 0 });
    const text = await readUntil(await get("/api/changes", { "last-event-id": String(seen) }), "c.txt");
    expect(text).not.toContain('"revision":1,"tab":"tab-1","deleted":false}\nid: 1\n');
    expect(text).toContain('"path":"a.txt","revision":2');
    expect(text).not.toContain('"revision":3');
    expect(text).toContain('"path":"c.txt","revision":1');
  });
});

describe("a folder of files", () => {
  const write = (files: Readonly<Record<string, string>>): string => {
    const lunch = join(folder, "lunch");
    mkdirSync(join(lunch, "cards"), { recursive: true });
    for (const [name, text] of Object.entries(files)) writeFileSync(join(lunch, name), text);
    return lunch;
  };

  it("is read once, and again only where it changed", () => {
    const store = newStore();
    const lunch = write({ ...smallSitting, "notes.docx": "no document" });
    expect(loadFolder(store, lunch)).toMatchObject({ book: "lunch", aside: [] });
    expect(store.list().map((d) => d.path)).toEqual(Object.keys(smallSitting).toSorted());
    expect(loadFolder(store, lunch).loaded).toEqual([]);
    write({ "shop.csv": "supplier,item,food,size,unit,price\n" });
    expect(loadFolder(store, lunch).loaded).toEqual(["shop.csv"]);
    expect(store.get("lunch", "shop.csv")?.revision).toBe(2);
  });

  it("does not overwrite what was edited in the app; the file's text is kept beside it", () => {
    const store = newStore();
    const lunch = write(smallSitting);
    loadFolder(store, lunch);
    store.save({ book: "lunch", path: "shop.csv", text: "edited", basedOn: 1, tab: null });
    write({ "shop.csv": "from the file" });
    expect(loadFolder(store, lunch)).toMatchObject({ loaded: [], aside: ["shop.csv"] });
    expect(store.get("lunch", "shop.csv")).toMatchObject({ text: "edited", revision: 2 });
    expect(
      store
        .revisions("lunch", "shop.csv")
        .map((r) => [r.text, r.origin])
        .at(-1),
    ).toEqual(["from the file", "file-aside"]);
    expect(loadFolder(store, lunch).aside).toEqual([]);
  });

  it("keeps folders of one name in books of their own", () => {
    const store = newStore();
    const [one, other] = ["spring", "autumn"].map((year) => {
      const lunch = join(folder, year, "lunch");
      mkdirSync(lunch, { recursive: true });
      writeFileSync(join(lunch, "soup.txt"), `Soup of ${year}\n`);
      return lunch;
    });
    expect([one, other, one].map((lunch) => loadFolder(store, lunch!).book)).toEqual([
      "lunch",
      "lunch-2",
      "lunch",
    ]);
    expect(store.get("lunch", "soup.txt")?.text).toBe("Soup of spring\n");
    expect(store.get("lunch-2", "soup.txt")?.text).toBe("Soup of autumn\n");
  });

  it("reads files as they were saved: UTF-16 by its mark, else Windows-1252 where it is not UTF-8", () => {
    const store = newStore();
    const lunch = write(smallSitting);
    const text = "Crème brûlée\n";
    writeFileSync(join(lunch, "wide.txt"), Buffer.from(`\uFEFF${text}`, "utf16le"));
    writeFileSync(join(lunch, "old.txt"), Buffer.from(text, "latin1"));
    loadFolder(store, lunch);
    expect(["wide.txt", "old.txt"].map((path) => store.get("lunch", path)?.text)).toEqual([text, text]);
  });
});

describe("the web app's files", () => {
  it("are served, and ways that are no file lead to the page; nothing outside is", async () => {
    mkdirSync(join(folder, "web"));
    writeFileSync(join(folder, "web", "index.html"), "<!doctype html>page");
    writeFileSync(join(folder, "web", "main.js"), "1;");
    writeFileSync(join(folder, "secret.txt"), "secret");
    const { get } = appOn(newStore());
    expect(await (await get("/")).text()).toContain("page");
    expect(await (await get("/lunch/plan")).text()).toContain("page");
    const script = await get("/main.js");
    expect(script.headers.get("content-type")).toContain("text/javascript");
    expect((await get("/none.js")).status).toBe(404);
    for (const way of ["/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt", "/%"])
      expect(await (await get(way)).text()).not.toContain("secret");
  });
});

describe("on a socket", () => {
  it("answers on loopback, takes the next port when one is taken, and closes", async () => {
    mkdirSync(join(folder, "lunch", "cards"), { recursive: true });
    for (const [name, text] of Object.entries(smallSitting)) writeFileSync(join(folder, "lunch", name), text);
    const options = {
      dataFolder: join(folder, "data"),
      webFolder: join(folder, "web"),
      folder: join(folder, "lunch"),
    };
    const first = await serve({ ...options, port: 0 });
    const port = Number(new URL(first.url).port);
    const second = await serve({ ...options, dataFolder: join(folder, "other"), port });
    expect(Number(new URL(second.url).port)).toBeGreaterThan(port);
    const list = await (await fetch(`${first.url}/api/documents`)).json();
    expect(list).toHaveLength(Object.keys(smallSitting).length);
    const strange = await new Promise<number | undefined>((resolve) => {
      request(`${first.url}/api/documents`, { headers: { host: "kitchen.example" } }, (response) => {
        response.resume();
        resolve(response.statusCode);
      }).end();
    });
    expect(strange).toBe(403);
    // An open stream of changes does not hold the server up.
    const stream = await fetch(`${first.url}/api/changes`);
    await Promise.all([first.close(), second.close()]);
    await stream.body?.cancel().catch(() => undefined);
    await expect(fetch(`${first.url}/api/documents`)).rejects.toThrow();
    expect(
      readFileSync(join(folder, "data", "tamis.sqlite"))
        .subarray(0, 15)
        .toString(),
    ).toBe("SQLite format 3");
  });
});
