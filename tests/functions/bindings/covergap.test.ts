import { covergap } from "../../../src/functions/bindings/covergap";
import type { HostError } from "../HostError";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const DAY = 46083;
const headings = ["Piece", "Value", "Currency", "Out", "Back"];
const rows = [headings, ["P1", 600, "GBP", DAY, DAY + 3], ["P2", 500, "GBP", DAY + 1, ""]];

test("a limit may be text with its currency, and must be in that of the pieces", () => {
  expect(sayResult(covergap(rows, "£1,000.00", "£550"))).toEqual([
    ["What", "From", "Until", "Value", "Over by"],
    ["All pieces", "2026-03-03", "2026-03-05", 1100, 100],
    ["P1", "2026-03-02", "2026-03-05", 600, 50],
  ]);
  expect(() => covergap(rows, "1000 EUR")).toThrow("give an amount in GBP, the currency of the pieces");
});

test("a limit of nothing, or below it, is refused", () => {
  expect(() => covergap(rows, null)).toThrow("limit is blank");
  for (const limit of [0, -5, true, "lots"]) expect(() => covergap(rows, limit)).toThrow(/^limit: /);
  expect(() => covergap(rows, 1000, -5)).toThrow(/^pieceLimit: /);
});

test("an untold piece stands last, with its error", () => {
  const [, row] = covergap([headings, ["P1", "ask Ada", "GBP", DAY, ""]], 100) as unknown[][];
  expect(sayResult([row!.slice(0, 3)])).toEqual([["P1", "2026-03-02", ""]]);
  for (const cell of row!.slice(3)) expect((cell as HostError).message).toContain('Value, row 2: "ask Ada"');
});
