import { lookName } from "../../src/checks/lookName";

test.each([
  ["Look 07", "07"],
  ["look7a", "7a"],
  ["LOOK no. 3", "no. 3"],
  ["7", "7"],
  ["Beach", "Beach"],
  ["Lookout", "Lookout"],
  ["Look", "Look"],
])("%p is %p after the word look", (typed, expected) => {
  expect(lookName(typed)).toBe(expected);
});
