import { readWholeDays } from "../../src/sheet/readWholeDays";

describe("readWholeDays", () => {
  it("reads whole numbers of 0 or more, also as text", () => {
    expect(readWholeDays(0, "grace")).toEqual({ ok: true, value: 0 });
    expect(readWholeDays(12, "grace")).toEqual({ ok: true, value: 12 });
    expect(readWholeDays("3", "grace")).toEqual({ ok: true, value: 3 });
  });

  it("is null for blank", () => {
    for (const blank of [null, undefined, "", " "])
      expect(readWholeDays(blank, "grace")).toEqual({ ok: true, value: null });
  });

  it("refuses fractions, numbers below 0, text and truth values, by the argument's name", () => {
    for (const raw of [1.5, -1, "two", true, 1e300, NaN]) {
      const days = readWholeDays(raw, "grace");
      expect(days.ok ? null : days.problem).toMatchObject({
        reason: "argument-not-usable",
        facts: { argument: "grace" },
      });
    }
  });
});
