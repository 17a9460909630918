import fc from "fast-check";
import { calendarOf } from "../../../src/domain/dates/calendarOf";

describe("calendarOf", () => {
  it("keeps each closed date once, ascending, and leaves out those on closed weekdays", () => {
    // 2026-01-03 and 04 are a weekend.
    expect(calendarOf(0b1100000, [46030, 46025, 46024, 46030, 46026, 46024])).toEqual({
      closedWeekdays: 0b1100000,
      openDaysAWeek: 5,
      closedDays: [46024, 46030],
    });
  });

  it("keeps the same days of a list in any order, short or long", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 400 }), { maxLength: 150 }), fc.nat(127), (closed, weekdays) => {
        const open = [...new Set(closed)].filter((day) => !((weekdays >> ((day + 5) % 7)) & 1));
        expect(calendarOf(weekdays, closed).closedDays).toEqual(open.sort((a, b) => a - b));
      }),
    );
  });

  it("counts the open days of a week for every set of closed weekdays", () => {
    for (let weekend = 0; weekend < 128; weekend++) {
      const closed = weekend.toString(2).split("1").length - 1;
      expect(calendarOf(weekend).openDaysAWeek).toBe(7 - closed);
    }
  });
});
