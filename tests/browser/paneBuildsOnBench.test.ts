import { unzipSync, strFromU8 } from "fflate";
import { readFileSync } from "node:fs";
import { Workbook } from "@cj-tech-master/excelts";
import type { Locator, Page } from "playwright-core";
import { goToCell } from "./goToCell";
import { openBench, type OpenBench } from "./openBench";
import { settled } from "./settled";
import { shownAt } from "./shownAt";

let bench: OpenBench;
beforeAll(async () => {
  bench = await openBench();
  bench.page.setDefaultTimeout(60_000);
}, 180_000);
afterAll(() => bench.close());
jest.setTimeout(120_000);

const pane = () => bench.page.locator("#pane");
async function view(name: string): Promise<Locator> {
  await pane()
    .getByRole("tab", { name: new RegExp(`^${name}`) })
    .click();
  return pane().getByRole("tabpanel", { name: new RegExp(`^${name}`) });
}

test("the result shown before inserting is what the cells show afterwards", async () => {
  const { page } = bench;
  await goToCell(page, "Try here", "B40");
  const functions = await view("Functions");
  await functions.getByLabel("What do you want to know?").fill("what is late?");
  await functions.getByRole("button", { name: "TACK.LATEROWS" }).first().click();
  const table = functions.getByRole("region", { name: "The result as a table" });
  await table.waitFor();
  const row = await table.getByRole("row").nth(1).innerText();
  await functions.getByRole("button", { name: "Insert at the selected cell…" }).click();
  await functions
    .getByRole("heading", { name: "Into 'Try here'!B40" })
    .or(functions.getByRole("heading", { name: "Into Try here!B40" }))
    .waitFor();
  await functions.getByRole("button", { name: "Insert it", exact: true }).click();
  await pane()
    .getByText(/^Done: TACK\.LATEROWS inserted/)
    .first()
    .waitFor();
  await page.waitForTimeout(1500);
  expect(await shownAt(page, "Try here", "B41")).toContain(row.split("\t")[0] ?? "no row");
  expect(await shownAt(page, "Try here", "C41")).toContain(row.split("\t")[1] ?? "no row");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await page.waitForTimeout(1000);
  expect(await shownAt(page, "Try here", "B41")).not.toContain(row.split("\t")[0] ?? "no row");
});

test("a formula that reads its own row by headings calculates in that row", async () => {
  const { page } = bench;
  await goToCell(page, "Loans", "AJ7");
  const functions = await view("Functions");
  await functions.getByRole("button", { name: "All functions" }).click();
  await functions.getByLabel("What do you want to know?").fill("when is it due?");
  await functions.getByRole("button", { name: "TACK.DUE" }).first().click();
  await functions.getByLabel("Take out from the workbook").selectOption("=Loans[@[Date out]]");
  await functions.getByLabel("terms", { exact: true }).fill("7 days");
  await functions.getByRole("button", { name: "Insert at the selected cell…" }).click();
  await functions.getByRole("heading", { name: "Into Loans!AJ7" }).waitFor();
  const shown = functions.getByText(/^\d{4}-\d\d-\d\d$/);
  await shown.waitFor();
  await page.waitForTimeout(500);
  const day = await shown.innerText();
  await functions.getByRole("button", { name: "Insert it", exact: true }).click();
  await pane().getByText("Done: TACK.DUE inserted at Loans!AJ7").first().waitFor();
  await page.waitForTimeout(1500);
  expect(await shownAt(page, "Loans", "AJ7")).toContain(day);
});

test("a heading that is read otherwise comes to the formulas, which calculate with it", async () => {
  const columns = await view("Columns");
  await columns.locator("summary", { hasText: /^Loans/ }).click();
  await columns.getByLabel("Ins. value (column I)").selectOption("");
  await columns.getByRole("button", { name: /^Insert it in \d+ formulas, as shown$/ }).waitFor();
  const before = await columns.locator("code").first().innerText();
  const after = await columns.locator("code").nth(1).innerText();
  expect(after.replace(',"value="', "")).toBe(before);
  await columns.getByRole("button", { name: "Forget what was chosen by hand for this table" }).click();
  await columns.getByRole("button", { name: /^Insert it in/ }).waitFor({ state: "detached" });
});

/** Start offers what is missing, and the sample has all of it. */
async function openWithoutRequestsAndReceipts(page: Page): Promise<void> {
  const book = new Workbook();
  await book.xlsx.load(readFileSync("sample-workbooks/two-day-shoot.xlsx"));
  for (const name of ["Requests", "Receipts"]) book.removeWorksheet(book.getWorksheet(name)!.id);
  const buffer = Buffer.from(await book.xlsx.writeBuffer());
  page.once("dialog", (dialog) => void dialog.accept());
  await page.locator("#file").setInputFiles({ name: "fewer.xlsx", mimeType: "application/octet-stream", buffer });
  await page.waitForFunction(() => document.getElementById("file-name")?.textContent === "fewer.xlsx");
  await settled(page);
}

test("sheets to begin with come in one step, are saved with their tables, and one undo takes them away", async () => {
  const { page } = bench;
  await openWithoutRequestsAndReceipts(page);
  const start = await view("Start");
  await start.getByRole("checkbox", { name: "Requests" }).check();
  await start.getByRole("checkbox", { name: "Receipts" }).check();
  await start.getByRole("button", { name: "Add 2 sheets…" }).click();
  await start.getByRole("button", { name: "Add 2 sheets", exact: true }).click();
  await pane().getByText("Done: 2 sheets added").first().waitFor();
  expect(await shownAt(page, "Requests", "E1")).toContain("Answer");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: /^Save/ }).first().click(),
  ]);
  const parts = unzipSync(new Uint8Array(readFileSync(await download.path())));
  const tables = Object.entries(parts).flatMap(([path, bytes]) =>
    path.startsWith("xl/tables/") ? (/displayName="(\w+)"/.exec(strFromU8(bytes))?.[1] ?? []) : [],
  );
  expect(tables).toEqual(expect.arrayContaining(["Requests", "Receipts", "Loans"]));
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await start.getByRole("checkbox", { name: "Requests" }).waitFor();
});

test("nothing was complained of", () => {
  expect(bench.complaints).toEqual([]);
});
