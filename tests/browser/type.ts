import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";
import { settled } from "./settled";

/** Types into a cell and leaves it with Enter, as a user does. */
export async function type(page: Page, sheet: string, cell: string, text: string): Promise<void> {
  await goToCell(page, sheet, cell);
  await page.keyboard.type(text, { delay: 12 });
  await page.keyboard.press("Enter");
  await settled(page);
}
