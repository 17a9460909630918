import fc from "fast-check";
import { readMoney } from "../../src/sheet/readMoney";
import { reads } from "./reads";

describe("an amount is read from", () => {
  test.each([
    [1250, 1250, null],
    [0, 0, null],
    [-3.5, -3.5, null],
    [{ type: "Double", basicValue: 95, numberFormat: "£#,##0.00" }, 95, null],
    ["1250", 1250, null],
    ["1,250.00", 1250, null],
    ["1.250,00", 1250, null],
    ["1 250,00", 1250, null],
    ["1\u00a0250,00", 1250, null],
    ["1\u202f250,5", 1250.5, null],
    ["1'250.50", 1250.5, null],
    ["1’250", 1250, null],
    ["1,250,000", 1250000, null],
    ["1.250.000", 1250000, null],
    ["1,250,000.75", 1250000.75, null],
    ["95,5", 95.5, null],
    ["95.50", 95.5, null],
    [".50", 0.5, null],
    // ISO 4217: money has two decimals, so three figures behind one separator are thousands.
    ["1,250", 1250, null],
    ["1.250", 1250, null],
    ["0.250", 0.25, null],
    ["1250.000", 1250, null],
    ["£1,250.00", 1250, "GBP"],
    ["£ 95", 95, "GBP"],
    ["1.250,00 €", 1250, "EUR"],
    ["€1.250", 1250, "EUR"],
    ["1 250,00 €", 1250, "EUR"],
    ["95€", 95, "EUR"],
    ["95 euros", 95, "EUR"],
    ["EUR 95", 95, "EUR"],
    ["95 eur", 95, "EUR"],
    ["CHF 1'250.–", 1250, "CHF"],
    ["CHF 95.-", 95, "CHF"],
    ["Fr. 95.50", 95.5, "CHF"],
    ["95,-- €", 95, "EUR"],
    ["USD 95", 95, "USD"],
    ["95 USD", 95, "USD"],
    ["1250GBP", 1250, "GBP"],
    ["US$1,000", 1000, "USD"],
    ["$1,250.00", 1250, "$"],
    ["$95 CAD", 95, "CAD"],
    ["A$ 95", 95, "AUD"],
    ["¥12,000", 12000, "¥"],
    ["95 kr", 95, "kr"],
    ["95 zł", 95, "PLN"],
    ["R$ 95,00", 95, "BRL"],
    // German and Austrian slips
    ["1.250,- €", 1250, "EUR"],
    ["€ 1.250,-", 1250, "EUR"],
    ["EUR 1.250,00", 1250, "EUR"],
    ["1.250,00 EUR", 1250, "EUR"],
    ["1.250 Euro", 1250, "EUR"],
    ["95,– €", 95, "EUR"],
    ["12.500,50 €", 12500.5, "EUR"],
    // French slips: narrow and plain spaces, the sign behind
    ["1\u202f250,00\u00a0€", 1250, "EUR"],
    ["1 250 €", 1250, "EUR"],
    ["12 500,5 EUR", 12500.5, "EUR"],
    ["95,50€", 95.5, "EUR"],
    ["95 livres", 95, "GBP"],
    // Italian and Spanish slips
    ["€ 1.250,00", 1250, "EUR"],
    ["1.250,00€", 1250, "EUR"],
    ["euro 95,50", 95.5, "EUR"],
    ["1.250.000,00 €", 1250000, "EUR"],
    ["95,5 euros", 95.5, "EUR"],
    ["£1.250,00", 1250, "GBP"],
    ["95 sterline", 95, "GBP"],
    // Swiss slips
    ["CHF 1'250.00", 1250, "CHF"],
    ["CHF 1’250.50", 1250.5, "CHF"],
    ["1'250.- CHF", 1250, "CHF"],
    ["Fr. 1'250.--", 1250, "CHF"],
    ["SFr. 95.-", 95, "CHF"],
    ["95.50 Franken", 95.5, "CHF"],
    ["1 250,00 CHF", 1250, "CHF"],
    // English slips
    ["£1,250.00 GBP", 1250, "GBP"],
    ["GBP 1,250", 1250, "GBP"],
    ["£1250.00", 1250, "GBP"],
    ["95 pounds", 95, "GBP"],
    ["£ 12,500.5", 12500.5, "GBP"],
    ["£0.99", 0.99, "GBP"],
    ["(95.00)", -95, null],
    ["(£95)", -95, "GBP"],
    ["-£95", -95, "GBP"],
    ["£-95", -95, "GBP"],
    ["−95", -95, null],
    ["+95", 95, null],
    ["-0", 0, null],
  ])("%j: %j %j", (raw, amount, currency) => {
    expect(reads(readMoney(raw, "value"))).toEqual({ amount, currency });
  });
});

test.each([
  "$1.2k",
  "1.2k",
  "ca. 200",
  "~200",
  "200?",
  "250 each",
  "tbc",
  "ask",
  "£",
  "£1,2,3",
  "1,25,000",
  "1.25.00",
  "12 50",
  "1,2,3",
  "£95 €",
  "GBP 95 EUR",
  "--95",
  "-£-95",
  "(-95)",
  "95-",
  "95 - 100",
  "£95/£100",
  "95 95",
  "1e5",
  "0x10",
  "12:30",
  "2 for £95",
  "EUR",
  "1.250,00.00",
  "1,250.00,00",
  "1'25",
  "12'5000",
  "1 25 000",
  "1..250",
  "1,,250",
  ".",
  ",50,",
  "£1,250.00 each",
  "1250 + VAT",
  "1250 HT",
  "zzgl. MwSt 95",
  "95 % ",
  "€95 CHF",
  "9 5 0",
  "one hundred",
  "95,5,5 €",
  true,
  false,
  NaN,
  Infinity,
])("%j is no amount", (raw) => {
  expect(reads(readMoney(raw, "value"))).toBe("argument-not-usable");
});

test("in a currency of three decimals a lone separator reads two ways", () => {
  expect(readMoney("KWD 1.250", "value")).toEqual({
    ok: false,
    problem: {
      reason: "number-ambiguous",
      facts: { argument: "value", given: "KWD 1.250", first: "1250", second: "1.25" },
    },
  });
});

test.each([null, undefined, "", "  "])("%j is blank", (raw) => expect(reads(readMoney(raw, "value"))).toBeNull());

test("amounts read back from what six places write (checked against the engine's Intl)", () => {
  const cents = fc.integer({ min: -99_999_999, max: 99_999_999 });
  const place = fc.constantFrom(
    ["en-GB", "GBP"],
    ["en-US", "EUR"],
    ["fr-FR", "EUR"],
    ["de-DE", "EUR"],
    ["it-IT", "EUR"],
    ["es-ES", "GBP"],
    ["de-CH", "CHF"],
  );
  fc.assert(
    fc.property(cents, place, (amount, [locale, currency]) => {
      const text = new Intl.NumberFormat(locale, { style: "currency", currency: currency! }).format(amount / 100);
      expect([text, reads(readMoney(text, "value"))]).toEqual([text, { amount: amount / 100 || 0, currency }]);
    }),
  );
});
