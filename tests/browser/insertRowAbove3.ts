import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";
import { settled } from "./settled";

/** Puts one row in above row 3 of a sheet, by the menu of the row's number. */
export async function insertRowAbove3(page: Page, sheet: string): Promise<void> {
  await goToCell(page, sheet, "B3");
  const cells = await page.locator('#grid canvas[id^="univer-sheet-main-canvas"]').boundingBox();
  if (cells === null) throw new Error("The grid has no canvas");
  const [x, y] = [cells.x + 20, cells.y + 76];
  await page.mouse.click(x, y);
  await page.mouse.click(x, y, { button: "right" });
  // In the middle of the line stands a box for the number of rows; the words are at its end.
  const line = page.getByText(/rows above/).last();
  const { width, height } = (await line.boundingBox()) ?? { width: 0, height: 0 };
  await line.click({ position: { x: width - 8, y: height / 2 } });
  await settled(page);
}
