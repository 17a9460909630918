import fc from "fast-check";
import { covergap } from "../../../src/functions/bindings/covergap";
import { coverSpans } from "../../../src/pane/today/coverSpans";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import { valueToday } from "../../../src/pane/today/valueToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const ASOF = 46086;
const headings = ["Piece", "Lender", "Out", "Due", "Back", "Quantity", "Value"];

async function spansOf(rows: readonly (readonly Cell[])[], limit: number, asOf = ASOF) {
  const read = await readSheets([{ name: "Loans", rows: [headings, ...rows] }]);
  const [value] = valueToday(pieceTables(read.tables), asOf);
  return coverSpans(value?.rows ?? [], limit, asOf);
}

test("days over the cover stand as unbroken spans with their highest value, the day something comes back counted", async () => {
  const rows = [
    ["a", "Ado", ASOF - 3, ASOF, ASOF, 1, 400],
    ["b", "Ado", ASOF - 1, ASOF, ASOF + 4, 1, 900],
  ];
  expect(await spansOf(rows, 1000)).toEqual([{ from: ASOF - 1, until: ASOF, value: 1300, overBy: 300 }]);
  expect(await spansOf(rows, 1300)).toEqual([]);
  expect(await spansOf(rows, 1000, ASOF + 1)).toEqual([]);
});

test("a span that lasts while nothing is back has no end", async () => {
  expect(await spansOf([["a", "Ado", ASOF - 3, ASOF, null, 1, 400]], 100)).toMatchObject([{ until: null }]);
});

test("the spans that are not over yet are those of COVERGAP", async () => {
  const day = fc.integer({ min: ASOF - 8, max: ASOF + 8 });
  const row = fc.tuple(
    fc.constant("a"),
    fc.constant("Ado"),
    day,
    fc.constant(ASOF),
    fc.option(day),
    fc.constantFrom(1, 2, null),
    fc.constantFrom(100, 99.95, null),
  );
  const plain = (cell: unknown) =>
    typeof cell === "object" && cell !== null ? (cell as { basicValue: unknown }).basicValue : cell;
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 10 }), async (rows) => {
      const spans = await spansOf(rows, 150);
      const given = covergap([headings, ...rows], 150)
        .slice(1)
        .map((cells) => cells.slice(1).map(plain))
        .filter(([, until]) => until === "" || Number(until) >= ASOF);
      expect(spans.map(({ from, until, value, overBy }) => [from, until ?? "", value, overBy])).toEqual(given);
    }),
  );
});
