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

const loans = {
  name: "Loans",
  tables: [{ name: "Loans", row: 0, column: 0, rowCount: 4, columnCount: 7 }],
  rows: [
    ["Piece", "Lender", "Out", "Terms", "Due", "Back", "Value"],
    ["coat", "Ado & Fils", TODAY - 9, "3 working days", TODAY - 2, null, 1250],
    ["boots", "Ado & Fils", TODAY - 9, "2 weeks", TODAY + 2, null, 300],
    ["hat", "Maison Orla", TODAY - 9, "7 days", TODAY - 1, null, 80],
  ],
};
const totals = { name: "Totals", rows: [["As of", TODAY], ["note", null], [null, null], ["in the way"]] };
const sheets = [loans, totals];
const select = (page: Page, row: number, column: number, rowCount = 1, columnCount = 1, sheetId = "s1") =>
  page.evaluate((area) => (globalThis as unknown as PanePage).port.select(area), {
    sheetId,
    row,
    column,
    rowCount,
    columnCount,
  });
const formulaAt = (page: Page, row: number, column: number) =>
  page.evaluate(
    ([r, c]) => (globalThis as unknown as PanePage).port.formulaAt("s1", r as number, c as number),
    [row, column],
  );
async function choose(functions: Locator, question: string, id: string): Promise<void> {
  await functions.getByLabel("What do you want to know?").fill(question);
  await functions
    .getByRole("button", { name: `TACK.${id}` })
    .first()
    .click();
}

describe.each([
  ["at 320 px by day", { width: 320 }],
  ["at 420 px by night", { width: 420, dark: true }],
  ["in forced colours", { width: 360, forcedColors: true }],
  ["at a zoom of 200 %", { width: 320, height: 400 }],
])("%s", (_, options) => {
  test("Functions has no barrier that axe knows of, nothing sticks out, and every target is 24 px", async () => {
    const { page, view, barriers, complaints } = await browser.open(sheets, TODAY, options);
    const functions = await view("Functions");
    expect(await barriers()).toEqual([]);
    expect(await wayOut(page)).toEqual({ tooWide: 0, tooSmall: [] });
    await choose(functions, "what is late?", "LATEROWS");
    await functions.getByText("2 rows").waitFor();
    await select(page, 2, 0);
    await functions.getByRole("button", { name: "Insert at the selected cell…" }).click();
    await functions.getByText("More about TACK.LATEROWS").click();
    expect(await barriers()).toEqual([]);
    expect(await wayOut(page)).toEqual({ tooWide: 0, tooSmall: [] });
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("a function found by its question begins with the table, the sheet's own day, and shows its result", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  const heading = functions.getByRole("heading", { name: "What is late, and by how much?" });
  expect(await heading.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(await functions.getByLabel("rows", { exact: true }).inputValue()).toBe("=Loans[#All]");
  expect(await functions.getByLabel("asOf", { exact: true }).inputValue()).toBe("=Totals!B1");
  await functions.getByText("=TACK.LATEROWS(Loans[#All];Totals!B1)").waitFor();
  const table = functions.getByRole("region", { name: "The result as a table" });
  await table.waitFor();
  expect((await table.getByRole("row").allInnerTexts()).map((text) => text.split("\t").at(-1))).toEqual([
    "Days late",
    "2",
    "1",
  ]);
  await page.close();
});

test("what a value cannot be is said at its argument, in the function's own sentence", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "when is it due?", "DUE");
  await functions.getByText("Still needed: out and terms.").waitFor();
  expect(await functions.getByRole("button", { name: "Insert at the selected cell…" }).isDisabled()).toBe(true);
  await functions.getByLabel("out", { exact: true }).fill("03/04/26");
  await functions.getByLabel("terms", { exact: true }).fill("3 working days");
  await functions.getByText('out: "03/04/26" could be 2026-04-03 or 2026-03-04', { exact: false }).first().waitFor();
  expect(await functions.getByLabel("out", { exact: true }).getAttribute("aria-invalid")).toBe("true");
  await functions.getByLabel("out", { exact: true }).fill("2026-03-02");
  await functions.getByText("2026-03-05", { exact: true }).waitFor();
  await page.close();
});

test("terms are read back in plain words as they are typed, tied to their argument, and the help shows many more", async () => {
  const { page, view } = await browser.open(sheets, TODAY, { width: 320 });
  const functions = await view("Functions");
  await choose(functions, "when is it due?", "DUE");
  const terms = functions.getByLabel("terms", { exact: true });
  await terms.fill("5 wd post-wrap");
  const said = functions.getByText("Read as: 5 working days after the shoot.");
  await said.waitFor();
  const id = await said.evaluate((element) => element.closest("[id]")?.id ?? "none");
  expect((await terms.getAttribute("aria-describedby"))?.split(" ")).toContain(id);
  await terms.fill("3 to 5 days");
  await functions.getByText('"3 to 5 days" could be "3 days" or "5 days"', { exact: false }).waitFor();
  await functions.getByText("More about TACK.DUE").click();
  await functions.getByText("Read as: first Monday after the shoot").waitFor();
  await functions.getByText("Read as: 14 days from the receipt").waitFor();
  expect(await wayOut(page)).toEqual({ tooWide: 0, tooSmall: [] });
  await page.close();
});

test("a heading is picked for the formula's own row, and the result is that of the row that is selected", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "when is it due?", "DUE");
  await functions.getByLabel("Take out from the workbook").selectOption("=Loans[@Out]");
  await functions.getByLabel("Take terms from the workbook").selectOption("=Loans[@Terms]");
  await functions.getByText("2026-02-27", { exact: true }).waitFor();
  await select(page, 2, 8, 1, 1, "s0");
  await functions.getByRole("button", { name: "Insert at the selected cell…" }).click();
  await functions.getByText("2026-03-10", { exact: true }).waitFor();
  await functions.getByRole("button", { name: "Insert it" }).click();
  await page.getByText("Done: TACK.DUE inserted at Loans!I3").first().waitFor();
  expect(await page.evaluate(() => (globalThis as unknown as PanePage).port.formulaAt("s0", 2, 8))).toBe(
    "=TACK.DUE(Loans[@Out],Loans[@Terms])",
  );
  await page.close();
});

