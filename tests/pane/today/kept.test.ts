import fc from "fast-check";
import { againstCover } from "../../../src/pane/today/againstCover";
import { barsOf } from "../../../src/pane/today/barsOf";
import { callsText } from "../../../src/pane/today/callsText";
import { coverText } from "../../../src/pane/today/coverText";
import { parseCalls } from "../../../src/pane/today/parseCalls";
import { parseCover } from "../../../src/pane/today/parseCover";
import { readLimit } from "../../../src/pane/today/readLimit";

test("limits of the cover are read back as they were kept, by currency", () => {
  const limits = new Map([
    ["GBP", 120000],
    ["", 50.5],
  ]);
  expect(parseCover(coverText(limits))).toEqual(limits);
});

test("calls are read back as they were kept, by day", () => {
  const calls = new Map([[46111, 8 / 24]]);
  expect(parseCalls(callsText(calls))).toEqual(calls);
});

test("a kept text of any other shape is no limit and no call, and nothing is thrown", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json(), fc.constant(null)), (text) => {
      expect(parseCover(text).size).toBe(0);
      expect(parseCalls(text).size).toBe(0);
    }),
  );
  expect(parseCover('{"limits":{"GBP":-5,"EUR":"x","USD":0}}').size).toBe(0);
});

test.each([
  ["120000", 120000],
  ["£120,000", 120000],
  ["GBP 99.50", 99.5],
  ["", null],
  ["  ", null],
])("the limit %j is taken as money in a cell is", (typed, limit) => {
  expect(readLimit(typed, "GBP")).toEqual({ ok: true, value: limit });
});

test.each(["lots", "-5", "0", "€500"])("the limit %j is refused where the sheet is in pounds", (typed) => {
  expect(readLimit(typed, "GBP").ok).toBe(false);
});

test("a value equal to the limit is within it, and a cent more is over", () => {
  expect(againstCover(100, null)).toEqual({ is: "no limit" });
  expect(againstCover(100, 100)).toEqual({ is: "within", limit: 100, left: 0, share: 1 });
  expect(againstCover(100.01, 100)).toEqual({ is: "over", limit: 100, overBy: 0.01 });
  expect(againstCover(0.1 + 0.2, 0.3)).toMatchObject({ is: "within", left: 0 });
});

test("bars stand side by side inside the picture, as high as their share of the highest or of the highest limit", () => {
  const bars = barsOf(
    [
      { day: 1, valueOut: 50, limit: 200 },
      { day: 2, valueOut: 0, limit: null },
      { day: 3, valueOut: 100, limit: 150 },
    ],
    { widthPx: 300, heightPx: 80 },
  );
  expect(bars.map(({ heightPx }) => heightPx)).toEqual([20, 0, 40]);
  expect(bars.map(({ leftPx }) => leftPx)).toEqual([0, 100, 200]);
  expect(bars.map(({ limitPx }) => limitPx)).toEqual([80, null, 60]);
  expect(barsOf([{ day: 1, valueOut: 0, limit: null }], { widthPx: 300, heightPx: 80 })).toMatchObject([
    { heightPx: 0, limitPx: null },
  ]);
});
