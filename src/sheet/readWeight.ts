import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { figuresFromText } from "./figuresFromText";
import { gramsPerUnit } from "./gramsPerUnit";
import { halvesInFigures } from "./halvesInFigures";
import { readScalar } from "./readScalar";

/** A weight: in grams where the cell names its unit, else the bare number, whose unit is the column's. Exactly one is not null. */
export interface Weight {
  readonly grams: number | null;
  readonly bareAmount: number | null;
  /** Whether the cell says that it is a guess: "approx 2 kg". */
  readonly isGuess: boolean;
}

const GUESS =
  /^\s*(?:~|≈|±|(?:approx(?:imately)?|about|circa|ca?|est(?:imated)?|env(?:iron)?|etwa)\b\.?)\s*|\s*\(?\b(?:approx|est|ca|env)\.?\)?\s*$/i;

const EXPECTED = "a weight of 0 or more, such as 1.2, 1.2 kg, 800 g or 2 lb 3 oz";

/**
 * The weight of one piece: a number, or text with a unit ("1.2kg", "800 g", "1,2 kg", "1½ kg", "2 lb 3 oz", "6oz", "approx 2kg").
 *
 * Blank is null. With kg or lb "1.250" is a little over one, since no piece weighs a thousand; with g or oz "1,250" is
 * a thousand and more, since nobody weighs to the thousandth; without a unit it gives number-ambiguous. Below 0 and anything
 * else gives argument-not-usable; an error value gives error-in-cell.
 */
export function readWeight(raw: unknown, argument: string): Outcome<Weight | null> {
  if (typeof raw === "number" && raw >= 0 && Number.isFinite(raw))
    return succeed({ grams: null, bareAmount: raw, isGuess: false });
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null) return succeed(null);
  if (typeof value === "number" && value >= 0 && Number.isFinite(value))
    return succeed({ grams: null, bareAmount: value, isGuess: false });
  const given = showGiven(value);
  const refused = fail("argument-not-usable", { argument, given, expected: EXPECTED });
  if (typeof value !== "string") return refused;

  const isGuess = GUESS.test(value);
  const parts = halvesInFigures(value.replace(GUESS, "")).match(/[\d.,'’\u00a0 ]*\d\s*[a-zäöü]*\.?|.+/gi) ?? [];
  if (parts.length === 0) return refused;
  let grams = 0;
  for (const part of parts) {
    const read = /^\s*([.,]?\d(?:.*\d)?)\s*([a-zäöü]*)\.?\s*$/i.exec(part);
    const figures = read === null ? null : figuresFromText(read[1]!);
    if (read === null || figures === null) return refused;
    const unit = read[2]!;
    const perUnit = gramsPerUnit(unit);
    if (unit === "" && parts.length === 1) {
      if (figures.reads === "one way") return succeed({ grams: null, bareAmount: figures.amount, isGuess });
      return fail("number-ambiguous", {
        argument,
        given,
        first: String(figures.grouped),
        second: String(figures.decimal),
      });
    }
    if (perUnit === null) return refused;
    const amount = figures.reads === "one way" ? figures.amount : perUnit > 100 ? figures.decimal : figures.grouped;
    grams += amount * perUnit;
  }
  // Only pounds are said with ounces, kilograms with grams: the larger first.
  return parts.length > 2 ? refused : succeed({ grams: Math.round(grams * 1e6) / 1e6, bareAmount: null, isGuess });
}
