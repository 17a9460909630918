import { parseTerms } from "../../src/domain/dates/terms/parseTerms";
import { readTerms } from "../../src/sheet/readTerms";

describe("readTerms", () => {
  it("is null for blank, however hosts send it, and for a number 0", () => {
    for (const blank of [null, undefined, "", "  ", 0, [[null]], [[0]]])
      expect(readTerms(blank, "terms")).toEqual({ ok: true, value: null });
  });

  it("reads text and numbers as parseTerms does, also from a range of one cell or with a format", () => {
    expect(readTerms(" 3 working days ", "terms")).toEqual(parseTerms("3 working days"));
    expect(readTerms(7, "terms")).toEqual(parseTerms(7));
    expect(readTerms([["7 days"]], "terms")).toEqual(parseTerms(7));
    expect(readTerms({ type: "FormattedNumber", basicValue: 7, numberFormat: "0" }, "terms")).toEqual(parseTerms(7));
  });

  it("refuses a truth value, an error, and terms that are not understood, by the argument's name", () => {
    for (const [raw, reason] of [
      [true, "argument-not-usable"],
      [{ error: "#REF!" }, "error-in-cell"],
      ["soonish", "terms-not-understood"],
    ] as const) {
      const terms = readTerms(raw, "Terms, row 4");
      expect(terms.ok ? null : terms.problem).toMatchObject({ reason, facts: { argument: "Terms, row 4" } });
    }
  });
});
