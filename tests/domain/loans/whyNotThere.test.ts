import { whyNotThere } from "../../../src/domain/loans/whyNotThere";
import { pieceRowOf } from "./pieceRowOf";

const DAY = 46111;
const bad = { reason: "error-in-cell", facts: { argument: "Out, row 2", given: "#N/A" } } as const;

test.each([
  ["a piece without an out day never went out", { out: null }, "never out"],
  ["one that goes out the day after is not there yet", { out: DAY + 1 }, "out later"],
  ["one that goes out on the day is there", { out: DAY }, null],
  ["one that is back on the day is not there any more", { out: DAY - 5, back: DAY }, "already back"],
  ["one that comes back the day after is still there", { out: DAY - 5, back: DAY + 1 }, null],
  ["one of which some are still out is there", { out: DAY - 5, back: DAY - 1, quantity: 3, quantityBack: 2 }, null],
  ["one of which all came back is not", { out: DAY - 5, back: DAY - 1, quantity: 3, quantityBack: 3 }, "already back"],
  ["a settled one is not reported", { out: DAY - 5, settled: true }, null],
  ["an out day that cannot be read is the problem", { out: bad }, bad],
  ["a back day that cannot be read too", { out: DAY - 5, back: bad }, bad],
  ["but not where the out day decides", { out: DAY + 1, back: bad }, "out later"],
] as const)("%s", (_, cells, why) => {
  expect(whyNotThere(pieceRowOf(cells), DAY)).toEqual(why);
});
