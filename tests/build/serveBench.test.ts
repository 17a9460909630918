import { mkdtempSync, writeFileSync } from "node:fs";
import { request, type Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serveBench } from "../../src/build/serveBench.mjs";

let server: Server;
let port: number;
beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>bench</title>");
  ({ server, port } = await serveBench({ folder, port: 0 }));
});
afterAll(() => server.close());

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
}

function ask(path: string, headers: Record<string, string> = {}, method = "GET"): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: "127.0.0.1", port, path, method, headers }, (response) => {
      response.resume();
      response.on("end", () => resolve({ status: response.statusCode, headers: response.headers }));
    });
    asked.on("error", reject).end();
  });
}

test("serves the page under both names of this computer", async () => {
  expect((await ask("/")).status).toBe(200);
  expect((await ask("/", { Host: `localhost:${port}` })).status).toBe(200);
});

test("refuses every other name, so that no page elsewhere can reach in by one of its own", async () => {
  expect((await ask("/", { Host: "bench.example" })).status).toBe(403);
  expect((await ask("/", { Host: `127.0.0.1.example:${port}` })).status).toBe(403);
  expect((await ask("/", { Host: `127.0.0.1:${port + 1}` })).status).toBe(403);
});

test("listens on the loopback address alone", () => {
  expect(server.address()).toMatchObject({ address: "127.0.0.1" });
});

test.each(["/../package.json", "/..%2fpackage.json", "/%2e%2e/%2e%2e/etc/passwd", "/nothing.js", "/%ff"])(
  "gives nothing for %s",
  async (path) => {
    expect((await ask(path)).status).toBe(404);
  },
);

test("takes no other method", async () => {
  expect((await ask("/", {}, "POST")).status).toBe(405);
});

test("tells the page to use its own files alone, and that nobody may frame it", async () => {
  const policy = String((await ask("/")).headers["content-security-policy"]);
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self';");
  expect(policy).toContain("connect-src 'self'");
  expect(policy).toContain("frame-ancestors 'none'");
  expect(policy).not.toMatch(/https?:|\*/);
});

test("sends a file once, and after that only that it has not changed", async () => {
  const { headers } = await ask("/");
  expect((await ask("/", { "If-None-Match": String(headers.etag) })).status).toBe(304);
});

test("takes another port when the one asked for is taken", async () => {
  const second = await serveBench({ folder: tmpdir(), port });
  expect(second.port).not.toBe(port);
  second.server.close();
});
