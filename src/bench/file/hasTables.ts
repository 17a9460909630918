import { columnsKey } from "../../pane/columns/columnsKey";
import { parseKeptChoices } from "../../sheet/parseKeptChoices";
import { readWorkbook } from "../../sheet/readWorkbook";
import { readKeptPart } from "../save/readKeptPart";
import { fileSnapshot } from "./fileSnapshot";
import type { OpenedFile } from "./openWorkbookFile";

/** Whether a file holds a table that the pane and the functions can read, by the choices that the file keeps. */
export function hasTables(file: OpenedFile): boolean {
  const { columns, kinds } = parseKeptChoices(readKeptPart(file.parts).get(columnsKey) ?? null);
  return readWorkbook(fileSnapshot(file), columns, kinds).tables.length > 0;
}
