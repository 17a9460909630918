import { currencyFromText } from "../../src/sheet/currencyFromText";

test.each([
  ["£", "GBP"],
  ["GBP", "GBP"],
  ["gbp", "GBP"],
  [" GBP ", "GBP"],
  ["pounds", "GBP"],
  ["€", "EUR"],
  ["Euro", "EUR"],
  ["US$", "USD"],
  ["A$", "AUD"],
  ["Fr.", "CHF"],
  ["SFr.", "CHF"],
  ["zł", "PLN"],
  ["Kč", "CZK"],
  // A sign that several countries share stays what it is.
  ["$", "$"],
  ["¥", "¥"],
  ["kr.", "kr"],
])("%s is %s", (text, currency) => expect(currencyFromText(text)).toBe(currency));

test.each(["", " ", "kg", "each", "k", "XYZ", "GBPX", "£€", "1", "constructor", "toString", "__proto__", "hasOwn"])(
  "%j is no currency",
  (text) => expect(currencyFromText(text)).toBeNull(),
);
