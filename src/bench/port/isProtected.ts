import type { OpenGrid } from "./openGrid";

/** Whether a sheet takes no writing. */
export function isProtected({ facade }: OpenGrid, sheetId: string): boolean {
  return facade.getSheetBySheetId(sheetId)?.getWorksheetPermission().isProtected() === true;
}
