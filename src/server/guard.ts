import type { MiddlewareHandler } from "hono";

const localNames: ReadonlySet<string> = new Set(["127.0.0.1", "localhost", "[::1]"]);

/** The name in a Host header or an origin, without its port. */
const nameOf = (host: string): string => host.replace(/:\d+$/, "").toLowerCase();

/**
 * Answers only to this machine's own names, and to pages that it served itself.
 * A page of another site could otherwise reach the server through the browser: by a name that it points here
 * (DNS rebinding), or by sending a form (cross-site request forgery).
 */
export const onlyFromHere: MiddlewareHandler = async (c, next) => {
  const host = c.req.header("host") ?? new URL(c.req.url).host;
  if (!localNames.has(nameOf(host))) return c.json({ error: "host" }, 403);
  const origin = c.req.header("origin");
  if (origin !== undefined && origin !== `http://${host}`) return c.json({ error: "origin" }, 403);
  const site = c.req.header("sec-fetch-site");
  if (site !== undefined && site !== "same-origin" && site !== "none" && c.req.path.startsWith("/api/"))
    return c.json({ error: "origin" }, 403);
  return next();
};

/** What a page may load and who may show it. The editor sets its styles in the page, so styles may stand inline; scripts may not. */
const contentSecurity =
  "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; object-src 'none'; base-uri 'none'; " +
  "form-action 'self'; frame-ancestors 'none'";

/** Headers by which a browser runs nothing but the pages of this server, and shows them in no frame. */
export const securityHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  c.header("Content-Security-Policy", contentSecurity);
  c.header("X-Content-Type-Options", "nosniff");
  c.header("X-Frame-Options", "DENY");
  c.header("Referrer-Policy", "no-referrer");
  c.header("Cross-Origin-Opener-Policy", "same-origin");
  c.header("Cross-Origin-Resource-Policy", "same-origin");
};
