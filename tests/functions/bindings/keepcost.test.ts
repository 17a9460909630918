import { keepcost } from "../../../src/functions/bindings/keepcost";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

test("a share left out is all: of what was taken, or of what is short", () => {
  expect(sayResult(keepcost(1000, 200, null, 0.2))).toBe(160);
  expect(sayResult(keepcost(1000, 200, 0.3, null))).toBe(100);
  expect(() => keepcost(1000, 200)).toThrow("keepShare is blank; give the share");
});

test("nothing kept may be blank or 0; nothing taken costs nothing; text amounts are read", () => {
  expect([null, 0, "", undefined].map((kept) => sayResult(keepcost(1000, kept, 0.3, 0.2)))).toEqual([60, 60, 60, 60]);
  expect(sayResult(keepcost(0, 0, 0.3, 0.2))).toBe(0);
  expect(sayResult(keepcost("£1,000.00", "£200", "30%", "20%"))).toBe(20);
});

test("amounts below 0, shares that are none and errors are refused by name", () => {
  expect(() => keepcost(-1, 0, 0.3, 0.2)).toThrow(/^taken: "-1"/);
  expect(() => keepcost(1, -1, 0.3, 0.2)).toThrow(/^kept: "-1"/);
  expect(() => keepcost(1, 0, 30, 0.2)).toThrow('keepShare: "30" cannot be used; give a share from 0 to 1');
  expect(() => keepcost(1, 0, 0.3, -0.2)).toThrow(/^restockShare: /);
  expect(() => keepcost({ error: "#REF!" }, 0, 0.3, 0.2)).toThrow("taken holds the error #REF!");
  expect(() => keepcost(1e308, 0, 1, 1)).toThrow("too large");
});
