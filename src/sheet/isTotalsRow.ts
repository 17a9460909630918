import { currencyFromText } from "./currencyFromText";
import { dateFields } from "./dateFields";
import { FIRST_LIKELY_DAY } from "./FIRST_LIKELY_DAY";
import { headingWords } from "./headingWords";
import { isFilledCell } from "./isFilledCell";
import { readCell } from "./readCell";
import { readMoney } from "./readMoney";
import type { TableKind } from "./tableKind";

// English, French, Spanish, Italian, German; as headingWords leaves them.
const TOTAL = new Set(
  "total subtotal tot sum totaux totales totale totali somme suma somma summe gesamt gesamtsumme gesamtwert insgesamt zwischensumme".split(
    " ",
  ),
);
const BESIDE_TOTAL = new Set(
  "grand sub sous general generale value piece amount quantity weight out valeur valor valore wert".split(" "),
);
const ADDED_UP = new Set(
  "quantity quantityBack value totalValue weight rentalFee deposit amount kept amountRefunded minutes pairs change hairMakeup shooting".split(
    " ",
  ),
);
const NAMES = ["piece", "description", "lender", "slip", "look", "shop", "stop", "shoes", "kind"];

/** How a row of totals shows itself: it says so, or it holds sums and nothing that a row of data is known by. */
export type TotalsSign = "says so" | "sums alone";

/**
 * Whether a row is the table's totals and no row of data; null when it is data.
 *
 * "says so": a cell says total, sum or the like ("Grand total", "Gesamtsumme", "Total value") and all else is numbers or amounts,
 * none of them a day. "sums alone": numbers under amounts and quantities, and nothing under any other heading that is understood,
 * in a table that has a column to name the row by. A row with any other text is data: a piece is never dropped for its name
 * ("Total look, Maison Orla" with a lender is a piece).
 */
export function isTotalsRow(
  row: readonly unknown[],
  kind: TableKind,
  columnOf: Readonly<Partial<Record<string, number>>>,
): TotalsSign | null {
  const fieldAt = new Map(Object.entries(columnOf).map(([field, column]) => [column, field]));
  const days = dateFields[kind] ?? [];
  let saysSo = false;
  let onlySums = NAMES.some((field) => columnOf[field] !== undefined);
  let sumCount = 0;
  for (let column = 0; column < row.length; column += 1) {
    if (!isFilledCell(row[column])) continue;
    const cell = readCell(row[column]);
    const field = fieldAt.get(column);
    if (typeof cell === "string" && saysTotal(cell)) {
      saysSo = true;
      continue;
    }
    if (typeof cell === "boolean" || (typeof cell === "string" && !isAmount(cell))) return null;
    if (field !== undefined && days.includes(field) && !(typeof cell === "number" && cell < FIRST_LIKELY_DAY))
      return null;
    if (field === undefined) continue;
    if (ADDED_UP.has(field)) sumCount += 1;
    else if (field !== "currency") onlySums = false;
  }
  if (saysSo) return "says so";
  return onlySums && sumCount > 0 ? "sums alone" : null;
}

function saysTotal(text: string): boolean {
  if (text.length > 40) return false;
  const words = headingWords(text);
  return (
    words.some((word) => TOTAL.has(word)) &&
    words.every((word) => TOTAL.has(word) || BESIDE_TOTAL.has(word) || isAmount(word))
  );
}

function isAmount(text: string): boolean {
  if (currencyFromText(text) !== null) return true;
  const money = readMoney(text, "");
  return money.ok || money.problem.reason === "number-ambiguous";
}
