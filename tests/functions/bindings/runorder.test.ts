import { outcomeOf } from "../outcomeOf";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

const stops = [
  ["Stop", "Latitude", "Longitude"],
  ["Studio", 51, 0],
  ["Orla", 51.1, 0],
];
/** Minutes from leaving at 09:00 until the second row is reached. */
function minutesOn(...args: readonly unknown[]): number {
  const outcome = outcomeOf("runorder", args);
  if ("error" in outcome) throw outcome.error;
  return ((outcome.result as number[][])[2]![1]! - 0.375) * 1440;
}

// A tenth of a degree along a meridian, by the length of the circle.
const KM = (2 * Math.PI * 6371.0088) / 3600;

test("without a table of minutes the way is the crow's times the detour, at the speed given", () => {
  expect(minutesOn(stops, null, 0.375)).toBeCloseTo(((KM * 1.3) / 20) * 60, 4);
  expect(minutesOn(stops, null, 0.375, null, null, 40, 1)).toBeCloseTo((KM / 40) * 60, 4);
});

test("a table of minutes goes before latitude and longitude, also where these cannot be read", () => {
  const table = [
    [0, 7],
    [7, 0],
  ];
  expect(minutesOn(stops, table, 0.375)).toBeCloseTo(7, 6);
  const unread = [stops[0], stops[1], ["Orla", "north", ""]];
  expect(minutesOn(unread, table, 0.375)).toBeCloseTo(7, 6);
});

test("without leaveAt the answer says what to give, though its place comes after one that may be left out", () => {
  expect(outcomeOf("runorder", [stops])).toMatchObject({
    error: { message: "leaveAt is blank; give the time one is at the start, such as 09:00." },
  });
});

test.each([[null], [0], [[[0]]], [[[""]]]])(
  "a start alone, with %j as minutes, is left and at once returned to",
  (table) => {
    expect(outcomeOf("runorder", [[["Stop"], ["Studio"]], table, 0.375])).toEqual({
      result: [
        ["Stop", "Arrive", "Wait", "Leave"],
        ["Studio", 0.375, 0, 0.375],
        ["Studio", 0.375, 0, 0.375],
      ],
    });
  },
);
