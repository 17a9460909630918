import { looksByDay } from "../../../src/domain/day/looksByDay";
import { sampleLook } from "./sampleLook";

test("looks are parted by their date in the order of the sheet, those without one together", () => {
  const looks = [
    sampleLook(1, { date: 46111 }),
    sampleLook(2),
    sampleLook(3, { date: 46112 }),
    sampleLook(4, { date: 46111 }),
    sampleLook(5),
  ];
  const parted = [...looksByDay(looks)].map(([day, ofDay]) => [day, ofDay.map(({ label }) => label)]);
  expect(parted).toEqual([
    [46111, [1, 4]],
    [null, [2, 5]],
    [46112, [3]],
  ]);
});
