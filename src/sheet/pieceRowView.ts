import type { PieceRow } from "../domain/loans/pieceRow";
import { amountAt } from "./amountAt";
import { dayAt } from "./dayAt";
import { quantityAt } from "./quantityAt";
import type { RowCurrencies } from "./rowCurrencies";
import { doneAt } from "./doneAt";
import type { Table } from "./table";
import { textAt } from "./textAt";
import { weightAt } from "./weightAt";

/** A pieces table, which column is which, and its currencies. */
export interface PieceSource {
  readonly table: Table;
  readonly columns: Readonly<Record<Exclude<keyof PieceRow, "row" | "currency">, number>>;
  readonly currencies: RowCurrencies;
}

/**
 * One row of a pieces table, each field read from its cell when it is asked for.
 *
 * A class, since only getters on a prototype let 100,000 rows be gone through while most of their cells are
 * never read: reading every field into an object took twice as long as the computations themselves.
 */
export class PieceRowView implements PieceRow {
  constructor(
    private readonly source: PieceSource,
    readonly row: number,
  ) {}

  get piece(): PieceRow["piece"] {
    return textAt(this.source.table, this.row, this.source.columns.piece);
  }
  get description(): PieceRow["description"] {
    return textAt(this.source.table, this.row, this.source.columns.description);
  }
  get kind(): PieceRow["kind"] {
    return textAt(this.source.table, this.row, this.source.columns.kind);
  }
  get lender(): PieceRow["lender"] {
    return textAt(this.source.table, this.row, this.source.columns.lender);
  }
  get look(): PieceRow["look"] {
    return textAt(this.source.table, this.row, this.source.columns.look);
  }
  get talent(): PieceRow["talent"] {
    return textAt(this.source.table, this.row, this.source.columns.talent);
  }
  get quantity(): PieceRow["quantity"] {
    return quantityAt(this.source.table, this.row, this.source.columns.quantity);
  }
  get quantityBack(): PieceRow["quantityBack"] {
    return quantityAt(this.source.table, this.row, this.source.columns.quantityBack);
  }
  get conditionOut(): PieceRow["conditionOut"] {
    return textAt(this.source.table, this.row, this.source.columns.conditionOut);
  }
  get conditionBack(): PieceRow["conditionBack"] {
    return textAt(this.source.table, this.row, this.source.columns.conditionBack);
  }
  get value(): PieceRow["value"] {
    return amountAt(this.source.table, this.row, this.source.columns.value, this.source.currencies);
  }
  get totalValue(): PieceRow["totalValue"] {
    return amountAt(this.source.table, this.row, this.source.columns.totalValue, this.source.currencies);
  }
  get currency(): PieceRow["currency"] {
    return this.source.currencies.at(this.row);
  }
  get weight(): PieceRow["weight"] {
    return weightAt(this.source.table, this.row, this.source.columns.weight);
  }
  get out(): PieceRow["out"] {
    return dayAt(this.source.table, this.row, this.source.columns.out);
  }
  get due(): PieceRow["due"] {
    return dayAt(this.source.table, this.row, this.source.columns.due);
  }
  get extendedTo(): PieceRow["extendedTo"] {
    return dayAt(this.source.table, this.row, this.source.columns.extendedTo);
  }
  get back(): PieceRow["back"] {
    return dayAt(this.source.table, this.row, this.source.columns.back);
  }
  get shoot(): PieceRow["shoot"] {
    return dayAt(this.source.table, this.row, this.source.columns.shoot);
  }
  get settled(): PieceRow["settled"] {
    return doneAt(this.source.table, this.row, this.source.columns.settled);
  }
}
