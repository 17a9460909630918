import { wrapSeconds } from "../../../src/domain/day/wrapSeconds";

test.each([
  ["a wrap after call is of that day", 18 / 24, 9 / 24, 18 * 3600],
  ["a wrap before call is the next morning's", 1 / 24, 20 / 24, 25 * 3600],
  ["a wrap at call is at call", 9 / 24, 9 / 24, 9 * 3600],
  ["a wrap counted past midnight stays", 25 / 24, 20 / 24, 25 * 3600],
])("%s", (_, wrap, call, seconds) => {
  expect(wrapSeconds(wrap, call)).toBe(seconds);
});
