import { dateFields } from "../sheet/dateFields";
import { readQuantity } from "../sheet/readQuantity";
import type { CheckedRow } from "./checkedRow";
import type { CheckFacts } from "./checkFacts";
import { cellIn } from "./cellIn";
import { moneyFields } from "./moneyFields";
import { moneyIn } from "./moneyIn";

/**
 * Whether a cell holds an error or something its column's readers refuse: then it has a finding of its own, or is known to be
 * open ("tbc"), and what a formula makes of it is no finding beside that.
 */
export function isInDoubt(row: CheckedRow, field: string, facts: CheckFacts): boolean {
  const cell = cellIn(row, field);
  if (cell === null) return false;
  if (typeof cell === "object") return true;
  const { kind } = row.table;
  if (dateFields[kind]?.includes(field) === true) return facts.day(cell).is !== "day" && facts.day(cell).is !== "blank";
  if (field === "terms") return !facts.terms(cell).ok;
  if (field === "quantity" || field === "quantityBack") return !readQuantity(cell, "").ok;
  if (moneyFields[kind]?.includes(field) === true) {
    const { is } = moneyIn(row, field);
    return is !== "number" && is !== "blank";
  }
  return false;
}
