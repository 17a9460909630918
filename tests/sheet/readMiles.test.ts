import { readMiles } from "../../src/sheet/readMiles";
import { reads } from "./reads";

test.each([
  [12.5, 12.5],
  ["12.5", 12.5],
  ["12.5 mi", 12.5],
  ["12 miles", 12],
  ["1609.344 km", 1000],
  ["1.609344km", 1],
  [0, 0],
  [null, null],
  [-1, "argument-not-usable"],
  ["far", "argument-not-usable"],
  [true, "argument-not-usable"],
  ["1,250 mi", "number-ambiguous"],
])("%j is %j miles", (raw, expected) => {
  const read = reads(readMiles(raw, "distance"));
  if (typeof expected === "number") expect(read).toBeCloseTo(expected, 9);
  else expect(read).toBe(expected);
});
