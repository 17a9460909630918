import { closedWeekdaysFromCode } from "../../../src/domain/dates/closedWeekdaysFromCode";
import { closedWeekdaysFromPattern } from "../../../src/domain/dates/closedWeekdaysFromPattern";

// The pairs of the WORKDAY.INTL page (support.microsoft.com, WORKDAY.INTL function), as patterns Monday first.
const PATTERN_OF_CODE: readonly (readonly [number, string])[] = [
  [1, "0000011"],
  [2, "1000001"],
  [3, "1100000"],
  [4, "0110000"],
  [5, "0011000"],
  [6, "0001100"],
  [7, "0000110"],
  [11, "0000001"],
  [12, "1000000"],
  [13, "0100000"],
  [14, "0010000"],
  [15, "0001000"],
  [16, "0000100"],
  [17, "0000010"],
];

describe("closedWeekdaysFromCode", () => {
  it.each(PATTERN_OF_CODE)("reads code %i as the pattern %s", (code, pattern) => {
    expect(closedWeekdaysFromCode(code)).toBe(closedWeekdaysFromPattern(pattern));
    expect(closedWeekdaysFromCode(code)).not.toBeNull();
  });

  it("is null for every other number", () => {
    for (const code of [0, 8, 9, 10, 18, -1, 1.5, 1111111, NaN, Infinity])
      expect(closedWeekdaysFromCode(code)).toBeNull();
  });
});

describe("closedWeekdaysFromPattern", () => {
  it("is null for anything but seven characters of 0 and 1", () => {
    for (const pattern of ["", "1", "000001", "00000011", "0000012", "abcdefg", "000 011"])
      expect(closedWeekdaysFromPattern(pattern)).toBeNull();
  });

  it("reads Monday first", () => {
    expect(closedWeekdaysFromPattern("1000000")).toBe(1);
    expect(closedWeekdaysFromPattern("0000001")).toBe(64);
  });
});
