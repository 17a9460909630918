import { join } from "node:path";
import type { Page } from "playwright-core";
import type { FakeSheet } from "../pane/fakePort";
import { launchPane, type PaneBrowser } from "./openPane";
import type { PanePage } from "./panePage";
import { TODAY } from "./messySheets";

let browser: PaneBrowser;
beforeAll(async () => {
  browser = await launchPane();
}, 120_000);
afterAll(() => browser.close());
jest.setTimeout(60_000);

/** A workbook in which every section of Today has something to say. */
const busySheets: readonly FakeSheet[] = [
  {
    name: "Loans",
    rows: [
      [
        "Piece",
        "Description",
        "Kind",
        "Lender",
        "Weight",
        "Value",
        "Out",
        "Due",
        "Back",
        "Bag",
        "Fitting",
        "Alteration",
        "Alteration undone",
        "Tape off",
        "Returned how",
        "Tracking",
      ],
      ["1", "wool coat", "coat", "Ado & Fils", "2 kg", 1250, TODAY - 9, TODAY - 2, null, "A", null, "hem up"],
      ["2", "brogues", "shoes", "Ado & Fils", null, 310, TODAY - 9, TODAY, null, "A"],
      ["3", "trunk of hats", "hat", "Maison Orla", "26 kg", 900, TODAY - 9, TODAY, null, "B"],
      ["4", "gizmo", "gizmo", "Maison Orla", null, 60, TODAY - 9, TODAY, null, null],
      ["5", "silk slip", "dress", "Maison Orla", "300 g", 400, TODAY - 9, TODAY + 6, null, null, TODAY + 1],
      ["6", "scarf", "scarf", "Maison Orla", "100 g", 60, TODAY - 9, TODAY - 3, TODAY - 3],
    ],
  },
  {
    name: "Lenders",
    rows: [
      ["Lender", "Contact", "Terms", "Courier days"],
      ["Ado & Fils", "Bea", "7 days", 1],
      ["Maison Orla", "Anselm", "7 days", 2],
    ],
  },
  {
    name: "Requests",
    rows: [
      ["Lender", "Asked", "Wanted", "Needed by", "Answer", "Collect", "Collected"],
      ["Ado & Fils", TODAY - 3, "two capes", TODAY + 4, null, null, null],
      ["Maison Orla", TODAY - 6, "felt hats", TODAY - 1, "yes", "Friday, back door", null],
    ],
  },
  {
    name: "Receipts",
    rows: [
      ["Shop", "Bought", "Amount", "Terms", "Refunded"],
      ["Kessel", TODAY - 27, 250, "28 days", null],
      ["Odeon", TODAY - 1, 90, "28 days", null],
    ],
  },
  {
    name: "Closed",
    rows: [
      ["Closed", "Why"],
      [46115, "Good Friday"],
    ],
    tables: [{ name: "ClosedDays", row: 0, column: 0, rowCount: 2, columnCount: 2 }],
  },
];

const wentTo = (page: Page) => page.evaluate(() => (globalThis as unknown as PanePage).port.wentTo.at(-1));
const held = (page: Page, sheetId: string, row: number, column: number) =>
  page.evaluate(
    ([id, r, c]) => (globalThis as unknown as PanePage).port.at(id as string, r as number, c as number),
    [sheetId, row, column],
  );
/** Where pictures of the pane go, for a look by eye; nowhere where the variable is not set. */
const pictures = process.env["TACK_PICTURES"];

