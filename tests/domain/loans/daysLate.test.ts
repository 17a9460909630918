import { calendarOf } from "../../../src/domain/dates/calendarOf";
import { daysLate } from "../../../src/domain/loans/daysLate";

const calendar = calendarOf(0b1100000);
const value = (outcome: { ok: boolean; value?: unknown; problem?: { reason: string } }): unknown =>
  outcome.ok ? outcome.value : outcome.problem!.reason;

// 46083 is Monday 2026-03-02.
const MON = 46083;

describe("daysLate", () => {
  it.each([
    ["is 0 on the day due", MON, null, MON, 0, "calendar", 0],
    ["is 0 before it", MON, null, MON - 3, 0, "calendar", 0],
    ["counts days past due to asOf", MON, null, MON + 4, 0, "calendar", 4],
    ["counts to the day back", MON, MON + 1, MON + 4, 0, "calendar", 1],
    ["takes a back day after asOf as not yet back", MON, MON + 9, MON + 4, 0, "calendar", 4],
    ["subtracts the grace", MON, null, MON + 4, 1, "calendar", 3],
    ["is never below 0", MON, null, MON + 4, 9, "calendar", 0],
    ["counts working days past due", MON + 3, null, MON + 7, 0, "working", 2],
    ["subtracts the grace from working days", MON + 3, null, MON + 7, 1, "working", 1],
    ["is 0 for a piece back early", MON, MON - 2, MON + 9, 0, "calendar", 0],
    ["needs no asOf once the piece is back", MON, MON + 2, null, 0, "calendar", 2],
    ["needs asOf while it is not", MON, null, null, 0, "calendar", "argument-missing"],
    ["has nothing to compute from without a due day", null, MON, MON, 0, "calendar", "nothing-to-compute"],
  ] as const)("%s", (_title, due, back, asOf, grace, counting, days) => {
    expect(value(daysLate(due, back, asOf, grace, counting, calendar))).toBe(days);
  });

  it("is 0 working days when every weekday is closed", () => {
    expect(value(daysLate(MON, null, MON + 30, 0, "working", calendarOf(0b1111111)))).toBe(0);
  });
});
