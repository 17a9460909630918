import { sayProblem } from "../../src/domain/wording";
import { readStops } from "../../src/sheet/readStops";
import { readTable } from "../../src/sheet/readTable";

const HEADINGS = ["Stop", "Open", "Close", "Minutes", "Latitude", "Longitude", "Due", "Receives until", "Cut-off"];
const START = ["Studio"];

function stops(rows: readonly (readonly unknown[])[], placed = false) {
  const cells = [HEADINGS, ...rows.map((row) => [...row, ...Array<null>(HEADINGS.length - row.length).fill(null)])];
  const table = readTable({ cells, kind: "stops", needs: ["stop"], argument: "stops" });
  if (!table.ok) throw new Error(sayProblem(table.problem));
  return readStops(table.value, placed);
}
const hours = (opening: readonly { from: number; until: number }[] | null | undefined) =>
  opening?.map(({ from, until }) => [Math.round(from * 1440) / 60, Math.round(until * 1440) / 60]);

test("reads a stop with its hours, minutes, place and due day", () => {
  const [, stop] = stops([START, ["Orla", "10:00", 0.75, "15 min", 51.5, -0.12, "2026-03-05"]], true);
  expect(stop).toEqual({
    name: "Orla",
    said: "Orla",
    minutes: 15,
    opening: [{ from: 10 / 24, until: 0.75 }],
    due: 46086,
    place: { latitude: 51.5, longitude: -0.12 },
    problem: null,
  });
});

test("what is blank is open at any time, takes no minutes and is due last, also where blanks come as 0", () => {
  for (const blank of [null, 0, ""]) {
    const [, stop] = stops([START, ["Orla", blank, blank, blank, blank, blank, blank, blank, blank]]);
    expect(stop).toMatchObject({ opening: null, minutes: 0, due: null, place: null, problem: null });
  }
  const [, lists] = stops([START, ["Orla", "10-13, 14-18", 0]]);
  expect(hours(lists!.opening)).toEqual([
    [10, 13],
    [14, 18],
  ]);
});

test("Receives until, Cut-off and a Due that is a time of day close the door sooner, but not at the start", () => {
  const row = ["Orla", "10-13, 14-18", null, null, null, null, null, "17:00", "15:00"];
  const [start, stop] = stops([row, row]);
  expect(hours(start!.opening)).toEqual([
    [10, 13],
    [14, 18],
  ]);
  expect(hours(stop!.opening)).toEqual([
    [10, 13],
    [14, 15],
  ]);
  const due = (value: unknown) => stops([START, ["Orla", null, null, null, null, null, value]])[1]!;
  expect(hours(due("11:30").opening)).toEqual([[0, 11.5]]);
  expect(due(0.5)).toMatchObject({ due: 0.5, opening: [{ from: 0, until: 0.5 }] });
  expect(due(46086.5)).toMatchObject({ due: 46086, opening: null });
});

test("a cell that cannot be read is the stop's problem, named by its heading and its row", () => {
  const say = (row: readonly unknown[], placed = false): string => {
    const { problem } = stops([START, row], placed)[1]!;
    return problem === null ? "no problem" : sayProblem(problem);
  };
  expect(say(["Orla", "by appointment"])).toMatch(/^Open, row 3: "by appointment" cannot be used/);
  expect(say(["Orla", null, null, 0.25])).toMatch(/^Minutes, row 3: .*type 360, not 6:00/);
  expect(say(["Orla", null, null, 200000])).toMatch(
    /^Minutes, row 3: "200000" cannot be used; give minutes up to 100000/,
  );
  expect(say(["Orla", null, null, null, null, null, "03/04/26"])).toMatch(/^Due, row 3: .*could be/);
  expect(say(["Orla", null, null, null, 91, 0], true)).toMatch(
    /^Latitude, row 3: "91" cannot be used; give degrees from -90 to 90/,
  );
  expect(say(["Orla", null, null, null, 51.5, null], true)).toMatch(/^Longitude, row 3 is blank; give degrees/);
  expect(say(["Orla", null, null, null, 0, 0], true)).toMatch(/^Latitude, row 3 is blank/);
  expect(say(["Orla", null, null, null, 91, 0], false)).toBe("no problem");
});

test("a stop without a name is planned, and the problem stands in its name", () => {
  const [, stop] = stops([START, [null, "10:00", "18:00", 15]]);
  expect(stop).toMatchObject({ said: "row 3", problem: null, minutes: 15 });
  expect(stop!.name).toMatchObject({ reason: "argument-missing", facts: { argument: "Stop, row 3" } });
});
