import { bags } from "../../../src/functions/bindings/bags";
import { HostError } from "../HostError";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const rows = [
  ["Ref", "Description", "Type", "Wt (g)", "Qty", "Keep together"],
  ["R1", "Silk gown", "Dress", 900, 1, "ball"],
  ["R2", "Opera cape", "Coat", "2 kg", 1, ""],
  ["R3", "Court shoes", "Shoes", "", 2, "Ball"],
];

test("a sheet as it is kept: grams in the heading, a weight with its unit, an estimate, a quantity and a set", () => {
  expect(bags(rows, 2.5, "kg", "piece=Ref; weight=Wt (g)")).toEqual([
    ["Piece", "Weight", "Bag"],
    ["R1", 0.9, 1],
    ["R2", 2, 2],
    ["R3", 0.8, 1],
    ["R3", 0.8, 1],
  ]);
});

test("the limit may say its unit, and is compared in whole grams in any", () => {
  const two = [
    ["Piece", "Weight"],
    ["A", "1 lb"],
    ["B", "1 lb"],
  ];
  const inBags = (limit: unknown, unit: string): unknown[] =>
    bags(two, limit, unit)
      .slice(1)
      .map((row) => row[2]);
  expect(inBags(2, "lb")).toEqual([1, 1]);
  expect(inBags("907 g", "kg")).toEqual([1, 1]);
  expect(inBags("906 g", "kg")).toEqual([1, 2]);
});

test("a limit that is blank, 0 or no weight is named", () => {
  const said = (limit: unknown): string => {
    try {
      bags(rows, limit);
      return "";
    } catch (error) {
      return (error as Error).message;
    }
  };
  expect(said(null)).toBe("limit is blank; give a weight above 0, such as 10 or 10 kg.");
  expect(said(0)).toBe('limit: "0" cannot be used; give a weight above 0, such as 10 or 10 kg.');
  expect(said("0.1 g")).toBe('limit: "0.0001" cannot be used; give a weight above 0, such as 10 or 10 kg.');
  expect(said("a lot")).toContain('limit: "a lot" cannot be used');
});

test("a huge limit and a huge weight neither hang nor leave a cell empty", () => {
  const heavy = [
    ["Piece", "Weight"],
    ["A", 1e300],
    ["B", 2],
  ];
  const result = bags(heavy, 1e308);
  expect(result[2]).toEqual(["B", 2, 1]);
  expect(result[1]![2]).toBeInstanceOf(HostError);
});