test("the selected cells are taken by name where they are a table, else by their place", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  await select(page, 0, 0, 3, 7, "s0");
  await functions.getByRole("button", { name: "Use the selected cells for rows" }).click();
  await functions.getByText("1 row", { exact: true }).waitFor();
  expect(await functions.getByLabel("rows", { exact: true }).inputValue()).toBe("=Loans!A1:G3");
  await select(page, 0, 0, 4, 7, "s0");
  await functions.getByRole("button", { name: "Use the selected cells for rows" }).click();
  await functions.getByText("2 rows", { exact: true }).waitFor();
  expect(await functions.getByLabel("rows", { exact: true }).inputValue()).toBe("=Loans[#All]");
  await page.close();
});

test("cells in the way of a result are named before it is inserted, and a filled cell is not written over unasked", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  await functions.getByText("2 rows").waitFor();
  await select(page, 1, 0);
  await functions.getByRole("button", { name: "Insert at the selected cell…" }).click();
  const heading = functions.getByRole("heading", { name: "Into Totals!A2" });
  expect(await heading.evaluate((element) => element === document.activeElement)).toBe(true);
  await functions.getByText('A2 holds "note".').waitFor();
  await functions.getByText("in the way, so that it shows #SPILL!: A4.", { exact: false }).waitFor();
  await select(page, 9, 4);
  await functions.getByRole("button", { name: "Take the cell selected now" }).click();
  await functions.getByRole("heading", { name: "Into Totals!E10" }).waitFor();
  expect(await functions.getByText("in the way").count()).toBe(0);
  await functions.getByRole("button", { name: "Insert it", exact: true }).click();
  await page.getByText("Done: TACK.LATEROWS inserted at Totals!E10").first().waitFor();
  expect(await formulaAt(page, 9, 4)).toBe("=TACK.LATEROWS(Loans[#All],Totals!B1)");
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await page.getByText("Put back as it was").first().waitFor();
  expect(await formulaAt(page, 9, 4)).toBeNull();
  await page.close();
});

