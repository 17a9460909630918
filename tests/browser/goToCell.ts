import type { Page } from "playwright-core";

/** Goes to a cell as a user does: the sheet's tab, the cell's name in the name box, Enter. */
export async function goToCell(page: Page, sheet: string, cell: string): Promise<void> {
  await page.locator("#grid").getByText(sheet, { exact: true }).first().click();
  await isTold(page, `${sheet}, `, 20_000);
  const nameBox = page.locator("#grid input").first();
  // A sheet seen for the first time is drawn before it can be moved about in, and the grid does not say when.
  for (let attempt = 0; attempt < 10; attempt++) {
    await nameBox.click();
    await nameBox.fill(cell);
    await nameBox.press("Enter");
    if (await isTold(page, `${sheet}, ${cell} `, 1_500)) return;
  }
  throw new Error(`The grid does not go to ${sheet}!${cell}`);
}

/** Whether the live region comes to say something that starts like this. */
function isTold(page: Page, start: string, timeout: number): Promise<boolean> {
  const told = page.waitForFunction(
    (words) => document.getElementById("cell-live")?.textContent?.startsWith(words) === true,
    start,
    { timeout },
  );
  return told.then(
    () => true,
    () => false,
  );
}
