import { Hono } from "hono";
import { streamSSE } from "hono/streaming";
import type { Bell } from "../changes.ts";
import type { Store } from "../store/store.ts";

/** How often a quiet line is kept alive, in milliseconds; shorter than the usual 30 s after which lines are cut. */
const heartbeat = 15_000;

/**
 * Changes as server-sent events. A page that comes back names the last event it saw (Last-Event-ID, or ?after=) and
 * gets what came since; one that comes anew gets what comes from now on.
 */
export const changeRoutes = (store: Store, bell: Bell): Hono => {
  const app = new Hono();
  app.get("/changes", (c) => {
    const named = c.req.header("last-event-id") ?? c.req.query("after") ?? "";
    let seen = /^\d+$/.test(named) ? Number(named) : store.lastChange();
    return streamSSE(c, async (stream) => {
      await stream.writeSSE({ event: "ready", data: "{}", id: String(seen), retry: 2000 });
      while (!stream.aborted) {
        // Ask for the ring before reading, so that a change in between is not slept through.
        const rung = bell.wait(heartbeat);
        const changes = store.changesAfter(seen);
        for (const { id, ...change } of changes) {
          await stream.writeSSE({ event: "change", data: JSON.stringify(change), id: String(id) });
          seen = id;
        }
        if (!(await rung) && !stream.aborted) await stream.write(": still here\n\n");
      }
    });
  });
  return app;
};