test("inside a table a result of several cells is refused", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  await functions.getByText("2 rows").waitFor();
  await select(page, 1, 5, 1, 1, "s0");
  await functions.getByRole("button", { name: "Insert at the selected cell…" }).click();
  await functions.getByText("F2 is inside the table Loans, where a result", { exact: false }).waitFor();
  expect(await functions.getByRole("button", { name: /^Insert it/ }).count()).toBe(0);
  await page.keyboard.press("Escape");
  await functions.getByRole("button", { name: "Insert at the selected cell…" }).waitFor();
  await page.close();
});

test.each([
  ["protected", /protected/],
  ["deleted", /gone|no longer/],
  ["filled meanwhile", /was when checked|something else/],
] as const)("an insertion into a sheet or cell that is %s says so in a sentence", async (how, sentence) => {
  const { page, view, complaints } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  await functions.getByText("2 rows").waitFor();
  await select(page, 9, 4);
  await functions.getByRole("button", { name: "Insert at the selected cell…" }).click();
  await functions.getByRole("button", { name: "Insert it", exact: true }).evaluate((button, what) => {
    const { port } = globalThis as unknown as PanePage;
    if (what === "protected") port.protectSheet("s1");
    if (what === "deleted") port.deleteSheet("s1");
    if (what === "filled meanwhile") port.typed("s1", 9, 4, "mine");
    (button as HTMLElement).click();
  }, how);
  await page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");
  expect(await page.locator("[role=alert]").innerText()).toMatch(sentence);
  expect(complaints).toEqual([]);
  await page.close();
});

test("a selection that cannot be read is said, and what was typed stays", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  await page.evaluate(() => (globalThis as unknown as PanePage).port.failNext("selection"));
  await functions.getByRole("button", { name: "Use the selected cells for rows" }).click();
  await page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");
  expect(await functions.getByLabel("rows", { exact: true }).inputValue()).toBe("=Loans[#All]");
  await page.close();
});

test("what only the workbook can work out is inserted all the same, and said", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  await functions.getByLabel("asOf", { exact: true }).fill("=MAX(Loans[Out])");
  await functions
    .getByText("The result shows once it is inserted: asOf is worked out by the workbook itself.")
    .waitFor();
  expect(await functions.getByRole("button", { name: "Insert at the selected cell…" }).isEnabled()).toBe(true);
  await page.close();
});

test("the choices of Columns come with the formula", async () => {
  const odd = { ...loans, rows: loans.rows.map((row, index) => (index === 0 ? [...row.slice(0, 6), "Fig. 1"] : row)) };
  const { page, view } = await browser.open([odd, totals], TODAY);
  const columns = await view("Columns");
  await columns.locator("summary").first().click();
  await columns.getByLabel("Fig. 1").selectOption("value");
  await columns.getByText("7 of 7 headings read, 1 chosen by hand", { exact: false }).waitFor();
  const functions = await view("Functions");
  await choose(functions, "VALUEOUT", "VALUEOUT");
  expect(await functions.getByLabel("columns", { exact: false }).first().inputValue()).toBe("value=Fig. 1");
  await functions.getByText("1,630.00", { exact: true }).waitFor();
  await page.close();
});

test("back in the list the question still stands and has the focus", async () => {
  const { page, view } = await browser.open(sheets, TODAY);
  const functions = await view("Functions");
  await choose(functions, "what is late?", "LATEROWS");
  await functions.getByRole("button", { name: "All functions" }).click();
  const box = functions.getByLabel("What do you want to know?");
  expect(await box.inputValue()).toBe("what is late?");
  await page.waitForFunction(() => document.activeElement?.tagName === "INPUT");
  await page.close();
});
