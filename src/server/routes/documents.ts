import { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { z } from "zod";
import { isBookName, isDocumentPath, type SaveConflict, tabHeader } from "#wire/documents.ts";
import type { Bell } from "../changes.ts";
import type { Store } from "../store/store.ts";

/** Largest body that is taken, in bytes: far beyond any card, below what would fill a disk by accident. */
const largestBody = 2_000_000;

const saveSchema = z.strictObject({
  text: z.string(),
  basedOn: z.union([z.number().int().min(0), z.null()]).optional(),
});

/** Routes of documents and their revisions. */
export const documentRoutes = (store: Store, bell: Bell): Hono => {
  const app = new Hono();
  app.get("/documents", (c) => c.json(store.list()));
  app.get("/documents/:book/:path{.+}", (c) => {
    const document = store.get(c.req.param("book"), c.req.param("path"));
    return document === null ? c.json({ error: "no such document" }, 404) : c.json(document);
  });
  app.put(
    "/documents/:book/:path{.+}",
    bodyLimit({
      maxSize: largestBody,
      onError: (c) => c.json({ error: "too long", most: largestBody }, 413),
    }),
    async (c) => {
      const book = c.req.param("book");
      const path = c.req.param("path");
      if (!isBookName(book) || !isDocumentPath(path)) return c.json({ error: "name" }, 400);
      // A form of another site cannot send this type, so it never gets this far.
      if (!/^application\/json\b/.test(c.req.header("content-type") ?? ""))
        return c.json({ error: "content type" }, 415);
      const body = saveSchema.safeParse(await c.req.json().catch(() => null));
      if (!body.success) return c.json({ error: "body" }, 400);
      const tab = c.req.header(tabHeader) ?? null;
      const saved = store.save({ book, path, text: body.data.text, basedOn: body.data.basedOn ?? 0, tab });
      if (saved.outcome === "conflict") {
        const conflict: SaveConflict = { current: saved.current, kept: saved.kept };
        return c.json(conflict, 409);
      }
      if (saved.outcome === "saved") bell.ring();
      return c.json({ revision: saved.revision });
    },
  );
  app.delete("/documents/:book/:path{.+}", (c) => {
    const revision = store.remove(c.req.param("book"), c.req.param("path"), c.req.header(tabHeader) ?? null);
    if (revision === null) return c.json({ error: "no such document" }, 404);
    bell.ring();
    return c.json({ revision });
  });
  app.get("/revisions/:book/:path{.+}", (c) => {
    const revisions = store.revisions(c.req.param("book"), c.req.param("path"));
    return revisions.length === 0 ? c.json({ error: "no such document" }, 404) : c.json(revisions);
  });
  return app;
};
