import type { Page } from "playwright-core";
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

const fresh = [{ name: "Sheet1", rows: [] }];
const short = [
  {
    name: "Loans",
    tables: [{ name: "Loans", row: 0, column: 0, rowCount: 2, columnCount: 5 }],
    rows: [
      ["Item no.", "Description", "Borrowed from", "Date out", "Ins. value"],
      ["1", "coat", "Ado", TODAY - 3, 900],
    ],
  },
];
const sheetNames = (page: Page) =>
  page.evaluate(async () => {
    const workbook = await (globalThis as unknown as PanePage).port.readWorkbook();
    return workbook.ok ? workbook.value.sheets.map(({ name }) => name) : [];
  });

describe.each([
  ["at 320 px by day", { width: 320 }],
  ["at 420 px by night", { width: 420, dark: true }],
  ["in forced colours", { width: 360, forcedColors: true }],
  ["at a zoom of 200 %", { width: 320, height: 400 }],
])("%s", (title, options) => {
  test.each([
    ["fresh", fresh],
    ["begun", short],
  ] as const)(
    "Start of a %s workbook has no barrier, nothing sticks out, every target is 24 px",
    async (name, sheets) => {
      const { page, view, barriers, complaints } = await browser.open(sheets, TODAY, options);
      const start = await view("Start");
      if (name === "begun") await start.getByRole("checkbox", { name: "Due" }).check();
      await start.getByRole("button", { name: /^Add .*…$/ }).click();
      expect(await barriers()).toEqual([]);
      expect(await wayOut(page)).toEqual({ tooWide: 0, tooSmall: [] });
      expect(complaints).toEqual([]);
      if (process.env.SHOTS) {
        await page.setViewportSize({ width: options.width, height: 2000 });
        await page.screenshot({ path: `${process.env.SHOTS}/start-${name}-${title.replace(/\W+/g, "-")}.png` });
      }
      await page.close();
    },
  );
});

test("a fresh workbook says what it gets, gets it in one step, and loses it again on asking", async () => {
  const { page, view } = await browser.open(fresh, TODAY);
  const start = await view("Start");
  await start.getByRole("button", { name: "Add 8 sheets…" }).click();
  const heading = start.getByRole("heading", { name: "8 sheets would be added, in one step" });
  expect(await heading.evaluate((element) => element === document.activeElement)).toBe(true);
  await start
    .getByText('A new sheet "Pieces" with 21 columns and 4 example rows: Piece, Description', { exact: false })
    .waitFor();
  expect(await sheetNames(page)).toEqual(["Sheet1"]);
  await start.getByRole("button", { name: "Add 8 sheets", exact: true }).click();
  await page.getByText("Done: 8 sheets added").first().waitFor();
  expect(await sheetNames(page)).toHaveLength(9);
  const today = await view("Today");
  await today.getByText("Value out in GBP").first().waitFor();
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await page.getByText("Put back as it was: 8 sheets added").first().waitFor();
  expect(await sheetNames(page)).toEqual(["Sheet1"]);
  await page.getByRole("button", { name: "Do it again" }).click();
  await page.getByText("Done: 8 sheets added").first().waitFor();
  expect(await sheetNames(page)).toHaveLength(9);
  await page.close();
});

test("the public holidays of a place become the workbook's closed days, and go again on asking", async () => {
  const { page, view } = await browser.open(short, TODAY);
  const start = await view("Start");
  await start.getByLabel("Public holidays of").selectOption("Scotland");
  await start.getByText("World Cup bank holiday", { exact: false }).waitFor();
  await start.getByRole("button", { name: /^Add the \d+ days to a new table ClosedDays$/ }).click();
  await page
    .getByText(/^Done: \d+ closed days added to a new table ClosedDays/)
    .first()
    .waitFor();
  expect(await sheetNames(page)).toEqual(["Loans", "Closed days"]);
  await start.getByText("All of them are in the closed days.", { exact: false }).waitFor();
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await page.getByText("Put back as it was", { exact: false }).first().waitFor();
  expect(await sheetNames(page)).toEqual(["Loans"]);
  await page.close();
});

