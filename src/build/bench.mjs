import { fastest, timed } from "./benchTiming.mjs";
import { piecesTable } from "./benchTable.mjs";
import { loadSource } from "./loadSource.mjs";

// Speed as ratios to a peer that runs in the same process, alternating with it, so that a slow machine slows both. Never a test.

const ROWS = 100_000;
const COLUMNS = 20;
const RUNS = 40;
const AS_OF = 46_100;
const WHOLE_TABLE = [
  { id: "lendertotals", bar: 3 },
  { id: "laterows", bar: 5 },
  { id: "valueout", bar: 5 },
];

/** Reads every cell of a table and does as little with it as shows that it was read. */
function barePass(cells) {
  let sum = 0;
  for (const row of cells) {
    for (const cell of row) {
      if (typeof cell === "number") sum += cell;
      else if (typeof cell === "string") sum += cell.length;
    }
  }
  return sum;
}

function showRow(values) {
  console.log(values.map((value, place) => String(value).padEnd(place === 0 ? 44 : 16)).join(""));
}

const tables = [ROWS / 8, ROWS / 4, ROWS / 2, ROWS].map((rowCount) => piecesTable(rowCount, COLUMNS));
const largest = tables.at(-1);
showRow([`${ROWS.toLocaleString("en")} rows x ${COLUMNS} columns`, "bare pass", "function", "ratio", "bar"]);
for (const { id, bar } of WHOLE_TABLE) {
  const call = (await loadSource(`src/functions/bindings/${id}.ts`))[id];
  const times = timed(RUNS, { bare: () => barePass(largest), call: () => call(largest, AS_OF) });
  const ratio = fastest(times.call) / fastest(times.bare);
  showRow([
    id,
    `${fastest(times.bare).toFixed(1)} ms`,
    `${fastest(times.call).toFixed(1)} ms`,
    ratio.toFixed(2),
    `at most ${bar}`,
  ]);
  const sizes = tables.map((cells) => fastest(timed(RUNS, { call: () => call(cells, AS_OF) }).call));
  const growth = sizes.slice(1).map((milliseconds, place) => (milliseconds / sizes[place]).toFixed(2));
  showRow(["  growth at each doubling of the rows", ...growth, "near 2"]);
}
