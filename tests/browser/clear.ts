import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";

/** Empties a cell with the Delete key. */
export async function clear(page: Page, sheet: string, cell: string): Promise<void> {
  await goToCell(page, sheet, cell);
  await page.keyboard.press("Delete");
  await page.waitForTimeout(600);
}
