import { sayResult } from "../sayResult";
import { outcomeOf } from "../outcomeOf";
import { standInHost } from "../standInHost";
import { HostError } from "../HostError";

// Pounds and euros are never added or subtracted, in any function that reckons with money: totals come a row a
// currency, single figures and results of one currency are refused, and a row that contradicts itself is an error of its own.

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

type Cells = readonly (readonly unknown[])[];
const DAY = 46_083;
const PIECES = ["Piece", "Lender", "Job", "Quantity", "Value", "Out", "Due", "Back", "Quantity back", "Rental fee"];
const RECEIPTS = ["Shop", "Job", "Bought", "Amount", "Kept", "Terms"];

/** The rows of one currency alone, and those of both in turn; `sign` writes an amount as typed, "" leaves it a number. */
const pieces = (...signs: readonly string[]): Cells => [
  PIECES,
  ...signs.flatMap((sign) => [
    [`A${sign}`, "Orla", "Spring", 3, `${sign}100`, DAY, DAY + 7, "", "", `${sign}10`],
    [`B${sign}`, "Orla", "Spring", 4, `${sign}70`, DAY, DAY + 7, DAY + 7, 1, `${sign}5`],
  ]),
];
const receipts = (...signs: readonly string[]): Cells => [
  RECEIPTS,
  ...signs.map((sign) => ["Kessel", "Spring", DAY, `${sign}95`, `${sign}20`, "28 days"]),
];
const withColumn = (rows: Cells): Cells =>
  rows.map((row, place) => [
    ...row.map((cell) => (typeof cell === "string" ? cell.replace(/^[£€](?=\d)/, "") : cell)),
    place === 0 ? "Currency" : row.some((cell) => String(cell).startsWith("£")) ? "GBP" : "EUR",
  ]);

const AS_OF = DAY + 10;
const rowsOf = (name: string, args: readonly unknown[]): unknown[][] => {
  const outcome = outcomeOf(name, args);
  if ("error" in outcome) throw outcome.error;
  return (sayResult(outcome.result) as unknown[][]).slice(1);
};

describe.each<[string, (...signs: readonly string[]) => Cells, readonly unknown[]]>([
  ["lendertotals", pieces, [AS_OF]],
  ["valuebyday", pieces, [DAY, AS_OF]],
  ["refunds", receipts, [AS_OF]],
  ["jobmoney", receipts, []],
  ["jobmoney", pieces, []],
])("%s", (name, table, args) => {
  test.each([
    ["signs", (rows: Cells) => rows],
    ["a Currency column", withColumn],
  ])("totals come one row a currency, each what that currency's rows alone come to, and say which: by %s", (_, as) => {
    const both = rowsOf(name, [as(table("£", "€")), ...args]);
    for (const [sign, code] of [
      ["£", "GBP"],
      ["€", "EUR"],
    ] as const) {
      const own = both.filter((row) => row.at(-1) === code).map((row) => row.slice(0, -1));
      const alone = rowsOf(name, [table(sign), ...args]).map((row) => row.filter((cell) => cell !== code));
      expect(own.length).toBeGreaterThan(0);
      expect(own).toEqual(alone);
    }
    expect(both.every((row) => row.at(-1) === "GBP" || row.at(-1) === "EUR")).toBe(true);
  });
});

describe.each<[string, readonly unknown[]]>([
  ["valueout", [AS_OF]],
  ["peakvalue", []],
  ["covergap", [1000]],
])("%s", (name, args) => {
  test("one figure over two currencies is refused, with the rows that disagree", () => {
    for (const table of [pieces("£", "€"), withColumn(pieces("£", "€"))]) {
      const outcome = outcomeOf(name, [table, ...args]);
      expect("error" in outcome && outcome.error.message).toMatch(/^Row 4 is in EUR and row 2 in GBP/);
    }
  });
});

