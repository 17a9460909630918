import fc from "fast-check";
import { valuebyday } from "../../../src/functions/bindings/valuebyday";
import { valueout } from "../../../src/functions/bindings/valueout";
import { isHeld } from "../../../src/pane/today/isHeld";
import { isOutFrom } from "../../../src/pane/today/isOutFrom";
import { pictureDays } from "../../../src/pane/today/pictureDays";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import { valueToday } from "../../../src/pane/today/valueToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const ASOF = 46086;
const headings = ["Piece", "Lender", "Out", "Due", "Back", "Quantity", "Value", "Currency"];

async function valuesOf(rows: readonly (readonly Cell[])[]) {
  const read = await readSheets([{ name: "Loans", rows: [headings, ...rows] }]);
  return valueToday(pieceTables(read.tables), ASOF);
}

test("currencies stand apart and are never added, the most valuable first", async () => {
  const values = await valuesOf([
    ["a", "Ado", ASOF - 3, ASOF, null, 1, 100, "EUR"],
    ["b", "Ado", ASOF - 3, ASOF, null, 2, 400.5, "GBP"],
    ["c", "Ado", ASOF - 3, ASOF, null, 1, 50, "EUR"],
  ]);
  expect(values.map(({ currency, valueOut }) => [currency, valueOut])).toEqual([
    ["GBP", 801],
    ["EUR", 150],
  ]);
});

test("a piece that comes back on the day is still counted, and one that came back before is not", async () => {
  const values = await valuesOf([
    ["a", "Ado", ASOF - 3, ASOF, ASOF, 1, 100, "GBP"],
    ["b", "Ado", ASOF - 3, ASOF, ASOF - 1, 1, 900, "GBP"],
  ]);
  expect(values[0]).toMatchObject({ valueOut: 100, piecesHeld: 1 });
});

test("a row whose value cannot be read is left out and listed with its sentence, and pieces without a value are counted", async () => {
  const values = await valuesOf([
    ["a", "Ado", ASOF - 3, ASOF, null, 1, 100, "GBP"],
    ["b", "Ado", ASOF - 3, ASOF, null, 1, "ask Ada", "GBP"],
    ["c", "Ado", ASOF - 3, ASOF, null, 2, null, "GBP"],
  ]);
  expect(values[0]).toMatchObject({ valueOut: 100, piecesHeld: 3, piecesUnvalued: 2 });
  expect(values[0]?.unread).toHaveLength(1);
  expect(values[0]?.unread[0]).toMatchObject({ name: "b", at: { sheetId: "s0", row: 2, column: 6 } });
  expect(values[0]?.unread[0]?.sentence).toContain("ask Ada");
});

test("on each day of the picture the value is what VALUEOUT gives with the back day counted", async () => {
  const day = fc.integer({ min: ASOF - 8, max: ASOF + 8 });
  const row = fc.tuple(
    fc.constant("a"),
    fc.constant("Ado"),
    day,
    fc.option(day),
    fc.option(day),
    fc.constantFrom(1, 2, null),
    fc.constantFrom(100, 99.95, 0.1, null),
    fc.constant("GBP"),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 12 }), async (rows) => {
      const [value] = await valuesOf(rows);
      for (const { day: each, valueOut } of value?.days ?? []) {
        expect(valueOut).toBe(valueout([headings, ...rows], each, null, true));
      }
      expect(value?.valueOut ?? 0).toBe(valueout([headings, ...rows], ASOF, null, true));
      const [, pieces, , unvalued] = valuebyday([headings, ...rows], ASOF, ASOF, null, true)[1] ?? [];
      expect([value?.piecesHeld ?? 0, value?.piecesUnvalued ?? 0]).toEqual([pieces, unvalued]);
    }),
  );
});

test("the picture runs from the first day out to the last day due, and always holds the day looked at", () => {
  const row = (out: number, due: number) => ({ out, due, extendedTo: null, back: null }) as never;
  expect(pictureDays([row(ASOF - 2, ASOF + 1)], ASOF)).toEqual([ASOF - 2, ASOF - 1, ASOF, ASOF + 1]);
  expect(pictureDays([], ASOF)).toEqual([ASOF]);
  const wide = pictureDays([row(ASOF - 400, ASOF + 36500)], ASOF);
  expect(wide).toHaveLength(35);
  expect(wide).toContain(ASOF);
});

test("a currency of which all came back is left out, one that goes out later is not yet held, and one without values is held", async () => {
  const values = await valuesOf([
    ["a", "Ado", ASOF - 3, ASOF - 1, ASOF - 1, 1, 100, "USD"],
    ["b", "Ado", ASOF + 1, ASOF + 3, null, 1, 100, "EUR"],
    ["c", "Ado", ASOF - 3, ASOF + 3, null, 1, null, "GBP"],
    ["d", "Ado", ASOF - 3, ASOF + 3, null, 1, "ask Ada", "CHF"],
  ]);
  const told = new Map(values.map((value) => [value.currency, [isOutFrom(value, ASOF), isHeld(value)]]));
  expect(told).toEqual(
    new Map([
      ["USD", [false, false]],
      ["EUR", [true, false]],
      ["GBP", [true, true]],
      ["CHF", [true, true]],
    ]),
  );
});
