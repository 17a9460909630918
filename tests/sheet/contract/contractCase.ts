import type { SheetPort } from "../../../src/sheet/SheetPort";

/** Acts as the user behind the port's back. Rows and columns count from 0. */
export interface Probe {
  /** Types into a cell; text that starts with "=" is a formula, text that starts with ' stays text, null clears the cell. */
  type(sheetId: string, row: number, column: number, typed: number | string | boolean | null): Promise<void>;
  /** Adds a visible, empty sheet and answers its id. The sheets of earlier cases may still be there. */
  addSheet(name: string): Promise<string>;
  deleteSheet(sheetId: string): Promise<void>;
  /** The number format of a cell; "General" where none was set. */
  formatOf(sheetId: string, row: number, column: number): Promise<string>;
  setFormat(sheetId: string, row: number, column: number, numberFormat: string): Promise<void>;
  hideSheet?(sheetId: string): Promise<void>;
  renameSheet?(sheetId: string, name: string): Promise<void>;
  /** Hides rows, as a filter does. */
  hideRows?(sheetId: string, row: number, rowCount: number): Promise<void>;
  protectSheet?(sheetId: string): Promise<void>;
  /** Makes the area, heading row included, a table of the host. */
  addTable?(
    sheetId: string,
    name: string,
    row: number,
    column: number,
    rowCount: number,
    columnCount: number,
  ): Promise<void>;
  /** Left out where the host lets nobody else widen its tables. */
  readonly widens?: true;
  merge?(sheetId: string, row: number, column: number, rowCount: number, columnCount: number): Promise<void>;
  /** Lays a picture over a cell, or over so many rows from it down; `drawn` is a PNG in base64. */
  addPicture?(
    sheetId: string,
    row: number,
    column: number,
    picture: { readonly name: string; readonly drawn: string; readonly rowCount?: number },
  ): Promise<void>;
  select?(sheetId: string, row: number, column: number, rowCount: number, columnCount: number): Promise<void>;
  /** Undoes the last step. Left out where the host's undo does not reach the port's writes. */
  undo?(): Promise<void>;
}

/** One promise of the port. A case whose `needs` the probe lacks cannot run there; the runner must say so. */
export interface ContractCase {
  readonly title: string;
  readonly needs?: readonly (keyof Probe)[];
  run(port: SheetPort, probe: Probe): Promise<void>;
}
