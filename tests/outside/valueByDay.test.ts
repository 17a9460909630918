import * as formulas from "@formulajs/formulajs";
import { peakvalue } from "../../src/functions/bindings/peakvalue";
import { valuebyday } from "../../src/functions/bindings/valuebyday";

/**
 * The value by day against the sum a spreadsheet user would write without these functions:
 * SUMIFS(value, out, "<=" & day) less SUMIFS(value, out, "<=" & day, back, "<=" & day, back, ">0"), worked out by
 * @formulajs/formulajs 4.6.1. The rows come from a fixed rule, so that they are the same every time.
 */
const rows = Array.from({ length: 60 }, (_, row) => {
  const out = 46023 + ((row * 7) % 23);
  return { value: ((row * 7919) % 100_003) / 100, out, back: row % 3 === 0 ? 0 : out + ((row * 5) % 11) };
});
const table = [
  ["Piece", "Value", "Out", "Back"],
  ...rows.map(({ value, out, back }, row) => [`P${row}`, value, out, back]),
];
const column = (field: "value" | "out" | "back") => rows.map((row) => row[field]);
const [FIRST, LAST] = [46020, 46065];

function sumHeld(amounts: readonly number[], day: number): number {
  const upTo = `<=${day}`;
  const gone = formulas.SUMIFS(amounts, column("out"), upTo, column("back"), upTo, column("back"), ">0") as number;
  return (formulas.SUMIFS(amounts, column("out"), upTo) as number) - gone;
}

const expected = Array.from({ length: LAST - FIRST + 1 }, (_, place) => {
  const day = FIRST + place;
  const pieces = sumHeld(
    rows.map(() => 1),
    day,
  );
  return [day, pieces, Math.round(sumHeld(column("value"), day) * 100) / 100];
});

test("each day holds what SUMIFS adds up", () => {
  const [, ...found] = valuebyday(table, FIRST, LAST) as [unknown, ...number[][]];
  expect(found.map((row) => row.slice(0, 3))).toEqual(expected);
  expect(found.filter((row) => row[1]! > 0).length).toBeGreaterThan(30);
});

test("the peak is the first day on which SUMIFS is highest", () => {
  const highest = Math.max(...expected.map((row) => row[2]!));
  expect(peakvalue(table)).toEqual([["Date", "Pieces", "Value"], expected.find((row) => row[2] === highest)]);
});
