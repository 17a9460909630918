import { isoFromSerial } from "../../src/domain/dates/isoFromSerial";
import { laterows } from "../../src/functions/bindings/laterows";
import { lendertotals } from "../../src/functions/bindings/lendertotals";
import { valueout } from "../../src/functions/bindings/valueout";
import { nameKey } from "../../src/sheet/nameKey";
import { HostError } from "../functions/HostError";
import { standInHost } from "../functions/standInHost";
import figures from "../../sample-workbooks/two-day-shoot.figures.json";
import { sampleWorkbook } from "./sampleWorkbook";
import { serialOf } from "./serialOf";

/**
 * The sample workbook against LibreOffice Calc, which worked out the same figures from its own built-in
 * functions (the source stands in the figures' file).
 */
let takeAway: () => void;
let loans: unknown[][];
const asOf = serialOf(figures.asOf);

beforeAll(async () => {
  takeAway = standInHost();
  const sheet = (await sampleWorkbook()).sheets.find((each) => each.name === "Loans")!;
  const { row, rowCount } = sheet.tables[0]!;
  loans = sheet.values.slice(row, row + rowCount).map((cells) => [...cells]);
});
afterAll(() => takeAway());

test("every due date is the one Calc works out", () => {
  const [items, dues] = [loans[0]!.indexOf("Item no."), loans[0]!.indexOf("Return due")];
  const found: Record<string, (string | null)[]> = {};
  for (const row of loans.slice(1)) {
    if (row[items] === null || row[items] === undefined) continue;
    const day = row[dues];
    (found[String(row[items])] ??= []).push(typeof day === "number" ? isoFromSerial(day) : null);
  }
  expect(found).toEqual(figures.due);
});

test("each lender's totals are Calc's, and an unreadable cell is an error there and nowhere else", () => {
  const [headings, ...rows] = lendertotals(loans, asOf);
  const column = (heading: string): number => headings!.indexOf(heading);
  const expected = figures.lenderTotals.filter((row) => row.piecesOut > 0 || row.backUnreadable);
  expect(rows.map((row) => nameKey(row[0] as string)).sort()).toEqual(
    expected.map((row) => nameKey(row.lender)).sort(),
  );
  for (const row of expected) {
    const found = rows.find((candidate) => nameKey(candidate[0] as string) === nameKey(row.lender))!;
    const shown = (heading: string): unknown => found[column(heading)];
    if (row.backUnreadable) {
      expect(shown("Pieces out")).toBeInstanceOf(HostError);
      continue;
    }
    expect([row.lender, shown("Pieces out")]).toEqual([row.lender, row.piecesOut]);
    expect([row.lender, shown("Unvalued")]).toEqual([row.lender, row.unvalued]);
    if (row.valueUnreadable) expect(shown("Value out")).toBeInstanceOf(HostError);
    else expect([row.lender, shown("Value out")]).toEqual([row.lender, row.valueOut]);
    const rest = ["Next due", "Late pieces", "Most days late"].map(shown);
    // In this scenario no due date is blank: where Calc has none, the terms could not be read, and whether
    // such a piece is late cannot be told.
    if (row.noDueDate > 0) for (const cell of rest) expect(cell).toBeInstanceOf(HostError);
    else {
      const nextDue = row.nextDue === null ? "" : serialOf(row.nextDue);
      expect([row.lender, ...rest]).toEqual([row.lender, nextDue, row.latePieces, row.mostDaysLate]);
      // What is late may be readable where something else of that lender's is not.
      if (!row.valueUnreadable) expect([row.lender, shown("Late value")]).toEqual([row.lender, row.lateValue]);
    }
  }
});

test("the late rows are Calc's, in its order", () => {
  const [headings, ...rows] = laterows(loans, asOf);
  const [items, days] = [headings!.indexOf("Item no."), headings!.indexOf("Days late")];
  const late = rows.filter((row) => typeof row[days] === "number").map((row) => [String(row[items]), row[days]]);
  expect(late).toEqual(figures.late);
});

test("one lender's value out is Calc's", () => {
  for (const row of figures.lenderTotals.filter((each) => !each.valueUnreadable && !each.backUnreadable)) {
    const lender = loans[0]!.indexOf("Lender");
    const own = loans.filter((cells, i) => i === 0 || nameKey(String(cells[lender] ?? "")) === nameKey(row.lender));
    expect([row.lender, valueout(own, asOf)]).toEqual([row.lender, row.valueOut]);
  }
});
