import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";
import { settled } from "./settled";

/** Empties a cell with the Delete key. */
export async function clear(page: Page, sheet: string, cell: string): Promise<void> {
  await goToCell(page, sheet, cell);
  await page.keyboard.press("Delete");
  await settled(page);
}
