import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";
import { settled } from "./settled";

/** What the line under the header says of a cell: address, what it shows, the sentence behind an error, the formula. */
export async function shownAt(page: Page, sheet: string, cell: string): Promise<string> {
  await goToCell(page, sheet, cell);
  await settled(page);
  return (await page.locator("#cell-text").textContent()) ?? "";
}
