import { installFunctionHost } from "../../../src/bench/functions/installFunctionHost";
import { workdayIntlCorrection } from "../../../src/bench/functions/workdayIntlCorrection";

beforeAll(installFunctionHost);

/** 2012-01-01. */
const NEW_YEAR_2012 = 40909;

/** The vendor's page of WORKDAY.INTL: the error as read there, the two days from memory and recomputed in LibreOffice Calc. */
test("the published examples", () => {
  expect(workdayIntlCorrection(NEW_YEAR_2012, 90, 11)).toBe(41013);
  expect(workdayIntlCorrection(NEW_YEAR_2012, 30, 17)).toBe(40944);
  expect(() => workdayIntlCorrection(NEW_YEAR_2012, 30, 0)).toThrow(expect.objectContaining({ code: "#NUM!" }));
});

test("a start that carries a date format counts like the bare number", () => {
  const formatted = { type: "FormattedNumber", basicValue: NEW_YEAR_2012, numberFormat: "yyyy-mm-dd" };
  expect(workdayIntlCorrection(formatted, 90, 11)).toBe(41013);
});

test("a pattern that closes every day is #VALUE!, as the page says", () => {
  expect(() => workdayIntlCorrection(NEW_YEAR_2012, 1, "1111111")).toThrow(
    expect.objectContaining({ code: "#VALUE!" }),
  );
});
