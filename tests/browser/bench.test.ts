import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";
import { clear } from "./clear";
import { openBench, type OpenBench } from "./openBench";
import { settled } from "./settled";
import { shownAt } from "./shownAt";
import { type } from "./type";

let bench: OpenBench;
beforeAll(async () => {
  bench = await openBench();
}, 180_000);
afterAll(() => bench.close());
jest.setTimeout(60_000);

/** The middle of row 4, below the column letters and rows 1 to 3. */
const HEADING_ROW_Y = 97;
const TRY = "Try here";

test("the sample workbook opens with its functions live", async () => {
  expect(await bench.page.locator("#file-name").textContent()).toBe("two-day-shoot.xlsx");
  expect(await shownAt(bench.page, "Totals", "A5")).toContain("Maison Quillet");
  expect(await shownAt(bench.page, "Late", "A4")).toContain("=TACK.LATEROWS(Loans[#All],AsOf)");
});

test("a spilled date shows as a date and not as a number", async () => {
  const shown: string[] = [];
  for (const row of [8, 9, 10]) shown.push(await shownAt(bench.page, "Totals", `D${row}`));
  expect(shown.join("\n")).toMatch(/\d{4}-\d\d-\d\d/);
});

test("typing a function shows what its arguments are, pointing at the table puts in a reference, Enter spills", async () => {
  const { page } = bench;
  // So large that the whole table can be seen, and pointed at in one stroke.
  await page.setViewportSize({ width: 2800, height: 2900 });
  await goToCell(page, TRY, "A9");
  await page.keyboard.type("=TACK.LENDERTOTALS(", { delay: 20 });
  await page.getByText("The pieces with their heading row").waitFor();
  await page.locator("#grid").getByText("Loans", { exact: true }).first().click();
  await page.waitForTimeout(700);
  const cells = await page.locator('#grid canvas[id^="univer-sheet-main-canvas"]').boundingBox();
  if (cells === null) throw new Error("The grid has no canvas");
  await page.mouse.move(cells.x + 60, cells.y + HEADING_ROW_Y);
  await page.mouse.down();
  await page.mouse.move(cells.x + 900, cells.y + 900, { steps: 6 });
  await page.mouse.move(cells.x + 2200, cells.y + 2620, { steps: 6 });
  await page.mouse.up();
  await page.waitForTimeout(500);
  await page.keyboard.type(",AsOf)", { delay: 20 });
  await page.keyboard.press("Enter");
  await settled(page);
  await page.setViewportSize({ width: 1400, height: 850 });
  expect(await shownAt(page, TRY, "A9")).toMatch(/Lender .*=TACK\.LENDERTOTALS\(Loans!A4:[A-Z]+\d+,AsOf\)/);
  expect(await shownAt(page, TRY, "B9")).toContain("Pieces out");
  await clear(page, TRY, "A9");
});

test("a bad argument shows #VALUE! in the cell and its whole sentence under the header, for a screen reader too", async () => {
  const { page } = bench;
  await type(page, TRY, "A9", '=TACK.DUE(DATE(2026,3,2),"soonish")');
  const said = await shownAt(page, TRY, "A9");
  expect(said).toContain("#VALUE!");
  expect(said).toContain('"soonish"');
  expect(await page.locator("#cell-line").getAttribute("data-wrong")).not.toBeNull();
  expect(await page.locator("#cell-live").textContent()).toContain('"soonish"');
  await clear(page, TRY, "A9");
});

test("a whole table by its name spills, and undo takes it back", async () => {
  const { page } = bench;
  await type(page, TRY, "A9", "=TACK.LENDERTOTALS(Loans[#All],AsOf)");
  expect(await shownAt(page, TRY, "B9")).toContain("Pieces out");
  await page.keyboard.press("Control+z");
  await settled(page);
  expect(await shownAt(page, TRY, "B9")).not.toContain("Pieces out");
});

test("[@Column], a bracket half typed, and a formula after it", async () => {
  const { page } = bench;
  await type(page, TRY, "E20", "=Loans[@Terms");
  await page.keyboard.press("Escape");
  await settled(page);
  await type(page, TRY, "E21", "=SUM(1,2)");
  expect(await shownAt(page, TRY, "E21")).toContain("3");
  await clear(page, TRY, "E20");
  await clear(page, TRY, "E21");
});

test("a changed Date out moves the due date beside it", async () => {
  const { page } = bench;
  // Row 16 went out on 2026-03-25 for 10 days.
  const before = await shownAt(page, "Loans", "M16");
  await type(page, "Loans", "K16", "2026-03-20");
  const after = await shownAt(page, "Loans", "M16");
  expect(after).not.toBe(before);
  expect(after).toContain("=TACK.DUE(");
  await undo(page);
  expect(await shownAt(page, "Loans", "M16")).toBe(before);
});

test("a typed Date back takes the piece out of its lender's total, and undo brings it back", async () => {
  const { page } = bench;
  // Row 26 is a piece of Maison Quillet, the lender that is most days late and so the first of the totals.
  const before = await shownAt(page, "Totals", "B5");
  expect(await shownAt(page, "Totals", "A5")).toContain("Maison Quillet");
  await type(page, "Loans", "N26", "2026-04-07");
  expect(number(await shownAt(page, "Totals", "B5"))).toBe(number(before) - 1);
  await undo(page);
  expect(await shownAt(page, "Totals", "B5")).toBe(before);
});

test("blanks sent as 0 calculate anew, and give the same", async () => {
  const { page } = bench;
  const before = await shownAt(page, "Totals", "C6");
  await page.locator("#blanks").check();
  await settled(page);
  expect(await shownAt(page, "Totals", "C6")).toBe(before);
  await page.locator("#blanks").uncheck();
  await settled(page);
  expect(await shownAt(page, "Totals", "C6")).toBe(before);
});

test("nothing was asked for beyond this computer, and nothing was complained of", () => {
  const beyond = bench.requests.filter((url) => !url.startsWith(bench.address) && !/^(?:data|blob):/.test(url));
  expect(beyond).toEqual([]);
  expect(bench.complaints).toEqual([]);
});

function number(said: string): number {
  return Number(said.split("  ·  ")[1]);
}

async function undo(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Undo" }).click();
  await settled(page);
}
