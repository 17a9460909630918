import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { limitCache } from "../../src/build/limitCache.mjs";

test("a cache that has grown too large is thrown away, one that has not is kept, and none is no trouble", () => {
  const folder = mkdtempSync(join(tmpdir(), "cache-"));
  const cache = join(folder, "bench");
  try {
    limitCache(cache, 10);
    mkdirSync(join(cache, "deep"), { recursive: true });
    writeFileSync(join(cache, "deep", "0.pack"), "12345");
    writeFileSync(join(cache, "index.pack"), "12345");
    limitCache(cache, 10);
    expect(existsSync(join(cache, "deep", "0.pack"))).toBe(true);
    limitCache(cache, 9);
    expect(existsSync(cache)).toBe(false);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
