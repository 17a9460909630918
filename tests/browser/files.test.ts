import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { readBook } from "../../src/bench/file/readBook";
import { plainWorkbook } from "../bench/plainWorkbook";
import { insertRowAbove3 } from "./insertRowAbove3";
import { openBench, type OpenBench } from "./openBench";
import { settled } from "./settled";
import { shownAt } from "./shownAt";
import { type } from "./type";

const SAMPLE = join(__dirname, "../../sample-workbooks/two-day-shoot.xlsx");
const TRY = "Try here";

let bench: OpenBench;
beforeAll(async () => {
  bench = await openBench();
}, 180_000);
afterAll(() => bench.close());
jest.setTimeout(90_000);

async function choose(name: string, bytes: Uint8Array): Promise<void> {
  await bench.page
    .locator("#file")
    .setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
}

async function saved(): Promise<Record<string, Uint8Array>> {
  const [file] = await Promise.all([
    bench.page.waitForEvent("download"),
    bench.page.getByRole("button", { name: "Save" }).click(),
  ]);
  return unzipSync(new Uint8Array(readFileSync(await file.path())));
}

test.each([
  ["notes.xlsx", strToU8("Piece,Lender"), "not an Excel workbook"],
  ["locked.xlsx", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0, 0]), "password"],
  ["cut.xlsx", new Uint8Array(readFileSync(SAMPLE)).slice(0, 9000), "damaged"],
  ["empty.xlsx", zipSync({ "xl/workbook.xml": strToU8("<workbook/>") }), "no sheet with cells"],
])("%s is refused in one sentence, and the open workbook stays", async (name, bytes, why) => {
  await choose(name, bytes);
  await bench.page.locator("#notice-text", { hasText: why }).waitFor();
  expect(await bench.page.locator("#file-name").textContent()).toBe("two-day-shoot.xlsx");
  await bench.page.locator("#notice").getByRole("button", { name: "Close" }).click();
  expect(await shownAt(bench.page, "Job", "A4")).toContain("As-of day");
});

test("a file without a table that can be read is left closed until it is asked for again, and then opens", async () => {
  const { page } = bench;
  await choose("fresh.xlsx", await plainWorkbook([]));
  await page.locator("#notice-text", { hasText: "no sheet of it has a row of headings" }).waitFor();
  expect(await page.locator("#file-name").textContent()).toBe("two-day-shoot.xlsx");
  expect(await shownAt(page, "Job", "A4")).toContain("As-of day");
  await page.getByRole("button", { name: "Open it anyway" }).click();
  await page.waitForFunction(() => document.getElementById("file-name")?.textContent === "fresh.xlsx");
  expect(await page.locator("#notice").isVisible()).toBe(false);
  await type(page, "Sheet1", "A1", "Piece");
  expect(await shownAt(page, "Sheet1", "A1")).toContain("Piece");
  page.once("dialog", (dialog) => void dialog.accept());
  await choose("two-day-shoot.xlsx", new Uint8Array(readFileSync(SAMPLE)));
  await page.waitForFunction(() => document.getElementById("file-name")?.textContent === "two-day-shoot.xlsx");
  expect(await shownAt(page, "Totals", "A5")).toContain("Maison Quillet");
});

