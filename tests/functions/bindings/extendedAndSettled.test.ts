import { duerows } from "../../../src/functions/bindings/duerows";
import { laterows } from "../../../src/functions/bindings/laterows";
import { lendertotals } from "../../../src/functions/bindings/lendertotals";
import { loanstate } from "../../../src/functions/bindings/loanstate";
import { shortages } from "../../../src/functions/bindings/shortages";
import { valueout } from "../../../src/functions/bindings/valueout";

// A longer loan that was agreed and a piece that was settled change every figure of the loans, as headed and typed in a sheet.

const DAY = 46_083;
const AS_OF = DAY + 10;
const HEADINGS = ["Item", "From", "Insured value", "Date out", "Return due", "Extended until", "Returned", "Settled"];
const rows = [
  HEADINGS,
  ["late", "Orla", 100, DAY, DAY + 7, "", "", ""],
  ["extended", "Orla", 200, DAY, DAY + 7, DAY + 12, "", "no"],
  ["extended, late all the same", "Orla", 400, DAY, DAY + 5, DAY + 9, "", ""],
  ["lost", "Orla", 800, DAY, DAY + 7, "", "", "lost"],
  ["bought", "Halden", 1600, DAY, DAY + 7, "", "", DAY + 8],
  ["not settled yet", "Orla", 3200, DAY, DAY + 12, "", "", "tbc"],
];
const names = (table: unknown): unknown[] => (table as unknown[][]).slice(1).map((row) => row[0]);
const columns = "lender=From";

test("LATEROWS counts from the day it was extended to, and leaves out what is settled", () => {
  const late = laterows(rows, AS_OF, columns) as unknown[][];
  expect(late.slice(1).map((row) => [row[0], row.at(-1)])).toEqual([
    ["late", 3],
    ["extended, late all the same", 1],
  ]);
});

test("DUEROWS does likewise", () => {
  expect(names(duerows(rows, DAY + 5, DAY + 9, columns))).toEqual(["late", "extended, late all the same"]);
  expect(names(duerows(rows, DAY + 10, DAY + 20, columns))).toEqual(["extended", "not settled yet"]);
});

test("LENDERTOTALS and VALUEOUT count neither the lost nor the bought piece, and the next due day is the extended one", () => {
  expect((lendertotals(rows, AS_OF, columns) as unknown[][]).slice(1)).toEqual([
    ["Orla", 4, 3900, DAY + 12, 2, 500, 3, 0, 0],
  ]);
  expect(valueout(rows, AS_OF, columns)).toBe(3900);
});

test("LOANSTATE takes the extended day as the due day, and says what is settled", () => {
  expect(loanstate(DAY, DAY + 12, null, AS_OF)).toBe("due soon");
  for (const settled of ["lost", "bought", "gifted", "x", DAY])
    expect(loanstate(DAY, DAY + 7, null, AS_OF, null, settled)).toBe("settled");
  for (const settled of [null, "", 0, "no", "tbc", "-"])
    expect(loanstate(DAY, DAY + 7, null, AS_OF, null, settled)).toBe("late");
});

test("SHORTAGES leaves out what is settled", () => {
  const returned = [
    ["Item", "Quantity", "Returned", "Quantity back", "Settled"],
    ["cups", 6, DAY, 4, ""],
    ["spoons", 6, DAY, 4, "2 bought"],
  ];
  expect(names(shortages(returned))).toEqual(["cups"]);
});
