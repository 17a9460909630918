import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { bestOrder } from "../../src/domain/runs/bestOrder";
import { runOf } from "./runOf";

// Runs without opening times: instances of TSPLIB95 (Reinelt), read where they were collected and never copied, against the optima published
// with them. Up to 20 stops the answer must be the optimum and proved; above, no more than a hundredth longer.

const folder = join(__dirname, "../../../shared/reference/tsplib");
const isThere = existsSync(folder);
const optima = (
  isThere ? JSON.parse(readFileSync(join(folder, "optima.json"), "utf8")) : { tsp: {}, atsp: {} }
) as Record<"tsp" | "atsp", Record<string, number>>;
const cases = (["tsp", "atsp"] as const).flatMap((kind) =>
  Object.entries(optima[kind]).map(([name, optimum]) => [name, kind, optimum] as const),
);

(isThere ? test : test.skip).each(isThere ? cases : [["(the reference folder is absent)", "tsp", 0] as const])(
  "%s.%s: a tour of %d",
  (name, kind, optimum) => {
    const minutes = distances(readFileSync(join(folder, `${name}.${kind}`), "utf8"));
    const best = bestOrder(runOf(minutes));
    expect(best.order.length).toBe(minutes.length - 1);
    expect(best.endMs).toBe(best.travelMs);
    if (minutes.length <= 21) {
      expect(best.endMs / 60_000).toBe(optimum);
      expect(best.isProved).toBe(true);
    } else {
      expect(best.endMs / 60_000).toBeGreaterThanOrEqual(optimum);
      expect(best.endMs / 60_000).toBeLessThanOrEqual(optimum * 1.01);
    }
  },
);

/** The distances of an instance, as the format's documentation defines them. */
function distances(text: string): number[][] {
  const size = Number(/DIMENSION\s*:\s*(\d+)/.exec(text)![1]);
  const section = (heading: string): number[] =>
    (new RegExp(`${heading}\\s+([\\d\\s.eE+-]+)`).exec(text)![1] ?? "").trim().split(/\s+/).map(Number);
  if (text.includes("NODE_COORD_SECTION")) {
    const figures = section("NODE_COORD_SECTION");
    const places = Array.from({ length: size }, (_, node) => [figures[node * 3 + 1]!, figures[node * 3 + 2]!] as const);
    return places.map((from) => places.map((to) => geographical(from, to)));
  }
  const figures = section("EDGE_WEIGHT_SECTION");
  if (text.includes("FULL_MATRIX"))
    return Array.from({ length: size }, (_, row) => figures.slice(row * size, (row + 1) * size));
  const table = Array.from({ length: size }, () => Array<number>(size).fill(0));
  for (let row = 0, at = 0; row < size; row++)
    for (let column = 0; column <= row; column++) table[row]![column] = table[column]![row] = figures[at++]!;
  return table;
}

/** TSPLIB95's GEO: degrees and minutes, on a sphere of 6378.388 km, with its own value of pi, cut to whole kilometres. */
function geographical(from: readonly [number, number], to: readonly [number, number]): number {
  const radians = (value: number): number =>
    (3.141592 * (Math.trunc(value) + (5 * (value - Math.trunc(value))) / 3)) / 180;
  const [north1, east1, north2, east2] = [...from, ...to].map(radians) as [number, number, number, number];
  const q1 = Math.cos(east1 - east2);
  const q2 = Math.cos(north1 - north2);
  const q3 = Math.cos(north1 + north2);
  return Math.trunc(6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
}
