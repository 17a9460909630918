import { loadSource } from "../loadSource.mjs";
import { fastest } from "./fastest.mjs";
import { piecesTable } from "./piecesTable.mjs";
import { showRow } from "./showRow.mjs";
import { timed } from "./timed.mjs";

const ROWS = 10_000;
const AS_OF = 46_100;
const LENDER = 3;
const VALUE = 8;

/** Every rule over a sheet of 10,000 pieces, and again after one cell was edited. */
export async function sheetChecks() {
  const { readWorkbook } = await loadSource("src/sheet/readWorkbook.ts");
  const { startChecks } = await loadSource("src/checks/startChecks.ts");
  const { recheck } = await loadSource("src/checks/recheck.ts");
  const values = piecesTable(ROWS, 20);
  const read = (cells) => {
    const { sheets, ...workbook } = workbookOf(cells);
    return { dateSystem: 1900, sheets, tables: readWorkbook({ sheets, ...workbook }).tables };
  };
  const before = read(values);
  // The other rows stay the same arrays, as they do when a host's change event names one row.
  const edit = (column, typed) => {
    const cells = values.map((row, place) => (place === ROWS / 2 ? row.with(column, typed) : row));
    return { ...before, tables: before.tables.map((table) => ({ ...table, cells })) };
  };
  const edits = { value: edit(VALUE, -5), lender: edit(LENDER, "Press ofice 7") };
  const first = startChecks(before, { asOf: AS_OF });
  const times = timed(9, {
    whole: () => startChecks(before, { asOf: AS_OF }),
    value: () => recheck(first, edits.value),
    lender: () => recheck(first, edits.lender),
  });
  showRow([`${ROWS.toLocaleString("en")} rows x 20 columns, every rule`, "findings", "took", "", "bar"]);
  showRow(["the whole sheet", first.findings.length, `${fastest(times.whole).toFixed(0)} ms`, "", "under 300 ms"]);
  for (const what of ["value", "lender"]) {
    const { findings } = recheck(first, edits[what]);
    showRow([`one edited ${what}`, findings.length, `${fastest(times[what]).toFixed(0)} ms`, "", "under 50 ms"]);
  }
}

function workbookOf(values) {
  const sheet = {
    sheetId: "1",
    name: "Pieces",
    visible: true,
    isProtected: false,
    firstRow: 0,
    firstColumn: 0,
    values,
    formulas: values.map((row) => row.map(() => null)),
    tables: [{ name: "Pieces", row: 0, column: 0, rowCount: values.length, columnCount: values[0].length }],
  };
  return { name: "bench", dateSystem: 1900, sheets: [sheet] };
}
