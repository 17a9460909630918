import { weekdaysFromName } from "../../../src/domain/dates/weekdaysFromName";

const plain = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f.]/g, "")
    .toLowerCase();

// The names are the engine's own (Unicode CLDR), long and short.
describe.each(["en-GB", "fr", "es", "it", "de"])("%s", (locale) => {
  test.each(["long", "short"] as const)("every %s name can be its weekday", (width) => {
    const format = new Intl.DateTimeFormat(locale, { weekday: width, timeZone: "UTC" });
    for (let weekday = 0; weekday < 7; weekday += 1) {
      // 2026-03-02 is a Monday.
      const name = plain(format.format(Date.UTC(2026, 2, 2 + weekday)));
      expect(weekdaysFromName(name)).toContain(weekday);
    }
  });
});

test("a short form that languages share can be either day", () => expect(weekdaysFromName("do")).toEqual([3, 6]));

test.each(["", "x", "march", "to", " ", "monday lundi"])("%j is no weekday", (name) =>
  expect(weekdaysFromName(name)).toEqual([]),
);
