import fc from "fast-check";
import { calendarOf } from "../../../src/domain/dates/calendarOf";
import { daysLate } from "../../../src/domain/loans/daysLate";
import { loanState } from "../../../src/domain/loans/loanState";

const calendar = calendarOf(0b1100000);
const value = (outcome: { ok: boolean; value?: unknown; problem?: { reason: string } }): unknown =>
  outcome.ok ? outcome.value : outcome.problem!.reason;

// 46083 is Monday 2026-03-02.
const MON = 46083;

describe("loanState", () => {
  it.each([
    ["no out day", null, MON + 9, null, MON, 3, "not out"],
    ["an out day after asOf", MON + 1, MON + 9, null, MON, 3, "not out"],
    ["out on asOf", MON, MON + 9, null, MON, 3, "out"],
    ["no due day", MON, null, null, MON + 90, 3, "out"],
    ["one day more than the warning", MON, MON + 9, null, MON + 5, 3, "out"],
    ["the first day of the warning", MON, MON + 9, null, MON + 6, 3, "due soon"],
    ["the day before", MON, MON + 9, null, MON + 8, 3, "due soon"],
    ["the day before with a warning of 0", MON, MON + 9, null, MON + 8, 0, "out"],
    ["the day due", MON, MON + 9, null, MON + 9, 3, "due today"],
    ["the day after", MON, MON + 9, null, MON + 10, 3, "late"],
    ["back on the day due", MON, MON + 9, MON + 9, MON + 20, 3, "back"],
    ["back a day late", MON, MON + 9, MON + 10, MON + 20, 3, "back late"],
    ["back on asOf", MON, MON + 9, MON + 10, MON + 10, 3, "back late"],
    ["a back day after asOf, past due", MON, MON + 9, MON + 12, MON + 10, 3, "late"],
    ["a back day after asOf, not due yet", MON, MON + 9, MON + 8, MON + 2, 3, "out"],
    ["back with no due day", MON, null, MON + 9, MON + 20, 3, "back"],
    ["back with no asOf", MON, MON + 9, MON + 8, null, 3, "back"],
    ["out with no asOf", MON, MON + 9, null, null, 3, "argument-missing"],
  ] as const)("for %s", (_title, out, due, back, asOf, warn, state) => {
    expect(value(loanState(out, due, back, asOf, warn))).toBe(state);
  });

  it("is settled where it is, whatever the days say", () => {
    expect(value(loanState(null, null, null, null, 3, true))).toBe("settled");
    expect(value(loanState(MON, MON + 1, MON + 9, MON + 20, 3, true))).toBe("settled");
  });

  it("says late exactly when days are late, for any loan that is out and not back", () => {
    const day = fc.integer({ min: MON, max: MON + 40 });
    fc.assert(
      fc.property(day, day, fc.option(day), day, (out, due, back, asOf) => {
        const state = value(loanState(out, due, back, asOf, 3));
        const late = value(daysLate(due, back, asOf, 0, "calendar", calendar)) as number;
        if (state === "not out") return;
        expect(state === "late" || state === "back late").toBe(late > 0);
      }),
    );
  });
});
