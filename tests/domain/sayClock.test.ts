import { sayClock } from "../../src/domain/sayClock";

test.each([
  [0, "00:00"],
  [9.5 / 24, "09:30"],
  [1 - 1 / 86_400, "24:00"],
  [25.25 / 24, "25:15"],
])("%d of a day is %s", (time, said) => {
  expect(sayClock(time)).toBe(said);
});
