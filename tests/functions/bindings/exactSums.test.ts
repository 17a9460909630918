import { lendertotals } from "../../../src/functions/bindings/lendertotals";
import { shortages } from "../../../src/functions/bindings/shortages";
import { valueout } from "../../../src/functions/bindings/valueout";
import { seededRandom } from "../../../src/domain/seededRandom";

// Sums over 100,000 rows against the same sums in whole cents, which cannot drift.

const ROWS = 100_000;
const LENDERS = 7;
const OUT = 46_083;
const BACK = 46_090;
const draw = seededRandom(3);
const upTo = (bound: number): number => Math.floor(draw() * bound);

const pieces = Array.from({ length: ROWS }, (_, place) => {
  const cents = BigInt(upTo(10_000_000));
  const amount = Number(cents) / 100;
  const quantity = 1 + upTo(3);
  return {
    lender: place % LENDERS,
    cents,
    quantity,
    quantityBack: upTo(quantity),
    // Every other amount is kept as text, as in a sheet that was pasted together.
    value: place % 2 === 0 ? amount : amount.toLocaleString("en-GB", { minimumFractionDigits: 2 }),
  };
});
const table = [
  ["Lender", "Value", "Quantity", "Out", "Due", "Back", "Quantity back"],
  ...pieces.map(({ lender, value, quantity }) => [`Lender ${lender}`, value, quantity, OUT, OUT + 7, "", ""]),
];

const sum = (rows: typeof pieces): number =>
  Number(rows.reduce((total, { cents, quantity }) => total + cents * BigInt(quantity), 0n)) / 100;

test("VALUEOUT is exact to the cent", () => {
  expect(valueout(table, OUT)).toBe(sum(pieces));
});

test("LENDERTOTALS is exact to the cent, lender by lender", () => {
  const [headings, ...rows] = lendertotals(table, OUT + 8) as unknown[][];
  const value = headings!.indexOf("Value out");
  const late = headings!.indexOf("Late value");
  expect(rows.length).toBe(LENDERS);
  for (const row of rows) {
    const own = pieces.filter(({ lender }) => row[0] === `Lender ${lender}`);
    expect([row[0], row[value], row[late]]).toEqual([row[0], sum(own), sum(own)]);
  }
});

test("the values missing in SHORTAGES are exact to the cent, row by row", () => {
  const returned = table.map((row, place) =>
    place === 0 ? row : [...row.slice(0, 5), BACK, pieces[place - 1]!.quantityBack],
  );
  const rows = (shortages(returned) as unknown[][]).slice(1);
  const short = pieces.filter(({ quantityBack }) => quantityBack > 0);
  expect(rows.length).toBe(short.length);
  rows.forEach((row, place) => {
    const { cents, quantity, quantityBack } = short[place]!;
    if (row.at(-1) !== (cents === 0n ? "" : Number(cents * BigInt(quantity - quantityBack)) / 100))
      expect([place, row]).toEqual([place, short[place]]);
  });
});

test("currencies are never added", () => {
  const mixed = [
    ["Lender", "Value", "Out", "Due", "Back"],
    ["Orla", "£100", OUT, OUT + 7, ""],
    ["Orla", "100 €", OUT, OUT + 7, ""],
  ];
  expect(() => valueout(mixed, OUT)).toThrow("Row 3 is in EUR and row 2 in GBP");
  expect((lendertotals(mixed, OUT) as unknown[][]).slice(1).map((row) => [row[2], row.at(-1)])).toEqual([
    [100, "GBP"],
    [100, "EUR"],
  ]);
});
