import { spawn } from "node:child_process";
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

/**
 * Takes the README's pictures from the bench as a newcomer sees it: npm run pictures. Needs an installed
 * Chromium; its path may be given in the variable BENCH_BROWSER.
 */
const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = `${root}pictures`;
mkdirSync(folder, { recursive: true });

const server = spawn("node", ["src/build/start.mjs"], { cwd: root, stdio: ["ignore", "pipe", "inherit"] });
const address = await new Promise((resolve, reject) => {
  server.stdout.on("data", (text) => {
    const found = /http:\/\/\S+/.exec(String(text));
    if (found) resolve(found[0]);
  });
  server.on("exit", () => reject(new Error("The bench did not start.")));
});

const browser = await chromium.launch({
  executablePath: process.env.BENCH_BROWSER ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-sync"],
});
const page = await browser.newPage({ viewport: { width: 1360, height: 800 }, deviceScaleFactor: 1 });
await page.goto(address);
await page.getByRole("tab", { name: /Check/ }).waitFor();
await page.getByText(/Late: \d+ pieces/).waitFor();

const sheet = async (name) => {
  await page.locator("#grid").getByText(name, { exact: true }).first().click();
  await page.waitForTimeout(1200);
};
const view = async (name) => {
  await page.getByRole("tab", { name: new RegExp(`^${name}`) }).click();
  await page.waitForTimeout(600);
};
const shoot = (name, clip) => page.screenshot({ path: `${folder}/${name}.png`, clip });

await sheet("Loans");
// The columns a stylist looks at first: out, terms, due and back, beside the frozen piece and description.
await page.mouse.click(200, 250);
for (let step = 0; step < 12; step++) await page.keyboard.press("ArrowRight");
await view("Check");
await shoot("loans");
await page.locator("#pane").screenshot({ path: `${folder}/check.png` });
const GRID = { x: 0, y: 60, width: 975, height: 560 };
for (const [name, file] of [
  ["Totals", "totals"],
  ["Day 1", "day"],
  ["Value", "value"],
  ["Run order", "run"],
  ["Carry", "carry"],
]) {
  await sheet(name);
  await shoot(file, GRID);
}
await view("Today");
const pane = page.locator("#pane");
await pane.screenshot({ path: `${folder}/today.png` });
// The first shoot day, look by look, and its picture.
await pane.getByLabel("Day of the looks").selectOption({ label: "Mon 2026-03-30" });
const looks = pane.getByRole("heading", { name: /^(?:Next look|Looks),/ }).first();
await looks.scrollIntoViewIfNeeded();
await looks.evaluate((heading) => heading.scrollIntoView({ block: "start" }));
await page.waitForTimeout(800);
await pane.screenshot({ path: `${folder}/today-day.png` });
await view("Hand over");
await page.waitForTimeout(800);
await pane.screenshot({ path: `${folder}/hand-over.png` });
await browser.close();
server.kill();