test("what somebody typed into the new tables is not taken away with them", async () => {
  const { page, view } = await browser.open(fresh, TODAY);
  const start = await view("Start");
  await start.getByRole("button", { name: "Add 8 sheets…" }).click();
  await start.getByRole("button", { name: "Add 8 sheets", exact: true }).click();
  await page.getByText("Done: 8 sheets added").first().waitFor();
  await page.getByRole("button", { name: "Restore what was there" }).evaluate((button) => {
    const { port } = globalThis as unknown as PanePage;
    port.typed("s1", 7, 1, "mine");
    (button as HTMLElement).click();
  });
  await page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");
  expect(await page.locator("[role=alert]").innerText()).toContain("B8");
  expect(await sheetNames(page)).toHaveLength(9);
  await page.close();
});

test("the example rows are shown before they are cleared, in one step, and can be put back", async () => {
  const { page, view } = await browser.open(fresh, TODAY);
  const start = await view("Start");
  await start.getByRole("button", { name: "Add 8 sheets…" }).click();
  await start.getByRole("button", { name: "Add 8 sheets", exact: true }).click();
  await start.getByRole("heading", { name: "There are 10 example rows" }).waitFor();
  await start.getByRole("button", { name: "Clear 10 example rows…" }).click();
  await start.getByText("Pieces!A2: E1, wool coat, coat").waitFor();
  await start.getByRole("button", { name: "Clear 10 example rows", exact: true }).click();
  await page.getByText("Done: 10 example rows cleared").first().waitFor();
  await start.getByRole("heading", { name: "There are 10 example rows" }).waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await start.getByRole("heading", { name: "There are 10 example rows" }).waitFor();
  await page.close();
});

test("beside rows that are there only what is chosen is added, in blank cells alone", async () => {
  const { page, view } = await browser.open(short, TODAY);
  const start = await view("Start");
  expect(await start.getByRole("button", { name: "Nothing is chosen" }).isDisabled()).toBe(true);
  const pieces = start.getByRole("group", { name: "Pieces" });
  await pieces.getByText("There already, at", { exact: false }).waitFor();
  await pieces.getByRole("checkbox", { name: "Due" }).check();
  await pieces.getByRole("checkbox", { name: "Back", exact: true }).check();
  await start.getByRole("button", { name: "Add 2 columns…" }).click();
  await start.getByText('On "Loans", in F1 to G1: Due and Back.', { exact: false }).waitFor();
  await start.getByRole("button", { name: "Add 2 columns", exact: true }).click();
  await page.getByText("Done: 2 columns added").first().waitFor();
  expect(
    await page.evaluate(() => [5, 6].map((column) => (globalThis as unknown as PanePage).port.at("s0", 0, column))),
  ).toEqual(["Due", "Back"]);
  expect(await pieces.getByRole("checkbox", { name: "Due" }).count()).toBe(0);
  await page.close();
});

test("where a cell beside the table is filled, the columns are refused by its name before anything is done", async () => {
  const [loans] = short;
  const beside = { ...loans!, rows: loans!.rows.map((row, index) => (index === 1 ? [...row, null, "mine"] : row)) };
  const { page, view } = await browser.open([beside], TODAY);
  const start = await view("Start");
  await start.getByRole("checkbox", { name: "Due" }).check();
  await start.getByRole("checkbox", { name: "Back", exact: true }).check();
  await start.getByRole("button", { name: "Add 2 columns…" }).click();
  await start.getByText("G2; check again.", { exact: false }).waitFor();
  expect(await start.getByRole("button", { name: "Add 2 columns", exact: true }).count()).toBe(0);
  await page.keyboard.press("Escape");
  await start.getByRole("button", { name: "Add 2 columns…" }).waitFor();
  await page.close();
});

test.each([
  ["protected", /protected/],
  ["deleted", /no longer/],
] as const)("columns for a sheet that is %s meanwhile are refused in a sentence", async (how, sentence) => {
  const { page, view, complaints } = await browser.open(short, TODAY);
  const start = await view("Start");
  await start.getByRole("checkbox", { name: "Due" }).check();
  await start.getByRole("button", { name: "Add 1 column…" }).click();
  await start.getByRole("button", { name: "Add 1 column", exact: true }).evaluate((button, what) => {
    const { port } = globalThis as unknown as PanePage;
    if (what === "protected") port.protectSheet("s0");
    if (what === "deleted") port.deleteSheet("s0");
    (button as HTMLElement).click();
  }, how);
  await page.waitForFunction(() => document.querySelector("[role=alert]")?.textContent !== "");
  expect(await page.locator("[role=alert]").innerText()).toMatch(sentence);
  expect(complaints).toEqual([]);
  await page.close();
});
