import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { currencyFromText } from "./currencyFromText";
import { figuresFromText } from "./figuresFromText";
import { readScalar } from "./readScalar";

/** An amount with the currency its own cell names, if it names one (an ISO 4217 code, or a bare "$", "¥" or "kr"). */
export interface Money {
  readonly amount: number;
  readonly currency: string | null;
}

// ISO 4217 gives every other currency at most two decimals.
const THREE_DECIMALS = new Set(["BHD", "JOD", "KWD", "OMR", "TND"]);
const EXPECTED = "an amount such as 1250, £1,250.00 or 1.250,00 €";
const AMOUNT =
  /^([-−+])?\s*([^\d\s.,+−-][^\d]*?)?\s*([-−+])?\s*([.,]?\d(?:[\d.,\s'’]*\d)?)(?:[.,][-–—]{1,2})?\s*([^\d\s.,'’+−–—-][^\d]*)?$/;

/**
 * An amount of money, also one kept as text: "£1,250.00", "1.250,00 €", "CHF 1'250.–", "USD 95", "(95.00)" and "-£95" below 0.
 *
 * Blank is null. Since money has two decimals, "1,250" and "1.250" are 1250, save for the currencies of three decimals
 * (ISO 4217), where they give number-ambiguous. Words or letters that are no currency ("$1.2k", "ca. 200", "250 each")
 * give argument-not-usable; an error value gives error-in-cell.
 */
export function readMoney(raw: unknown, argument: string): Outcome<Money | null> {
  if (typeof raw === "number" && Number.isFinite(raw)) return succeed({ amount: raw, currency: null });
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null) return succeed(null);
  if (typeof value === "number" && Number.isFinite(value)) return succeed({ amount: value, currency: null });
  const given = showGiven(value);
  const refused = fail("argument-not-usable", { argument, given, expected: EXPECTED });
  if (typeof value !== "string" || value.length > 60) return refused;

  const bracketed = /^\((.*)\)$/.exec(value);
  const parts = AMOUNT.exec(bracketed === null ? value : bracketed[1]!.trim());
  if (parts === null) return refused;
  const [, sign, before, innerSign, digits, after] = parts;
  const signs = (sign ?? "") + (innerSign ?? "");
  if (signs.length > 1 || (bracketed !== null && signs !== "")) return refused;
  const currencies = [before, after].filter((part) => part !== undefined).map(currencyFromText);
  if (currencies.includes(null)) return refused;
  const named = [...new Set(currencies as string[])];
  // "$95 CAD": the code says which dollar.
  const currency = named.length === 2 ? (named.find((name) => name.length === 3) ?? null) : (named[0] ?? null);
  if (named.length === 2 && !named.some((name) => name.length < 3)) return refused;
  const figures = figuresFromText(digits!);
  if (figures === null) return refused;
  const scale = bracketed !== null || (signs !== "" && signs !== "+") ? -1 : 1;
  if (figures.reads === "one way") return succeed({ amount: figures.amount * scale || 0, currency });
  if (currency === null || !THREE_DECIMALS.has(currency)) return succeed({ amount: figures.grouped * scale, currency });
  return fail("number-ambiguous", {
    argument,
    given,
    first: String(figures.grouped * scale),
    second: String(figures.decimal * scale),
  });
}
