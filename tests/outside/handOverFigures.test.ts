import { loanList } from "../../src/pane/handOver/documents/loanList";
import { returnSlips } from "../../src/pane/handOver/documents/returnSlips";
import { jobOf } from "../../src/pane/handOver/job/jobOf";
import type { HandOverSource } from "../../src/pane/handOver/documents/HandOverSource";
import type { DocumentTable } from "../../src/pane/handOver/paper/DocumentTable";
import { pieceTables } from "../../src/pane/today/pieceTables";
import { nameKey } from "../../src/sheet/nameKey";
import { readWorkbook } from "../../src/sheet/readWorkbook";
import figures from "../../sample-workbooks/two-day-shoot.figures.json";
import { sampleWorkbook } from "./sampleWorkbook";
import { serialOf } from "./serialOf";

/**
 * What is handed over of the sample workbook against LibreOffice Calc, which worked out the same figures from its own
 * built-in functions (the source stands in the figures' file).
 */
let source: HandOverSource;
beforeAll(async () => {
  const workbook = await sampleWorkbook();
  const read = { workbook, ...readWorkbook(workbook) };
  source = {
    read,
    pieces: pieceTables(read.tables),
    looks: null,
    asOf: serialOf(figures.asOf),
    job: jobOf(workbook, {}),
    pictures: [],
    sheetPictures: [],
    lenderKey: null,
    bagLimitGrams: 12_000,
    calendarId: "test",
  };
});

const sumOf = ({ headings, rows }: DocumentTable, lender: string, heading: string): number =>
  rows
    .filter((row) => nameKey(String(row[headings.indexOf("Lender")])) === nameKey(lender))
    .reduce((sum, row) => sum + Number(row[headings.indexOf(heading)] ?? 0), 0);

test("the list of pieces out has as late what Calc has as late", () => {
  const { headings, rows } = loanList(source).table!;
  const late = rows
    .filter((row) => row[headings.indexOf("State")] === "late")
    .map((row) => row[headings.indexOf("Piece")]);
  expect(late.sort()).toEqual(figures.late.map(([piece]) => piece).sort());
});

test("each lender's pieces and value, on its slip and in the list, are Calc's; a value that cannot be read is told", () => {
  const [list, slips] = [loanList(source), returnSlips(source)];
  const readable = figures.lenderTotals.filter(({ backUnreadable }) => !backUnreadable);
  expect(readable.length).toBeGreaterThan(10);
  // A slip lists what comes back on the day besides what is still out.
  const cameBack = new Set(
    source.pieces.flatMap(({ rows }) =>
      rows.filter(({ back }) => back === source.asOf).map((row) => nameKey(String(row.lender))),
    ),
  );
  expect(cameBack.size).toBeLessThan(readable.length);
  for (const { lender, piecesOut, valueOut, valueUnreadable } of readable) {
    for (const { table } of cameBack.has(nameKey(lender)) ? [list] : [list, slips]) {
      expect([lender, sumOf(table!, lender, "Quantity")]).toEqual([lender, piecesOut]);
      if (!valueUnreadable) expect([lender, sumOf(table!, lender, "Value")]).toEqual([lender, valueOut]);
    }
  }
  const untold = figures.lenderTotals.filter(({ valueUnreadable }) => valueUnreadable).length;
  for (const { missing } of [list, slips])
    expect(missing.filter((sentence) => sentence.includes("stands without its value")).length).toBeGreaterThanOrEqual(
      untold,
    );
});
