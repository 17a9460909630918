import { valuebyday } from "../../../src/functions/bindings/valuebyday";
import type { HostError } from "../HostError";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const DAY = 46083;
const headings = ["Item no.", "Ins. value", "Qty", "Date out", "Date back", "Settled"];

test("reads a sheet as typed in a hurry: a title, text amounts, blank rows, a total at the bottom", () => {
  const rows = [
    ["Spring job", "", "", "", "", ""],
    headings,
    ["P1", "£1,250.50", 1, DAY, "", ""],
    ["", "", "", "", "", ""],
    ["P2", 20.25, 2, "2 Mar 2026", DAY + 1, ""],
    ["P3", 999, 1, DAY, "", "lost"],
    ["Total", 2269.75, "", "", "", ""],
  ];
  expect(sayResult(valuebyday(rows, DAY, DAY + 1))).toEqual([
    ["Date", "Pieces", "Value", "Unvalued"],
    ["2026-03-02", 3, 1291, 0],
    ["2026-03-03", 1, 1250.5, 0],
  ]);
});

test("an error in a cell stands in the figures it spoils, with the row, and the other days survive", () => {
  const rows = [
    headings,
    ["P1", 100, 1, DAY, "", ""],
    ["P2", { error: "#N/A" }, 1, DAY + 1, "", ""],
    ["P3", -5, 1, DAY + 2, "", ""],
  ];
  const [, first, second, third] = valuebyday(rows, DAY, DAY + 2) as unknown[][];
  expect(sayResult([first!])).toEqual([["2026-03-02", 1, 100, 0]]);
  expect([second![1], third![1]]).toEqual([2, 3]);
  for (const row of [second!, third!]) expect((row[2] as HostError).message).toContain("Ins. value, row 3");
});

test("days may be days of a sheet with a time of day, and are refused where they are none", () => {
  expect(valuebyday([headings], DAY + 0.7, DAY + 1.2)).toHaveLength(3);
  expect(() => valuebyday([headings], "03/04/26", DAY)).toThrow("from:");
  expect(() => valuebyday([headings], DAY, null)).toThrow("to is blank");
  expect(() => valuebyday([headings], -1, DAY)).toThrow("from:");
  expect(() => valuebyday([headings], DAY, 1e9)).toThrow("to:");
});

test("two headings for one thing, and a missing one, are refused by name", () => {
  const twice = [
    ["Piece", "Value", "Insured value", "Out", "Back"],
    ["P1", 1, 1, DAY, ""],
  ];
  expect(() => valuebyday(twice, DAY, DAY)).toThrow('"Value" and "Insured value" could both be Value');
  expect(sayResult(valuebyday(twice, DAY, DAY, "value=Insured value"))).toHaveLength(2);
  expect(() =>
    valuebyday(
      [
        ["Piece", "Value", "Out"],
        ["P1", 1, DAY],
      ],
      DAY,
      DAY,
    ),
  ).toThrow("no column headed Back");
});
