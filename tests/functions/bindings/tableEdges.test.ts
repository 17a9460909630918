import { outcomeOf } from "../outcomeOf";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";
import { HostError } from "../HostError";

// What a stylist's sheet throws at the functions of loans over whole tables: one clear sentence, and the other rows intact.

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

type Cells = readonly (readonly unknown[])[];

const OUT = 46_083;
const DUE = OUT + 7;
const AS_OF = DUE + 3;
const PIECES = ["Piece", "Lender", "Value", "Quantity", "Out", "Due", "Back", "Quantity back", "Condition back"];
const REQUESTS = ["Lender", "Asked", "Needed by", "Answer"];
const piece = (name: string, fields: Readonly<Record<string, unknown>> = {}): unknown[] => {
  const usual = { Piece: name, Lender: "Orla", Value: 100, Quantity: 1, Out: OUT, Due: DUE };
  const filled: Readonly<Record<string, unknown>> = { ...usual, ...fields };
  return PIECES.map((heading) => filled[heading] ?? "");
};
const back = { Back: DUE, Quantity: 3, "Quantity back": 1 };

interface Asked {
  readonly table: Cells;
  readonly args: readonly unknown[];
  /** What is left when there are no rows. */
  readonly nothing: unknown;
}
const late: Cells = [PIECES, piece("P1"), piece("P2", { Value: 50 })];
const FUNCTIONS: Readonly<Record<string, Asked>> = {
  laterows: { table: late, args: [AS_OF], nothing: [[...PIECES, "Days late"]] },
  duerows: { table: late, args: [DUE, DUE], nothing: [PIECES] },
  shortages: {
    table: [PIECES, piece("P1", back), piece("P2", back)],
    args: [],
    nothing: [[...PIECES, "Missing", "Damaged", "Value missing"]],
  },
  chaserows: {
    table: [REQUESTS, ["Orla", OUT, DUE, ""], ["Halden", OUT, DUE, "waiting"]],
    args: [AS_OF],
    nothing: [REQUESTS],
  },
  valueout: { table: late, args: [AS_OF], nothing: 0 },
  lendertotals: {
    table: late,
    args: [AS_OF],
    nothing: [
      "Lender,Pieces out,Value out,Next due,Late pieces,Late value,Most days late,No due date,Unvalued".split(","),
    ],
  },
};

function sentence(name: string, ...args: readonly unknown[]): string {
  const outcome = outcomeOf(name, args);
  return "error" in outcome ? outcome.error.message : `gives ${JSON.stringify(outcome.result)}`;
}

