import type { Page } from "playwright-core";

/** Goes to a cell as a user does: the sheet's tab, the cell's name in the name box, Enter. */
export async function goToCell(page: Page, sheet: string, cell: string): Promise<void> {
  await page.locator("#grid").getByText(sheet, { exact: true }).first().click();
  await until(page, `${sheet}, `);
  // A sheet seen for the first time is drawn before it can be moved about in.
  await page.waitForTimeout(400);
  const nameBox = page.locator("#grid input").first();
  await nameBox.click();
  await nameBox.fill(cell);
  await nameBox.press("Enter");
  await until(page, `${sheet}, ${cell} `);
}

async function until(page: Page, start: string): Promise<void> {
  await page.waitForFunction(
    (words) => document.getElementById("cell-live")?.textContent?.startsWith(words) === true,
    start,
    {
      timeout: 20_000,
    },
  );
}
