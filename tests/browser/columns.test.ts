import type { Locator, Page } from "playwright-core";
import { TODAY } from "./messySheets";
import { launchPane, type PaneBrowser } from "./openPane";
import type { PanePage } from "./panePage";
import { wayOut } from "./wayOut";

let browser: PaneBrowser;
beforeAll(async () => {
  browser = await launchPane();
}, 120_000);
afterAll(() => browser.close());
jest.setTimeout(60_000);

const openTableSays = (columns: Locator, text: RegExp) =>
  columns.locator("summary", { hasText: text }).first().waitFor();
const oddLoans = {
  name: "Odd",
  tables: [{ name: "OddLoans", row: 0, column: 0, rowCount: 3, columnCount: 6 }],
  rows: [
    ["Piece", "From", "Out", "Due", "Back", "Ins. amt intern"],
    ["coat", "Ado & Fils", TODAY - 9, TODAY - 2, null, 1250],
    ["boots", "Ado & Fils", TODAY - 9, TODAY + 2, null, 300],
  ],
};
const totals = {
  name: "Totals",
  rows: [["Value out"], [0], [0]],
  formulas: { "1,0": "=TACK.VALUEOUT(OddLoans[#All],A9)", "2,0": "=TACK.LATEROWS(OddLoans[#All],A9,C1)" },
};
const unread = {
  name: "Playlist",
  tables: [{ name: "Songs", row: 0, column: 0, rowCount: 2, columnCount: 3 }],
  rows: [
    ["Look", "Song", "Singer"],
    [1, "Blue", "Mina"],
  ],
};
const sheets = [oddLoans, totals, unread];
const contested = {
  name: "Two values",
  rows: [
    ["Piece", "Lender", "Out", "Due", "Back", "Value", "Insured value"],
    ["hat", "Ado & Fils", TODAY - 9, TODAY + 2, null, 80, 120],
  ],
};
const kept = (page: Page) => page.evaluate(() => (globalThis as unknown as PanePage).port.kept.get("columns"));
const formulaAt = (page: Page, row: number) =>
  page.evaluate((r) => (globalThis as unknown as PanePage).port.formulaAt("s1", r, 0), row);
const openTable = (columns: Locator, name: RegExp) => columns.locator("summary", { hasText: name }).click();

