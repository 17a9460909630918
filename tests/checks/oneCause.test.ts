import { runChecks } from "../../src/checks/runChecks";
import type { Cell } from "../../src/sheet/cell";
import type { TableKind } from "../../src/sheet/tableKind";
import { columnLetters } from "./columnLetters";
import { columnNumber } from "./columnNumber";
import { day } from "./day";
import { AS_OF } from "./testRule";
import { tidyWorkbook } from "./tidyWorkbook";
import { type Sample, workbookOf } from "./workbookOf";

/** The tidy workbook with other cells: "pieces!I2" to what is typed there. */
function tidyBut(slips: Readonly<Record<string, Cell>>): Sample {
  const tables = Object.fromEntries(
    Object.entries(tidyWorkbook.tables).map(([kind, rows]) => [kind, rows.map((row) => [...row])]),
  ) as Partial<Record<TableKind, Cell[][]>>;
  for (const [place, typed] of Object.entries(slips)) {
    const [, kind, column, row] = /^(\w+)!([A-Z]+)(\d+)$/.exec(place)!;
    tables[kind as TableKind]![Number(row) - 1]![columnNumber(column!)] = typed;
  }
  return { ...tidyWorkbook, tables };
}

function found(sample: Sample): readonly string[] {
  return runChecks(workbookOf(sample), { asOf: AS_OF }).map(
    ({ ruleId, at }) => `${ruleId} ${at.sheetId}!${columnLetters(at.column)}${at.row + 1}`,
  );
}

test("a workbook in good order has no finding of any rule", () => {
  expect(found(tidyWorkbook)).toEqual([]);
});

