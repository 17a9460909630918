import { insertRowAbove3 } from "./insertRowAbove3";
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

test("what is typed right below a table becomes part of it, and what counts on the table counts it", async () => {
  const { page } = bench;
  await type(page, "Try here", "A20", "=ROWS(Lenders[#All])");
  const before = number(await shownAt(page, "Try here", "A20"));
  await type(page, "Lenders", "A19", "A lender of mine");
  expect(number(await shownAt(page, "Try here", "A20"))).toBe(before + 1);
  await type(page, "Lenders", "H19", "5 days");
  expect(number(await shownAt(page, "Try here", "A20"))).toBe(before + 1);
});

test("a total typed below the table stays outside when somebody types beside it", async () => {
  const { page } = bench;
  expect(await shownAt(page, "Loans", "B136")).toContain("TOTAL");
  await type(page, "Try here", "A21", "=ROWS(Loans[#All])");
  const before = number(await shownAt(page, "Try here", "A21"));
  await type(page, "Loans", "D136", "mine");
  expect(number(await shownAt(page, "Try here", "A21"))).toBe(before);
});

test("a lender typed anew in a row of the table gets a line of its own in the totals", async () => {
  const { page } = bench;
  await type(page, "Loans", "D135", "A lender of mine");
  const names: string[] = [];
  for (let row = 5; row <= 20; row++) names.push(await shownAt(page, "Totals", `A${row}`));
  expect(names.join("\n")).toContain("A lender of mine");
});

test("a date in figures that could be two days is read month first, and the page says so", async () => {
  const { page } = bench;
  await type(page, "Try here", "F20", "5/2/2026");
  expect(await page.locator("#notice-text").textContent()).toBe(
    '"5/2/2026" is read month first here, as 2026-05-02; for the other day type 2026-02-05.',
  );
  await page.locator("#notice").getByRole("button", { name: "Close" }).click();
});

test("a formula typed with semicolons, as many computers are set, is read as one with commas", async () => {
  const { page } = bench;
  await type(page, "Try here", "H20", '=TACK.DUE(DATE(2026;3;2);"3 working days")');
  expect(await shownAt(page, "Try here", "H20")).toContain('2026-03-05  ·  =TACK.DUE(DATE(2026,3,2),"3 working days")');
});

test("rows put in move the sentence behind an error along with its cell", async () => {
  const { page } = bench;
  await type(page, "Try here", "D20", '=TACK.DUE(DATE(2026,3,2),"soonish")');
  expect(await shownAt(page, "Try here", "D20")).toContain('"soonish"');
  await insertRowAbove3(page, "Try here");
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
  await settled(page);
  expect(await page.locator("#cell-text").textContent()).toMatch(/^A2 /);
});

test("nothing was complained of on the way", () => {
  expect(bench.complaints).toEqual([]);
});

function number(said: string): number {
  return Number(said.split("  ·  ")[1]);
}
