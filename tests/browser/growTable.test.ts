import { insertRowAbove3 } from "./insertRowAbove3";
import { openBench, type OpenBench } from "./openBench";
import { shownAt } from "./shownAt";
import { type } from "./type";

let bench: OpenBench;
beforeAll(async () => {
  bench = await openBench();
}, 180_000);
afterAll(() => bench.close());
jest.setTimeout(60_000);

test("a piece typed right below the table becomes part of it, with its formulas", async () => {
  const { page } = bench;
  expect(await shownAt(page, "Loans", "A129")).toContain("blank");
  await type(page, "Loans", "K129", "2026-03-20");
  expect(await shownAt(page, "Loans", "M129")).toContain("=TACK.DUE(Loans[[#This Row],[Date out]]");
  await type(page, "Loans", "D129", "A lender of mine");
  await type(page, "Loans", "I129", "100000");
  expect(await shownAt(page, "Totals", "A19")).toMatch(/\S/);
  const names: string[] = [];
  for (let row = 5; row <= 20; row++) names.push(await shownAt(page, "Totals", `A${row}`));
  expect(names.join("\n")).toContain("A lender of mine");
});

test("rows put in move the sentence behind an error along with its cell", async () => {
  const { page } = bench;
  await type(page, "Try here", "D20", '=TACK.DUE(DATE(2026,3,2),"soonish")');
  expect(await shownAt(page, "Try here", "D20")).toContain('"soonish"');
  await insertRowAbove3(page);
  expect(await shownAt(page, "Try here", "D21")).toContain('"soonish"');
});

test("F6 leads from the grid to the pane, to the header and back", async () => {
  const { page } = bench;
  const region = () => page.evaluate(() => document.activeElement?.closest(".bar, #grid, #pane")?.className);
  await shownAt(page, "Try here", "A1");
  await page.keyboard.press("F6");
  expect(await region()).toContain("pane");
  await page.keyboard.press("F6");
  expect(await region()).toContain("bar");
  await page.keyboard.press("F6");
  expect(await region()).toContain("grid");
  await page.keyboard.press("ArrowDown");
  await page.waitForTimeout(400);
  expect(await page.locator("#cell-text").textContent()).toMatch(/^A2 /);
});

test("nothing was complained of on the way", () => {
  expect(bench.complaints).toEqual([]);
});
