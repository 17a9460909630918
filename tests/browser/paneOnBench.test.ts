import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { goToCell } from "./goToCell";
import { openBench, type OpenBench } from "./openBench";
import { shownAt } from "./shownAt";

/** Worked out by LibreOffice Calc from its built-in functions; see `source` in the file. */
interface Figures {
  readonly asOf: string;
  readonly late: readonly (readonly [piece: string, daysLate: number])[];
}
const figures = JSON.parse(
  readFileSync(join(__dirname, "../../sample-workbooks/two-day-shoot.figures.json"), "utf8"),
) as Figures;

let bench: OpenBench;
beforeAll(async () => {
  bench = await openBench();
  bench.page.setDefaultTimeout(40_000);
}, 180_000);
afterAll(() => bench.close());
jest.setTimeout(90_000);

const pane = () => bench.page.locator("#pane");
async function view(name: "Today" | "Check") {
  await pane()
    .getByRole("tab", { name: new RegExp(`^${name}`) })
    .click();
  return pane().getByRole("tabpanel", { name: new RegExp(`^${name}`) });
}
const standing = (page: Page) => page.locator("#pane [role=status]").first().innerText();
async function standingChanges(page: Page, before: string): Promise<string> {
  await page.waitForFunction((text) => document.querySelector("#pane [role=status]")?.textContent !== text, before);
  return standing(page);
}

test("on the sample's own day, what Today shows as late is what LibreOffice works out, in its order", async () => {
  const today = await view("Today");
  await today.getByText(`Late: ${figures.late.length} pieces`).waitFor();
  const section = today.getByRole("region", { name: /^Late/ });
  const more = section.getByRole("button", { name: /^Show/ });
  if ((await more.count()) > 0) await more.click();
  const lines = await section.getByRole("listitem").allInnerTexts();
  expect(lines.map((line) => /^(\S+)[\s\S]*?(\d+) days? late/.exec(line)?.slice(1))).toEqual(
    figures.late.map(([piece, daysLate]) => [piece, String(daysLate)]),
  );
});

test("a row of Today goes to its cell in the grid", async () => {
  const today = await view("Today");
  const first = today.getByRole("region", { name: /^Late/ }).getByRole("listitem").first().getByRole("button");
  const place = /go to (.+)!(.+)$/.exec((await first.getAttribute("aria-label")) ?? "");
  await first.click();
  await bench.page.waitForFunction(
    ([sheet, cell]) => document.getElementById("cell-live")?.textContent?.startsWith(`${sheet}, ${cell} `) === true,
    place?.slice(1) ?? [],
  );
});

test("a date typed into the grid as text is found while the pane is open, and mending it by hand clears it", async () => {
  const { page } = bench;
  await view("Check");
  const before = await standing(page);
  await goToCell(page, "Loans", "N10");
  await page.keyboard.type("04/05/26, says Bea", { delay: 10 });
  await page.keyboard.press("Enter");
  const found = await standingChanges(page, before);
  await goToCell(page, "Loans", "N10");
  await page.keyboard.press("Delete");
  expect(await standingChanges(page, found)).toBe(before);
});

test("a fix from the pane changes the cell, and one undo of the grid takes it back", async () => {
  const { page } = bench;
  const check = await view("Check");
  const opener = check.getByRole("button", { name: /A date that is kept as text/ });
  if ((await opener.getAttribute("aria-expanded")) === "false") await opener.click();
  const fix = check.getByRole("button", { name: /^Fix: Make it the date/ }).first();
  const label = (await fix.getAttribute("aria-label")) ?? "";
  const [, iso, cell] = /date (\S+), at Loans!(\S+)/.exec(label) ?? [];
  const before = await standing(page);
  await fix.click();
  const after = await standingChanges(page, before);
  expect(await shownAt(page, "Loans", cell ?? "")).toContain(iso ?? "no date");
  expect(iso).toMatch(/^\d{4}-\d\d-\d\d$/);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  expect(await standingChanges(page, after)).toBe(before);
});

test("nothing was complained of and nothing was asked of any other machine", () => {
  expect(bench.complaints).toEqual([]);
  expect(
    bench.requests.filter(
      (url) => !url.startsWith(bench.address) && !url.startsWith("data:") && !url.startsWith("blob:"),
    ),
  ).toEqual([]);
});
