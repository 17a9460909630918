import { readAmount } from "../../src/sheet/readAmount";
import { says } from "./says";

test("an amount is a number of 0 or more, also as text with its currency", () => {
  for (const [raw, amount] of [
    [0, 0],
    [5.5, 5.5],
    ["£1,250.00", 1250],
    [null, null],
    ["", null],
  ])
    expect(readAmount(raw, "taken")).toEqual({ ok: true, value: amount });
  expect(says(readAmount("-£5", "taken"))).toBe('taken: "-5" cannot be used; give an amount of 0 or more.');
  expect(says(readAmount("lots", "taken"))).toContain('taken: "lots" cannot be used');
});
