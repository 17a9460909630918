import { lookKey } from "../../src/sheet/lookKey";

test.each([
  ["7", "7"],
  ["07", "7"],
  ["Look 7", "7"],
  ["look7", "7"],
  ["LOOK no. 07", "7"],
  ["#7", "7"],
  ["Tenue n° 7", "7"],
  ["7 A", "7a"],
  ["7a", "7a"],
  ["1.1", "1.1"],
  ["1-2", "1.2"],
  ["12", "12"],
  ["Finale", "finale"],
  ["Lookbook", "lookbook"],
  ["Look", "look"],
  ["10", "10"],
  ["–", ""],
])("%s is the look %s", (typed, key) => {
  expect(lookKey(typed)).toBe(key);
});
