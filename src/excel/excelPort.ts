import type { SheetPort } from "../sheet/SheetPort";
import { activeCell } from "./activeCell";
import { build } from "./build";
import { goTo } from "./goTo";
import { listPictures } from "./listPictures";
import { onChange } from "./onChange";
import { oneAfterAnother } from "./oneAfterAnother";
import { readKept } from "./readKept";
import { readSheet } from "./readSheet";
import { readWorkbook } from "./readWorkbook";
import { selection } from "./selection";
import { showPictures } from "./showPictures";
import { writeKept } from "./writeKept";
import { writeStep } from "./writeStep";

/** The open workbook of Excel, as the pane needs it. */
export function createExcelPort(): SheetPort {
  return {
    readWorkbook,
    readSheet,
    listPictures,
    showPictures,
    goTo,
    activeCell,
    selection,
    write: writeStep,
    build,
    restore: (receipt) => {
      const label = `Restore: ${receipt.label}`;
      return receipt.opposite === undefined ? writeStep(label, receipt.prior) : build(label, receipt.opposite);
    },
    readKept,
    writeKept: oneAfterAnother(writeKept),
    onChange,
  };
}
