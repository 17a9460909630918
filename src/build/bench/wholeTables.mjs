import { loadSource } from "../loadSource.mjs";
import { fastest } from "./fastest.mjs";
import { piecesTable } from "./piecesTable.mjs";
import { receiptsTable } from "./receiptsTable.mjs";
import { requestsTable } from "./requestsTable.mjs";
import { returnsTable } from "./returnsTable.mjs";
import { showRow } from "./showRow.mjs";
import { timed } from "./timed.mjs";

const ROWS = 100_000;
const COLUMNS = 20;
const RUNS = 30;
const AS_OF = 46_100;
/** 18 looks of two days, on which nearly every piece is there. */
const LOOKS = [
  ["Look", "Talent", "Change", "Shooting", "Date"],
  ...Array.from({ length: 18 }, (_, look) => [look + 1, "ABCD"[look % 4], 15, 30, AS_OF - (look < 9 ? 15 : 14)]),
];
const ASKED = {
  lendertotals: { bar: 3, on: (call, cells) => call(cells, AS_OF) },
  laterows: { bar: 5, on: (call, cells) => call(cells, AS_OF) },
  valueout: { bar: 5, on: (call, cells) => call(cells, AS_OF) },
  valuebyday: { bar: 5, on: (call, cells) => call(cells, AS_OF - 60, AS_OF + 30) },
  peakvalue: { bar: 5, on: (call, cells) => call(cells) },
  covergap: { bar: 5, on: (call, cells) => call(cells, 20_000_000, 1_900) },
  carried: { bar: 5, on: (call, cells) => call(cells) },
  weights: { bar: 5, on: (call, cells) => call(cells) },
  clashes: { bar: 5, on: (call, cells) => call(cells, LOOKS) },
  duerows: { bar: 5, on: (call, cells) => call(cells, AS_OF, AS_OF + 6) },
  shortages: { bar: 5, table: returnsTable, on: (call, cells) => call(cells) },
  chaserows: { bar: 5, table: requestsTable, on: (call, cells) => call(cells, AS_OF) },
  refunds: { bar: 5, table: receiptsTable, on: (call, cells) => call(cells, AS_OF) },
  jobmoney: { bar: 5, table: receiptsTable, on: (call, cells) => call(cells) },
};

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

/** The whole-table functions against a bare pass of the same table, and how they grow at each doubling of the rows. */
export async function wholeTables() {
  const sizesOf = (table) => [ROWS / 8, ROWS / 4, ROWS / 2, ROWS].map((rowCount) => table(rowCount, COLUMNS));
  // One table at a time, since what else is kept in memory slows whatever makes something new.
  let made = { table: null, sizes: [] };
  showRow([`${ROWS.toLocaleString("en")} rows x ${COLUMNS} columns`, "bare pass", "function", "ratio", "bar"]);
  for (const [name, { bar, table = piecesTable, on }] of Object.entries(ASKED)) {
    const call = (await loadSource(`src/functions/bindings/${name}.ts`))[name];
    if (made.table !== table) made = { table, sizes: sizesOf(table) };
    const tables = made.sizes;
    const largest = tables.at(-1);
    const times = timed(RUNS, { bare: () => barePass(largest), call: () => on(call, largest) });
    const [bare, took] = [fastest(times.bare), fastest(times.call)];
    showRow([name, `${bare.toFixed(1)} ms`, `${took.toFixed(1)} ms`, (took / bare).toFixed(2), `at most ${bar}`]);
    const sizes = tables.map((cells) => fastest(timed(RUNS, { call: () => on(call, cells) }).call));
    const growth = sizes.slice(1).map((milliseconds, place) => (milliseconds / sizes[place]).toFixed(2));
    showRow(["  growth at each doubling of the rows", ...growth, "near 2"]);
  }
}
