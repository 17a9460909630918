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
const RECEIPTS = ["Shop", "Job", "Bought", "Amount", "Kept", "Terms"];
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
  valuebyday: {
    table: late,
    args: [OUT, OUT + 1],
    nothing: [
      ["Date", "Pieces", "Value", "Unvalued"],
      [OUT, 0, 0, 0],
      [OUT + 1, 0, 0, 0],
    ],
  },
  peakvalue: { table: late, args: [], nothing: [["Date", "Pieces", "Value"]] },
  covergap: { table: late, args: [120, 60], nothing: [["What", "From", "Until", "Value", "Over by"]] },
  refunds: {
    table: [RECEIPTS, ["Kessel", "Spring", OUT, 95, "", "28 days"], ["Odeon", "Spring", OUT, 30, 10, "2 weeks"]],
    args: [OUT],
    nothing: [["Shop", "Refund by", "Days left", "To come back"]],
  },
  jobmoney: {
    table: [RECEIPTS, ["Kessel", "Spring", OUT, 95, "", "28 days"], ["Odeon", "Autumn", OUT, 30, 10, "2 weeks"]],
    args: [],
    nothing: [["Job", "Spent", "Kept", "Refunded", "To come back", "Rental", "Deposits held"]],
  },
};

/** One figure, or a curve, over all the rows: a total that left something out in silence would mislead. */
const OVER_ALL = new Set(["valueout", "peakvalue"]);

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
    if (OVER_ALL.has(name)) {
      expect("error" in outcome && outcome.error.message).toBe(
        "Out, row 4 holds the error #REF!; mend that cell first.",
      );
      return;
    }
    const rows = ("result" in outcome ? outcome.result : []) as unknown[][];
    if (name === "valuebyday" || name === "covergap") {
      // A piece of which nothing can be read may have been held on any day, so each figure over all of them says so.
      const told = rows.slice(1).flat();
      expect(told.some((cell) => cell instanceof HostError)).toBe(true);
      for (const cell of told)
        if (cell instanceof HostError) expect(cell.message).toMatch(/, row 4 holds the error #REF!/);
      return;
    }
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

describe("a value that cannot be read", () => {
  const table = [
    PIECES,
    piece("P1"),
    piece("P2", { Out: OUT + 4, Value: { type: "Error", basicValue: "#N/A" } }),
    piece("P3", { Out: OUT + 1, Value: 50, Back: OUT + 2 }),
  ];
  const isError = (cell: unknown): boolean => cell instanceof HostError;

  test("leaves the days of VALUEBYDAY before it as they are, and the number of pieces on the days after", () => {
    const outcome = outcomeOf("valuebyday", [table, OUT + 1, OUT + 5]);
    const [, ...days] = ("result" in outcome ? outcome.result : []) as unknown[][];
    expect(sayResult(days.slice(0, 3))).toEqual([
      [OUT + 1, 2, 150, 0],
      [OUT + 2, 1, 100, 0],
      [OUT + 3, 1, 100, 0],
    ]);
    for (const day of days.slice(3)) expect([day[1], isError(day[2])]).toEqual([2, true]);
    expect((days[3]![2] as HostError).message).toBe("Value, row 3 holds the error #N/A; mend that cell first.");
  });

  test("leaves the spans and pieces of COVERGAP before it as they are, and stands last itself", () => {
    const outcome = outcomeOf("covergap", [table, 140, 60]);
    const [, ...rows] = ("result" in outcome ? outcome.result : []) as unknown[][];
    expect(sayResult(rows.slice(0, 2))).toEqual([
      ["All pieces", OUT + 1, OUT + 2, 150, 10],
      ["P1", OUT, "", 100, 40],
    ]);
    expect([rows.length, rows[2]![0], isError(rows[2]![3])]).toEqual([3, "P2", true]);
  });

  test("is one sentence in PEAKVALUE, since the peak might be higher", () => {
    expect(sentence("peakvalue", table)).toBe("Value, row 3 holds the error #N/A; mend that cell first.");
  });
});

describe.each([
  ["refunds", [AS_OF]],
  ["jobmoney", []],
])("%s", (name, args) => {
  const good = ["Odeon", "Autumn", OUT, 30, 10, "2 weeks"];
  test.each<[string, Readonly<Record<string, unknown>>, string]>([
    ["an amount below 0", { Amount: -95 }, 'Amount, row 2: "-95" cannot be used; give an amount of 0 or more.'],
    ["an amount in words", { Amount: "about 95" }, 'Amount, row 2: "about 95" cannot be used'],
    ["an error", { Amount: { type: "Error", basicValue: "#DIV/0!" } }, "Amount, row 2 holds the error #DIV/0!"],
    ["a huge amount", { Amount: 1e308 }, "The result is too large"],
    ["something else kept", { Kept: "the belt" }, 'Kept, row 2: "the belt" cannot be used'],
  ])("%s is an error of its own row, and the other is whole", (_, fields, said) => {
    const typed: Readonly<Record<string, unknown>> = {
      Shop: "Kessel",
      Job: "Spring",
      Bought: OUT,
      Amount: 95,
      Kept: "",
      Terms: "28 days",
      ...fields,
    };
    const outcome = outcomeOf(name, [[RECEIPTS, RECEIPTS.map((heading) => typed[heading]), good], ...args]);
    const rows = ("result" in outcome ? outcome.result : []) as unknown[][];
    const own = rows.find(([first]) => first === "Kessel" || first === "Spring")!;
    const errors = own.filter((cell) => cell instanceof HostError) as HostError[];
    expect(errors.length).toBeGreaterThan(0);
    for (const { message } of errors) expect(message).toContain(said);
    const other = rows.find(([first]) => first === "Odeon" || first === "Autumn")!;
    expect(other.some((cell) => cell instanceof HostError)).toBe(false);
  });
});

test.each([
  [-5, "Bought, row 2"],
  [2_958_466, "Bought, row 2"],
  ["31 Dec 1899", "Bought, row 2"],
  ["1 Jan 10000", "Bought, row 2"],
  ["03/04/26", "could be 2026-04-03 or 2026-03-04"],
])("a receipt bought on %j is an error in its last day, and its money stands", (bought, said) => {
  const outcome = outcomeOf("refunds", [[RECEIPTS, ["Kessel", "Spring", bought, 95, "", "28 days"]], AS_OF]);
  const [, row] = ("result" in outcome ? outcome.result : []) as unknown[][];
  expect([row![0], sayResult(row![3])]).toEqual(["Kessel", 95]);
  expect((row![1] as HostError).message).toContain(said);
});

test("a span or a limit that is none is refused by its argument", () => {
  for (const from of [-1, 2_958_466, "31 Dec 1899", "soon"])
    expect(sentence("valuebyday", late, from, OUT)).toMatch(/^from: "[^"]+" (is not a date|could be)/);
  expect(sentence("valuebyday", late, OUT + 1, OUT)).toMatch(/^to: "2026-03-02" cannot be used/);
  expect(sentence("valuebyday", late, 1, 2_958_465)).toMatch(/cannot be used|too (?:long|many)/);
  for (const limit of [-1, 0, "none", 1e400, true])
    expect(sentence("covergap", late, limit)).toMatch(/^limit: "[^"]+" /);
});

test("a day to look at that is no day of the workbook is refused", () => {
  for (const name of ["laterows", "chaserows", "valueout", "lendertotals", "refunds"]) {
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