test("LATEROWS and SHORTAGES give each row its own figures and add none", () => {
  const late = rowsOf("laterows", [pieces("£", "€"), AS_OF]);
  expect(late.map((row) => [row[0], row.at(-1)])).toEqual([
    // Most valuable first: a rank, in which no amount is exchanged or added.
    ["A£", 3],
    ["A€", 3],
    ["B£", 3],
    ["B€", 3],
  ]);
  const short = rowsOf("shortages", [withColumn(pieces("£", "€"))]);
  expect(short.map((row) => [row[0], row.at(-1)])).toEqual([
    ["B£", 210],
    ["B€", 210],
  ]);
});

test.each([
  ["latefee", ["£640", 3, "5 € a day"], /^fee: "5 EUR" cannot be used; give an amount in GBP/],
  ["latefee", ["£640", 3, "$5 a day"], /^fee: "5 \$" cannot be used; give an amount in GBP/],
  ["latefee", ["£640", 90, "2% a day", "€100"], /^cap: "100 EUR" cannot be used/],
  ["keepcost", ["£5,000", "800 €", 0.3, 0.2], /^kept: "800 EUR" cannot be used; give an amount in GBP/],
  ["covergap", [pieces("£"), "€1000"], /^limit: "1000 EUR" cannot be used; give an amount in GBP/],
  ["covergap", [pieces("£"), 1000, "$50"], /^pieceLimit: "50 \$" cannot be used/],
])("%s refuses amounts in two currencies: %j", (name, args, sentence) => {
  const outcome = outcomeOf(name, args);
  expect("error" in outcome && outcome.error.message).toMatch(sentence);
});

test.each([
  ["a bare $ in a row of pounds", "$100", "GBP"],
  ["euros in a row of pounds", "100 €", "GBP"],
  ["kronor in a row of francs", "100 kr", "CHF"],
])("%s is an error of that row, and no part of a total", (_, value, currency) => {
  const table = [
    ["Lender", "Value", "Currency", "Out", "Due", "Back"],
    ["Orla", value, currency, DAY, DAY + 20, ""],
    ["Halden", 50, currency, DAY, DAY + 20, ""],
  ];
  const outcome = outcomeOf("valueout", [table, DAY]);
  expect("error" in outcome && outcome.error.message).toContain(`give an amount in ${currency}`);
  const totals = outcomeOf("lendertotals", [table, DAY]);
  const rows = ("result" in totals ? totals.result : []) as unknown[][];
  const of = (lender: string): unknown => rows.find((row) => row[0] === lender)![2];
  expect(of("Orla")).toBeInstanceOf(HostError);
  expect(of("Halden")).toBe(50);
});

test("a bare $ in a row of Canadian dollars is those", () => {
  const table = [
    ["Lender", "Value", "Currency", "Out", "Back"],
    ["Orla", "$100", "CAD", DAY, ""],
    ["Orla", 50, "CAD", DAY, ""],
  ];
  expect(outcomeOf("valueout", [table, DAY])).toMatchObject({ result: 150 });
});

test.each(["refunds", "jobmoney"])("%s does not take euros kept from pounds paid", (name) => {
  const table = [
    RECEIPTS,
    ["Kessel", "Spring", DAY, "£95", "20 €", "28 days"],
    ["Odeon", "Autumn", DAY, "£30", "", ""],
  ];
  const outcome = outcomeOf(name, [table, ...(name === "refunds" ? [AS_OF] : [])]);
  const rows = ("result" in outcome ? outcome.result : []) as unknown[][];
  const row = rows.find(([first]) => first === "Kessel" || first === "Spring")!;
  const errors = row.filter((cell) => cell instanceof HostError) as HostError[];
  expect(errors.length).toBeGreaterThan(0);
  for (const { message } of errors)
    expect(message).toBe('Kept, row 2: "20 €" cannot be used; give an amount in GBP, the currency of its row.');
  const other = rows.find(([first]) => first === "Odeon" || first === "Autumn")!;
  expect(other.some((cell) => cell instanceof HostError)).toBe(false);
});
