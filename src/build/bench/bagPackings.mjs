import { loadSource } from "../loadSource.mjs";
import { fastest } from "./fastest.mjs";
import { piecesTable } from "./piecesTable.mjs";
import { showRow } from "./showRow.mjs";
import { timed } from "./timed.mjs";

const PIECES = 500;

/** Packing 500 pieces: limits that first fit settles, and limits for which the search takes all its steps. */
export async function bagPackings() {
  const { bags } = await loadSource("src/functions/bindings/bags.ts");
  const { weights } = await loadSource("src/functions/bindings/weights.ts");
  const rows = piecesTable(PIECES, 20);
  // Thirds of a bag, more or less: hardly any three fill one, so that no bound is met.
  const hard = [
    ["Piece", "Weight"],
    ...rows.slice(1).map((_, place) => [place, 20 + ((place * 7919) % 15_001) / 1000]),
  ];
  const cases = { "10 kg": [rows, 10], "3.2 kg": [rows, 3.2], "100 kg, things of 20 to 35 kg": [hard, 100] };
  showRow([`${PIECES} pieces into bags of`, "WEIGHTS", "BAGS", "bags", "bar"]);
  for (const [name, [cells, limit]] of Object.entries(cases)) {
    const times = timed(7, { weights: () => weights(cells), bags: () => bags(cells, limit) });
    const bagCount = Math.max(
      ...bags(cells, limit)
        .slice(1)
        .map((row) => row[2]),
    );
    const [weighing, packing] = [fastest(times.weights), fastest(times.bags)];
    showRow([name, `${weighing.toFixed(1)} ms`, `${packing.toFixed(1)} ms`, bagCount, "under 500 ms"]);
  }
}
