import fc from "fast-check";
import { sayProblem } from "../../src/domain/wording";
import { readTable, type TableRequest } from "../../src/sheet/readTable";
import type { Table } from "../../src/sheet/table";

const HEADINGS = ["Piece no", "Desc.", "Press office", "Date out", "Ret. due", "Date back", "Insured val (GBP)", "Qty"];
const slip = (no: number): unknown[] => [no, "Silk slip", "Maison Orla", 46083, 46090, "", 400, 1];
const blank = HEADINGS.map(() => "");

function table(cells: unknown, more: Partial<TableRequest> = {}): Table {
  const outcome = readTable({ cells: cells as unknown[][], kind: "pieces", needs: ["out", "due"], ...more });
  if (!outcome.ok) throw new Error(sayProblem(outcome.problem));
  return outcome.value;
}
function sentence(cells: unknown, more: Partial<TableRequest> = {}): string {
  const outcome = readTable({ cells: cells as unknown[][], kind: "pieces", needs: ["out", "due"], ...more });
  return outcome.ok ? "read" : sayProblem(outcome.problem);
}

test("headings are given their fields in any order, and what a heading says of the currency is kept", () => {
  const read = table([HEADINGS, slip(1)]);
  expect(read.columnOf).toEqual({
    piece: 0,
    description: 1,
    lender: 2,
    out: 3,
    due: 4,
    back: 5,
    value: 6,
    quantity: 7,
  });
  expect(read.headings).toEqual(HEADINGS);
  expect(read.hintOf).toEqual({ value: { currency: "GBP", unit: null } });
  expect(table([[...HEADINGS].reverse(), slip(1).reverse()]).columnOf).toMatchObject({ piece: 7, out: 4, due: 3 });
});

test("a heading chosen by hand says its currency or unit too, though it means nothing as a whole", () => {
  const cells = [
    ["From", "Ins £", "Heft (lb)", "Try on"],
    ["Orla", 900, 2, "yes"],
  ];
  const columns = "lender=From; value=Ins £; weight=Heft (lb); note=Try on";
  expect(table(cells, { needs: [], columns }).hintOf).toEqual({
    value: { currency: "GBP", unit: null },
    weight: { currency: null, unit: "lb" },
  });
});

test("columns of no interest between change nothing", () => {
  const read = table([
    ["Shelf", "Out", "", "Fabric", "Due"],
    ["B2", 46083, 3, "silk", 46090],
  ]);
  expect(read.columnOf).toEqual({ out: 1, due: 4 });
});

