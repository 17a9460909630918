import { secondsNearCall } from "../../../src/domain/day/secondsNearCall";

test.each([
  ["beside a call at 18:00, 01:00 is the next morning's", 1, 18, 25],
  ["beside a call at 09:00, 08:30 is before it", 8.5, 9, 8.5],
  ["twelve hours before call is still before it", 6, 18, 6],
  ["what is counted past midnight stays as typed", 25, 18, 25],
])("%s", (_, hours, call, meant) => {
  expect(secondsNearCall(hours / 24, call * 3600)).toBe(meant * 3600);
});
