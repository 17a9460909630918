import { valueout } from "../../../src/functions/bindings/valueout";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const headings = ["Piece", "Value", "Currency", "Out", "Back", "Settled"];

test("is money of the pieces held, in their one currency", () => {
  const rows = [
    headings,
    ["Slip", 0.1, "GBP", 46083, "", ""],
    ["Coat", "£0.20", "GBP", 46083, "", ""],
    ["Hat", 5, "EUR", 46083, 46085, ""],
  ];
  expect(valueout(rows, 46086)).toEqual({ type: "Double", basicValue: 0.3, numberFormat: "#,##0.00" });
});

test("pieces held in two currencies are refused, by row", () => {
  const rows = [headings, ["Slip", 5, "GBP", 46083, "", ""], ["Hat", 5, "EUR", 46083, 46088, ""]];
  expect(() => valueout(rows, 46086)).toThrow("Row 3 is in EUR and row 2 in GBP, so they cannot be added");
});

test("the back day counts when asked to, however yes is said", () => {
  const rows = [headings, ["Slip", 5, "GBP", 46083, 46086, ""]];
  expect(
    [undefined, null, false, "no", true, "yes", 1].map((flag) => sayResult(valueout(rows, 46086, null, flag))),
  ).toEqual([0, 0, 0, 0, 5, 5, 5]);
});

test("settled pieces are not held", () => {
  expect(sayResult(valueout([headings, ["Slip", 5, "GBP", 46083, "", "gifted"]], 46086))).toBe(0);
});

test("100,000 rows add up exact to the cent", () => {
  const rows = [headings.slice(0, 5), ...Array.from({ length: 100_000 }, () => ["Slip", 0.07, "GBP", 46083, null])];
  expect(sayResult(valueout(rows, 46086))).toBe(7000);
});