test("what is typed is in the saved file, in the file's own form, with what a formula spilled", async () => {
  const { page } = bench;
  await type(page, TRY, "A20", "camel coat, see slip");
  await type(page, TRY, "A22", "=TACK.LENDERTOTALS(Loans[#All],AsOf)");
  expect(await page.locator("#unsaved").isVisible()).toBe(true);
  const parts = await saved();
  const sheet = strFromU8(
    parts[readBook(parts).sheets.find(({ name }) => name === TRY)?.path ?? ""] ?? new Uint8Array(),
  );
  expect(sheet).toContain("camel coat, see slip");
  expect(sheet).toMatch(
    /<c r="A22"[^>]* cm="1"><f t="array" ref="A22:[A-Z]+\d+">_xldudf_TACK_LENDERTOTALS\(Loans\[#All\],AsOf\)<\/f>/,
  );
  expect(await page.locator("#unsaved").isVisible()).toBe(false);
});

test("one's own file opens in place of the sample, and what was saved is in it", async () => {
  const { page } = bench;
  await type(page, TRY, "B20", "second thought");
  const parts = await saved();
  await choose("my own.xlsx", zipSync(parts));
  await page.waitForFunction(() => document.getElementById("file-name")?.textContent === "my own.xlsx");
  await settled(page);
  expect(await shownAt(page, TRY, "B20")).toContain("second thought");
  expect(await shownAt(page, TRY, "A22")).toContain("Lender");
  expect(await shownAt(page, TRY, "B22")).toContain("Pieces out");
});

test("rows put in by the grid's own menu are in the saved file, with the table and the formulas below", async () => {
  const { page } = bench;
  await insertRowAbove3(page, "Job");
  const parts = await saved();
  const book = strFromU8(parts["xl/workbook.xml"] ?? new Uint8Array());
  expect(book).toMatch(/name="AsOf"[^>]*>Job!\$B\$5</);
  const sheet = strFromU8(parts["xl/worksheets/sheet1.xml"] ?? new Uint8Array());
  expect(sheet).toMatch(/<c r="B5"[^>]*><v>46119<\/v>/);
  const closed = Object.keys(parts)
    .map((path) => strFromU8(parts[path] ?? new Uint8Array()))
    .find((xml) => xml.includes('displayName="ClosedDays"'));
  expect(closed).toMatch(/<table [^>]*ref="D5:E8"/);
});

test("changes survive a reload: the page offers the copy it kept", async () => {
  const { page } = bench;
  await type(page, TRY, "C20", "kept over the reload");
  // The page keeps a copy once the typing has paused, and tells nobody.
  await page.waitForTimeout(2500);
  page.once("dialog", (dialog) => void dialog.accept());
  await page.reload();
  await page.waitForSelector("body[data-ready]");
  await page.locator("#notice-text", { hasText: "not saved" }).waitFor();
  await page.getByRole("button", { name: "Open the copy" }).click();
  await page.locator("#unsaved").waitFor();
  expect(await shownAt(page, TRY, "C20")).toContain("kept over the reload");
  expect(await page.locator("#unsaved").isVisible()).toBe(true);
});

test("a sheet that the file protects takes no typing, and the others do", async () => {
  const { page } = bench;
  const parts = unzipSync(new Uint8Array(readFileSync(SAMPLE)));
  const path = readBook(parts).sheets.find(({ name }) => name === "Lenders")?.path ?? "";
  const open = strFromU8(parts[path] ?? new Uint8Array());
  parts[path] = strToU8(
    open.replace("</sheetData>", '</sheetData><sheetProtection sheet="1" objects="1" scenarios="1"/>'),
  );
  page.once("dialog", (dialog) => void dialog.accept());
  await choose("protected.xlsx", zipSync(parts));
  await page.waitForFunction(() => document.getElementById("file-name")?.textContent === "protected.xlsx");
  await settled(page);
  await page.locator("#grid").getByText("Lenders", { exact: true }).first().click();
  await settled(page);
  const cells = await page.locator('#grid canvas[id^="univer-sheet-main-canvas"]').boundingBox();
  if (cells === null) throw new Error("The grid has no canvas");
  await page.mouse.click(cells.x + 150, cells.y + 118);
  await page.keyboard.type("x");
  await page.getByText("This sheet is protected in the file").waitFor();
  await page.getByRole("button", { name: "ok" }).click();
  expect(await page.locator("#cell-text").textContent()).toMatch(/^A5 .*Orla & Finch Press/);
  await type(page, TRY, "A20", "here it may be typed");
  expect(await shownAt(page, TRY, "A20")).toContain("here it may be typed");
});

test("nothing was complained of on the way", () => {
  expect(bench.complaints).toEqual([]);
});
