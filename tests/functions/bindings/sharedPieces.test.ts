import { daychance } from "../../../src/functions/bindings/daychance";
import { dayfit } from "../../../src/functions/bindings/dayfit";
import { dayplan } from "../../../src/functions/bindings/dayplan";
import { lookorder } from "../../../src/functions/bindings/lookorder";
import { nextlook } from "../../../src/functions/bindings/nextlook";

// Worked by hand: look 1 is shot until 09:40, its belt P1 is with Teo at 09:50, who is changed until 10:10 and shot until
// 10:40; Ada is shot after that, until 11:10. Between the two, Ada costs no time: she is shot from 09:40 to 10:10.
const headings = ["Look", "Talent", "Change", "Shooting", "Pieces", "Shot at"];
const looks = [
  headings,
  [1, "Mina", 10, 30, "P1, P2", ""],
  [2, "Teo", 20, 30, "p1; P3", ""],
  [3, "Ada", 10, 30, "P4, P5", ""],
];
const people = [["hand-over minutes", 10]];
const at = (hours: number, minutes: number): number => (hours * 60 + minutes) / 1440;
const times = (table: unknown[][]): unknown[] =>
  table.slice(1).map(([look, , from, , shot, until, waits]) => [
    look,
    ...[from, shot, until].map((time) => {
      const value = typeof time === "number" ? time : (time as { basicValue: number }).basicValue;
      return Math.round(value * 1440) - 540;
    }),
    waits,
  ]);

test("DAYPLAN has the second look of a piece wait for the first to be undressed and the piece handed over, and says so", () => {
  expect(times(dayplan(looks, "09:00", people))).toEqual([
    [1, 0, 10, 40, "call"],
    [2, 50, 70, 100, "piece P1, look 1"],
    [3, 70, 100, 130, "camera, look 2"],
  ]);
});

test("LOOKORDER puts another look between the two", () => {
  expect(times(lookorder(looks, "09:00", people))).toEqual([
    [1, 0, 10, 40, "call"],
    [3, 10, 40, 70, "camera, look 1"],
    [2, 50, 70, 100, "piece P1, look 1"],
  ]);
});

test("DAYFIT and DAYCHANCE count the wait", () => {
  expect(dayfit(looks, "09:00", "11:00", people)).toBe(-10);
  expect(daychance(looks, "09:00", "11:09", people)).toBe(0);
  expect(daychance(looks, "09:00", "11:10", people)).toBe(1);
});

test("NEXTLOOK calls the second look once the piece is there", () => {
  const shot = looks.map((row, index) => (index === 1 ? [...row.slice(0, 5), "09:10"] : row));
  expect(nextlook(shot, at(9, 45), "09:00", people)[1]).toEqual([2, "Teo", at(9, 50), 25]);
});
