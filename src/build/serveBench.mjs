import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, sep } from "node:path";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** The page may use its own files and nothing else; the grid and the pane write their styles at run time. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

const HEADERS = {
  "Content-Security-Policy": POLICY,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Cache-Control": "no-cache",
};

/**
 * Serves a folder to this computer alone. Only the loopback name and address are answered: a page elsewhere that
 * points a name of its own at this computer gets nothing. Resolves to the server and its port.
 */
export function serveBench({ folder, port }) {
  const server = createServer((request, response) => {
    const refuse = (status) => response.writeHead(status, HEADERS).end();
    const { port: own } = server.address();
    const hosts = [`127.0.0.1:${own}`, `localhost:${own}`];
    if (!hosts.includes(request.headers.host ?? "")) return refuse(403);
    if (request.method !== "GET" && request.method !== "HEAD") return refuse(405);
    const path = fileFor(folder, request.url ?? "/");
    if (path === null) return refuse(404);
    const { mtimeMs, size } = statSync(path);
    const headers = {
      ...HEADERS,
      "Content-Type": TYPES[extname(path)] ?? "application/octet-stream",
      // Lets the browser keep a file, with what it made of a script, and still ask each time.
      ETag: `"${size}-${Math.round(mtimeMs)}"`,
    };
    if (request.headers["if-none-match"] === headers.ETag) return response.writeHead(304, headers).end();
    response.writeHead(200, headers);
    if (request.method === "HEAD") return response.end();
    createReadStream(path)
      .on("error", () => response.destroy())
      .pipe(response);
  });
  return listen(server, port);
}

function fileFor(folder, url) {
  try {
    const asked = normalize(decodeURIComponent(new URL(url, "http://127.0.0.1").pathname));
    const path = join(folder, asked.endsWith(sep) ? `${asked}index.html` : asked);
    return path.startsWith(folder + sep) && statSync(path).isFile() ? path : null;
  } catch {
    return null;
  }
}

/** Takes the port asked for, or any free one when that is taken. */
function listen(server, port) {
  return new Promise((resolve, reject) => {
    server.once("error", (error) => {
      if (error.code !== "EADDRINUSE" || port === 0) return reject(error);
      resolve(listen(server, 0));
    });
    server.listen(port, "127.0.0.1", () => resolve({ server, port: server.address().port }));
  });
}