describe.each([
  ["at 320 px by day", { width: 320 }],
  ["at 420 px by night", { width: 420, dark: true }],
  ["in forced colours", { width: 360, forcedColors: true }],
  ["at a zoom of 200 %", { width: 320, height: 400 }],
])("%s", (_, options) => {
  test("Columns has no barrier that axe knows of, nothing sticks out, and every target is 24 px", async () => {
    const { page, view, barriers, complaints } = await browser.open([...sheets, contested], TODAY, options);
    const columns = await view("Columns");
    await openTable(columns, /^OddLoans/);
    await columns.getByLabel("Ins. amt intern").selectOption("value");
    await columns.getByRole("button", { name: "Insert it at Totals!A2" }).waitFor();
    expect(await barriers()).toEqual([]);
    expect(await wayOut(page)).toEqual({ tooWide: 0, tooSmall: [] });
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("a heading nobody could know is given its field, is kept in the workbook, and Today counts with it at once", async () => {
  const { page, view } = await browser.open([oddLoans], TODAY);
  const today = await view("Today");
  await today.getByText("Late: 1 piece").waitFor();
  expect(await today.innerText()).not.toContain("1,550");
  const columns = await view("Columns");
  await openTable(columns, /^OddLoans: 2 pieces, 4 of 6 headings read/);
  await columns.getByLabel("Ins. amt intern").selectOption("value");
  await openTableSays(columns, /5 of 6 headings read, 1 chosen by hand/);
  expect(JSON.parse((await kept(page)) ?? "")).toEqual({
    columns: { Odd: [{ kind: "pieces", field: "value", heading: "Ins. amt intern" }] },
    kinds: {},
  });
  await view("Today");
  await today.getByText("1,550").first().waitFor();
  await view("Columns");
  await columns.getByRole("button", { name: /^Forget what was chosen by hand/ }).click();
  await openTableSays(columns, /4 of 6 headings read$/);
  await page.close();
});

test("two tables of one sheet have choices of their own", async () => {
  const both = {
    name: "Both jobs",
    tables: [
      { name: "JobA", row: 0, column: 0, rowCount: 2, columnCount: 5 },
      { name: "JobB", row: 4, column: 0, rowCount: 2, columnCount: 6 },
    ],
    rows: [
      ["Piece", "Lender", "Out", "Due", "Ins. amt intern"],
      ["a", "Ado", TODAY - 3, TODAY + 3, 100],
      [null],
      [null],
      ["Piece", "Lender", "Out", "Return date", "Value", "Fig. 2"],
      ["b", "Ado", TODAY - 3, TODAY + 3, 200, 300],
    ],
  };
  const { page, view } = await browser.open([both], TODAY);
  const columns = await view("Columns");
  await openTable(columns, /^JobA/);
  await columns.getByLabel("Ins. amt intern").selectOption("value");
  await openTableSays(columns, /^JobA.* 5 of 5 headings read, 1 chosen by hand/);
  await openTableSays(columns, /^JobB: 1 piece, 5 of 6 headings read$/);
  const today = await view("Today");
  await today.getByText("300", { exact: true }).first().waitFor();
  await view("Columns");
  await openTable(columns, /^JobB/);
  await columns.getByLabel("Fig. 2").selectOption("value");
  await openTableSays(columns, /^JobB: 1 piece, 5 of 6 headings read, 1 chosen by hand/);
  await openTableSays(columns, /^JobA.* 5 of 5 headings read, 1 chosen by hand/);
  await page.close();
});

test("two headings that could be one thing are shown open, and a button decides", async () => {
  const { page, view } = await browser.open([contested], TODAY);
  const columns = await view("Columns");
  await columns.getByRole("group", { name: "Which one is Value?" }).waitFor();
  await columns.getByRole("button", { name: "Insured value is Value" }).click();
  await openTableSays(columns, /6 of 7 headings read, 1 chosen by hand/);
  expect(await columns.getByLabel("Insured value (column G)").inputValue()).toBe("value");
  await page.close();
});

test("a formula that needs the choice is shown before and after, is written, and put back on asking", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const columns = await view("Columns");
  await openTable(columns, /^OddLoans/);
  await columns.getByLabel("Ins. amt intern").selectOption("value");
  await columns.getByText("It is left to you: it takes its columns from C1").waitFor();
  await columns.getByRole("button", { name: "Insert it at Totals!A2" }).click();
  await page.getByText("Done: Columns inserted at Totals!A2").first().waitFor();
  expect(await formulaAt(page, 1)).toBe('=TACK.VALUEOUT(OddLoans[#All],A9,"value=Ins. amt intern")');
  await columns.getByRole("heading", { name: "1 formula does not know this yet" }).waitFor();
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await columns.getByRole("heading", { name: "2 formulas do not know this yet" }).waitFor();
  expect(await formulaAt(page, 1)).toBe("=TACK.VALUEOUT(OddLoans[#All],A9)");
  await page.close();
});

test("a formula that was changed meanwhile is not written over", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const columns = await view("Columns");
  await openTable(columns, /^OddLoans/);
  await columns.getByLabel("Ins. amt intern").selectOption("value");
  await columns.getByRole("button", { name: "Insert it at Totals!A2" }).evaluate((button) => {
    (globalThis as unknown as PanePage).port.typed("s1", 1, 0, "mine");
    (button as HTMLElement).click();
  });
  await page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");
  expect(await page.evaluate(() => (globalThis as unknown as PanePage).port.at("s1", 1, 0))).toBe("mine");
  await page.close();
});

test("a table that was not read is given a kind, and one that was read is left out and read again", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const columns = await view("Columns");
  await columns.getByLabel("Read Songs as").selectOption("looks");
  await columns.locator("summary", { hasText: "Songs: 1 look, 1 of 3 headings read" }).waitFor();
  await openTable(columns, /^Songs/);
  await columns.getByLabel("The table is read as").selectOption("leave out");
  await columns.getByRole("heading", { name: "Left out by hand" }).waitFor();
  await columns.getByRole("button", { name: "Read it again" }).click();
  await columns.getByLabel("Read Songs as").waitFor();
  await page.close();
});

test("choices for a sheet that is gone are kept until the user gives them to another sheet", async () => {
  const { page, view } = await browser.open([oddLoans], TODAY);
  await page.evaluate(() => {
    const { port } = globalThis as unknown as PanePage;
    const choice = { kind: "pieces", field: "value", heading: "Ins. amt intern" };
    void port.writeKept("columns", JSON.stringify({ columns: { "Old name": [choice] } }));
    port.typed("s0", 2, 0, "long boots");
    port.deleteSheet("s9");
  });
  const columns = await view("Columns");
  await columns.getByLabel('"Old name" was renamed or deleted', { exact: false }).selectOption("Odd");
  await openTableSays(columns, /1 chosen by hand/);
  expect(JSON.parse((await kept(page)) ?? "")).toMatchObject({ columns: { Odd: [{ field: "value" }] } });
  await page.close();
});

test("what is kept and cannot be read is said, not used, and nothing fails", async () => {
  const { page, view, complaints } = await browser.open([oddLoans], TODAY);
  await page.evaluate(() => {
    const { port } = globalThis as unknown as PanePage;
    void port.writeKept("columns", "{half");
    port.deleteSheet("s9");
  });
  const columns = await view("Columns");
  await columns.getByText("Some of what was chosen before (1) cannot be read").waitFor();
  expect(complaints).toEqual([]);
  await page.close();
});

test("a choice that cannot be kept is said in a sentence, and the table stays as it was read", async () => {
  const { page, view } = await browser.open([oddLoans], TODAY);
  const columns = await view("Columns");
  await openTable(columns, /^OddLoans/);
  await page.evaluate(() => (globalThis as unknown as PanePage).port.failNext("writeKept"));
  await columns.getByLabel("Ins. amt intern").selectOption("value");
  await page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");
  expect(await columns.getByLabel("Ins. amt intern").inputValue()).toBe("");
  await openTableSays(columns, /4 of 6 headings read$/);
  await page.close();
});

test("the text for a formula can be copied", async () => {
  const { page, view } = await browser.open([oddLoans], TODAY);
  const columns = await view("Columns");
  await openTable(columns, /^OddLoans/);
  await columns.getByLabel("Ins. amt intern").selectOption("value");
  expect(await columns.getByLabel("The same for a formula").inputValue()).toBe("value=Ins. amt intern");
  await columns.getByRole("button", { name: "Copy" }).click();
  await columns.getByText(/^Copied\.|^It is selected/).waitFor();
  await page.close();
});