describe("the heading row", () => {
  test("is found under titles and notes, within the first 20 rows", () => {
    const titles = Array.from({ length: 19 }, (_, index) => ["Loans for the Rue job", ...blank.slice(1, -1), index]);
    expect(table([...titles, HEADINGS, slip(1)]).headingRow).toBe(19);
    expect(sentence([...titles, blank, HEADINGS, slip(1)])).toMatch(/no heading row/);
  });

  test("is the row that matches best, and the first of equals", () => {
    expect(table([["Out", "", "", "", "", "", "", ""], HEADINGS, slip(1), HEADINGS]).headingRow).toBe(1);
  });

  test("may stand alone: a table without rows", () => expect(table([HEADINGS]).dataRows).toEqual([]));

  test.each([
    ["rows of data alone", [slip(1), slip(2)]],
    [
      "rows of data that hold one word that is a heading",
      [
        ["Bag", "Silk slip", "Orla", 46083],
        ["Belt", "Slip dress", "Orla", 46090],
      ],
    ],
    ["one cell", [["x"]]],
    [
      "numbers",
      [
        [1, 2],
        [3, 4],
      ],
    ],
  ])("is missed in %s, and the sentence says how to pass it", (_, cells) => {
    expect(sentence(cells)).toMatch(/^rows has no heading row that is understood; .*\[#All\]/);
  });
});

test("headings of which one alone is understood are no rows of data: what is missing is named", () => {
  expect(sentence([["Thing", "Left us", "Due back", "Home again"]], { needs: ["out"] })).toMatch(
    /^rows has no column headed Out/,
  );
});

describe("passed over are", () => {
  test("blank rows, rows of spaces and rows of zeros, as a host may send blank cells", () => {
    const cells = [
      HEADINGS,
      slip(1),
      blank,
      blank.map(() => "  "),
      blank.map(() => 0),
      blank.map(() => null),
      blank.map(() => false),
      slip(2),
    ];
    expect(table(cells).dataRows).toEqual([1, 7]);
  });

  test("repeated heading rows", () =>
    expect(table([HEADINGS, slip(1), HEADINGS, slip(2), blank, HEADINGS]).dataRows).toEqual([1, 3]));

  test.each([
    ["Total", ["", "Total", "", "", "", "", 800, 2]],
    ["TOTAL:", ["TOTAL:", "", "", "", "", "", 800, 2]],
    ["Grand total", ["", "", "Grand total", "", "", "", "£800.00", ""]],
    ["Sum", ["Sum", "", "", "", "", "", 800, 2]],
    ["Somme", ["Somme", "", "", "", "", "", 800, ""]],
    ["Gesamtsumme", ["Gesamtsumme", "", "", "", "", "", 800, ""]],
    ["Totale EUR", ["", "Totale EUR", "", "", "", "", 800, ""]],
    ["sums alone", ["", "", "", "", "", "", 800, 2]],
    ["a count of days under a date heading", ["Total", "", "", 2, 2, 1, 800, 2]],
    ["a sum that failed", ["Total", "", "", "", "", "", { error: "#REF!" }, 2]],
  ])("a totals row at the bottom: %s", (_, totals) => {
    expect(table([HEADINGS, slip(1), slip(2), totals]).dataRows).toEqual([1, 2]);
    expect(table([HEADINGS, slip(1), slip(2), blank, totals, blank]).dataRows).toEqual([1, 2]);
  });

  test("a sum and a grand total below it", () => {
    const sums = ["", "", "", "", "", "", 800, 2];
    expect(table([HEADINGS, slip(1), slip(2), sums, ["", "Grand total", "", "", "", "", 800, ""]]).dataRows).toEqual([
      1, 2,
    ]);
  });

  test("subtotals between jobs, where they say so at the beginning of their row", () => {
    expect(table([HEADINGS, slip(1), ["Subtotal", "", "", "", "", "", 400, 1], blank, slip(2)]).dataRows).toEqual([
      1, 4,
    ]);
  });
});

describe("never passed over is", () => {
  test.each([
    ["a piece called a total look", [3, "Total look", "Maison Orla", 46083, 46090, "", 1200, 1]],
    ["a piece with nothing but a name and a value", ["", "Total look", "", "", "", "", 1200, 1]],
    ["a piece without a name that is out", ["", "", "", 46083, "", "", 1200, 1]],
    ["a piece with a lender alone", ["", "", "Maison Orla", "", "", "", 1200, 1]],
    ["a piece with a number alone", [7, "", "", "", "", "", 1200, 1]],
    ["a lender called Summe & Sohn", ["", "", "Summe & Sohn", "", "", "", 1200, 1]],
  ])("%s, even as the last row", (_, last) =>
    expect(table([HEADINGS, slip(1), slip(2), last]).dataRows).toEqual([1, 2, 3]),
  );

  test("the only row of a table", () => {
    expect(table([HEADINGS, ["", "", "", "", "", "", 800, 2]]).dataRows).toEqual([1]);
  });

  test("the last row of a table that has no column to name a row by", () => {
    expect(
      table(
        [
          ["Weight", "Quantity"],
          [1.2, 1],
          [0.8, 2],
        ],
        { needs: ["weight"] },
      ).dataRows,
    ).toEqual([1, 2]);
  });
});

describe("columns", () => {
  const cells = [
    ["Piece", "From", "Ins. amt", "Out", "Due"],
    [1, "Orla", 5, 46083, 46090],
  ];
  const needs = ["lender", "value"];

  test.each([
    "value=Ins. amt; lender=From",
    "Value = ins amt;Lender=FROM;",
    "insured value=Ins. amt\npress office=From",
  ])("%j says which heading is which", (columns) =>
    expect(table(cells, { needs, columns }).columnOf).toMatchObject({ lender: 1, value: 2 }),
  );

  test.each([null, undefined, "", "  ", 0, ";"])("%j chooses nothing", (columns) => {
    expect(sentence(cells, { needs, columns })).toMatch(/^rows has no column headed/);
  });

  test("a choice goes before the vocabulary, and takes the heading from the field it would have had", () => {
    const read = table(
      [
        ["Piece", "Out", "Due", "Deadline"],
        [1, 46083, 46090, 46091],
      ],
      { columns: "due=Deadline; out=Due", needs: ["out"] },
    );
    expect(read.columnOf).toMatchObject({ due: 3, out: 2 });
  });

  test("a field without a heading has no column", () => {
    expect(table([HEADINGS, slip(1)], { columns: "lender=" }).columnOf).not.toHaveProperty("lender");
  });

  test("a heading row of nothing but chosen headings is found", () => {
    expect(
      table(
        [
          ["When", "Until when"],
          [46083, 46090],
        ],
        { columns: "out=When; due=Until when" },
      ).columnOf,
    ).toEqual({ out: 0, due: 1 });
  });

  test.each([
    ["valu=Ins. amt", 'columns: "valu=Ins. amt" is not understood; write for example "value=Ins. amt; lender=From"'],
    ["Ins. amt", 'columns: "Ins. amt" is not understood'],
    ["value=Worth", 'columns: the table has no heading "Worth"; it has "Piece", "From", "Ins. amt", "Out", "Due".'],
    ["value=Ins. amt; value=From", 'columns: "value=From" names a column or a heading a second time'],
    ["value=From; lender=From", 'columns: "lender=From" names a column or a heading a second time'],
  ])("%j is refused: %s", (columns, said) => expect(sentence(cells, { needs, columns })).toContain(said));

  test("an error value is refused", () =>
    expect(sentence(cells, { columns: { error: "#NAME?" } })).toMatch(/^columns holds the error #NAME\?/));
});

describe("what is missing is named", () => {
  test("with the way to say which column it is", () => {
    expect(
      sentence([
        ["Piece", "Out"],
        [1, 46083],
      ]),
    ).toBe('rows has no column headed Due or the like; add one, or say which it is with columns "due=your heading".');
  });
  test("all of them, where one of several will do", () => {
    expect(sentence([HEADINGS.slice(0, 4), slip(1).slice(0, 4)], { needs: [["value", "totalValue"]] })).toContain(
      "headed Value or Total value",
    );
    expect(
      table(
        [
          ["Piece", "Total value"],
          [1, 400],
        ],
        { needs: [["value", "totalValue"]] },
      ).columnOf,
    ).toEqual({ piece: 0, totalValue: 1 });
  });
  test("by the argument's own name", () => {
    expect(sentence([["Look", "Talent"]], { kind: "looks", needs: ["shooting"], argument: "looks" })).toMatch(
      /^looks has no column headed Shooting/,
    );
  });
});

describe("two headings that could be the same column", () => {
  test("are both named", () => {
    expect(sentence([["Out", "Due", "Value", "Insured value"]])).toBe(
      'rows: "Value" and "Insured value" could both be Value; choose one with columns "value=Value".',
    );
  });
  test("are to be renamed where both are the same word", () => {
    expect(sentence([["Out", "Due", "Value", "Value"]])).toBe(
      'rows has two columns headed "Value"; rename one of them.',
    );
  });
  test("are settled by a choice", () => {
    expect(
      table([["Out", "Due", "Value", "Insured value"]], { columns: "value=Insured value" }).columnOf,
    ).toMatchObject({ value: 3 });
  });
  test("are no problem in remarks, where the first is taken", () => {
    expect(table([["Out", "Due", "Notes", "Comments"]]).columnOf).toMatchObject({ note: 2 });
  });
  test("are no problem in what the caller does not use", () => {
    expect(table([["Out", "Due", "Value", "Insured value"]], { uses: ["back"] }).columnOf).toEqual({ out: 0, due: 1 });
  });
});

describe("a heading that gives way", () => {
  test.each([
    [["Out", "Return date"], { out: 0, due: 1 }],
    [["Out", "Return date", "Returned"], { out: 0, due: 1, back: 2 }],
    [["Out", "Due", "Return date"], { out: 0, due: 1, back: 2 }],
    [["Out", "Due", "Return date", "Returned"], { out: 0, due: 1, back: 3 }],
    [["Out", "Due", "Brand"], { out: 0, due: 1, lender: 2 }],
    [["Out", "Due", "Brand", "Press office"], { out: 0, due: 1, lender: 3 }],
    [["Item", "Out", "Due"], { piece: 0, out: 1, due: 2 }],
    [["No.", "Item", "Out", "Due"], { piece: 0, description: 1, out: 2, due: 3 }],
    [["Ref", "Piece", "Out", "Due"], { piece: 0, description: 1, out: 2, due: 3 }],
    [["Item", "Out", "Deadline", "Return date"], { piece: 0, out: 1, due: 2, back: 3 }],
    [["No.", "Ref", "Out", "Due"], null],
    [["Piece no", "Item", "Out", "Due"], { piece: 0, description: 1, out: 2, due: 3 }],
    [["Collected", "Due"], { out: 0, due: 1 }],
    [["Out", "Collected", "Due"], { out: 0, collected: 1, due: 2 }],
  ])("%j", (headings, columns) => {
    if (columns === null) expect(sentence([headings])).toMatch(/could both be Piece/);
    else expect(table([headings]).columnOf).toEqual(columns);
  });
  test("and two that would have the same field are both named", () => {
    expect(sentence([["Out", "Due", "Brand", "Designer"]])).toMatch(/"Brand" and "Designer" could both be Lender/);
  });
});

test.each([
  [null, /^rows is blank; give the table with its heading row\.$/],
  [[], /^rows is blank/],
  [[[]], /no heading row/],
  [[[null]], /no heading row/],
  [[["Out", "Due"], [46083]], /rows of unequal length/],
  [[["Out", "Due"], null], /rows of unequal length/],
])("%j is refused in words", (cells, said) => expect(sentence(cells)).toMatch(said));

test("cells that a host wraps in objects are read through them", () => {
  const wrap = (text: string) => ({ type: "String", basicValue: text });
  expect(
    table([
      ["Piece", "Out", "Due"].map(wrap),
      [1, { type: "Double", basicValue: 46083, numberFormat: "yyyy-mm-dd" }, 46090],
    ]).dataRows,
  ).toEqual([1]);
});

test("of a long table, few cells are read: those of 20 rows for headings, and of each row those up to the first filled", () => {
  let reads = 0;
  const count = (row: unknown[]): unknown[] =>
    new Proxy(row, {
      get(target, key, receiver) {
        if (typeof key === "string" && /^\d+$/.test(key)) reads += 1;
        return Reflect.get(target, key, receiver) as unknown;
      },
    });
  const width = 20;
  const headings = [...HEADINGS, ...Array.from({ length: width - HEADINGS.length }, (_, index) => `Column ${index}`)];
  const rows = Array.from({ length: 10_000 }, (_, index) =>
    count([...slip(index + 1), ...Array<string>(width - HEADINGS.length).fill("x")]),
  );
  const read = table([headings, ...rows]);
  expect(read.dataRows).toHaveLength(10_000);
  // 19 rows below the headings are searched for better headings; the rest costs at most two reads a row.
  expect(reads).toBeLessThan(19 * width + 2 * 10_000 + 4 * width);
});

const anyCell = fc.oneof(
  fc.constantFrom<unknown>(...HEADINGS, "Total", "", null, 0, 46083, 400, "tbc", { error: "#N/A" }, true),
  fc.jsonValue(),
);

test("whatever the cells and the columns argument, there is a table or one sentence, and every data row is a row below the headings", () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(anyCell, { maxLength: 6 }), { maxLength: 8 }),
      fc.oneof(fc.constant(null), fc.string(), fc.jsonValue()),
      (cells, columns) => {
        const outcome = readTable({ cells, kind: "pieces", needs: ["out"], columns });
        if (!outcome.ok) return expect(sayProblem(outcome.problem)).toMatch(/^\S.*\.$/s);
        const { headingRow, dataRows } = outcome.value;
        expect(
          dataRows.every((row, index) => row > (index === 0 ? headingRow : dataRows[index - 1]!) && row < cells.length),
        ).toBe(true);
      },
    ),
    { numRuns: 1000 },
  );
});

test("no row with a piece, a lender or an out date is ever passed over", () => {
  const row = fc.tuple(
    fc.constantFrom("", 1, "A-17", "Total look"),
    fc.constantFrom("", "Silk slip", "Sum of all parts"),
    fc.constantFrom("", "Maison Orla"),
    fc.constantFrom("", 46083),
    fc.constantFrom("", 46090, "5 Mar 2026"),
    fc.constantFrom("", 46085),
    fc.constantFrom("", 400, "£95"),
    fc.constantFrom("", 1, 2),
  );
  fc.assert(
    fc.property(fc.array(row, { maxLength: 6 }), (rows) => {
      const found = new Set(table([HEADINGS, ...rows]).dataRows);
      rows.forEach((cells, index) => {
        if (cells.slice(0, 6).some((cell) => cell !== "")) expect(found.has(index + 1)).toBe(true);
      });
    }),
  );
});
