import type { Locator, Page } from "playwright-core";
import type { FakeSheet } from "../pane/fakePort";
import { launchPane, type PaneBrowser } from "./openPane";
import { messySheets, TODAY } from "./messySheets";
import type { PanePage } from "./panePage";

let browser: PaneBrowser;
beforeAll(async () => {
  browser = await launchPane();
}, 120_000);
afterAll(() => browser.close());
jest.setTimeout(60_000);

const FIX = "Fix: Make it the date 2026-03-09, at Loans!E3";
const held = (page: Page, sheetId: string, row: number, column: number) =>
  page.evaluate(
    ([id, r, c]) => (globalThis as unknown as PanePage).port.at(id as string, r as number, c as number),
    [sheetId, row, column],
  );
async function opened(check: Locator, kind: RegExp): Promise<void> {
  const opener = check.getByRole("button", { name: kind });
  if ((await opener.getAttribute("aria-expanded")) === "false") await opener.click();
}
const said = (page: Page) => page.locator("[role=alert]").innerText();
const isSaid = (page: Page) => page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");

test("a sheet renamed in mid-check is mended all the same, and goes by its new name from then on", async () => {
  const { page, view, complaints } = await browser.open(messySheets, TODAY);
  const check = await view("Check");
  await opened(check, /A date that is kept as text/);
  await check.getByRole("button", { name: FIX }).evaluate((button) => {
    (globalThis as unknown as PanePage).port.renameSheet("s0", "Pull");
    (button as HTMLElement).click();
  });
  await page
    .getByText(/^Done: Make it the date 2026-03-09/)
    .first()
    .waitFor();
  expect(await held(page, "s0", 2, 4)).toBe(46090);
  await check.getByRole("button", { name: "Go to Pull!E4" }).waitFor();
  expect(await check.getByRole("button", { name: /^Go to Loans!/ }).count()).toBe(0);
  expect(complaints).toEqual([]);
  await page.close();
});

test("of two sheets with the same headings each finding names its own, and a fix or an ignored finding of one leaves the other", async () => {
  const [loans] = messySheets;
  const twins: readonly FakeSheet[] = [loans!, { ...loans!, name: "Loans 2" }];
  const { page, view } = await browser.open(twins, TODAY);
  const today = await view("Today");
  await today.getByText("Late: 2 pieces").waitFor();
  const check = await view("Check");
  await opened(check, /A date that is kept as text/);
  await check.getByRole("button", { name: "Fix: Make it the date 2026-03-09, at Loans 2!E3" }).click();
  await check
    .getByRole("button", { name: "Fix: Make it the date 2026-03-09, at Loans 2!E3" })
    .waitFor({ state: "detached" });
  expect([await held(page, "s0", 2, 4), await held(page, "s1", 2, 4)]).toEqual(["9 Mar 2026", 46090]);
  await check.getByRole("button", { name: "Ignore this finding at Loans!E6" }).click();
  await page.keyboard.type("agreed with the lender");
  await page.keyboard.press("Enter");
  await check.getByText("1 finding ignored").waitFor();
  expect(await check.getByRole("button", { name: "Ignore this finding at Loans 2!E6" }).count()).toBe(1);
  expect(await check.getByRole("button", { name: "Ignore this finding at Loans!E6" }).count()).toBe(0);
  await page.close();
});

test("a fix that was undone in the sheet is found again, putting it back at that moment says so, and then the offer goes", async () => {
  const { page, view, complaints } = await browser.open(messySheets, TODAY);
  const check = await view("Check");
  await opened(check, /A date that is kept as text/);
  await check.getByRole("button", { name: FIX }).click();
  await page
    .getByText(/^Done: Make it the date 2026-03-09/)
    .first()
    .waitFor();
  await check.getByRole("button", { name: FIX }).waitFor({ state: "detached" });
  // What the host's own undo leaves, and a click before the pane can have read again.
  const restore = page.getByRole("button", { name: "Restore what was there" });
  await restore.evaluate((button) => {
    (globalThis as unknown as PanePage).port.typed("s0", 2, 4, "9 Mar 2026");
    (button as HTMLElement).click();
  });
  await isSaid(page);
  expect(await said(page)).toMatch(/as it was when checked|something else/);
  expect(await held(page, "s0", 2, 4)).toBe("9 Mar 2026");
  await check.getByRole("button", { name: FIX }).waitFor();
  await restore.waitFor({ state: "detached" });
  expect(complaints).toEqual([]);
  await page.close();
});

test("an undo while all fixes of a kind stand before and after takes what was undone into them, and nothing is written over", async () => {
  const { page, view } = await browser.open(messySheets, TODAY);
  const check = await view("Check");
  await opened(check, /A date that is kept as text/);
  await check.getByRole("button", { name: "Fix all 2…" }).click();
  await check.getByRole("heading", { name: "2 cells would be written in one step" }).waitFor();
  await check.getByRole("button", { name: "Write 2 cells" }).evaluate((button) => {
    (globalThis as unknown as PanePage).port.typed("s0", 3, 4, "ask Bea");
    (button as HTMLElement).click();
  });
  await isSaid(page);
  expect([await held(page, "s0", 2, 4), await held(page, "s0", 3, 4)]).toEqual(["9 Mar 2026", "ask Bea"]);
  expect(await page.getByRole("button", { name: "Restore what was there" }).count()).toBe(0);
  await page.close();
});

test("a sheet deleted while its fixes are looked at is said to be gone, and the rest goes on", async () => {
  const { page, view, complaints } = await browser.open(messySheets, TODAY);
  const check = await view("Check");
  await opened(check, /A date that is kept as text/);
  await check.getByRole("button", { name: "Fix all 2…" }).click();
  await check.getByRole("button", { name: "Write 2 cells" }).evaluate((button) => {
    (globalThis as unknown as PanePage).port.deleteSheet("s0");
    (button as HTMLElement).click();
  });
  await isSaid(page);
  expect(await said(page)).toMatch(/gone|no longer/);
  await check.getByText(/in 2 lenders and 2 looks/).waitFor();
  expect(complaints).toEqual([]);
  await page.close();
});
