import { looksOfPiece } from "../../../src/domain/day/looksOfPiece";
import { datedDays } from "./datedDays";
import { sampleLook } from "./sampleLook";

const days = datedDays([
  sampleLook(1, { date: 46111 }),
  sampleLook(2, { date: 46111 }),
  sampleLook(1, { date: 46112 }),
]);
const datesOf = (key: string, shoot: number | null) => looksOfPiece(key, shoot, days).map(({ day }) => day.date);

test.each([
  ["the only look of that number is meant, whatever the shoot day", "2", 46112, [46111]],
  ["of several, the one of the shoot day", "1", 46112, [46112]],
  ["without a shoot day any of them may be", "1", null, [46111, 46112]],
  ["with a shoot day on which none is, too", "1", 46200, [46111, 46112]],
  ["a number that no table lists is none", "9", null, []],
] as const)("%s", (_, key, shoot, dates) => {
  expect(datesOf(key, shoot)).toEqual(dates);
});
