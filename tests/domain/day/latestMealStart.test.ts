import { latestMealStart } from "../../../src/domain/day/latestMealStart";
import { sayClock } from "./sayClock";

const at = (hours: number, minutes = 0): number => (hours * 60 + minutes) / 1440;

test.each([
  ["hours run from call where no meal was taken", at(8), 6, null, "14:00"],
  ["and from the end of the last meal where that is later", at(8), 6, at(14, 30), "20:30"],
  ["a meal that ended before call changes nothing", at(8), 6, at(7, 30), "14:00"],
  ["a meal that ended at call neither", at(8), 6, at(8), "14:00"],
  ["a time far before call is the next morning's", at(20), 5, at(1), "30:00"],
  ["a meal that ended past midnight may be counted on", at(20), 5, at(25), "30:00"],
  ["parts of an hour count", at(9, 15), 5.5, null, "14:45"],
] as const)("%s", (_, call, hours, lastMeal, said) => {
  expect(sayClock(latestMealStart(call, hours, lastMeal))).toBe(said);
});
