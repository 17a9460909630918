import fc from "fast-check";
import { DateTime } from "luxon";
import { sayProblem } from "../../src/domain/wording";
import { readDate } from "../../src/sheet/readDate";
import { readDateTime } from "../../src/sheet/readDateTime";
import { reads } from "./reads";

const MARCH_5 = 46086;

describe("a date is read from", () => {
  test.each([
    [46086, MARCH_5],
    [46086.75, MARCH_5],
    [1, 1],
    [2958465, 2958465],
    [2958465.99, 2958465],
    [{ type: "FormattedNumber", basicValue: 46086, numberFormat: "yyyy-mm-dd" }, MARCH_5],
    [[[46086]], MARCH_5],
    ["2026-03-05", MARCH_5],
    [" 2026-03-05 ", MARCH_5],
    ["2026-03-05T14:30", MARCH_5],
    ["2026-03-05 14:30:00", MARCH_5],
    ["5 Mar 2026", MARCH_5],
    ["5 March 2026", MARCH_5],
    ["05 MAR 2026", MARCH_5],
    ["5th March 2026", MARCH_5],
    ["5th of March, 2026", MARCH_5],
    ["the 5th of March 2026", MARCH_5],
    ["Mar 5, 2026", MARCH_5],
    ["March 5th 2026", MARCH_5],
    ["2026 Mar 5", MARCH_5],
    ["5-Mar-26", MARCH_5],
    ["5-Mar-2026", MARCH_5],
    ["5/Mar/2026", MARCH_5],
    ["5.Mar.2026", MARCH_5],
    ["5Mar2026", MARCH_5],
    ["05MAR26", MARCH_5],
    ["Mar 5 '26", null],
    ["Thu 5 Mar 2026", MARCH_5],
    ["Thursday, 5 March 2026", MARCH_5],
    ["Thu, Mar 5, 2026", MARCH_5],
    ["5 Mar 2026 (Thu)", MARCH_5],
    ["5 mars 2026", MARCH_5],
    ["jeudi 5 mars 2026", MARCH_5],
    ["jeu. 5 mars 2026", MARCH_5],
    ["1er mars 2026", 46082],
    ["14 févr. 2026", 46067],
    ["14 FÉVRIER 2026", 46067],
    ["15 août 2026", 46249],
    ["20 juil. 2026", 46223],
    ["5 de marzo de 2026", MARCH_5],
    ["jueves, 5 de marzo de 2026", MARCH_5],
    ["5 ene 2026", 46027],
    ["5 sept 2026", 46270],
    ["5 setiembre 2026", 46270],
    ["5 marzo 2026", MARCH_5],
    ["giovedì 5 marzo 2026", MARCH_5],
    ["1° maggio 2026", 46143],
    ["6 gen 2026", 46028],
    ["9 lug 2026", 46212],
    ["5. März 2026", MARCH_5],
    ["5. Mrz. 2026", MARCH_5],
    ["5. Maerz 2026", MARCH_5],
    ["Do., 5. März 2026", MARCH_5],
    ["Donnerstag, den 5. März 2026", MARCH_5],
    ["24. Dez. 2026", 46380],
    ["3. Okt 2026", 46298],
    // "mar" is March, and Tuesday in three languages: 3 March 2026 is a Tuesday.
    ["mar 3 mars 2026", 46084],
    ["mar. 3 mar. 2026", 46084],
    ["29 Feb 2024", 45351],
    ["5 Mar 2026 14:30", MARCH_5],
    ["5 Mar 2026 2:30 pm", MARCH_5],
    ["1 Jan 1900", 1],
    ["28 Feb 1900", 59],
    ["1 Mar 1900", 61],
    ["31 Dec 9999", 2958465],
  ])("%j: %j", (raw, serial) => {
    expect(reads(readDate(raw, "out"))).toBe(serial ?? "date-not-understood");
  });
});

test.each([null, undefined, "", "   ", "\u00a0", 0, [[""]], [[null]], { type: "Empty", basicValue: "" }])(
  "%j is blank",
  (raw) => expect(readDate(raw, "out")).toEqual({ ok: true, value: null }),
);

