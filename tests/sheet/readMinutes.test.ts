import { sayProblem } from "../../src/domain/wording";
import { readMinutes } from "../../src/sheet/readMinutes";
import { reads } from "./reads";

test.each([
  [15, 15],
  [0, 0],
  [7.5, 7.5],
  [100000, 100000],
  ["15", 15],
  ["0", 0],
  ["15 min", 15],
  ["15min.", 15],
  ["15 mins", 15],
  ["15 minutes", 15],
  ["15 Minuten", 15],
  ["15 m", 15],
  ["15'", 15],
  ["7,5 min", 7.5],
  ["1h", 60],
  ["1 hr", 60],
  ["2 hours", 120],
  ["1 Stunde", 60],
  ["1h30", 90],
  ["1 h 30 min", 90],
  ["1 hr 5", 65],
  ["1.5 h", 90],
  ["1,5 Std.", 90],
  ["2 heures", 120],
  [null, null],
  ["", null],
])("%j is %j minutes", (raw, minutes) => expect(reads(readMinutes(raw, "change"))).toBe(minutes));

test.each([
  [15 / 1440, "0:15", 15],
  ["0:15", "0:15", 15],
  ["1:30", "1:30", 90],
  ["00:45", "0:45", 45],
  [0.5, "12:00", 720],
])("%j is a time of day, and the sentence says what to type", (raw, shown, minutes) => {
  const outcome = readMinutes(raw, "change");
  if (outcome.ok) throw new Error("expected a problem");
  expect(sayProblem(outcome.problem)).toBe(
    `change: "${shown}" cannot be used; give minutes as a number: type ${minutes}, not ${shown}.`,
  );
});

test.each([
  -1,
  "-15",
  "5-10",
  "15-20 min",
  "ca. 15",
  "quick",
  "1h75",
  "1.500 min",
  "15 sec",
  "15 20",
  true,
  Infinity,
  NaN,
])("%j is no number of minutes", (raw) => expect(reads(readMinutes(raw, "change"))).toBe("argument-not-usable"));
