import { showGiven } from "../domain/showGiven";
import { isUndecided } from "../sheet/isUndecided";
import { readMoney } from "../sheet/readMoney";
import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";
import type { MoneyReading } from "./moneyReading";

/** What a row's cell under a money field says. */
export function moneyIn(row: CheckedRow, field: string): MoneyReading {
  const cell = cellIn(row, field);
  if (cell === null) return { is: "blank" };
  if (typeof cell === "number" && Number.isFinite(cell)) return { is: "number", amount: cell };
  if (typeof cell === "object") return { is: "error" };
  const given = showGiven(cell);
  if (typeof cell === "string" && isUndecided(cell)) return { is: "undecided", given };
  const money = readMoney(cell, "");
  if (money.ok) return money.value === null ? { is: "blank" } : { is: "text", given, money: money.value };
  const { reason, facts } = money.problem;
  if (reason === "number-ambiguous") return { is: "two amounts", given, first: +facts.first, second: +facts.second };
  return { is: "no amount", given };
}
