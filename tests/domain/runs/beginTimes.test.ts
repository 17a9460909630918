import { beginTimes } from "../../../src/domain/runs/beginTimes";
import { stopOf } from "./stopOf";

const hour = 3_600_000;
const begins = (hours: readonly (readonly [number, number])[], minutes: number) =>
  beginTimes(stopOf("Orla", { hours, minutes })).map((ms) => ms / hour);

test("a visit begins so that it ends while the door is open", () => {
  expect(begins([[10, 18]], 30)).toEqual([10, 17.5]);
  expect(
    begins(
      [
        [14, 18],
        [10, 13],
      ],
      60,
    ),
  ).toEqual([10, 12, 14, 17]);
});

test("spans that touch or overlap are one, and what is too short is left out", () => {
  expect(
    begins(
      [
        [10, 11],
        [11, 12],
        [11.5, 13],
        [14, 14.5],
      ],
      60,
    ),
  ).toEqual([10, 12]);
  expect(begins([[10, 11]], 61)).toEqual([]);
});

test("a visit of no time may begin as the door closes; without hours it may begin at any time", () => {
  expect(begins([[10, 10]], 0)).toEqual([10, 10]);
  expect(beginTimes(stopOf("Orla"))).toEqual([0, Infinity]);
});