// One slip each, typed into the workbook in good order: it must come to one finding, at the cell that is wrong.
test.each<[string, Readonly<Record<string, Cell>>, string]>([
  ["an Out kept as text", { "pieces!I2": "3 Mar 2026" }, "dateAsText pieces!I2"],
  [
    "an Out that could be two days, and the error worked out from it",
    { "pieces!I2": "03/04/26", "pieces!J2": { error: "#VALUE!" } },
    "dateTwoReadings pieces!I2",
  ],
  [
    "an Out that is no date, and the error worked out from it",
    { "pieces!I2": "soon", "pieces!J2": { error: "#VALUE!" } },
    "dateNotRead pieces!I2",
  ],
  [
    "an Out in another century, and the due day worked out from it",
    { "pieces!I2": day("2126-03-03"), "pieces!J2": day("2126-03-18") },
    "dateFarOff pieces!I2",
  ],
  ["a Due kept as text", { "pieces!J4": "13 Mar 2026" }, "dateAsText pieces!J4"],
  ["a Due before Out", { "pieces!J4": day("2026-02-13") }, "datesOutOfOrder pieces!J4"],
  ["a Due in another year", { "pieces!J4": day("1926-03-13") }, "dateFarOff pieces!J4"],
  ["a Due on a Saturday", { "pieces!J4": day("2026-03-14") }, "dueOnClosedDay pieces!J4"],
  ["a Due before the shoot", { "pieces!J4": day("2026-03-09") }, "lookPieceNotThere pieces!J4"],
  ["a Back before Out", { "pieces!M6": day("2026-02-04") }, "datesOutOfOrder pieces!M6"],
  ["a Back that says yes", { "pieces!M6": "yes" }, "dateNotRead pieces!M6"],
  ["a Back kept as text", { "pieces!M6": "4 Mar 2026" }, "dateAsText pieces!M6"],
  ["a Back that was never typed", { "pieces!M6": null, "pieces!N6": null }, "lateNotBack pieces!J6"],
  [
    "a Back that is still to come",
    { "pieces!M6": day("2026-03-06"), "pieces!J6": day("2026-03-06") },
    "backInFuture pieces!M6",
  ],
  [
    "terms that cannot be read, and the error worked out from them",
    { "pieces!K2": "soonish", "pieces!J2": { error: "#VALUE!" } },
    "termsNotRead pieces!K2",
  ],
  ["an error of a formula whose cells can be read", { "pieces!J2": { error: "#NAME?" } }, "formulaError pieces!J2"],
  ["a due day that was forgotten", { "pieces!J4": null, "pieces!K4": "9 days" }, "dueMissing pieces!J4"],
  ["a value kept as text", { "pieces!F2": "£900" }, "valueAsText pieces!F2"],
  ["a value in another currency", { "pieces!F2": "900 €" }, "currencyDisagrees pieces!F2"],
  ["a value that is no amount", { "pieces!F2": "ask Mo" }, "valueNotRead pieces!F2"],
  ["a value that is missing, with its currency", { "pieces!F2": null, "pieces!G2": null }, "valueMissing pieces!F2"],
  ["a value below 0", { "pieces!F2": -900 }, "numberNegative pieces!F2"],
  ["a currency that is missing", { "pieces!G2": null }, "currencyMissing pieces!G2"],
  ["a currency that is misspelt", { "pieces!G2": "GPB" }, "currencyMisspelt pieces!G2"],
  ["a quantity below 0", { "pieces!E2": -1 }, "numberNegative pieces!E2"],
  ["a quantity in words", { "pieces!E6": "a few" }, "quantityNotRead pieces!E6"],
  ["more back than out", { "pieces!N6": 4 }, "quantityBackTooMany pieces!N6"],
  ["0 back", { "pieces!N6": 0 }, "quantityBackZero pieces!N6"],
  ["back, but nobody said when", { "pieces!M6": null, "pieces!J6": day("2026-03-06") }, "quantityBackNoDay pieces!M6"],
  ["settled and back", { "pieces!Q6": "lost", "pieces!E6": 1, "pieces!N6": 1 }, "settledAndBack pieces!Q6"],
  ["a piece number twice", { "pieces!A3": "P1" }, "pieceNumberTwice pieces!A3"],
  ["a lender that is misspelt", { "pieces!D4": "Corbell House" }, "lenderNotListed pieces!D4"],
  ["a lender in capitals", { "pieces!D4": "CORBEL HOUSE" }, "lenderWrittenTwoWays pieces!D4"],
  ["a lender in capitals with a stray space", { "pieces!D4": "CORBEL HOUSE " }, "straySpaces pieces!D4"],
  ["a lender that is missing", { "pieces!D4": null }, "lenderMissing pieces!D4"],
  ["a lender listed twice", { "lenders!A4": "maison orla", "pieces!D7": null }, "lenderListedTwice lenders!A4"],
  ["closed weekdays that cannot be read", { "lenders!C3": "whenever" }, "lenderCellNotRead lenders!C3"],
  ["a weight in words", { "pieces!H2": "heavy" }, "weightNotRead pieces!H2"],
  ["a weight in grams without the unit", { "pieces!H2": 400 }, "weightUnlikely pieces!H2"],
  ["a look that is not listed", { "pieces!O7": "look 9" }, "lookNotListed pieces!O7"],
  ["a piece on another talent", { "pieces!P2": "Cy" }, "lookTalentDisagrees pieces!P2"],
  ["a piece of two looks at once", { "pieces!O2": "1, 2" }, "pieceInTwoLooks pieces!O2"],
  ["a look that cannot be kept in order", { "looks!F2": "2", "looks!F3": null }, "lookOrderImpossible looks!F2"],
  [
    "a look number twice, with what that leaves without a look",
    { "looks!A3": 1, "pieces!O4": null, "pieces!O5": null, "looks!F3": null, "looks!C3": "Ana" },
    "lookNumberTwice looks!A3",
  ],
  ["minutes typed as a time", { "looks!D2": 10 / 1440 }, "durationAsTime looks!D2"],
  ["minutes in words", { "looks!E2": "long" }, "durationNotRead looks!E2"],
  ["minutes that are missing", { "looks!E2": null }, "lookMinutesMissing looks!E2"],
  ["a refund above the receipt", { "receipts!G2": 400 }, "refundTooLarge receipts!G2"],
])("%s comes to one finding", (_, slips, expected) => {
  expect(found(tidyBut(slips))).toEqual([expected]);
});
