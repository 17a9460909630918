import { isProblem } from "../../src/domain/isProblem";
import { sayProblem } from "../../src/domain/wording";
import { readPieces } from "../../src/sheet/readPieces";
import type { PieceRow } from "../../src/domain/loans/pieceRow";
import type { Table } from "../../src/sheet/table";

/** A table read already: the first row holds the field of each column, which stands as its heading too. */
function tableOf(fields: readonly string[], ...rows: readonly (readonly unknown[])[]): Table {
  return {
    kind: "pieces",
    cells: [fields, ...rows],
    headingRow: 0,
    headings: fields,
    columnOf: Object.fromEntries(fields.map((field, column) => [field, column])),
    dataRows: rows.map((_, index) => index + 1),
  } as Table;
}

function only(field: keyof PieceRow, raw: unknown): unknown {
  const value = readPieces(tableOf([field], [raw])).at(0)[field];
  return isProblem(value) ? sayProblem(value) : value;
}

describe("blank cells, however the host sends them, are null", () => {
  test.each([
    "lender",
    "quantity",
    "quantityBack",
    "value",
    "totalValue",
    "currency",
    "weight",
    "out",
    "due",
    "extendedTo",
    "back",
    "shoot",
    "settled",
    "piece",
  ] as const)("%s", (field) => {
    for (const raw of [null, undefined, "", " ", 0, { type: "FormattedNumber", basicValue: 0, numberFormat: "0" }])
      expect(only(field, raw)).toBeNull();
  });
});

test.each([
  ["lender", "  Maison Orla ", "Maison Orla"],
  ["lender", 1854, "1854"],
  ["out", 46083.75, 46083],
  ["out", "2 Mar 2026", 46083],
  ["out", "soon", 'out, row 2: "soon" is not a date; type it like 2026-03-05 or 5 Mar 2026.'],
  ["back", { type: "Error", basicValue: "#REF!" }, "back, row 2 holds the error #REF!; mend that cell first."],
  ["quantity", 3, 3],
  ["quantity", "2 pcs", 2],
  ["quantity", -1, expect.stringContaining("quantity, row 2")],
  ["value", 95.5, 95.5],
  ["value", "£1,250.00", 1250],
  ["value", -5, 'value, row 2: "-5" cannot be used; give an amount of 0 or more.'],
  ["value", "ask", expect.stringContaining('value, row 2: "ask" cannot be used')],
  ["settled", "lost", true],
  ["settled", 46083, true],
  ["settled", true, true],
  ["settled", false, false],
  ["settled", "no", false],
  ["settled", "-", false],
  ["weight", "800 g", { grams: 800, bareAmount: null, isGuess: false }],
  ["weight", 1.2, { grams: null, bareAmount: 1.2, isGuess: false }],
] as const)("%s %j is read as %j", (field, raw, expected) => {
  expect(only(field, raw)).toEqual(expected);
});

describe("the currency of a row", () => {
  const currencies = (fields: readonly string[], ...rows: readonly (readonly unknown[])[]): unknown => {
    const pieces = readPieces(tableOf(fields, ...rows));
    return { hasCurrencies: pieces.hasCurrencies, read: rows.map((_, index) => pieces.at(index).currency) };
  };

  test("is what the Currency column says, by code, sign or name", () => {
    expect(currencies(["value", "currency"], [5, "gbp"], [5, "€"], [5, " "])).toEqual({
      hasCurrencies: true,
      read: ["GBP", "EUR", null],
    });
  });

  test("is, without that column, the sign of the amount where signs differ", () => {
    expect(currencies(["value"], ["£5"], ["5 €"], [5])).toEqual({ hasCurrencies: true, read: ["GBP", "EUR", null] });
  });

  test("is the one sign in use, also for amounts without it", () => {
    expect(currencies(["value"], [5], ["£5"])).toEqual({ hasCurrencies: false, read: ["GBP", "GBP"] });
  });

  test("is the heading's, where neither the row nor the amount says one", () => {
    const table: Table = {
      ...tableOf(["value"], [5], ["€5"], ["£5"]),
      hintOf: { value: { currency: "GBP", unit: null } },
    };
    const pieces = readPieces(table);
    expect([pieces.hasCurrencies, pieces.at(0).currency, pieces.at(1).currency, pieces.at(2).currency]).toEqual([
      true,
      "GBP",
      "EUR",
      "GBP",
    ]);
    const inPounds = readPieces({ ...table, dataRows: [1, 3] });
    expect([inPounds.hasCurrencies, inPounds.at(0).currency]).toEqual([false, "GBP"]);
  });

  test("is none where nothing says one", () => {
    expect(currencies(["value"], [5], ["5.00"])).toEqual({ hasCurrencies: false, read: [null, null] });
  });

  test("and an amount that says another is a problem, but a bare $ contradicts no dollar", () => {
    const pieces = readPieces(tableOf(["value", "currency"], ["£5", "EUR"], ["$5", "CAD"]));
    const value = pieces.at(0).value;
    expect(isProblem(value) && sayProblem(value)).toBe(
      'value, row 2: "£5" cannot be used; give an amount in EUR, the currency of its row.',
    );
    expect(pieces.at(1).value).toBe(5);
  });
});

test("reads no cell but those of the fields asked for", () => {
  const read = new Set<number>();
  const fields = ["piece", "lender", "value", "out", "note", "condition"];
  const row = new Proxy(["Silk slip", "Orla", 5, 46083, "x", "y"], {
    get(target, column) {
      if (typeof column === "string" && /^\d+$/.test(column)) read.add(Number(column));
      return Reflect.get(target, column) as unknown;
    },
  });
  const piece = readPieces(tableOf(fields, row)).at(0);
  expect([piece.lender, piece.out]).toEqual(["Orla", 46083]);
  expect([...read].sort()).toEqual([1, 3]);
});

test("a field whose column the sheet lacks is null, and the row keeps its place in the range", () => {
  const table: Table = { ...tableOf(["lender", "out"], ["Orla", 46083], ["Ada", 46084]), dataRows: [2] };
  const pieces = readPieces(table);
  expect(pieces.count).toBe(1);
  expect(pieces.at(0)).toMatchObject({ row: 2, lender: "Ada", back: null });
});
