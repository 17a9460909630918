import { readdirSync } from "node:fs";
import { join } from "node:path";

const TOP = join(__dirname, "../..");
const FOLDERS = ["src", "tests", "shared", "sample-workbooks"];

function paths(): string[] {
  return FOLDERS.flatMap((folder) =>
    readdirSync(join(TOP, folder), { recursive: true, encoding: "utf8" }).map((path) => `${folder}/${path}`),
  );
}

/** The paths that are one and the same to a disk that does not tell upper from lower case, as on Windows and macOS. */
function alikes(all: readonly string[]): string[][] {
  const byKey = new Map<string, Set<string>>();
  for (const path of all) {
    const key = path.toLowerCase();
    byKey.set(key, (byKey.get(key) ?? new Set()).add(path));
  }
  return [...byKey.values()].filter(({ size }) => size > 1).map((group) => [...group]);
}

test("paths that differ in case alone are found", () => {
  expect(alikes(["a/One", "a/one", "b/one"])).toEqual([["a/One", "a/one"]]);
});

test("no two files differ in case alone", () => {
  expect(alikes(paths())).toEqual([]);
});

test("no two modules differ in case alone once the ending is left away, as imports leave it", () => {
  expect(alikes(paths().map((path) => path.replace(/(?:\.d)?\.(?:tsx?|m?ts|[mc]?js|json)$/, "")))).toEqual([]);
});
