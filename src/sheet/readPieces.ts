import type { PieceRows } from "../domain/loans/pieceRows";
import { type PieceSource, PieceRowView } from "./pieceRowView";
import { readCurrencies } from "./readCurrencies";
import type { Table } from "./table";

/**
 * The rows of a pieces table, each field read from its cell when it is asked for and no cell read otherwise.
 *
 * A 0 in a date, a text, a quantity, a weight or a value is blank, as some hosts send blank cells so. A problem
 * names the heading and the row, counted from 1 in the range as passed. Amounts below 0 are problems.
 */
export function readPieces(table: Table): PieceRows {
  const { dataRows } = table;
  const column = (field: keyof PieceSource["columns"]): number => table.columnOf[field] ?? -1;
  const currencies = readCurrencies(table);
  const columns: PieceSource["columns"] = {
    piece: column("piece"),
    description: column("description"),
    kind: column("kind"),
    lender: column("lender"),
    look: column("look"),
    talent: column("talent"),
    quantity: column("quantity"),
    quantityBack: column("quantityBack"),
    conditionOut: column("conditionOut"),
    conditionBack: column("conditionBack"),
    value: column("value"),
    totalValue: column("totalValue"),
    weight: column("weight"),
    out: column("out"),
    due: column("due"),
    extendedTo: column("extendedTo"),
    back: column("back"),
    shoot: column("shoot"),
    settled: column("settled"),
  };
  const source: PieceSource = { table, columns, currencies };
  return {
    count: dataRows.length,
    at: (index) => new PieceRowView(source, dataRows[index]!),
    get hasCurrencies() {
      return currencies.hasCurrencies();
    },
  };
}
