import { monthFromName } from "../../../src/domain/dates/monthFromName";

const plain = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f.]/g, "")
    .toLowerCase();

// The names are the engine's own (Unicode CLDR), long and short.
describe.each(["en-GB", "en-US", "fr", "es", "it", "de", "de-AT"])("%s", (locale) => {
  test.each(["long", "short"] as const)("every %s name is its month", (width) => {
    const format = new Intl.DateTimeFormat(locale, { month: width, timeZone: "UTC" });
    for (let month = 1; month <= 12; month += 1) {
      const name = plain(format.format(Date.UTC(2026, month - 1, 15)));
      expect([name, monthFromName(name)]).toEqual([name, month]);
    }
  });
});

test.each(["", "m", "ma", "jui", "ju", "marvel", "monday", "x", "march mars", " mar"])("%j is no month", (name) =>
  expect(monthFromName(name)).toBeNull(),
);
