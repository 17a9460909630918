import type { SheetPort } from "../sheet/SheetPort";
import { activeCell } from "./activeCell";
import { goTo } from "./goTo";
import { onChange } from "./onChange";
import { readKept } from "./readKept";
import { readSheet } from "./readSheet";
import { readWorkbook } from "./readWorkbook";
import { selection } from "./selection";
import { writeKept } from "./writeKept";
import { writeStep } from "./writeStep";

/** The open workbook of Excel, as the pane needs it. */
export function createExcelPort(): SheetPort {
  return {
    readWorkbook,
    readSheet,
    goTo,
    activeCell,
    selection,
    write: writeStep,
    restore: (receipt) => writeStep(`Restore: ${receipt.label}`, receipt.prior),
    readKept,
    writeKept,
    onChange,
  };
}