describe.each(Object.entries(FUNCTIONS))("%s", (name, { table, args, nothing }) => {
  const on = (cells: unknown, ...others: readonly unknown[]): unknown => {
    const outcome = outcomeOf(name, [cells, ...(others.length > 0 ? others : args)]);
    if ("error" in outcome) throw outcome.error;
    return sayResult(outcome.result);
  };

  test("a range of one cell is no table", () => {
    for (const cell of ["Lender", "Silk slip", 46083, true, [["Lender"]], [[46083]]]) {
      expect(sentence(name, cell, ...args)).toMatch(/^rows has no /);
    }
    for (const blank of [null, undefined, "", 0, [], [[]], [[null]]])
      expect(sentence(name, blank, ...args)).toBe("rows is blank; give the table with its heading row.");
  });

  test("a range of one row is a table without rows where it holds the headings, and no table otherwise", () => {
    expect(on([table[0]])).toEqual(nothing);
    expect(on(table[0])).toEqual(nothing);
    expect(sentence(name, [table[1]], ...args)).toMatch(/^rows has no heading row .*\[#All\]\.$/);
  });

  test("whole columns, 1,048,576 rows of which nearly all are blank, give what the rows alone give", () => {
    const blank = table[0]!.map(() => null);
    const columns = [...table, ...Array<null[]>(1_048_576 - table.length).fill(blank)];
    expect(on(columns)).toEqual(on(table));
  });

  test("blank rows and a second heading row between the rows change nothing", () => {
    const blank = table[0]!.map(() => "");
    expect(on([blank, ...table.slice(0, 2), blank, table[0], blank, ...table.slice(2), blank])).toEqual(on(table));
  });

  test("an error in a cell that matters to no one else leaves the other rows as they are", () => {
    const error = { type: "Error", basicValue: "#REF!" };
    const broken = [...table, table[1]!.map(() => error)];
    const outcome = outcomeOf(name, [broken, ...args]);
    if (name === "valueout") {
      // A total that left something out in silence would mislead.
      expect("error" in outcome && outcome.error.message).toBe(
        "Out, row 4 holds the error #REF!; mend that cell first.",
      );
      return;
    }
    const rows = ("result" in outcome ? outcome.result : []) as unknown[][];
    const expected = on(table) as unknown[][];
    expect(sayResult(rows.slice(0, expected.length))).toEqual(expected);
    const errors = rows[expected.length]!.filter((cell) => cell instanceof HostError) as HostError[];
    expect(errors.length).toBeGreaterThan(0);
    for (const { message } of errors) expect(message).toMatch(/, row 4 holds the error #REF!; mend that cell first\.$/);
  });
});

describe.each(["laterows", "duerows", "lendertotals"])("%s", (name) => {
  const { args } = FUNCTIONS[name]!;

  test.each([
    [-5, 'Due, row 2: "-5" is not a date'],
    [2_958_466, 'Due, row 2: "2958466" is not a date'],
    [1e300, "Due, row 2"],
    ["31 Dec 1899", "Due, row 2"],
    ["1 Jan 10000", "Due, row 2"],
    ["2026-02-30", "Due, row 2"],
    ["soon", 'Due, row 2: "soon" is not a date'],
  ])("a due day of %j is an error of its own row", (due, said) => {
    const outcome = outcomeOf(name, [[PIECES, piece("P1", { Due: due, Lender: "Halden" }), piece("P2")], ...args]);
    const rows = ("result" in outcome ? outcome.result : []) as unknown[][];
    expect(rows.length).toBe(3);
    expect(rows[1]!.some((cell) => cell instanceof HostError)).toBe(false);
    const errors = rows[2]!.filter((cell) => cell instanceof HostError) as HostError[];
    expect(errors.length).toBeGreaterThan(0);
    for (const { message } of errors) expect(message).toContain(said);
  });
});

test.each([
  [-100, 'Value, row 2: "-100" cannot be used; give an amount of 0 or more.'],
  ["-£100", 'Value, row 2: "-£100" cannot be used; give an amount of 0 or more.'],
  ["about 100", 'Value, row 2: "about 100" cannot be used'],
  [1e308, "The result is too large"],
])("a value of %j is one sentence in VALUEOUT and one cell in LENDERTOTALS", (value, said) => {
  const table = [PIECES, piece("P1", { Value: value, Lender: "Halden" }), piece("P2")];
  expect(sentence("valueout", table, AS_OF)).toContain(said);
  const outcome = outcomeOf("lendertotals", [table, AS_OF]);
  const rows = ("result" in outcome ? outcome.result : []) as unknown[][];
  const halden = rows.find((row) => row[0] === "Halden")!;
  expect((halden[2] as HostError).message).toContain(said);
  expect(rows.find((row) => row[0] === "Orla")!.slice(1, 3)).toEqual([1, 100]);
});

test("a day to look at that is no day of the workbook is refused", () => {
  for (const name of ["laterows", "chaserows", "valueout", "lendertotals"]) {
    for (const asOf of [-1, 2_958_466, 1e300, "03/04/26", "someday", true])
      expect(sentence(name, FUNCTIONS[name]!.table, asOf)).toMatch(/^(asOf|onDate): "[^"]+" (is not a date|could be)/);
  }
});

test("a list of closed days with text in it is refused, and names the row", () => {
  const { table } = FUNCTIONS["chaserows"]!;
  const closed = [[46_086], ["bank holiday"], [46_087]];
  expect(sentence("chaserows", table, AS_OF, 2, closed)).toBe(
    'closed, row 2: "bank holiday" is not a date; type it like 2026-03-05 or 5 Mar 2026.',
  );
  expect(sentence("chaserows", table, AS_OF, 2, [[46_086], [{ type: "Error", basicValue: "#N/A" }]])).toBe(
    "closed, row 2 holds the error #N/A; mend that cell first.",
  );
});

test("a fee is refused by the argument that is wrong", () => {
  expect(sentence("latefee", -1, 3, "2% a day")).toBe('value: "-1" cannot be used; give an amount of 0 or more.');
  expect(sentence("latefee", "ask", 3, "2% a day")).toMatch(/^value: "ask" cannot be used/);
  expect(sentence("latefee", 640, 1.5, "2% a day")).toMatch(/^daysLate: "1.5" cannot be used/);
  expect(sentence("latefee", 640, 3, "a lot")).toMatch(/^fee: "a lot" cannot be used; give text such as "5 a day"/);
  expect(sentence("latefee", 640, 3, "2% a day", 0.5)).toMatch(
    /^cap: "0.5" cannot be used; give an amount, or a share/,
  );
  expect(sentence("latefee", 1e308, 1e15, "2% a day")).toBe(
    "The result is too large to show as a number; make the figures it is computed from smaller.",
  );
});
