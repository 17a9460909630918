import { calendarOf } from "../../../src/domain/dates/calendarOf";
import { daysOut } from "../../../src/domain/loans/daysOut";

const calendar = calendarOf(0b1100000);
const value = (outcome: { ok: boolean; value?: unknown; problem?: { reason: string } }): unknown =>
  outcome.ok ? outcome.value : outcome.problem!.reason;

// 46083 is Monday 2026-03-02.
const MON = 46083;

describe("daysOut", () => {
  it.each([
    ["counts from the day out as day 0 to the day back", MON, MON + 7, MON + 30, "calendar", 7],
    ["counts to asOf while it is not back", MON, null, MON + 18, "calendar", 18],
    ["takes a back day after asOf as not yet back", MON, MON + 7, MON + 3, "calendar", 3],
    ["counts to the back day on asOf itself", MON, MON + 3, MON + 3, "calendar", 3],
    ["is 0 on the day out", MON, null, MON, "calendar", 0],
    ["is 0 for a piece out and back on one day", MON, MON, MON + 9, "calendar", 0],
    ["is 0 before the piece goes out", MON, null, MON - 5, "calendar", 0],
    ["needs no asOf once the piece is back", MON, MON + 7, null, "calendar", 7],
    ["needs asOf while it is not", MON, null, null, "calendar", "argument-missing"],
    ["has nothing to compute from without a day out", null, MON, MON, "calendar", "nothing-to-compute"],
    ["refuses a day back before the day out", MON, MON - 1, MON + 9, "calendar", "argument-not-usable"],
    ["counts working days after the day out", MON, MON + 7, MON + 9, "working", 5],
    ["counts no working day on the day out", MON, MON, MON, "working", 0],
    ["counts none over a weekend", MON + 4, MON + 6, MON + 9, "working", 0],
  ] as const)("%s", (_title, out, back, asOf, counting, days) => {
    expect(value(daysOut(out, back, asOf, counting, calendar))).toBe(days);
  });

  it("is 0 working days when every weekday is closed", () => {
    expect(value(daysOut(MON, null, MON + 30, "working", calendarOf(0b1111111)))).toBe(0);
  });
});
