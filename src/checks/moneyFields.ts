import type { TableKind } from "../sheet/tableKind";

/** The columns that hold an amount of money and nothing else; Kept may say yes, and Late fee may say "5 a day". */
export const moneyFields: Readonly<Partial<Record<TableKind, readonly string[]>>> = {
  pieces: ["value", "totalValue", "rentalFee", "deposit"],
  receipts: ["amount", "amountRefunded"],
  day: ["cover"],
};
