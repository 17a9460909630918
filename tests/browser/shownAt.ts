import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";

/** What the line under the header says of a cell: address, what it shows, the sentence behind an error, the formula. */
export async function shownAt(page: Page, sheet: string, cell: string): Promise<string> {
  await goToCell(page, sheet, cell);
  // Long enough for a calculation under way to be told as well.
  await page.waitForTimeout(400);
  return (await page.locator("#cell-text").textContent()) ?? "";
}
