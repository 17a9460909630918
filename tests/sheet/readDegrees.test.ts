import { readDegrees } from "../../src/sheet/readDegrees";
import { reads } from "./reads";

test.each([
  [51.5074, 51.5074],
  [0, 0],
  [-90, -90],
  ["51.5074", 51.5074],
  ["51,507", 51.507],
  ["-0.1278", -0.1278],
  ["−0.1278", -0.1278],
  ["0.1278° W", -0.1278],
  ["33.9 s", -33.9],
  ["2.35 E", 2.35],
  ["3,7 W", -3.7],
  // West to a French reader, east to a German one.
  ["3,7 O", "argument-not-usable"],
  [null, null],
  ["", null],
  [91, "argument-not-usable"],
  ["51°30'26\"N", "argument-not-usable"],
  ["51.5, -0.12", "argument-not-usable"],
  ["north", "argument-not-usable"],
  [true, "argument-not-usable"],
  [{ error: "#N/A" }, "error-in-cell"],
])("%j as a latitude is %j", (raw, expected) => {
  expect(reads(readDegrees(raw, "Latitude", 90))).toBe(expected);
});

test("a longitude goes up to 180", () => {
  expect(reads(readDegrees(180, "Longitude", 180))).toBe(180);
  expect(reads(readDegrees(180.1, "Longitude", 180))).toBe("argument-not-usable");
});
