import sample from "../../../src/build/sample/two-day-shoot.json";
import { dayplan } from "../../../src/functions/bindings/dayplan";
import { lookorder } from "../../../src/functions/bindings/lookorder";

const dateColumn = sample.lookHeadings.indexOf("Date");
const days = sample.days.map((day) => ({
  ...day,
  looks: [sample.lookHeadings, ...sample.looks.filter((look) => look[dateColumn] === day.date)] as unknown[][],
}));
const lastUntil = (rows: unknown[][]): number => Math.max(...rows.slice(1).map((row) => Number(row[5])));
const names = (rows: unknown[][]): unknown[] => rows.slice(1).map((row) => row[0]);

describe.each(days)("$sheet of the sample workbook", ({ looks, call }) => {
  const given = dayplan(looks, call, sample.people);
  const found = lookorder(looks, call, sample.people);

  test("has the headings of DAYPLAN and exactly one row a look", () => {
    expect(found[0]).toEqual(given[0]);
    expect(names(found).sort()).toEqual(names(given).sort());
  });

  test("ends no later than in the order given", () => {
    expect(lastUntil(found)).toBeLessThanOrEqual(lastUntil(given));
  });

  test("is what DAYPLAN says of the looks in that order", () => {
    const order = sample.lookHeadings.indexOf("Order");
    const label = sample.lookHeadings.indexOf("Look");
    const placeOf = (row: unknown[]): number => 1 + names(found).indexOf(row[label]);
    const reordered = looks.map((row, at) =>
      row.map((cell, column) => (at > 0 && column === order ? placeOf(row) : cell)),
    );
    expect(dayplan(reordered, call, sample.people)).toEqual(found);
  });
});

test("with a heading row alone the plan is its heading row alone", () => {
  expect(lookorder([sample.lookHeadings], "08:00")).toHaveLength(1);
});
