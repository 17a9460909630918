import { existsSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { builtAddin } from "../build/builtAddin";
import { launchBrowser } from "./launchBrowser";

/**
 * The add-in's own page as it was built, in a real browser, over the strict Excel of tests/excel instead of the host: what
 * can be seen of the add-in where there is no Excel.
 */
const ADDRESS = "https://localhost:3000";
const LIBRARY = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".json": "application/json",
};

const opened: { browser?: Browser; library?: string } = {};

beforeAll(async () => {
  const host = await build({
    entryPoints: [join(__dirname, "fakeHostPage.ts")],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
  });
  opened.library = host.outputFiles[0]?.text ?? "";
  opened.browser = await launchBrowser();
}, 180_000);
afterAll(() => opened.browser?.close());

/** What the fake host answers, asked inside the page. */
interface FakeHost {
  associated(): string[];
  call(id: string, ...args: unknown[]): unknown;
  showPane(): void;
  cell(row: number, column: number): unknown;
  type(row: number, column: number, typed: number | string): Promise<void>;
  active(): { row: number; column: number };
}

interface OpenPage {
  readonly page: Page;
  readonly requests: string[];
  readonly complaints: string[];
}

/** Opens taskpane.html; a page started by a function has no size until the pane is shown. */
async function openPage({ isHidden }: { isHidden: boolean }): Promise<OpenPage> {
  const folders = [builtAddin("page"), builtAddin("functions")];
  const page = await (opened.browser as Browser).newPage({ viewport: { width: 350, height: 800 } });
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  await page.route("**/*", (route) => {
    const url = route.request().url();
    if (url === LIBRARY) return route.fulfill({ contentType: "text/javascript", body: opened.library ?? "" });
    const name = url.startsWith(`${ADDRESS}/`) ? url.slice(ADDRESS.length + 1) : "";
    const file = folders.map((folder) => join(folder, name)).find((path) => name !== "" && existsSync(path));
    if (file === undefined) return route.fulfill({ status: 404, body: "" });
    return route.fulfill({ contentType: TYPES[extname(file)] ?? "application/octet-stream", body: readFileSync(file) });
  });
  if (isHidden) {
    await page.addInitScript(() => Object.defineProperty(window, "innerWidth", { configurable: true, get: () => 0 }));
  }
  await page.goto(`${ADDRESS}/taskpane.html`);
  return { page, requests, complaints };
}

const inHost = <T>(page: Page, ask: (host: FakeHost) => T | Promise<T>): Promise<T> =>
  page.evaluate(`(${ask.toString()})(globalThis.fakeHost)`) as Promise<T>;

test("started by a function, the page registers every function and leaves the pane alone", async () => {
  const { page, requests, complaints } = await openPage({ isHidden: true });
  await page.waitForTimeout(500);
  const metadata = readFileSync(join(builtAddin("functions"), "functions.json"), "utf8");
  const ids = (JSON.parse(metadata) as { functions: { id: string }[] }).functions.map(({ id }) => id);
  expect((await inHost(page, (host) => host.associated())).sort()).toEqual(ids.sort());
  expect(requests).toEqual([`${ADDRESS}/taskpane.html`, LIBRARY, `${ADDRESS}/shell.js`, `${ADDRESS}/functions.js`]);
  expect(complaints).toEqual([]);
  await page.close();
}, 120_000);

test("a date comes back with its format, since this host takes it", async () => {
  const { page } = await openPage({ isHidden: true });
  const due = await inHost(page, (host) => host.call("DUE", 46083, "3 working days"));
  expect(due).toEqual({ type: "Double", basicValue: 46086, numberFormat: "yyyy-mm-dd" });
  await page.close();
}, 120_000);

test("when it is shown the pane is loaded, reads the workbook and asks nothing of any other address", async () => {
  const { page, requests, complaints } = await openPage({ isHidden: true });
  await page.waitForTimeout(200);
  await inHost(page, (host) => host.showPane());
  await page.getByRole("tab", { name: /Check/ }).click({ timeout: 20_000 });
  await page.getByText("5 Mar 2026").first().waitFor({ timeout: 20_000 });
  expect(requests.filter((url) => url !== LIBRARY && !url.startsWith(`${ADDRESS}/`))).toEqual([]);
  expect(complaints).toEqual([]);
  await page.close();
}, 120_000);

test("opened straight away the pane goes to a finding's cell, mends it in the workbook and offers to put it back", async () => {
  const { page, complaints } = await openPage({ isHidden: false });
  await page.getByRole("tab", { name: /Check/ }).click({ timeout: 20_000 });
  const card = page.getByRole("listitem").filter({ hasText: "5 Mar 2026" }).first();
  await card.getByRole("button", { name: /F2/ }).first().click();
  await page.waitForFunction("globalThis.fakeHost.active().column === 5");
  await card.getByRole("button", { name: /^Fix/ }).click();
  await page.waitForFunction("globalThis.fakeHost.cell(1, 5).value === 46086");
  expect(await inHost(page, (host) => host.cell(1, 5))).toEqual({ value: 46086, format: "yyyy-mm-dd" });
  await page
    .getByRole("button", { name: /restore/i })
    .first()
    .click();
  await page.waitForFunction('globalThis.fakeHost.cell(1, 5).value === "5 Mar 2026"');
  expect(complaints).toEqual([]);
  await page.close();
}, 120_000);

test("the pane shows a function's result before it is inserted, from the functions of its own page", async () => {
  const { page, complaints } = await openPage({ isHidden: false });
  await page.getByRole("tab", { name: "Functions" }).click({ timeout: 20_000 });
  await page.getByLabel("What do you want to know?").fill("when is it due?");
  await page.getByRole("button", { name: "TACK.DUE" }).first().click();
  await page.getByLabel("out", { exact: true }).fill("2026-03-02");
  await page.getByLabel("terms", { exact: true }).fill("3 working days");
  await page.getByText("2026-03-05", { exact: true }).waitFor({ timeout: 10_000 });
  expect(complaints).toEqual([]);
  await page.close();
}, 120_000);