describe.each([
  ["at 320 px by day", { width: 320, height: 900 }],
  ["at 320 px by night", { width: 320, height: 900, dark: true }],
  ["in forced colours", { width: 360, height: 900, forcedColors: true }],
])("%s", (name, options) => {
  test("every section of a busy day is without barrier, nothing sticks out, and every target is 24 px", async () => {
    const { page, view, barriers, complaints } = await browser.open(busySheets, TODAY, options);
    const today = await view("Today");
    await today.getByText("Public holidays for the closed days").click();
    await today.getByLabel("Public holidays of").selectOption("England and Wales");
    await today.getByText("1 refund with more time").click();
    await today.getByRole("heading", { name: "Back without proof of return: 1 piece" }).waitFor();
    if (pictures !== undefined) {
      const tall = await page.evaluate(
        () => document.querySelector("[role=tabpanel]:not([hidden])")?.scrollHeight ?? 900,
      );
      await page.setViewportSize({ width: options.width, height: Math.min(tall + 120, 9000) });
      await page.screenshot({ path: join(pictures, `today ${name}.png`) });
    }
    expect(await barriers()).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    const sticksOut = await today.evaluate((panel) => {
      const { right } = panel.getBoundingClientRect();
      return [...panel.querySelectorAll("*")]
        .filter((element) => element.getBoundingClientRect().right > right + 1)
        .map((element) => element.textContent ?? "");
    });
    expect(sticksOut).toEqual([]);
    const tooSmall = await page
      .locator("[role=tabpanel]:visible :is(button, select, summary, input:not([type=checkbox])):visible")
      .evaluateAll((targets) =>
        targets
          .map((target) => ({ box: target.getBoundingClientRect(), text: target.textContent ?? "" }))
          .filter(({ box }) => box.width < 24 || box.height < 23.5)
          .map(({ box, text }) => `${text} ${box.width} x ${box.height}`),
      );
    expect(tooSmall).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("the most urgent stands first, each heading with its count", async () => {
  const { page, view } = await browser.open(busySheets, TODAY);
  const today = await view("Today");
  await today.getByRole("heading", { name: /^Back without proof/ }).waitFor();
  const headings = await today.getByRole("heading", { level: 2 }).allInnerTexts();
  const wanted = [
    "Late: 1 piece",
    "Due on the day: 3 pieces",
    "To chase: 1 request",
    "To undo before returns: 2 pieces",
    "To collect: 1 request",
    "Refunds that end soon: 1 receipt",
    "To fit soon: 1 piece",
    "Back without proof of return: 1 piece",
    "To carry back",
    "Value out",
  ];
  expect(headings.filter((heading) => wanted.includes(heading))).toEqual(wanted);
  await page.close();
});

test.each([
  ["Ado & Fils, go to Requests!E2", { sheetId: "s2", row: 1, column: 4 }],
  ["Maison Orla, go to Requests!G3", { sheetId: "s2", row: 2, column: 6 }],
  ["Kessel, go to Receipts!D2", { sheetId: "s3", row: 1, column: 3 }],
  ["1 wool coat, go to Loans!M2", { sheetId: "s0", row: 1, column: 12 }],
  ["2 brogues, go to Loans!N3", { sheetId: "s0", row: 2, column: 13 }],
  ["5 silk slip, go to Loans!K6", { sheetId: "s0", row: 5, column: 10 }],
  ["B, go to Loans!J4", { sheetId: "s0", row: 3, column: 9 }],
] as const)("the line %s goes to its cell", async (name, at) => {
  const { page, view } = await browser.open(busySheets, TODAY);
  const today = await view("Today");
  await today.getByRole("button", { name, exact: true }).click();
  expect(await wentTo(page)).toEqual(at);
  await page.close();
});

test("what is carried says what was weighed and what is estimated, and a bag too heavy has its caution", async () => {
  const { page, view } = await browser.open(busySheets, TODAY);
  const today = await view("Today");
  const carrying = today.getByRole("region", { name: "To carry back" });
  const text = await carrying.innerText();
  expect(text).toContain("On the day, with what is late: 4 pieces");
  expect(text).toMatch(/at least 2\d\.\d kg/);
  expect(text).toMatch(/28\.0 kg weighed, .* estimated by kind/);
  expect(text).toMatch(/Caution: .* is past what stylists are known to carry/);
  expect(text).toMatch(/26\.0 kg \(57 lb\) is past what stylists are known to carry/);
  expect(text).toContain("Lifting and carrying injure");
  await page.close();
});

test("sections without their tables are left out", async () => {
  const { page, view } = await browser.open(
    [
      {
        name: "Loans",
        rows: [
          ["Piece", "Lender", "Value", "Out", "Due"],
          ["1", "Ado", 100, TODAY - 9, TODAY + 1],
        ],
      },
    ],
    TODAY,
  );
  const headings = await (await view("Today")).getByRole("heading", { level: 2 }).allInnerTexts();
  expect(headings.join("\n")).not.toMatch(/chase|collect|refund|undo|fit soon|fittings|proof|carry/i);
  await page.close();
});

test("missing holidays are added below the closed days in one step, and taken away again", async () => {
  const { page, view } = await browser.open(busySheets, TODAY);
  const today = await view("Today");
  await today.getByText("Public holidays for the closed days").click();
  await today.getByLabel("Public holidays of").selectOption("England and Wales");
  await today.getByRole("button", { name: "Add the 7 missing of 8 days to ClosedDays" }).click();
  await today.getByText("All of them are in the closed days.").waitFor();
  expect(await held(page, "s4", 2, 0)).toBe(46023);
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await today.getByRole("button", { name: "Add the 7 missing of 8 days to ClosedDays" }).waitFor();
  expect(await held(page, "s4", 2, 0)).toBeNull();
  await page.close();
});

test("the findings are written as a sheet of their own in one step, and it is taken away again", async () => {
  const { page, view } = await browser.open(busySheets, TODAY);
  const check = await view("Check");
  await check.getByRole("button", { name: "Write these findings as a sheet" }).click();
  const messages = page.getByRole("region", { name: "Messages" });
  await messages.getByText(/^Done: \d+ findings on the new sheet Findings 2026-03-05$/).waitFor();
  expect(await held(page, "s5", 0, 0)).toBe("Severity");
  await page.getByRole("button", { name: "Restore what was there" }).click();
  await messages.getByText(/^Put back as it was/).waitFor();
  expect(await held(page, "s5", 0, 0)).toBeNull();
  await page.close();
});
