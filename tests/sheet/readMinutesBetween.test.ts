import { sayProblem } from "../../src/domain/wording";
import { readMinutesBetween } from "../../src/sheet/readMinutesBetween";

const NAMES = ["Studio", "Orla"];
const say = (cells: readonly (readonly unknown[])[]): unknown => {
  const table = readMinutesBetween(cells, NAMES);
  return table.ok ? table.value : sayProblem(table.problem);
};

test("reads a square of minutes from row to column, whatever stands on the diagonal", () => {
  expect(
    say([
      ["x", "20 min"],
      [30, null],
    ]),
  ).toEqual([
    [0, 20],
    [30, 0],
  ]);
});

test("another size is refused with the size that is wanted", () => {
  expect(say([[0, 20, 30]])).toBe(
    'minutesBetween: "1 rows, 3 columns" cannot be used; give 2 rows and 2 columns of minutes alone, one for each row of stops in their order.',
  );
  expect(
    say([
      ["", "Studio", "Orla"],
      ["Studio", 0, 20],
      ["Orla", 20, 0],
    ]),
  ).toMatch(/"3 rows, 3 columns"/);
});

test("a pair that is blank or no minutes is named by its stops", () => {
  expect(
    say([
      [0, 20],
      [null, 0],
    ]),
  ).toBe("minutesBetween from Orla to Studio is blank; give minutes, such as 15.");
  expect(
    say([
      [0, 0.25],
      [1, 0],
    ]),
  ).toMatch(/^minutesBetween from Studio to Orla: .*type 360, not 6:00/);
  expect(
    say([
      [0, 100001],
      [1, 0],
    ]),
  ).toMatch(/minutes up to 100000/);
});