describe("figures alone are no date", () => {
  test.each([
    ["03/04/26", "2026-04-03", "2026-03-04"],
    ["3/4/2026", "2026-04-03", "2026-03-04"],
    ["03.04.2026", "2026-04-03", "2026-03-04"],
    ["3-4-26", "2026-04-03", "2026-03-04"],
    ["12 01 2026", "2026-01-12", "2026-12-01"],
  ])("%s could be %s or %s", (text, first, second) => {
    const outcome = readDate(text, "due");
    expect(outcome).toEqual({
      ok: false,
      problem: { reason: "date-ambiguous", facts: { argument: "due", given: text, first, second } },
    });
    if (outcome.ok) throw new Error("unreachable");
    expect(sayProblem(outcome.problem)).toContain(`${first} or ${second}`);
  });

  test.each([
    ["25/12/2026", "2026-12-25"],
    ["12/25/2026", "2026-12-25"],
    ["25.12.26", "2026-12-25"],
    ["05/05/2026", "2026-05-05"],
    ["2026/03/05", "2026-03-05"],
    ["2026-3-5", "2026-03-05"],
    ["2026.03.05", "2026-03-05"],
    ["29/02/2024", "2024-02-29"],
  ])("%s can be one day only, which the sentence names: %s", (text, only) => {
    const outcome = readDate(text, "due");
    expect(outcome).toEqual({
      ok: false,
      problem: { reason: "date-figures-only", facts: { argument: "due", given: text, only } },
    });
    if (outcome.ok) throw new Error("unreachable");
    expect(sayProblem(outcome.problem)).toContain(only);
  });
});

test.each([
  "tbc",
  "soon",
  "Mar 2026",
  "5 Mar",
  "5 2026",
  "31 Feb 2026",
  "29 Feb 2026",
  "0 Mar 2026",
  "32 Jan 2026",
  "31/31/2026",
  "2026-13-01",
  "2026-02-30",
  "5 jui 2026",
  "5 Ma 2026",
  "5 Marvel 2026",
  "5 Mar 226",
  "5 Mar 20266",
  "46086",
  "-1",
  "5 Mar 2026 25:00",
  "2026-03-05T10:00Z",
  "5 Mar 2026 or 6 Mar 2026",
  "31 Dec 10000",
  "1 Jan 1899",
  true,
  false,
  -1,
  0.5,
  2958466,
  NaN,
  Infinity,
])("%j is not understood", (raw) => {
  expect(reads(readDate(raw, "out"))).toBe("date-not-understood");
});

test("a weekday that contradicts its date is refused, and the sentence says which day it is", () => {
  const outcome = readDate("Fri 5 Mar 2026", "out");
  if (outcome.ok) throw new Error("expected a problem");
  expect(sayProblem(outcome.problem)).toContain("2026-03-05 is a Thursday");
});

test.each([
  [{ type: "Error", basicValue: "#N/A" }, "#N/A"],
  [{ error: "#REF!" }, "#REF!"],
  [{ code: "#DIV/0!" }, "#DIV/0!"],
])("an error value is named: %j", (raw, given) => {
  expect(readDate(raw, "due")).toEqual({
    ok: false,
    problem: { reason: "error-in-cell", facts: { argument: "due", given } },
  });
});

describe("with its time a date", () => {
  test.each([
    [46086.75, 46086.75],
    ["2026-03-05T18:00", 46086.75],
    ["5 Mar 2026 6pm", "date-not-understood"],
    ["5 Mar 2026 6:00 pm", 46086.75],
    ["5 Mar 2026, 18:00", 46086.75],
    ["5. März 2026 06:00", 46086.25],
    ["2026-03-05 12:00 am", 46086],
  ])("keeps it: %j", (raw, moment) => expect(reads(readDateTime(raw, "call"))).toBe(moment));
});

const serials = fc.integer({ min: 61, max: 2958465 });
const dayOf = (serial: number): DateTime => DateTime.fromISO("1899-12-30", { zone: "utc" }).plus({ days: serial });

test("every day from 1900-03-01 to 9999-12-31 reads back from its ISO text (checked against luxon)", () => {
  fc.assert(fc.property(serials, (serial) => expect(reads(readDate(dayOf(serial).toISODate(), "out"))).toBe(serial)));
});

test("every day reads back from the long form of five languages, weekday and all (checked against luxon and the engine's Intl)", () => {
  const language = fc.constantFrom("en-GB", "en-US", "fr", "es", "it", "de");
  fc.assert(
    fc.property(serials, language, fc.constantFrom("long", "short"), (serial, locale, width) => {
      const form = { weekday: width, day: "numeric", month: width, year: "numeric" } as const;
      const text = dayOf(serial)
        .setLocale(locale)
        .toLocaleString(form as Intl.DateTimeFormatOptions);
      // Some short forms are figures ("5/3/2026"); those are the business of the tests above.
      fc.pre(/\p{L}{3}.*\p{L}{3}/u.test(text));
      expect([text, reads(readDate(text, "out"))]).toEqual([text, serial]);
    }),
  );
});

test("no text of figures alone is ever a date", () => {
  const part = fc.integer({ min: 0, max: 9999 });
  fc.assert(
    fc.property(part, part, part, fc.constantFrom("/", ".", " "), (one, two, three, sign) => {
      expect(readDate([one, two, three].join(sign), "out").ok).toBe(false);
    }),
  );
});
