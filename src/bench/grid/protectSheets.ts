import type { OpenGrid } from "../port/openGrid";

/** Makes the sheets that the file protects read-only in the grid as well; its password is nobody's business here. */
export async function protectSheets({ facade }: OpenGrid, sheetIds: readonly string[]): Promise<void> {
  for (const sheetId of sheetIds) {
    const permission = facade.getSheetBySheetId(sheetId)?.getWorksheetPermission();
    await permission?.protect();
    await permission?.setReadOnly();
  }
}
