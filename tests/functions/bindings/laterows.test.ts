import { laterows } from "../../../src/functions/bindings/laterows";
import { HostError } from "../HostError";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const asOf = "2026-03-09";

test("gives the late rows with their own columns as typed, the most late first, then the most valuable", () => {
  const rows = [
    ["Due", "Piece", "Paid", "Value", "Out", "Back", "Extended to", "Qty"],
    [46088, "Belt", "", 20, 46083, "", "", 1],
    [46085, "Boots", "yes", 10, "2 Mar 2026", "", "", ""],
    [46088, "Coat", null, 15, 46083, null, null, 2],
    [46085, "Slip", "", 15, 46083, "", 46092, 1],
    ["", "Hat", "", 900, 46083, "", "", 1],
    [46085, "Ring", "", 900, 46083, 46090, "", 1],
  ];
  expect(sayResult(laterows(rows, asOf))).toEqual([
    ["Due", "Piece", "Paid", "Value", "Out", "Back", "Extended to", "Qty", "Days late"],
    ["2026-03-04", "Boots", "yes", 10, "2 Mar 2026", "", "", "", 5],
    ["2026-03-07", "Coat", "", 15, "2026-03-02", "", "", 2, 2],
    ["2026-03-07", "Belt", "", 20, "2026-03-02", "", "", 1, 2],
  ]);
});

test("a row of which it cannot be told stands last with the error in Days late, its own cells as typed", () => {
  const rows = [
    ["Piece", "Out", "Due", "Back"],
    ["Boots", 46083, "soon", ""],
    ["Belt", 46083, 46088, ""],
  ];
  const table = laterows(rows, asOf) as unknown[][];
  expect(table.map((row) => row[0])).toEqual(["Piece", "Belt", "Boots"]);
  expect(table[2]![2]).toBe("soon");
  expect(table[2]![4]).toBeInstanceOf(HostError);
  expect((table[2]![4] as HostError).message).toContain('Due, row 2: "soon" is not a date');
});

test("a table passed without its headings is refused and told how to pass them", () => {
  expect(() => laterows([["Boots", 46083, 46085, ""]], asOf)).toThrow(/#All/);
});

test("asOf is needed", () => {
  expect(() => laterows([["Piece", "Out", "Due", "Back"]], null)).toThrow(
    "asOf is blank; give the day to look at, such as 2026-03-05.",
  );
});
