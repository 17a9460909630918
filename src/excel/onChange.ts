import type { SheetChange } from "../sheet/SheetPort";
import { areaOfAddress } from "./areaOfAddress";
import { gatherChanges } from "./gatherChanges";
import { hasExcelApi } from "./hasExcelApi";

const GATHER_MILLISECONDS = 150;

interface Handler {
  readonly context: OfficeExtension.ClientRequestContext;
  remove(): void;
}

/**
 * Tells of edits, recalculations and changes of the sheets themselves, gathered; answers how to stop.
 *
 * Needs ExcelApi 1.9 (worksheets.onChanged). Where the host knows them also: sorting (1.10), protection (1.14), renaming
 * and hiding (1.17). Should Excel refuse to listen, nothing is told: the pane's own "check again" still reads the sheet.
 */
export function onChange(listener: (changes: readonly SheetChange[]) => void): () => void {
  const gathered = gatherChanges(listener, GATHER_MILLISECONDS);
  let stopped = false;
  const tell = (sheetId: string, address: string | null, sheetsChanged = false): Promise<void> => {
    // A removed handler may still be called for what was under way.
    if (!stopped) for (const area of areasOf(address)) gathered.add({ sheetId, area, sheetsChanged });
    return Promise.resolve();
  };
  const registered = register(tell);
  return () => {
    stopped = true;
    gathered.stop();
    void registered.then(removeAll);
  };
}

function areasOf(address: string | null): SheetChange["area"][] {
  return address === null || address === "" ? [null] : address.split(",").map(areaOfAddress);
}

async function register(
  tell: (sheetId: string, address: string | null, sheetsChanged?: boolean) => Promise<void>,
): Promise<Handler[]> {
  try {
    return await Excel.run(async (context) => {
      const sheets = context.workbook.worksheets;
      const sheetEvent = (event: { worksheetId: string }): Promise<void> => tell(event.worksheetId, null, true);
      const handlers: Handler[] = [
        // An inserted or deleted row moves everything below it, so only a plain edit is told as its area.
        sheets.onChanged.add((event) =>
          tell(event.worksheetId, event.changeType === "RangeEdited" ? event.address : null),
        ),
        sheets.onCalculated.add((event) => tell(event.worksheetId, hasExcelApi("1.11") ? event.address : null)),
        sheets.onAdded.add(sheetEvent),
        sheets.onDeleted.add(sheetEvent),
      ];
      if (hasExcelApi("1.10")) handlers.push(sheets.onRowSorted.add((event) => tell(event.worksheetId, null)));
      if (hasExcelApi("1.10")) handlers.push(sheets.onColumnSorted.add((event) => tell(event.worksheetId, null)));
      if (hasExcelApi("1.14")) handlers.push(sheets.onProtectionChanged.add(sheetEvent));
      if (hasExcelApi("1.17")) handlers.push(sheets.onNameChanged.add(sheetEvent));
      if (hasExcelApi("1.17")) handlers.push(sheets.onVisibilityChanged.add(sheetEvent));
      await context.sync();
      return handlers;
    });
  } catch {
    return [];
  }
}

/** A handler can only be removed in the context that added it (documented). */
async function removeAll(handlers: readonly Handler[]): Promise<void> {
  const first = handlers[0];
  if (first === undefined) return;
  await Excel.run(first.context as Excel.RequestContext, async (context) => {
    for (const handler of handlers) handler.remove();
    await context.sync();
  }).catch(() => undefined);
}
