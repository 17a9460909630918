import { amountFromTenThousandths } from "../../../domain/value/amountFromTenThousandths";
import { valueHeld } from "../../../domain/value/valueHeld";
import { sayList } from "../../sayList";
import { sayMoney } from "../../sayMoney";
import { fieldText } from "./fieldText";
import type { HeldPiece } from "./heldPieces";

/** What held pieces are worth in words, a sum for each currency; "" where none has a value. Unvalued ones are counted. */
export function heldValue(pieces: readonly HeldPiece[]): string {
  const sums = new Map<string, number>();
  let unvalued = 0;
  for (const { row, quantity } of pieces) {
    const value = valueHeld(row, quantity);
    const currency = fieldText(row.currency);
    if (typeof value === "number") sums.set(currency, (sums.get(currency) ?? 0) + value);
    else unvalued += quantity;
  }
  const said = sayList([...sums].map(([currency, sum]) => sayMoney(amountFromTenThousandths(sum), currency)));
  if (said === "") return "";
  return unvalued === 0 ? said : `${said}, and ${unvalued} without a value`;
}
