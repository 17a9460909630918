import { sayPastDay } from "../../../src/pane/today/sayPastDay";

// 2026-03-30, 2026-03-31 and 2026-04-16.
const days = [46111, 46112, 46128];

test("a past day is told from the next that has looks, the day looked at among them", () => {
  expect(sayPastDay(days, 46119)).toBe("A day before the one looked at; the next with looks is Thu 2026-04-16.");
  expect(sayPastDay(days, 46128)).toBe("A day before the one looked at; the next with looks is Thu 2026-04-16.");
});

test("that no later day has looks is said only where none has", () => {
  expect(sayPastDay(days, 46129)).toBe("A day before the one looked at; no later day has looks.");
});
