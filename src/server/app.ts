import { Hono } from "hono";
import { type Bell, makeBell } from "./changes.ts";
import { onlyFromHere, securityHeaders } from "./guard.ts";
import { changeRoutes } from "./routes/changes.ts";
import { documentRoutes } from "./routes/documents.ts";
import type { Store } from "./store/store.ts";
import { webFiles } from "./web-files.ts";

/** The server as a function from request to response; it needs no socket. */
export const makeApp = (store: Store, webFolder: string, bell: Bell = makeBell()): Hono => {
  const app = new Hono();
  app.use(securityHeaders);
  app.use(onlyFromHere);
  app.use("/api/*", async (c, next) => {
    await next();
    c.header("Cache-Control", "no-store");
  });
  app.route("/api", documentRoutes(store, bell));
  app.route("/api", changeRoutes(store, bell));
  app.all("/api/*", (c) => c.json({ error: "no such route" }, 404));
  app.get("*", webFiles(webFolder));
  app.onError((_error, c) => c.json({ error: "a fault of the program itself" }, 500));
  return app;
};
