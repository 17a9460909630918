import type { RentalRows } from "../domain/value/rentalRows";
import { amountAt } from "./amountAt";
import { readCurrencies } from "./readCurrencies";
import { readPieces } from "./readPieces";
import type { Table } from "./table";
import { textAt } from "./textAt";

/**
 * What the rows of a pieces table cost, each read when it is asked for. Without an Out column everything counts as gone out.
 *
 * Amounts below 0 are problems, which name the heading and the row.
 */
export function readRentals(table: Table): RentalRows {
  const pieces = readPieces(table);
  const { columnOf } = table;
  const currencies = readCurrencies(table, ["rentalFee", "deposit"]);
  return {
    count: pieces.count,
    at: (index) => {
      const piece = pieces.at(index);
      const { row, back, settled, quantity, quantityBack } = piece;
      const out = columnOf["out"] === undefined ? 1 : piece.out;
      return {
        job: textAt(table, row, columnOf["job"] ?? -1),
        currency: currencies.at(row),
        rentalFee: amountAt(table, row, columnOf["rentalFee"] ?? -1, currencies),
        deposit: amountAt(table, row, columnOf["deposit"] ?? -1, currencies),
        piece: { row, out, back, settled, quantity, quantityBack },
      };
    },
    get hasCurrencies() {
      return currencies.hasCurrencies();
    },
  };
}
